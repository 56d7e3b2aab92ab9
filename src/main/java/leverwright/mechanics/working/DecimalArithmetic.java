package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.function.Function;
import leverwright.mechanics.measure.Unit;

/** Evaluation of expressions in decimal numbers of 60 digits, sines and cosines by their power series. */
final class DecimalArithmetic {
    static final MathContext DIGITS = new MathContext(60, RoundingMode.HALF_EVEN);

    /** π to 80 decimals: OEIS A000796. */
    private static final BigDecimal PI =
            new BigDecimal("3.14159265358979323846264338327950288419716939937510582097494459230781640628620899");

    private static final BigDecimal HALF_PI = PI.divide(BigDecimal.valueOf(2));
    private static final BigDecimal RADIANS_PER_DEGREE = PI.divide(BigDecimal.valueOf(180), DIGITS);
    private static final BigDecimal SMALLEST_TERM = new BigDecimal("1e-62");

    private DecimalArithmetic() {}

    static BigDecimal evaluate(Expression expression, Function<Expression.Symbol, BigDecimal> symbols) {
        if (expression instanceof Expression.Symbol symbol) {
            return symbols.apply(symbol);
        }
        if (expression instanceof Expression.Constant constant) {
            return si(constant.number(), constant.unit());
        }
        if (expression instanceof Expression.Sum sum) {
            BigDecimal total = BigDecimal.ZERO;
            for (Expression term : sum.terms()) {
                total = total.add(evaluate(term, symbols), DIGITS);
            }
            return total;
        }
        if (expression instanceof Expression.Product product) {
            BigDecimal result = BigDecimal.ONE;
            for (Expression factor : product.factors()) {
                result = result.multiply(evaluate(factor, symbols), DIGITS);
            }
            return result;
        }
        if (expression instanceof Expression.Quotient quotient) {
            return evaluate(quotient.numerator(), symbols).divide(evaluate(quotient.denominator(), symbols), DIGITS);
        }
        return evaluateOfOne(expression, symbols);
    }

    private static BigDecimal evaluateOfOne(Expression expression, Function<Expression.Symbol, BigDecimal> symbols) {
        if (expression instanceof Expression.Negation negation) {
            return evaluate(negation.operand(), symbols).negate();
        }
        if (expression instanceof Expression.Square square) {
            return evaluate(square.operand(), symbols).pow(2, DIGITS);
        }
        if (expression instanceof Expression.SquareRoot root) {
            return evaluate(root.operand(), symbols).sqrt(DIGITS);
        }
        if (expression instanceof Expression.Sine sine) {
            return sine(evaluate(sine.angle(), symbols));
        }
        if (expression instanceof Expression.Cosine cosine) {
            return sine(evaluate(cosine.angle(), symbols).add(HALF_PI));
        }
        throw new IllegalArgumentException("an unknown kind of expression: " + expression);
    }

    /** A printed number in SI: degrees become radians, all else is printed in SI already. */
    static BigDecimal si(BigDecimal printed, Unit unit) {
        return unit == Unit.DEGREE ? printed.multiply(RADIANS_PER_DEGREE, DIGITS) : printed;
    }

    /** An SI value as it is printed: radians become degrees. */
    static BigDecimal printed(BigDecimal si, Unit unit) {
        return unit == Unit.DEGREE ? si.divide(RADIANS_PER_DEGREE, DIGITS) : si;
    }

    /** sin(quarter turns·π/2 + rest) with the rest within ±π/4. */
    private static BigDecimal sine(BigDecimal angle) {
        BigDecimal turns = angle.divide(HALF_PI, 0, RoundingMode.HALF_EVEN);
        BigDecimal rest = angle.subtract(turns.multiply(HALF_PI));
        int quarter = turns.toBigInteger().and(BigInteger.valueOf(3)).intValue();
        BigDecimal size = quarter % 2 == 0 ? series(rest, rest, 1) : series(BigDecimal.ONE, rest, 0);
        return quarter >= 2 ? size.negate() : size;
    }

    /** The power series whose term of order n, starting at the given one, is multiplied by −x²/((n+1)(n+2)). */
    private static BigDecimal series(BigDecimal first, BigDecimal x, int order) {
        BigDecimal square = x.multiply(x, DIGITS);
        BigDecimal term = first;
        BigDecimal total = first;
        for (int n = order; term.abs().compareTo(SMALLEST_TERM) > 0; n += 2) {
            term = term.multiply(square, DIGITS)
                    .divide(BigDecimal.valueOf((n + 1L) * (n + 2L)), DIGITS)
                    .negate();
            total = total.add(term, DIGITS);
        }
        return total;
    }
}

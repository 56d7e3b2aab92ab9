package leverwright.mechanics.working;

import java.util.function.Function;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.Trigonometry;

/**
 * What a printed line gives, in doubles with a bound on their rounding: enough to decide almost every line without
 * decimal arithmetic, and honest where it is not (the bound is then infinite or NaN).
 *
 * <p>The bounds are those of running error analysis (N. J. Higham, <i>Accuracy and Stability of Numerical Algorithms</i>,
 * 2nd ed. 2002, section 3.3: the method, from memory).
 *
 * @param value the value, SI
 * @param error how far the exact value of the line may lie from it; NaN if nothing is known
 */
record Approximation(double value, double error) {
    /** A little more than the relative rounding error of one operation, 2⁻⁵³. */
    private static final double ROUNDING = 1.2e-16;

    private static final Approximation UNKNOWN = new Approximation(0, Double.NaN);

    /** The line with so many significant digits for every symbol. */
    static Approximation ofPrinted(Expression expression, int digits) {
        return of(
                expression,
                symbol -> leaf(Units.number(symbol, digits).doubleValue(), Units.printed(symbol.dimension())));
    }

    /** The formula with the doubles of its symbols taken as exact. */
    static Approximation ofFormula(Expression expression) {
        return of(expression, symbol -> new Approximation(symbol.si(), 0));
    }

    private static Approximation of(Expression expression, Function<Expression.Symbol, Approximation> symbols) {
        if (expression instanceof Expression.Symbol symbol) {
            return symbols.apply(symbol);
        }
        if (expression instanceof Expression.Constant constant) {
            return leaf(constant.number().doubleValue(), constant.unit());
        }
        if (expression instanceof Expression.Sum sum) {
            Approximation total = new Approximation(0, 0);
            for (Expression term : sum.terms()) {
                total = total.plus(of(term, symbols));
            }
            return total;
        }
        if (expression instanceof Expression.Product product) {
            Approximation result = new Approximation(1, 0);
            for (Expression factor : product.factors()) {
                result = result.times(of(factor, symbols));
            }
            return result;
        }
        if (expression instanceof Expression.Quotient quotient) {
            return of(quotient.numerator(), symbols).over(of(quotient.denominator(), symbols));
        }
        return ofOne(expression, symbols);
    }

    private static Approximation ofOne(Expression expression, Function<Expression.Symbol, Approximation> symbols) {
        if (expression instanceof Expression.Negation negation) {
            Approximation operand = of(negation.operand(), symbols);
            return new Approximation(-operand.value, operand.error);
        }
        if (expression instanceof Expression.Square square) {
            Approximation operand = of(square.operand(), symbols);
            return operand.times(operand);
        }
        if (expression instanceof Expression.SquareRoot root) {
            return of(root.operand(), symbols).root();
        }
        if (expression instanceof Expression.Sine sine) {
            Approximation angle = of(sine.angle(), symbols);
            return new Approximation(Trigonometry.sine(angle.value), angle.error + 2 * ROUNDING);
        }
        if (expression instanceof Expression.Cosine cosine) {
            Approximation angle = of(cosine.angle(), symbols);
            return new Approximation(Trigonometry.cosine(angle.value), angle.error + 2 * ROUNDING);
        }
        return UNKNOWN;
    }

    private static Approximation leaf(double printed, Unit unit) {
        double si = unit.toSi(printed);
        return new Approximation(si, (unit == Unit.DEGREE ? 5 : 1) * ROUNDING * Math.abs(si));
    }

    /** The same in the unit it is printed in. */
    Approximation printed(Unit unit) {
        double printed = unit.fromSi(value);
        return unit == Unit.DEGREE
                ? new Approximation(printed, unit.fromSi(error) * 1.01 + 5 * ROUNDING * Math.abs(printed))
                : this;
    }

    private Approximation plus(Approximation other) {
        double sum = value + other.value;
        return new Approximation(sum, error + other.error + ROUNDING * Math.abs(sum));
    }

    private Approximation times(Approximation other) {
        double product = value * other.value;
        double spread = Math.abs(value) * other.error + Math.abs(other.value) * error + error * other.error;
        return new Approximation(product, spread + ROUNDING * Math.abs(product) + Double.MIN_NORMAL);
    }

    private Approximation over(Approximation other) {
        double size = Math.abs(other.value) - other.error;
        if (!(size > 0)) {
            return UNKNOWN;
        }
        double quotient = value / other.value;
        double spread = (error + Math.abs(quotient) * other.error) / size;
        return new Approximation(quotient, spread + 2 * ROUNDING * Math.abs(quotient) + Double.MIN_NORMAL);
    }

    private Approximation root() {
        if (!(value > 4 * error)) {
            return UNKNOWN;
        }
        double root = Math.sqrt(value);
        return new Approximation(root, error / root + ROUNDING * root);
    }
}

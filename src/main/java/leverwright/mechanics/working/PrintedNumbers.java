package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.math.RoundingMode;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;

/**
 * How many digits the inputs and the value of one step print with: the fewest input digits for which the printed line
 * gives the printed value. Where doubles keep no digit at all, the value is what the line gives with all digits.
 *
 * @param inputDigits significant digits of every input of the line that is not exact
 * @param value the value in its printed unit, rounded as it is printed
 */
record PrintedNumbers(int inputDigits, BigDecimal value) {
    private static final int FEWEST_DIGITS = 4;
    private static final int MOST_DIGITS = 9;
    private static final int ALL_DIGITS = 17;

    /** A line must come nearer to the printed value than half its last digit, by a margin that no tie can cross. */
    private static final double TIE_LIMIT = 0.5 - 1e-9;

    /** How many times the bound on its own rounding a value may lie from its formula: other orders of computing it. */
    private static final double ROUNDINGS_ALLOWED = 1e6;

    private static final double[] POWERS_OF_TEN = {1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12};

    static PrintedNumbers of(Step step, Expression expression, int valueDigits) {
        Unit unit = Units.printed(step.dimension());
        BigDecimal exact = new BigDecimal(unit.fromSi(step.value()));
        int decimals = decimals(step, unit, valueDigits);
        Line line = new Line(expression, unit);
        for (int most : new int[] {MOST_DIGITS, ALL_DIGITS}) {
            for (int places = decimals; places >= 0; places--) {
                BigDecimal shown = exact.setScale(places, RoundingMode.HALF_EVEN);
                for (int digits = FEWEST_DIGITS; digits <= most; digits++) {
                    if (line.gives(digits, shown)) {
                        return new PrintedNumbers(digits, shown);
                    }
                }
                if (places == decimals && most == MOST_DIGITS) {
                    checkThatTheFormulaGivesTheValue(step, expression);
                }
            }
        }
        return new PrintedNumbers(ALL_DIGITS, line.evaluated(ALL_DIGITS).setScale(0, RoundingMode.HALF_EVEN));
    }

    /** Before a digit is given up: it must be lost to cancellation, not to a formula that says something else. */
    private static void checkThatTheFormulaGivesTheValue(Step step, Expression expression) {
        Approximation formula = Approximation.ofFormula(expression);
        if (Math.abs(formula.value() - step.value()) > ROUNDINGS_ALLOWED * formula.error()) {
            throw disagreement(step, expression);
        }
    }

    private static IllegalStateException disagreement(Step step, Expression expression) {
        return new IllegalStateException("the step " + step.symbol() + " states "
                + NumberText.general(step.value(), ALL_DIGITS) + " in SI units, but its formula "
                + ExpressionText.withNames(expression) + " does not give that");
    }

    /** Decimals of the value when all its digits are shown; noise around zero shows three. */
    private static int decimals(Step step, Unit unit, int valueDigits) {
        BigDecimal rounded = NumberText.rounded(unit.fromSi(step.value()), valueDigits);
        return rounded.signum() == 0 ? 3 : rounded.scale();
    }

    /** The printed line, whose value is in the unit it is printed in. */
    private record Line(Expression expression, Unit unit) {

        boolean gives(int digits, BigDecimal shown) {
            Approximation quick = Approximation.ofPrinted(expression, digits).printed(unit);
            double power = POWERS_OF_TEN[shown.scale()];
            double distance = Math.abs(quick.value() - shown.doubleValue()) * power;
            double unsure = (quick.error() + Math.ulp(shown.doubleValue())) * power * 1.01 + Math.ulp(distance);
            if (distance + unsure < TIE_LIMIT) {
                return true;
            }
            return !(distance - unsure > TIE_LIMIT) && givesExactly(digits, shown);
        }

        private boolean givesExactly(int digits, BigDecimal shown) {
            try {
                BigDecimal exact = evaluated(digits).subtract(shown).abs().movePointRight(shown.scale());
                return exact.compareTo(BigDecimal.valueOf(TIE_LIMIT)) < 0;
            } catch (ArithmeticException undefined) {
                return false; // with so few digits a divisor vanishes or a root's operand turns negative
            }
        }

        private BigDecimal evaluated(int digits) {
            BigDecimal si = DecimalArithmetic.evaluate(expression, symbol -> {
                Unit printed = Units.printed(symbol.dimension());
                return DecimalArithmetic.si(Units.number(symbol, digits), printed);
            });
            return DecimalArithmetic.printed(si, unit);
        }
    }
}

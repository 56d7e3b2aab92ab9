package leverwright.mechanics.numeric;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.exception.MathRuntimeException;

/**
 * Finds where a function of one number crosses zero: a thin layer over Hipparchus's bracketing n-th order Brent solver.
 */
public final class RootFinder {
    private static final int ORDER = 5;
    private static final int MOST_EVALUATIONS = 200;
    private static final double RELATIVE = 1e-15;
    private static final double FUNCTION = 1e-300;

    private RootFinder() {}

    /** A function that has no root where one was sought. The message says what was sought, between which values. */
    public static final class NoRootException extends IllegalArgumentException {
        private static final long serialVersionUID = 1L;

        NoRootException(String message) {
            super(message);
        }
    }

    /**
     * A root and how well it was met.
     *
     * @param at where the function is zero, in the unit of its argument
     * @param residual the function's value there, in its own unit
     * @param evaluations how often the function was asked, at least 1
     */
    public record Root(double at, double residual, int evaluations) {}

    /**
     * Returns the root of a function between two numbers at which its signs differ.
     *
     * @param sought what a root means, as in "balanced posture"; the message becomes "no balanced posture between … and …"
     * @param unit unit of the function's argument, for the message
     * @param function continuous between the two numbers
     * @param least one end
     * @param most the other end, greater than {@code least}
     * @param accuracy greatest error of the root's place, in the argument's unit, greater than 0
     * @throws NoRootException if the function has the same sign at both ends, or is not a number there
     */
    public static Root between(
            String sought, String unit, DoubleUnaryOperator function, double least, double most, double accuracy) {
        Require.finite(least, "lower end of the search for a " + sought, unit);
        Require.within(most, least, Double.MAX_VALUE, "upper end of the search for a " + sought, unit);
        Require.positive(accuracy, Double.MAX_VALUE, "accuracy of the search for a " + sought, unit);
        double low = function.applyAsDouble(least);
        double high = function.applyAsDouble(most);
        if (low == 0) {
            return new Root(least, 0, 2);
        }
        if (high == 0) {
            return new Root(most, 0, 2);
        }
        if (!(low < 0 && high > 0) && !(low > 0 && high < 0)) {
            throw noRoot(
                    sought,
                    unit,
                    least,
                    most,
                    "what must vanish is " + low + " at the one end and " + high
                            + " at the other; widen the range or change what is held fixed");
        }
        return search(sought, unit, function, least, most, accuracy);
    }

    private static Root search(
            String sought, String unit, DoubleUnaryOperator function, double least, double most, double accuracy) {
        BracketingNthOrderBrentSolver solver = new BracketingNthOrderBrentSolver(RELATIVE, accuracy, FUNCTION, ORDER);
        try {
            double root = solver.solve(MOST_EVALUATIONS, function::applyAsDouble, least, most);
            return new Root(root, function.applyAsDouble(root), solver.getEvaluations() + 3);
        } catch (MathRuntimeException e) {
            throw noRoot(sought, unit, least, most, "the search did not settle: " + e.getMessage(Locale.ROOT));
        }
    }

    private static NoRootException noRoot(String sought, String unit, double least, double most, String why) {
        String space = unit.isEmpty() ? "" : " " + unit;
        return new NoRootException("no " + sought + " between " + least + space + " and " + most + space + ": " + why);
    }
}

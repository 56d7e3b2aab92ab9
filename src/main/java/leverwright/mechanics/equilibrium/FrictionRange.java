package leverwright.mechanics.equilibrium;

import java.util.Optional;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.numeric.Require;

/**
 * The free forces of two contacts for which both push and neither slides. Every result is linear in the free force, so its
 * range is spanned by its values at the two ends: set each by {@link LinkageSolver#freeForce}, solve, read. Where friction
 * sets no end (a wedged linkage), the end is ±{@link Load#GREATEST_FORCE}.
 *
 * @param least smallest free force, N
 * @param greatest largest free force, N
 */
public record FrictionRange(double least, double greatest) {
    private static final double GREATEST_FRICTION = 10;

    static Optional<FrictionRange> of(LinkageSolver solver, double frictionOfFirst, double frictionOfSecond) {
        Require.within(frictionOfFirst, 0, GREATEST_FRICTION, "friction of the first contact", "");
        Require.within(frictionOfSecond, 0, GREATEST_FRICTION, "friction of the second contact", "");
        Reactions contacts = solver.reactions;
        double before = contacts.freeForce();
        double[] none = spare(solver.freeForce(0).solve().reactions, frictionOfFirst, frictionOfSecond);
        double[] unit = spare(solver.freeForce(1).solve().reactions, frictionOfFirst, frictionOfSecond);
        solver.freeForce(before).solve();
        double least = -Load.GREATEST_FORCE;
        double greatest = Load.GREATEST_FORCE;
        for (int i = 0; i < none.length; i++) {
            double slope = unit[i] - none[i];
            double end = -none[i] / slope;
            if (slope > 0) {
                least = Math.max(least, end);
            } else if (slope < 0) {
                greatest = Math.min(greatest, end);
            } else if (none[i] < 0) {
                return Optional.empty();
            }
        }
        return least <= greatest ? Optional.of(new FrictionRange(least + 0.0, greatest + 0.0)) : Optional.empty();
    }

    /** What friction could still give, in both directions at both contacts, N: sliding or lifting begins below 0. */
    private static double[] spare(Reactions contacts, double frictionOfFirst, double frictionOfSecond) {
        Hold one = contacts.first;
        Hold two = contacts.second();
        double first = frictionOfFirst * contacts.normal(one);
        double second = frictionOfSecond * contacts.normal(two);
        return new double[] {
            first - contacts.tangential(one),
            first + contacts.tangential(one),
            second - contacts.tangential(two),
            second + contacts.tangential(two),
            contacts.normal(one),
            contacts.normal(two)
        };
    }
}

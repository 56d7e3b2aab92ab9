package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.working.Expression;

/**
 * A force from outside on one segment: the weight of a bar, or a hand's push on the floor. Both sides together.
 *
 * @param name in print, such as "bar"
 * @param symbol subscript in workings, a word without spaces
 * @param on the segment that it acts on
 * @param x forward of the heel, m
 * @param y above the floor, m
 * @param forceX forward, N
 * @param forceY up, N
 * @param mass kg of a hanging mass whose weight this is; 0 for other forces
 * @param source where mass or force comes from
 * @param formulaX how x follows, for the working
 * @param formulaY how y follows, for the working
 * @param formulaForceX how the forward force follows, for the working
 * @param formulaForceY how the upward force follows, for the working
 * @param reaction whether it is what bench, wall or floor gives back
 */
record Load(
        String name,
        String symbol,
        Member on,
        double x,
        double y,
        double forceX,
        double forceY,
        double mass,
        String source,
        Formula formulaX,
        Formula formulaY,
        Formula formulaForceX,
        Formula formulaForceY,
        boolean reaction) {
    /** How a coordinate or a force follows from others, written into a hand calculation. */
    interface Formula {
        /** Returns the expression, after adding the steps that it needs. */
        Expression in(Hand hand);
    }

    /** Returns the weight of a mass, kg, at standard gravity. */
    static Load weight(
            String name,
            Member on,
            double mass,
            String source,
            double x,
            double y,
            Formula formulaX,
            Formula formulaY) {
        return weight(name, on, mass, source, x, y, formulaX, formulaY, Layout.GRAVITY);
    }

    /** Returns the weight of a mass, kg, under that part of gravity, m/s², that acts in the plane. */
    static Load weight(
            String name,
            Member on,
            double mass,
            String source,
            double x,
            double y,
            Formula formulaX,
            Formula formulaY,
            double gravity) {
        Formula none = hand -> Expression.exact("0");
        Formula down = hand -> hand.input("m_" + symbolOf(name), Mass.of(mass), name + "; " + source)
                .times(hand.gravity())
                .negated();
        double force = -mass * gravity;
        return new Load(name, symbolOf(name), on, x, y, 0, force, mass, source, formulaX, formulaY, none, down, false);
    }

    /** Returns a force that is no weight, N; what its parts follow from is written by the formulas. */
    static Load force(
            String name,
            Member on,
            double x,
            double y,
            double forceX,
            double forceY,
            Formula formulaX,
            Formula formulaY,
            Formula formulaForceX,
            Formula formulaForceY) {
        return new Load(
                name,
                symbolOf(name),
                on,
                x,
                y,
                forceX,
                forceY,
                0,
                "",
                formulaX,
                formulaY,
                formulaForceX,
                formulaForceY,
                false);
    }

    /** Returns a name as workings write it: one word. */
    static String symbolOf(String name) {
        return name.indexOf(' ') < 0 && name.indexOf('-') < 0
                ? name
                : name.replace(' ', '_').replace('-', '_');
    }

    /** Returns the same as what a support gives back. */
    Load asReaction() {
        return new Load(
                name,
                symbol,
                on,
                x,
                y,
                forceX,
                forceY,
                mass,
                source,
                formulaX,
                formulaY,
                formulaForceX,
                formulaForceY,
                true);
    }

    /** Returns whether this is the weight of a mass. */
    boolean isWeight() {
        return mass > 0 || (forceX == 0 && forceY == 0);
    }

    /** Returns whether this is a force, not a weight, that happens to be zero. */
    boolean isNothing() {
        return mass == 0 && source.isEmpty() && forceX == 0 && forceY == 0;
    }

    /** Moment about a point, counter-clockwise positive, N·m. */
    double momentAbout(double aboutX, double aboutY) {
        return (x - aboutX) * forceY - (y - aboutY) * forceX;
    }
}

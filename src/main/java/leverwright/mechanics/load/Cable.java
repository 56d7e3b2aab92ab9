package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.measure.Acceleration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;

/**
 * A weight stack on a cable. The stack moves 1/ratio as far as the handle; in motion it pulls with stack·(g + a/ratio)/ratio,
 * a the handle's acceleration (Newton's second law for the stack, derived here). Going up the handle must give that over the
 * efficiency, going down it feels that times the efficiency. Position: length of cable from the pulley to the handle.
 *
 * @param stack kg, 0 to {@link #GREATEST_MASS}
 * @param ratio how many times the handle moves as far as the stack, greater than 0, at most 20
 * @param efficiency of all pulleys together, 0.05 to 1
 * @param start length of cable, m, up to which the stack rests on its stop and the cable is slack; 0 for no stop
 * @param held how friction counts when nothing moves
 */
public record Cable(double stack, double ratio, double efficiency, double start, Direction held) implements Resistance {
    private static final double GREATEST_RATIO = 20;
    private static final double LEAST_EFFICIENCY = 0.05;

    /**
     * Makes the cable.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public Cable {
        Require.within(stack, 0, GREATEST_MASS, "mass of a stack", "kg");
        Require.positive(ratio, GREATEST_RATIO, "ratio of a cable", "");
        Require.within(efficiency, LEAST_EFFICIENCY, 1, "efficiency of a cable", "");
        Require.within(start, 0, 100, "length at which a cable lifts its stack", "m");
    }

    /** Returns this cable with a ratio: how many times the handle moves as far as the stack. */
    public Cable ratio(double handleOverStack) {
        return new Cable(stack, handleOverStack, efficiency, start, held);
    }

    /** Returns this cable with an efficiency of all its pulleys together. */
    public Cable efficiency(Ratio ofAllPulleys) {
        return new Cable(stack, ratio, ofAllPulleys.si(), start, held);
    }

    /** Returns this cable with its stack resting on a stop up to a length of cable. */
    public Cable liftsFrom(Length length) {
        return new Cable(stack, ratio, efficiency, length.si(), held);
    }

    /** Returns this cable with another rule for friction when nothing moves. */
    public Cable heldAs(Direction direction) {
        return new Cable(stack, ratio, efficiency, start, direction);
    }

    @Override
    public String name() {
        return "cable";
    }

    @Override
    public String positionWords() {
        return "cable from pulley to handle";
    }

    private Direction direction(Travel travel) {
        return travel.direction() == Direction.HELD ? held : travel.direction();
    }

    /** What the stack pulls with at the handle before friction, N. */
    private double pull(Travel travel) {
        if (start > 0 && travel.position() < start) {
            throw new IllegalArgumentException("the cable is slack: it lifts its stack from " + start + " m on, and is "
                    + travel.position() + " m long; move the pulley further away");
        }
        double pull = stack * (travel.gravity() + travel.acceleration() / ratio) / ratio;
        if (pull < 0) {
            throw new IllegalArgumentException("the cable goes slack: the handle accelerates towards the pulley at "
                    + -travel.acceleration() + " m/s^2; allowed: at most ratio times gravity, "
                    + ratio * travel.gravity() + " m/s^2");
        }
        return pull;
    }

    @Override
    public double force(Travel travel) {
        double pull = pull(travel);
        return switch (direction(travel)) {
            case LIFTED -> pull / efficiency;
            case HELD -> pull;
            case LOWERED -> pull * efficiency;
        };
    }

    @Override
    public double stored(Travel travel) {
        double speed = travel.speed() / ratio;
        return stack * (travel.gravity() * travel.position() / ratio + 0.5 * speed * speed);
    }

    @Override
    public double heat(Travel travel) {
        return (force(travel) - pull(travel)) * travel.speed();
    }

    @Override
    public List<String> notes() {
        return efficiency == 1
                ? List.of("The cable's pulleys turn without friction.", NOT_CHECKED)
                : List.of(
                        "Friction of the pulleys: over the efficiency going up, times it going down; held still the"
                                + " force may lie anywhere between.",
                        NOT_CHECKED);
    }

    @Override
    public List<Step> steps(Travel travel) {
        Expression m = Expression.symbol("m_stack", Mass.of(stack), "stack; set");
        Expression g = Gravity.symbol(travel.gravity());
        Expression i = Expression.symbol("i", Ratio.of(ratio), "handle's way over the stack's; set");
        Expression a = Expression.symbol("a", Acceleration.of(travel.acceleration()), "of the handle, away positive");
        Expression pull = travel.acceleration() == 0
                ? m.times(g).dividedBy(i)
                : m.times(g.plus(a.dividedBy(i))).dividedBy(i);
        if (efficiency == 1) {
            return List.of(Step.of("S", pull, Force.of(pull(travel)), "the stack's pull at the handle"));
        }
        Step stackPull = Step.of("S", pull, Force.of(pull(travel)), "the stack's pull at the handle, without friction");
        Expression eta = Expression.symbol("eta", Ratio.of(efficiency), "efficiency of the pulleys; set");
        return switch (direction(travel)) {
            case LIFTED ->
                List.of(
                        stackPull,
                        Step.of(
                                "F",
                                stackPull.result().dividedBy(eta),
                                Force.of(force(travel)),
                                "going up: friction adds"));
            case HELD -> List.of(stackPull);
            case LOWERED ->
                List.of(
                        stackPull,
                        Step.of(
                                "F",
                                stackPull.result().times(eta),
                                Force.of(force(travel)),
                                "going down: friction helps"));
        };
    }
}

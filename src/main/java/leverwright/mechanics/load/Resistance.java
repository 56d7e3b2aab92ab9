package leverwright.mechanics.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.measure.Acceleration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Speed;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * What resists along one line: a function from position, speed and acceleration to a force. The force opposes a growing
 * position. Immutable; every word returns another resistance.
 *
 * <p>{@link LineLoad} lets it pull a place of a link towards an anchor, {@link RailLoad} push along a fixed direction.
 */
public sealed interface Resistance permits Cable, Band, Chain, Sled, SteadyForce, MeasuredForce {
    /** Greatest mass of a stack, sled or chain, kg. */
    double GREATEST_MASS = 1000;

    /** What every result of a machine or band carries. */
    String NOT_CHECKED = "Strength and anchors of bands, cables and machines are not checked.";

    /** Returns its name in print, such as "cable". */
    String name();

    /** Returns what its position is, such as "length of the band". */
    String positionWords();

    /**
     * Returns the force against a growing position, N.
     *
     * @throws IllegalArgumentException if it is asked for where it has no force, such as a slack cable; in words
     */
    double force(Travel travel);

    /** Returns the energy that it holds in a state, J. */
    double stored(Travel travel);

    /** Returns the power that it turns into heat, W, never negative: force·speed less the growth of what is stored. */
    double heat(Travel travel);

    /** Tells whether its force is given from outside, so that its work is nobody's stored energy. */
    default boolean isGiven() {
        return false;
    }

    /** Returns what must be said beside its results. */
    List<String> notes();

    /** Returns the lines of a hand calculation; the last one has the value of {@link #force}. */
    List<Step> steps(Travel travel);

    /** Returns the force when it is lifted so slowly that its inertia does not count. */
    default Answer<Force> lifting(Length position) {
        return at(Travel.slowly(position.si(), Direction.LIFTED));
    }

    /** Returns the force when it is held still. */
    default Answer<Force> holding(Length position) {
        return at(Travel.slowly(position.si(), Direction.HELD));
    }

    /** Returns the force when it is lowered so slowly that its inertia does not count. */
    default Answer<Force> lowering(Length position) {
        return at(Travel.slowly(position.si(), Direction.LOWERED));
    }

    /** Returns the force in motion; speed and acceleration are positive against the resistance. */
    default Answer<Force> moving(Length position, Speed speed, Acceleration acceleration) {
        return at(Travel.moving(position.si(), speed.si(), acceleration.si(), 9.80665));
    }

    /** Returns the force in a state with its working. */
    default Answer<Force> at(Travel travel) {
        String label = "force of the " + name() + ", " + travel.direction().words();
        return Answer.of(
                        label,
                        Force.of(force(travel)),
                        Sides.TOTAL,
                        () -> Working.of(label + ", in total", steps(travel)))
                .noted(new LinkedHashSet<>(notes()));
    }

    /**
     * Returns the force from one position to another, lifted and lowered slowly; gaps where it has none.
     *
     * @throws IllegalArgumentException if the positions do not rise
     */
    default Curves curves(Length from, Length to) {
        if (!(from.si() < to.si())) {
            throw new IllegalArgumentException("the curves of the " + name() + " go from " + from + " to " + to
                    + "; allowed: from a smaller to a larger position");
        }
        int points = 101;
        List<Double> positions = new ArrayList<>();
        for (int k = 0; k < points; k++) {
            positions.add(from.si() + (to.si() - from.si()) * k / (points - 1));
        }
        Set<String> notes = new LinkedHashSet<>(notes());
        List<Curves.Curve> curves = new ArrayList<>();
        for (Direction direction : List.of(Direction.LIFTED, Direction.LOWERED)) {
            List<@Nullable Double> values = new ArrayList<>();
            for (double position : positions) {
                try {
                    values.add(force(Travel.slowly(position, direction)));
                } catch (IllegalArgumentException none) {
                    values.add(null);
                    notes.add(direction.words() + ": " + none.getMessage());
                }
            }
            curves.add(Curves.Curve.of("force " + direction.words(), Unit.NEWTON, Sides.TOTAL, values));
        }
        return new Curves(
                "Force of the " + name(),
                new Curves.Axis(positionWords(), Unit.CENTIMETRE, positions),
                curves,
                null,
                List.copyOf(notes));
    }
}

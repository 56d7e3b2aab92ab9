package leverwright.mechanics.load;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Acceleration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;

/**
 * Handle forces measured at several positions, in place of a model of the machine; straight between them, nothing beyond. Where
 * only one way was measured, it stands for both.
 *
 * @param lifted force over position, lifted slowly
 * @param lowered force over position, lowered slowly; empty if it was not measured
 * @param movingMass mass that the handle has to accelerate besides, kg; 0 if unknown
 */
public record MeasuredForce(List<ForcePoint> lifted, List<ForcePoint> lowered, double movingMass)
        implements Resistance {
    /**
     * Makes the resistance.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public MeasuredForce {
        lifted = List.copyOf(lifted);
        lowered = List.copyOf(lowered);
        Require.within(movingMass, 0, GREATEST_MASS, "mass that moves with a handle", "kg");
    }

    /** Returns this with a force measured while the handle was lifted slowly; positions rise from call to call. */
    public MeasuredForce lifted(Length position, Force force) {
        return new MeasuredForce(with(lifted, position, force), lowered, movingMass);
    }

    /** Returns this with a force measured while the handle was lowered slowly; positions rise from call to call. */
    public MeasuredForce lowered(Length position, Force force) {
        return new MeasuredForce(lifted, with(lowered, position, force), movingMass);
    }

    /** Returns this with a mass that the handle has to accelerate besides. */
    public MeasuredForce movingMass(Mass mass) {
        return new MeasuredForce(lifted, lowered, mass.si());
    }

    private static List<ForcePoint> with(List<ForcePoint> points, Length at, Force force) {
        List<ForcePoint> more = new ArrayList<>(points);
        more.add(new ForcePoint(at.si(), force.si()));
        return more.size() < 2 ? List.copyOf(more) : new ForceCurve("the measured force", more).points();
    }

    @Override
    public String name() {
        return "measured machine";
    }

    @Override
    public String positionWords() {
        return "position of the handle";
    }

    private ForceCurve branch(Direction direction) {
        boolean back = direction == Direction.LOWERED && !lowered.isEmpty();
        return new ForceCurve(back ? "the measured force going down" : "the measured force", back ? lowered : lifted);
    }

    @Override
    public double force(Travel travel) {
        return branch(travel.direction()).at(travel.position()) + movingMass * travel.acceleration();
    }

    @Override
    public double stored(Travel travel) {
        return branch(Direction.LOWERED).workTo(travel.position()) + 0.5 * movingMass * travel.speed() * travel.speed();
    }

    @Override
    public double heat(Travel travel) {
        double back = branch(Direction.LOWERED).at(travel.position());
        double now = branch(travel.direction()).at(travel.position());
        return travel.speed() > 0 ? (now - back) * travel.speed() : 0;
    }

    @Override
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        notes.add("Handle forces as measured, slowly; nothing is said beyond the measured positions.");
        if (lowered.isEmpty()) {
            notes.add("Only the way up was measured: on the way down the force is overstated.");
        }
        if (movingMass == 0) {
            notes.add("What the machine accelerates is not known and left out.");
        }
        notes.add(NOT_CHECKED);
        return notes;
    }

    @Override
    public List<Step> steps(Travel travel) {
        List<Step> steps = branch(travel.direction()).steps("F_slow", travel.position(), "position of the handle");
        if (movingMass > 0 && travel.acceleration() != 0) {
            Expression m = Expression.symbol("m_moving", Mass.of(movingMass), "mass that moves with the handle; set");
            Expression a = Expression.symbol("a", Acceleration.of(travel.acceleration()), "of the handle");
            steps.add(Step.of(
                    "F",
                    steps.get(0).result().plus(m.times(a)),
                    Force.of(force(travel)),
                    "measured force and inertia"));
        }
        return steps;
    }
}

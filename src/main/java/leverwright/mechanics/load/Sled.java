package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.measure.Acceleration;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;

/**
 * A sled on a rail. Up it takes m·(g·sin + a) + μ·N, down m·(g·sin + a) − μ·N, with N = m·g·cos and what the lifter presses
 * across the rail; at rest anything between. It holds itself where tan(angle) is at most μ (Coulomb friction, derived here).
 * Position: way up the rail.
 *
 * @param mass sled and plates, kg, 0 to {@link #GREATEST_MASS}
 * @param angle of the rail over level, rad, 0 to π/2
 * @param friction coefficient, 0 to 2, the same at rest and in motion
 * @param across force of the lifter across the rail, pressing the sled on it, N
 * @param held how friction counts when nothing moves
 */
public record Sled(double mass, double angle, double friction, double across, Direction held) implements Resistance {
    private static final double UPRIGHT = Math.PI / 2;

    /**
     * Makes the sled.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public Sled {
        Require.within(mass, 0, GREATEST_MASS, "mass of a sled with its plates", "kg");
        Require.within(angle, 0, UPRIGHT, "angle of a rail", "rad");
        Require.within(friction, 0, 2, "friction of a sled", "");
        Require.within(across, 0, Load.GREATEST_FORCE, "force across a rail", "N");
    }

    /** Returns this sled on a rail at an angle over level, 0 to 90°. */
    public Sled rail(Angle over) {
        return new Sled(mass, over.si(), friction, across, held);
    }

    /** Returns this sled with a coefficient of friction, 0 to 2. */
    public Sled friction(Ratio coefficient) {
        return new Sled(mass, angle, coefficient.si(), across, held);
    }

    /** Returns this sled with a force of the lifter that presses it on the rail. */
    public Sled across(Force force) {
        return new Sled(mass, angle, friction, force.si(), held);
    }

    /** Returns this sled with another rule for friction when nothing moves. */
    public Sled heldAs(Direction direction) {
        return new Sled(mass, angle, friction, across, direction);
    }

    /** Tells whether friction alone holds it: tan(angle) at most the coefficient, with nothing pressing it on the rail. */
    public boolean holdsItself() {
        return Trigonometry.sine(angle) <= friction * Trigonometry.cosine(angle);
    }

    @Override
    public String name() {
        return "sled";
    }

    @Override
    public String positionWords() {
        return "way up the rail";
    }

    private Direction direction(Travel travel) {
        return travel.direction() == Direction.HELD ? held : travel.direction();
    }

    private double weight(Travel travel) {
        return mass * (travel.gravity() * Trigonometry.sine(angle) + travel.acceleration());
    }

    private double rub(Travel travel) {
        return friction * (mass * travel.gravity() * Trigonometry.cosine(angle) + across);
    }

    @Override
    public double force(Travel travel) {
        double weight = weight(travel);
        return switch (direction(travel)) {
            case LIFTED -> weight + rub(travel);
            case HELD -> weight;
            case LOWERED -> lowered(travel, weight - rub(travel));
        };
    }

    /** A plate cannot pull. At rest a sled that holds itself needs no force; in motion it has no lowering phase. */
    private double lowered(Travel travel, double force) {
        if (force >= 0 || mass == 0) {
            return Math.max(0, force);
        }
        if (travel.direction() == Direction.HELD) {
            return 0;
        }
        throw new IllegalArgumentException("the sled does not come down by itself: friction of " + friction
                + " holds it on a rail of " + Angle.of(angle)
                + ", where tan(angle) is at most the friction or it is slowed too hard; it has no lowering phase. Make"
                + " the rail steeper or the friction smaller.");
    }

    @Override
    public double stored(Travel travel) {
        double height = travel.position() * Trigonometry.sine(angle);
        return mass * (travel.gravity() * height + 0.5 * travel.speed() * travel.speed());
    }

    @Override
    public double heat(Travel travel) {
        return (force(travel) - weight(travel)) * travel.speed();
    }

    @Override
    public List<String> notes() {
        String own = holdsItself() && friction > 0
                ? "Friction alone holds this sled: it has no lowering phase."
                : "At rest the sled's force may lie anywhere between that of going up and of coming down.";
        return friction == 0 ? List.of(NOT_CHECKED) : List.of(own, NOT_CHECKED);
    }

    @Override
    public List<Step> steps(Travel travel) {
        Direction direction = direction(travel);
        double force = force(travel);
        if (force == 0 && direction == Direction.LOWERED) {
            return List.of(Step.given("F", Force.of(0), "friction alone holds the sled"));
        }
        Expression m = Expression.symbol("m_sled", Mass.of(mass), "sled and plates; set");
        Expression beta = Expression.symbol("beta", Angle.of(angle), "rail over level; set");
        Expression g = Gravity.symbol(travel.gravity());
        Expression along = g.times(Expression.sine(beta));
        Expression a = Expression.symbol("a", Acceleration.of(travel.acceleration()), "up the rail");
        Expression weight = m.times(travel.acceleration() == 0 ? along : along.plus(a));
        if (direction == Direction.HELD) {
            return List.of(Step.of("F", weight, Force.of(force), "at rest without friction"));
        }
        Expression press = m.times(g).times(Expression.cosine(beta));
        if (across > 0) {
            press = press.plus(Expression.symbol("N_across", Force.of(across), "pressed across the rail; set"));
        }
        Expression mu = Expression.symbol("mu", Ratio.of(friction), "friction; set");
        Step rub = Step.of("R", mu.times(press), Force.of(rub(travel)), "friction of the rail");
        Expression total = direction == Direction.LIFTED ? weight.plus(rub.result()) : weight.minus(rub.result());
        return List.of(rub, Step.of("F", total, Force.of(force), "sled " + direction.words()));
    }
}

package leverwright.mechanics.load;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Place;

/**
 * A resistance along a fixed direction: a sled on its rail, chains over the floor, a handle on a slide. Its position is the way
 * along that direction from a point; across it there is no force.
 *
 * @param on name of the link
 * @param at where on the link
 * @param from where the way begins, world, m
 * @param direction along which the position grows, rad from forward, counter-clockwise positive
 * @param resistance what pushes back
 * @param couple N·m
 */
public record RailLoad(String on, Place at, Vector from, double direction, Resistance resistance, double couple)
        implements ResistanceLoad {
    /** Straight up, rad: the direction of chains over the floor. */
    public static final double UP = Math.PI / 2;

    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public RailLoad {
        Configuration.coordinate(from.x(), "x of a rail");
        Configuration.coordinate(from.y(), "y of a rail");
        Require.within(direction, -2 * Math.PI, 2 * Math.PI, "direction of a rail", "rad");
        Load.couple(couple, on);
        if (resistance instanceof Sled sled
                && Math.abs(Trigonometry.sine(sled.angle()) - Trigonometry.sine(direction)) > 1e-9) {
            throw new IllegalArgumentException("the sled's rail rises at " + Angle.of(sled.angle())
                    + " over level, but the load points along " + Angle.of(direction)
                    + "; allowed: the rail's own angle, or 180° less it for a rail that rises backwards");
        }
    }

    /** Makes the load without a couple. */
    public RailLoad(String on, Place at, Vector from, double direction, Resistance resistance) {
        this(on, at, from, direction, resistance, 0);
    }

    @Override
    public RailLoad withCouple(double newCouple) {
        return new RailLoad(on, at, from, direction, resistance, newCouple);
    }

    @Override
    public Travel travel(LoadPoint point) {
        double x = Trigonometry.cosine(direction);
        double y = Trigonometry.sine(direction);
        return Travel.moving(
                (point.x() - from.x()) * x + (point.y() - from.y()) * y,
                point.velocityX() * x + point.velocityY() * y,
                point.accelerationX() * x + point.accelerationY() * y,
                point.gravity());
    }

    @Override
    public double forceX(LoadPoint point) {
        return -resistance.force(travel(point)) * Trigonometry.cosine(direction);
    }

    @Override
    public double forceY(LoadPoint point) {
        return -resistance.force(travel(point)) * Trigonometry.sine(direction);
    }
}

package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Place;

/**
 * A resistance that pulls a place of a link straight towards a fixed anchor: a cable, a band, a partner with a rope. Its
 * position is the distance from the anchor, so that a handle that swings past is taken with its inward acceleration too.
 *
 * @param on name of the link
 * @param at where on the link
 * @param anchor pulley or anchor, world, m
 * @param resistance what pulls
 * @param couple N·m
 */
public record LineLoad(String on, Place at, Vector anchor, Resistance resistance, double couple)
        implements ResistanceLoad {
    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public LineLoad {
        Configuration.coordinate(anchor.x(), "x of an anchor");
        Configuration.coordinate(anchor.y(), "y of an anchor");
        Load.couple(couple, on);
    }

    /** Makes the load without a couple. */
    public LineLoad(String on, Place at, Vector anchor, Resistance resistance) {
        this(on, at, anchor, resistance, 0);
    }

    @Override
    public LineLoad withCouple(double newCouple) {
        return new LineLoad(on, at, anchor, resistance, newCouple);
    }

    private double distance(LoadPoint point) {
        double x = point.x() - anchor.x();
        double y = point.y() - anchor.y();
        double distance = Math.sqrt(x * x + y * y);
        if (distance == 0) {
            throw new IllegalArgumentException("the " + resistance.name() + " on link \"" + on
                    + "\" is 0 m long: its anchor lies where it is fastened, so it has no direction; move the anchor");
        }
        return distance;
    }

    @Override
    public Travel travel(LoadPoint point) {
        double length = distance(point);
        double x = (point.x() - anchor.x()) / length;
        double y = (point.y() - anchor.y()) / length;
        double speed = point.velocityX() * x + point.velocityY() * y;
        double past = point.velocityY() * x - point.velocityX() * y;
        double acceleration = point.accelerationX() * x + point.accelerationY() * y + past * past / length;
        return Travel.moving(length, speed, acceleration, point.gravity());
    }

    @Override
    public double forceX(LoadPoint point) {
        return resistance.force(travel(point)) * ((anchor.x() - point.x()) / distance(point));
    }

    @Override
    public double forceY(LoadPoint point) {
        return resistance.force(travel(point)) * ((anchor.y() - point.y()) / distance(point));
    }
}

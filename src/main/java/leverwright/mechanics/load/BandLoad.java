package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Place;

/**
 * An elastic band from a link to a fixed anchor: tension = stiffness·(length − rest length) towards the anchor, and none when
 * it is shorter than its rest length. Stretch and return follow the same line here, which overstates the return force of a
 * real band.
 *
 * @param on name of the link
 * @param at where on the link
 * @param anchor world, m
 * @param stiffness N/m, 0 to {@link #GREATEST_STIFFNESS}
 * @param restLength m, 0 to {@link Configuration#GREATEST_COORDINATE}
 * @param couple N·m
 */
public record BandLoad(String on, Place at, Vector anchor, double stiffness, double restLength, double couple)
        implements Load {
    /** Greatest stiffness, N/m. */
    public static final double GREATEST_STIFFNESS = 1.0e6;

    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public BandLoad {
        Configuration.coordinate(anchor.x(), "x of a band's anchor");
        Configuration.coordinate(anchor.y(), "y of a band's anchor");
        Require.within(stiffness, 0, GREATEST_STIFFNESS, "stiffness of a band", "N/m");
        Require.within(restLength, 0, Configuration.GREATEST_COORDINATE, "rest length of a band", "m");
        Load.couple(couple, on);
    }

    /** Makes the load without a couple. */
    public BandLoad(String on, Place at, Vector anchor, double stiffness, double restLength) {
        this(on, at, anchor, stiffness, restLength, 0);
    }

    @Override
    public BandLoad withCouple(double newCouple) {
        return new BandLoad(on, at, anchor, stiffness, restLength, newCouple);
    }

    @Override
    public double forceX(LoadPoint point) {
        return tensionPerMetre(point) * (anchor.x() - point.x());
    }

    @Override
    public double forceY(LoadPoint point) {
        return tensionPerMetre(point) * (anchor.y() - point.y());
    }

    private double tensionPerMetre(LoadPoint point) {
        double x = anchor.x() - point.x();
        double y = anchor.y() - point.y();
        double length = Math.sqrt(x * x + y * y);
        double stretch = length - restLength;
        return stretch > 0 ? stiffness * stretch / length : 0;
    }

    @Override
    public double storedEnergy(LoadPoint point) {
        double x = anchor.x() - point.x();
        double y = anchor.y() - point.y();
        double stretch = Math.max(0, Math.sqrt(x * x + y * y) - restLength);
        return 0.5 * stiffness * stretch * stretch;
    }

    @Override
    public boolean isGiven() {
        return false;
    }

    @Override
    public List<String> notes() {
        return List.of(
                "The band returns by the line on which it was stretched: the force on the way back is overstated.");
    }

    @Override
    public String kind() {
        return "band";
    }
}

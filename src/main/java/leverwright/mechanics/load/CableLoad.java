package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Place;

/**
 * A cable from a link to a fixed pulley with a weight stack behind it: tension = stack·g/ratio, towards the pulley, without
 * friction and without the stack's own acceleration.
 *
 * @param on name of the link
 * @param at where on the link
 * @param pulley where the cable leaves the pulley, world, m
 * @param stack kg, 0 to {@link MassLoad#GREATEST_MASS}
 * @param ratio how many times the handle moves as far as the stack, greater than 0, at most {@link #GREATEST_RATIO}
 * @param couple N·m
 */
public record CableLoad(String on, Place at, Vector pulley, double stack, double ratio, double couple) implements Load {
    /** Greatest ratio of a pulley system. */
    public static final double GREATEST_RATIO = 1000;

    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public CableLoad {
        Configuration.coordinate(pulley.x(), "x of a pulley");
        Configuration.coordinate(pulley.y(), "y of a pulley");
        Require.within(stack, 0, MassLoad.GREATEST_MASS, "mass of a stack", "kg");
        Require.positive(ratio, GREATEST_RATIO, "ratio of a cable", "");
        Load.couple(couple, on);
    }

    /** Makes the load without a couple. */
    public CableLoad(String on, Place at, Vector pulley, double stack, double ratio) {
        this(on, at, pulley, stack, ratio, 0);
    }

    @Override
    public CableLoad withCouple(double newCouple) {
        return new CableLoad(on, at, pulley, stack, ratio, newCouple);
    }

    @Override
    public double forceX(LoadPoint point) {
        return tensionPerMetre(point) * (pulley.x() - point.x());
    }

    @Override
    public double forceY(LoadPoint point) {
        return tensionPerMetre(point) * (pulley.y() - point.y());
    }

    private double tensionPerMetre(LoadPoint point) {
        double x = pulley.x() - point.x();
        double y = pulley.y() - point.y();
        double distance = Math.sqrt(x * x + y * y);
        if (distance == 0) {
            throw new IllegalArgumentException("the cable on link \"" + on + "\" is 0 m long: its pulley lies at ("
                    + pulley.x() + ", " + pulley.y() + ") m where it is fastened, so it has no direction; allowed: any"
                    + " other place of the pulley");
        }
        return stack * point.gravity() / ratio / distance;
    }

    @Override
    public double storedEnergy(LoadPoint point) {
        double x = pulley.x() - point.x();
        double y = pulley.y() - point.y();
        return stack * point.gravity() / ratio * Math.sqrt(x * x + y * y);
    }

    @Override
    public boolean isGiven() {
        return false;
    }

    @Override
    public List<String> notes() {
        return List.of("The cable's stack has weight but no inertia, and its pulleys no friction.");
    }

    @Override
    public String kind() {
        return "cable";
    }
}

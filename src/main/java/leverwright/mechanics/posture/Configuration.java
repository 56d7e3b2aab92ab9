package leverwright.mechanics.posture;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Vector;

/**
 * How a linkage stands and moves: origin, and by link index the direction, angular velocity and angular acceleration.
 *
 * @param origin where link 0 starts, m; it does not accelerate
 * @param directions rad from +x, counter-clockwise positive, each within ±{@link #GREATEST_DIRECTION}
 * @param angularVelocities rad/s, within ±{@link #GREATEST_ANGULAR_VELOCITY}
 * @param angularAccelerations rad/s², within ±{@link #GREATEST_ANGULAR_ACCELERATION}
 */
public record Configuration(
        Vector origin, List<Double> directions, List<Double> angularVelocities, List<Double> angularAccelerations) {
    /** Greatest size of a direction, rad. */
    public static final double GREATEST_DIRECTION = 1000;
    /** Greatest size of an angular velocity, rad/s. */
    public static final double GREATEST_ANGULAR_VELOCITY = 1000;
    /** Greatest size of an angular acceleration, rad/s². */
    public static final double GREATEST_ANGULAR_ACCELERATION = 100_000;
    /** Greatest size of a coordinate of the origin or of a fixed point of the world, m. */
    public static final double GREATEST_COORDINATE = 10_000;

    /**
     * Makes a configuration.
     *
     * @throws IllegalArgumentException if the lists differ in length or a value is outside its range
     */
    public Configuration {
        directions = List.copyOf(directions);
        angularVelocities = List.copyOf(angularVelocities);
        angularAccelerations = List.copyOf(angularAccelerations);
        int size = directions.size();
        if (angularVelocities.size() != size || angularAccelerations.size() != size) {
            throw new IllegalArgumentException("a configuration has " + size + " directions, "
                    + angularVelocities.size() + " angular velocities and " + angularAccelerations.size()
                    + " angular accelerations; allowed: as many of each");
        }
        coordinate(origin.x(), "x of the origin");
        coordinate(origin.y(), "y of the origin");
        for (int k = 0; k < size; k++) {
            direction(directions.get(k), k);
            angularVelocity(angularVelocities.get(k), k);
            angularAcceleration(angularAccelerations.get(k), k);
        }
    }

    /**
     * Returns a configuration at rest.
     *
     * @param directions one per link, by index, rad
     * @throws IllegalArgumentException if there is not one direction per link or one is outside its range
     */
    public static Configuration at(Linkage linkage, Vector origin, double... directions) {
        if (directions.length != linkage.size()) {
            throw new IllegalArgumentException("the linkage has " + linkage.size() + " links, but " + directions.length
                    + " directions were given; allowed: one per link");
        }
        List<Double> given = new ArrayList<>();
        for (double direction : directions) {
            given.add(direction);
        }
        List<Double> none = Collections.nCopies(directions.length, 0.0);
        return new Configuration(origin, given, none, none);
    }

    /** Returns this configuration with other angular velocities and accelerations, by link index. */
    public Configuration moving(List<Double> velocities, List<Double> accelerations) {
        return new Configuration(origin, directions, velocities, accelerations);
    }

    /** Returns a coordinate, m, if it is within ±{@link #GREATEST_COORDINATE}; else throws, naming {@code quantity}. */
    public static double coordinate(double value, String quantity) {
        return Require.within(value, -GREATEST_COORDINATE, GREATEST_COORDINATE, quantity, "m");
    }

    /** Returns a direction, rad, if it is allowed for link {@code index}; else throws. */
    public static double direction(double value, int index) {
        return Math.abs(value) <= GREATEST_DIRECTION
                ? value
                : Require.within(value, -GREATEST_DIRECTION, GREATEST_DIRECTION, "direction of link " + index, "rad");
    }

    /** Returns an angular velocity, rad/s, if it is allowed for link {@code index}; else throws. */
    public static double angularVelocity(double value, int index) {
        return Math.abs(value) <= GREATEST_ANGULAR_VELOCITY
                ? value
                : Require.within(
                        value,
                        -GREATEST_ANGULAR_VELOCITY,
                        GREATEST_ANGULAR_VELOCITY,
                        "angular velocity of link " + index,
                        "rad/s");
    }

    /** Returns an angular acceleration, rad/s², if it is allowed for link {@code index}; else throws. */
    public static double angularAcceleration(double value, int index) {
        return Math.abs(value) <= GREATEST_ANGULAR_ACCELERATION
                ? value
                : Require.within(
                        value,
                        -GREATEST_ANGULAR_ACCELERATION,
                        GREATEST_ANGULAR_ACCELERATION,
                        "angular acceleration of link " + index,
                        "rad/s^2");
    }
}

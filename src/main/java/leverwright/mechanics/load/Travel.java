package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Configuration;

/**
 * Where a resistance stands on its way, and how it moves. Position grows against the resistance.
 *
 * @param position m: length of a cable or band, way up a rail, height of a chain's end; see the resistance
 * @param speed m/s, positive against the resistance
 * @param acceleration m/s², positive against the resistance
 * @param gravity size of gravity's pull, m/s²
 * @param direction which way it moves; also told for a motion so slow that speed and acceleration are 0
 */
public record Travel(double position, double speed, double acceleration, double gravity, Direction direction) {
    /** Greatest size of a speed, m/s. */
    public static final double GREATEST_SPEED = 100;

    /** Greatest size of an acceleration, m/s². */
    public static final double GREATEST_ACCELERATION = 10_000;

    private static final double STANDARD_GRAVITY = 9.80665;

    /**
     * Makes a state.
     *
     * @throws IllegalArgumentException if a number is outside its range or not a number
     */
    public Travel {
        Configuration.coordinate(position, "position on a resistance's way");
        Require.within(speed, -GREATEST_SPEED, GREATEST_SPEED, "speed of a resistance", "m/s");
        Require.within(
                acceleration, -GREATEST_ACCELERATION, GREATEST_ACCELERATION, "acceleration of a resistance", "m/s^2");
    }

    /** Returns a state that moves; its direction is that of the speed. */
    public static Travel moving(double position, double speed, double acceleration, double gravity) {
        return new Travel(position, speed, acceleration, gravity, Direction.of(speed));
    }

    /** Returns a state at rest or moved so slowly that neither speed nor acceleration counts, under standard gravity. */
    public static Travel slowly(double position, Direction direction) {
        return new Travel(position, 0, 0, STANDARD_GRAVITY, direction);
    }
}

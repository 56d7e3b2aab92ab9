package leverwright.mechanics.muscle;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;

/**
 * How fast fibres shorten: all alike, or each muscle as the axes that it crosses turn; and by how much that changes what they can
 * pull. Shortening: A. V. Hill's curve with a/F0 = 0.25 (from memory), none left at 10 optimum lengths a second (PMC3217276, fig.
 * 2); lengthening: up to 1.4 (from memory; at most 1.5, the same figure).
 *
 * @param all optimum lengths a second, positive shortening
 * @param rates angular velocity of flexion by axis, rad/s
 */
record Speed(double all, Map<Axis, Double> rates) {
    /** Nothing moves. */
    static final Speed STILL = new Speed(0, Collections.emptyMap());

    private static final double FASTEST = 10;
    private static final double HILL = 0.25;
    private static final double STRETCHED = 1.4;
    /** Greatest angular velocity, rad/s. */
    private static final double FASTEST_TURN = 50;
    /** What is left at least, so that shares stay finite. */
    private static final double LEAST = 0.01;

    static Speed all(double lengthsASecond) {
        return new Speed(lengthsASecond, Collections.emptyMap());
    }

    static Speed turning(Map<Axis, Double> rates) {
        Map<Axis, Double> copy = new EnumMap<>(Axis.class);
        rates.forEach((axis, rate) -> {
            if (!Double.isFinite(rate) || Math.abs(rate) > FASTEST_TURN) {
                throw new IllegalArgumentException("the " + axis.words() + " turns at " + rate + " rad/s; allowed: −"
                        + FASTEST_TURN + " to " + FASTEST_TURN);
            }
            copy.put(axis, rate);
        });
        return new Speed(0, Collections.unmodifiableMap(copy));
    }

    double rate(Axis axis) {
        return rates.getOrDefault(axis, 0.0);
    }

    /** What is left of a muscle's pull whose joints shorten it by this much more, optimum lengths a second. */
    double factor(double own) {
        double speed = all + own;
        if (speed >= 0) {
            return Math.max(LEAST, (1 - speed / FASTEST) / (1 + speed / (HILL * FASTEST)));
        }
        double away = -speed / FASTEST;
        return 1 + (STRETCHED - 1) * away / (away + HILL / 4);
    }
}

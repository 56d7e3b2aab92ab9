package leverwright.mechanics.exercise;

import java.util.function.Supplier;

/**
 * A piece of the body whose weight counts at a joint: a whole segment, or the trunk's part on one side of a cut.
 *
 * @param symbol subscript in workings
 * @param on the segment it belongs to
 * @param whole whether it is that whole segment
 * @param mass kg, both sides together where they are alike
 * @param centre its mass centre from the segment's end nearer the feet (arms: nearer the trunk), m
 * @param massSource where the mass comes from, put into words only when asked for
 * @param centreSource where the mass centre comes from, likewise
 */
record Part(
        String symbol,
        Member on,
        boolean whole,
        double mass,
        double centre,
        Supplier<String> massSource,
        Supplier<String> centreSource) {}

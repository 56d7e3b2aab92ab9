package leverwright.face.draw;

import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/**
 * How a chart is to be drawn.
 *
 * @param width in picture units, at least 240
 * @param plotHeight the height of each plot with its words, in picture units, at least 160
 * @param from the least setting to show, in SI units; NaN for the first there is
 * @param to the greatest setting to show, in SI units; NaN for the last there is
 * @param ghost the curves of before, drawn pale behind those of the same name and unit, or null when there are none
 */
public record ChartWish(
        int width,
        int plotHeight,
        double from,
        double to,
        @Nullable Curves ghost) {

    /**
     * Checks size and stretch.
     *
     * @throws IllegalArgumentException when the size is too small to be read or the stretch is empty
     */
    public ChartWish {
        if (width < 240 || plotHeight < 160) {
            throw new IllegalArgumentException("a chart needs at least 240 by 160, not " + width + " by " + plotHeight);
        }
        if (from >= to) {
            throw new IllegalArgumentException(
                    "a chart needs a stretch that ends after it begins, not from " + from + " to " + to + " (SI)");
        }
    }

    /** Returns the wish for a whole chart without a ghost. */
    public static ChartWish whole(int width, int plotHeight) {
        return new ChartWish(width, plotHeight, Double.NaN, Double.NaN, null);
    }
}

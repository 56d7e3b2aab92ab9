package leverwright.face.draw;

import leverwright.mechanics.working.ContourMap;
import org.jspecify.annotations.Nullable;

/**
 * How a map is to be drawn.
 *
 * @param width in picture units, at least 240
 * @param height in picture units, at least 200
 * @param window the part to show, or null for the whole map
 * @param ghost the map of before, drawn pale behind, or null when there is none
 */
public record MapWish(
        int width,
        int height,
        @Nullable MapWindow window,
        @Nullable ContourMap ghost) {

    /**
     * Checks the size.
     *
     * @throws IllegalArgumentException when it is too small to be read
     */
    public MapWish {
        if (width < 240 || height < 200) {
            throw new IllegalArgumentException("a map needs at least 240 by 200, not " + width + " by " + height);
        }
    }

    /** Returns the wish for a whole map without a ghost. */
    public static MapWish whole(int width, int height) {
        return new MapWish(width, height, null, null);
    }
}

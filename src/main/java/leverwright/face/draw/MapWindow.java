package leverwright.face.draw;

/**
 * The part of a map that is shown, in SI units.
 *
 * @param left the least setting across
 * @param right the greatest setting across, above {@code left}
 * @param foot the least setting upwards
 * @param top the greatest setting upwards, above {@code foot}
 */
public record MapWindow(double left, double right, double foot, double top) {

    /**
     * Checks the ends.
     *
     * @throws IllegalArgumentException when they do not rise
     */
    public MapWindow {
        if (!(left < right) || !(foot < top)) {
            throw new IllegalArgumentException("a part of a map ends after it begins, not from " + left + " to " + right
                    + " and from " + foot + " to " + top + " (SI)");
        }
    }
}

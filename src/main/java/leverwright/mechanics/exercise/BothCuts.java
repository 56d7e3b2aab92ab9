package leverwright.mechanics.exercise;

/**
 * Whether a joint's moment comes out the same from the part beyond the joint and from the part before it. That checks the
 * sums, not the model.
 *
 * @param made whether both cuts could be made; not where a seat's share is unknown
 * @param closure largest difference of the two moments of any joint, over the scale
 * @param scale largest sum of |moments| about any joint, N·m
 */
public record BothCuts(boolean made, double closure, double scale) {
    /** Differences up to this part of the scale are rounding. */
    public static final double ROUNDING = 1e-12;

    /** Returns whether both cuts agree to rounding. */
    public boolean agree() {
        return made && closure <= ROUNDING;
    }

    /** Returns the words printed for it. */
    public String words() {
        if (!made) {
            return "one cut only";
        }
        return agree() ? "both cuts agree" : "the two cuts differ by " + closure + " of " + scale + " N·m";
    }
}

package leverwright.mechanics.body;

import java.util.Locale;
import leverwright.mechanics.measure.Sides;

/**
 * The joints of the planar body and the action of each that counts as positive.
 *
 * <p>The lifter faces right; x is forward, y up, counter-clockwise positive. "Near" is the segment nearer to the feet (for the
 * arms: nearer to the trunk), "far" the next one. The moment meant is the one that the near segment exerts on the far one;
 * {@link #counterClockwise} turns it, counter-clockwise positive, into the positive action of the joint.
 *
 * <table>
 * <caption>Signs</caption>
 * <tr><th>joint</th><th>near, far</th><th>positive moment</th><th>acts on the far segment</th><th>counted</th></tr>
 * <tr><td>ankle</td><td>foot, shank</td><td>plantarflexion</td><td>counter-clockwise</td><td>per side</td></tr>
 * <tr><td>knee</td><td>shank, thigh</td><td>extension</td><td>clockwise</td><td>per side</td></tr>
 * <tr><td>hip</td><td>thigh, trunk</td><td>extension</td><td>counter-clockwise</td><td>per side</td></tr>
 * <tr><td>low back</td><td>pelvis, trunk above it</td><td>extension</td><td>counter-clockwise</td><td>total</td></tr>
 * <tr><td>neck</td><td>trunk, head</td><td>extension</td><td>counter-clockwise</td><td>total</td></tr>
 * <tr><td>shoulder</td><td>trunk, upper arm</td><td>extension</td><td>clockwise</td><td>per side</td></tr>
 * <tr><td>elbow</td><td>upper arm, forearm</td><td>extension</td><td>clockwise</td><td>per side</td></tr>
 * <tr><td>wrist</td><td>forearm, hand</td><td>extension</td><td>clockwise, palm forward</td><td>per side</td></tr>
 * </table>
 *
 * <p>Extension straightens, or draws the arm back; raising the arm forward is flexion of the shoulder. With the palm turned
 * back (overhand grip, arm hanging) flexion and extension of the wrist change places; {@link #WRIST} is the wrist of a palm
 * that faces forward.
 *
 * <p>Angles between two neighbours are called flexion: 0 in the upright stance with straight limbs, foot level, arms hanging,
 * and growing where the positive moment is overcome (dorsiflexion at the ankle).
 */
public enum Joint {
    /** Ankle: foot and shank. */
    ANKLE("plantarflexion", "dorsiflexion", 1, Sides.PER_SIDE),
    /** Knee: shank and thigh. */
    KNEE("extension", "flexion", -1, Sides.PER_SIDE),
    /** Hip: thigh and trunk. */
    HIP("extension", "flexion", 1, Sides.PER_SIDE),
    /** Low back: the joint between the fifth lumbar vertebra and the sacrum, as this model places it. */
    LOW_BACK("extension", "flexion", 1, Sides.TOTAL),
    /** Neck: between the seventh cervical and the first thoracic vertebra. */
    NECK("extension", "flexion", 1, Sides.TOTAL),
    /** Shoulder: trunk and upper arm. */
    SHOULDER("extension", "flexion", -1, Sides.PER_SIDE),
    /** Elbow: upper arm and forearm. */
    ELBOW("extension", "flexion", -1, Sides.PER_SIDE),
    /** Wrist: forearm and hand, palm forward. */
    WRIST("extension", "flexion", -1, Sides.PER_SIDE);

    private final String positive;
    private final String negative;
    private final int counterClockwise;
    private final Sides sides;

    Joint(String positive, String negative, int counterClockwise, Sides sides) {
        this.positive = positive;
        this.negative = negative;
        this.counterClockwise = counterClockwise;
        this.sides = sides;
    }

    /** Returns the name of the action whose moment counts as positive: "extension", "plantarflexion" at the ankle. */
    public String positiveAction() {
        return positive;
    }

    /** Returns the name of the opposite action: "flexion", "dorsiflexion" at the ankle. */
    public String negativeAction() {
        return negative;
    }

    /**
     * Returns +1 where the positive action is a counter-clockwise moment of the near segment on the far one, −1 where it is
     * clockwise. Multiply the counter-clockwise moment on the far segment by it to get the moment of the positive action;
     * the same for power's angular velocity of the far segment relative to the near one.
     */
    public int counterClockwise() {
        return counterClockwise;
    }

    /** Returns whether moments at this joint are reported per side or in total. */
    public Sides sides() {
        return sides;
    }

    /** Returns its name in print, as in "low back". */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

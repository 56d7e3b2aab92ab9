package leverwright.mechanics.body;

/** Places on the body that neither segment table fixes, yet a load arm depends on; each can be measured. */
public enum Landmark {
    /** Ankle ahead of the back of the heel, along the sole. Its error shifts ankle and knee levers alike. */
    ANKLE_FROM_HEEL("ankle ahead of the heel"),
    /** Ankle above the sole. */
    ANKLE_HEIGHT("ankle above the sole"),
    /** Mass centre of the foot above the sole. */
    FOOT_CENTRE_HEIGHT("mass centre of the foot above the sole"),
    /** Middle of a gripped bar from the wrist, along the hand. */
    GRIP_FROM_WRIST("grip from the wrist"),
    /** Low back above the hip, on the line from hip to shoulder. */
    LOW_BACK_ABOVE_HIP("low back above the hip");

    private final String words;

    Landmark(String words) {
        this.words = words;
    }

    /** Returns what the number is, in print. */
    public String words() {
        return words;
    }
}

package leverwright.mechanics.load;

/** Which way a resistance is moved; friction and hysteresis depend on it. */
public enum Direction {
    /** Against the resistance: the handle moves away, the stack or sled goes up, the band is stretched. */
    LIFTED("lifted"),
    /** Not moved. Where friction leaves a range, the middle without friction is meant unless a resistance says otherwise. */
    HELD("held still"),
    /** With the resistance: the stack or sled comes down, the band returns. */
    LOWERED("lowered");

    private final String words;

    Direction(String words) {
        this.words = words;
    }

    /** Returns "lifted", "held still" or "lowered". */
    public String words() {
        return words;
    }

    /** Returns the direction of a speed against the resistance, m/s or rad/s; 0 is {@link #HELD}. */
    public static Direction of(double speed) {
        if (speed == 0) {
            return HELD;
        }
        return speed > 0 ? LIFTED : LOWERED;
    }
}

package leverwright.mechanics.exercise;

/** Settings that no posture has, such as a bar out of the arms' reach. The message says why and what to change. */
public final class ImpossibleSetting extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    ImpossibleSetting(String message) {
        super(message);
    }
}

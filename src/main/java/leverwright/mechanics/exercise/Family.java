package leverwright.mechanics.exercise;

/** Families of exercises, as the catalogue lists them. */
public enum Family {
    /** Squats, steps and presses of the legs. */
    SQUAT("squat and leg press"),
    /** Hip hinges and bridges. */
    HINGE("hinge and bridge"),
    /** Machines and cables for one joint of the leg. */
    LEG("single joints of the leg"),
    /** Presses and flies. */
    PUSH("push"),
    /** Rows, pulldowns and pull-ups. */
    PULL("pull"),
    /** Raises of the arm. */
    RAISE("raise"),
    /** Curls and extensions of the arm. */
    ARM("arm"),
    /** Exercises that hold or bend the trunk. */
    TRUNK("trunk"),
    /** Exercises that a cell defines for itself. */
    OWN("own");

    private final String words;

    Family(String words) {
        this.words = words;
    }

    /** Returns its name in print. */
    public String words() {
        return words;
    }
}

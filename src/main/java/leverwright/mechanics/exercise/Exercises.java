package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Measures;

/** The words by which a cell begins an exercise. */
public final class Exercises {
    /** Level: 0°, as in {@code backSquat().thighs(LEVEL)}. */
    public static final Angle LEVEL = Measures.deg(0);

    private Exercises() {}

    /** Returns the hinge with a bar in hanging arms. */
    public static RomanianDeadlift romanianDeadlift() {
        return new RomanianDeadlift();
    }

    /** Returns the squat with a bar on the back. */
    public static BackSquat backSquat() {
        return new BackSquat();
    }

    /** Returns the seated machine knee extension. */
    public static KneeExtension kneeExtension() {
        return new KneeExtension();
    }

    /** Returns the standing curl with a dumbbell in each hand. */
    public static DumbbellCurl dumbbellCurl() {
        return new DumbbellCurl();
    }

    /** Returns the push-up on hands and balls of the feet. */
    public static PushUp pushUp() {
        return new PushUp();
    }
}

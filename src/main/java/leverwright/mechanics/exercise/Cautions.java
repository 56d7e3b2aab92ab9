package leverwright.mechanics.exercise;

/** The cautions that stand beside results. */
final class Cautions {
    static final String GENERAL =
            "A model's estimate: no medical or training advice. Licensed practice and local rules" + " come first.";
    static final String LOW_BACK = "Low back: a static estimate in this model; it says nothing about injury or safety.";
    static final String KNEE = "Knee: not for rehabilitation; after injury or surgery ask a clinician.";
    static final String SHOULDER = "Shoulder: not for rehabilitation; after injury or surgery ask a clinician.";
    static final String CO_CONTRACTION = "One equivalent muscle carries the whole moment: muscles that work against it"
            + " raise the true force above this one.";

    private Cautions() {}
}

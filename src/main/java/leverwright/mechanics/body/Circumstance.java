package leverwright.mechanics.body;

/** What puts a person outside the samples behind every table here; said on the lifter and on each result. */
public enum Circumstance {
    /** Pregnant: masses and mass centres of the trunk differ from every table. */
    PREGNANT("pregnant: mass and mass centre of the trunk differ from the table; ask a clinician before any load"),
    /** In pain. */
    IN_PAIN("in pain: this model knows nothing of pain; ask a clinician before any load"),
    /** With a prosthesis. */
    PROSTHESIS("with a prosthesis: give the measured mass and length of that part, and its mass centre");

    private final String words;

    Circumstance(String words) {
        this.words = words;
    }

    /** Returns the words of the note. */
    public String words() {
        return words;
    }
}

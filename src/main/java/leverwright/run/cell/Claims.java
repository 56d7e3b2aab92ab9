package leverwright.run.cell;

/** What every kind of claim asks of its sentence. */
final class Claims {

    private Claims() {}

    /** Returns the sentence, which must say something. */
    static String sentence(String sentence) {
        if (sentence.isBlank()) {
            throw new IllegalArgumentException(
                    "a claim needs a sentence that says what is claimed; write it as the first words of claim(\"…\", …)");
        }
        return sentence;
    }
}

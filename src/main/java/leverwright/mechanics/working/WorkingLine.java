package leverwright.mechanics.working;

/**
 * One printed line of a working, in parts, for those who typeset it; {@link #text()} is the line in plain text.
 *
 * @param kind what the line is
 * @param symbol the name on the left; empty for sentences
 * @param formula the formula in names; empty for given values and sentences
 * @param numbers the formula in numbers; empty for given values and sentences
 * @param value the value with its unit, such as "123.0 N·m" or "45.00°"; for sentences the sentence
 * @param source where it comes from, without brackets; may be empty
 */
public record WorkingLine(Kind kind, String symbol, String formula, String numbers, String value, String source) {

    /** What a line is. */
    public enum Kind {
        /** The title, first line of every working. */
        TITLE(""),
        /** A value with its source: {@code symbol = value [source]}. */
        GIVEN(""),
        /** A computed value: {@code symbol = formula = numbers = value [source]}. */
        STEP(""),
        /** A confirmation of a value found by search, in the form of a step. */
        CHECK("check: "),
        /** A remark on the line above. */
        NOTE("note: "),
        /** The closing sentence. */
        END("end: ");

        private final String prefix;

        Kind(String prefix) {
            this.prefix = prefix;
        }
    }

    /** Returns the line in plain text by the grammar of the package. */
    public String text() {
        StringBuilder text = new StringBuilder(kind.prefix);
        for (String part : new String[] {symbol, formula, numbers}) {
            if (!part.isEmpty()) {
                text.append(part).append(" = ");
            }
        }
        text.append(value);
        if (!source.isEmpty()) {
            text.append(" [").append(source).append(']');
        }
        return text.toString();
    }
}

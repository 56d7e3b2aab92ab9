package leverwright.workbook.session;

import java.util.Locale;

/**
 * Something that can be written where the caret stands.
 *
 * @param from the offset in the script from which the text replaces what is there, up to the caret
 * @param text what to write; a call ends with its opening bracket, or with both when it takes nothing
 * @param kind what it is
 * @param fits whether its type is the one wanted there
 */
public record Suggestion(int from, String text, Kind kind, boolean fits) {

    /** What a suggestion is. */
    public enum Kind {
        /** A method to call. */
        METHOD,
        /** A class, record, enum or interface. */
        TYPE,
        /** A variable, constant, package or word of the language. */
        NAME
    }

    static Suggestion of(int from, String text, boolean fits) {
        Kind kind = text.contains("(")
                ? Kind.METHOD
                : Character.isUpperCase(text.charAt(0)) && !text.equals(text.toUpperCase(Locale.ROOT))
                        ? Kind.TYPE
                        : Kind.NAME;
        return new Suggestion(from, text, kind, fits);
    }
}

package leverwright.run.gate;

/**
 * Something that a cell may not use.
 *
 * @param cell the cell's id
 * @param line the line of its script, from 1; 0 when no line is known
 * @param subject the class or member, as a reader writes it
 * @param advice what to use instead
 */
public record Refusal(String cell, int line, String subject, String advice) {

    /** Returns the refusal as one sentence for a reader. */
    public String message() {
        String place = line > 0 ? "line " + line + ": " : "";
        return place + "a cell may not use " + subject + "; " + advice;
    }
}

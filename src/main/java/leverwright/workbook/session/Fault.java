package leverwright.workbook.session;

/**
 * Something wrong with a script.
 *
 * @param message what, in words
 * @param span where
 */
public record Fault(String message, Span span) {}

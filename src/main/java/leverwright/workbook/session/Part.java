package leverwright.workbook.session;

/**
 * One declaration or statement of a cell.
 *
 * @param kind what it is
 * @param start its first offset in the script
 * @param end the offset after it, with its semicolon if it has one
 * @param bodyStart for types and methods the offset after the modifiers that a member of a class gets anyway
 * @param expression whether it is an expression, by its looks: no declaration and no word that begins a statement
 */
record Part(Kind kind, int start, int end, int bodyStart, boolean expression) {

    /** What an element is. */
    enum Kind {
        IMPORT,
        TYPE,
        METHOD,
        /** A statement that needs no semicolon, or one that has it. */
        STATEMENT,
        /** The last statement or expression, without a semicolon. */
        OPEN
    }

    /** Returns the offset after it without its semicolon. */
    int endOfExpression() {
        return kind == Kind.OPEN ? end : end - 1;
    }

    boolean isStatement() {
        return kind == Kind.STATEMENT || kind == Kind.OPEN;
    }

    boolean isMember() {
        return kind == Kind.TYPE || kind == Kind.METHOD;
    }
}

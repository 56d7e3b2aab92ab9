package leverwright.workbook.session;

/**
 * A token of a script; comments and white space are none.
 *
 * @param kind what it is
 * @param start its first offset
 * @param end the offset after it
 * @param text its characters
 */
record Token(Kind kind, int start, int end, String text) {

    /** What a token is. Signs are single characters. */
    enum Kind {
        WORD,
        LITERAL,
        SIGN
    }

    boolean is(String word) {
        return kind != Kind.LITERAL && text.equals(word);
    }

    boolean isWord() {
        return kind == Kind.WORD;
    }
}

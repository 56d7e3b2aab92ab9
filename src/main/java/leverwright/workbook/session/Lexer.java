package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.List;

/** Parts a script into tokens. Never fails: whatever is broken, the compiler says better. */
final class Lexer {

    private final String text;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Lexer(String text) {
        this.text = text;
    }

    static List<Token> tokens(String text) {
        Lexer lexer = new Lexer(text);
        while (lexer.at < text.length()) {
            lexer.step();
        }
        return lexer.tokens;
    }

    private void step() {
        char character = text.charAt(at);
        int start = at;
        if (Character.isWhitespace(character)) {
            at++;
        } else if (text.startsWith("//", at)) {
            at = until("\n", at + 2, false);
        } else if (text.startsWith("/*", at)) {
            at = until("*/", at + 2, true);
        } else if (text.startsWith("\"\"\"", at)) {
            at = quoted("\"\"\"");
            add(Token.Kind.LITERAL, start);
        } else if (character == '"' || character == '\'') {
            at = quoted(String.valueOf(character));
            add(Token.Kind.LITERAL, start);
        } else if (Character.isJavaIdentifierStart(character)) {
            skipWord();
            add(Token.Kind.WORD, start);
        } else if (Character.isDigit(character)) {
            skipNumber();
            add(Token.Kind.LITERAL, start);
        } else {
            at++;
            add(Token.Kind.SIGN, start);
        }
    }

    private void add(Token.Kind kind, int start) {
        tokens.add(new Token(kind, start, at, text.substring(start, at)));
    }

    private int until(String end, int from, boolean inclusive) {
        int found = text.indexOf(end, from);
        return found < 0 ? text.length() : found + (inclusive ? end.length() : 0);
    }

    /** Returns the offset after a text or character literal; one on a single line ends with the line at the latest. */
    private int quoted(String quote) {
        int i = at + quote.length();
        while (i < text.length() && !text.startsWith(quote, i)) {
            if (text.charAt(i) == '\n' && quote.length() == 1) {
                return i;
            }
            i += text.charAt(i) == '\\' ? 2 : 1;
        }
        return Math.min(text.length(), i + quote.length());
    }

    private void skipWord() {
        while (at < text.length() && Character.isJavaIdentifierPart(text.charAt(at))) {
            at++;
        }
    }

    private void skipNumber() {
        while (at < text.length()) {
            char character = text.charAt(at);
            boolean exponentSign =
                    (character == '+' || character == '-') && "eEpP".indexOf(text.charAt(at - 1)) >= 0 && !isHex();
            if (!Character.isJavaIdentifierPart(character) && character != '.' && !exponentSign) {
                return;
            }
            at++;
        }
    }

    private boolean isHex() {
        int start = at;
        while (start > 0 && Character.isJavaIdentifierPart(text.charAt(start - 1))) {
            start--;
        }
        return text.startsWith("0x", start) && "eE".indexOf(text.charAt(at - 1)) >= 0;
    }
}

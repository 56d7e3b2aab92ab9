package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * Parts one line of a script into pieces, knowing only in what the line before ended: so a change of one line costs one
 * line. Never fails, whatever is broken.
 */
final class ScriptLexer {

    /** In what a line ends. */
    enum State {
        /** In script. */
        SCRIPT,
        /** In a remark that goes on. */
        REMARK,
        /** In a text over several lines. */
        TEXT
    }

    /** What a piece is. */
    enum Kind {
        /** A word of the language. */
        LANGUAGE,
        /** A name. */
        NAME,
        /** A name in capitals, such as a joint or a knob. */
        CONSTANT,
        /** A text or a character. */
        TEXT,
        /** A number. */
        DIGITS,
        /** A remark. */
        REMARK,
        /** One sign. */
        SIGN
    }

    /** A stretch of the line; white space belongs to none. */
    record Piece(int start, int end, Kind kind) {}

    /** A line's pieces in order, and in what it ends. */
    record Line(List<Piece> pieces, State end) {}

    private static final Set<String> LANGUAGE = Set.of(
            "abstract",
            "assert",
            "boolean",
            "break",
            "byte",
            "case",
            "catch",
            "char",
            "class",
            "continue",
            "default",
            "do",
            "double",
            "else",
            "enum",
            "extends",
            "false",
            "final",
            "finally",
            "float",
            "for",
            "if",
            "implements",
            "import",
            "instanceof",
            "int",
            "interface",
            "long",
            "new",
            "null",
            "private",
            "protected",
            "public",
            "record",
            "return",
            "short",
            "static",
            "super",
            "switch",
            "this",
            "throw",
            "throws",
            "true",
            "try",
            "var",
            "void",
            "while",
            "yield");

    private final String text;
    private final List<Piece> pieces = new ArrayList<>();
    private int at;
    private State state;

    private ScriptLexer(String text, State begin) {
        this.text = text;
        state = begin;
    }

    /**
     * Parts a line.
     *
     * @param text the line without its end
     * @param begin in what the line before it ended
     */
    static Line line(String text, State begin) {
        ScriptLexer lexer = new ScriptLexer(text, begin);
        if (begin != State.SCRIPT) {
            lexer.goOn();
        }
        while (lexer.at < text.length()) {
            lexer.step();
        }
        return new Line(List.copyOf(lexer.pieces), lexer.state);
    }

    private void goOn() {
        if (state == State.REMARK) {
            remark(0, 0);
        } else {
            textBlock(0, 0);
        }
    }

    private void step() {
        char each = text.charAt(at);
        int start = at;
        if (Character.isWhitespace(each)) {
            at++;
        } else if (text.startsWith("//", at)) {
            at = text.length();
            add(start, Kind.REMARK);
        } else if (text.startsWith("/*", at)) {
            remark(at, at + 2);
        } else if (text.startsWith("\"\"\"", at)) {
            textBlock(at, at + 3);
        } else if (each == '"' || each == '\'') {
            quoted(each);
            add(start, Kind.TEXT);
        } else if (Character.isDigit(each) || (each == '.' && nextIsDigit())) {
            number();
            add(start, Kind.DIGITS);
        } else if (Character.isUnicodeIdentifierStart(text.codePointAt(at)) || each == '_' || each == '$') {
            word();
            add(start, kindOf(text.substring(start, at)));
        } else {
            at += Character.charCount(text.codePointAt(at));
            add(start, Kind.SIGN);
        }
    }

    private void add(int start, Kind kind) {
        if (at > start) {
            pieces.add(new Piece(start, at, kind));
        }
    }

    private void remark(int start, int from) {
        int end = text.indexOf("*/", from);
        state = end < 0 ? State.REMARK : State.SCRIPT;
        at = end < 0 ? text.length() : end + 2;
        add(start, Kind.REMARK);
    }

    private void textBlock(int start, int from) {
        int i = from;
        while (i < text.length() && !text.startsWith("\"\"\"", i)) {
            i += text.charAt(i) == '\\' ? 2 : 1;
        }
        boolean closed = i < text.length();
        state = closed ? State.SCRIPT : State.TEXT;
        at = closed ? i + 3 : text.length();
        add(start, Kind.TEXT);
    }

    private void quoted(char quote) {
        at++;
        while (at < text.length() && text.charAt(at) != quote) {
            at += text.charAt(at) == '\\' ? 2 : 1;
        }
        at = Math.min(text.length(), at + 1);
    }

    private boolean nextIsDigit() {
        return at + 1 < text.length()
                && Character.isDigit(text.charAt(at + 1))
                && (at == 0 || (!Character.isUnicodeIdentifierPart(text.charAt(at - 1)) && text.charAt(at - 1) != ')'));
    }

    private void number() {
        while (at < text.length()) {
            char each = text.charAt(at);
            boolean sign = (each == '+' || each == '-') && at > 0 && "eE".indexOf(text.charAt(at - 1)) >= 0;
            boolean point = each == '.' && at + 1 < text.length() && !Character.isLetter(text.charAt(at + 1));
            if (!Character.isLetterOrDigit(each) && each != '_' && !point && !sign) {
                return;
            }
            at++;
        }
    }

    private void word() {
        while (at < text.length()) {
            int point = text.codePointAt(at);
            if (!Character.isUnicodeIdentifierPart(point) && point != '$' && point != '_') {
                return;
            }
            at += Character.charCount(point);
        }
    }

    private static Kind kindOf(String word) {
        if (LANGUAGE.contains(word)) {
            return Kind.LANGUAGE;
        }
        boolean capitals =
                word.length() > 1 && Character.isLetter(word.charAt(0)) && word.equals(word.toUpperCase(Locale.ROOT));
        return capitals ? Kind.CONSTANT : Kind.NAME;
    }
}

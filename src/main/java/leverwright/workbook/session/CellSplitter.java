package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Parts a script into its declarations and statements, by brackets, semicolons and the words that begin them. */
final class CellSplitter {

    private static final Set<String> MODIFIERS =
            Set.of("public", "private", "protected", "static", "final", "abstract", "strictfp", "sealed", "default");
    private static final Set<String> GIVEN_ANYWAY = Set.of("public", "private", "protected", "static");
    private static final Set<String> NOT_A_TYPE =
            Set.of("new", "return", "throw", "case", "instanceof", "else", "assert", "yield", "do");

    private static final Set<String> STATEMENT_WORDS =
            Set.of("return", "throw", "break", "continue", "assert", "yield", "catch", "finally", "else", "case");

    private final List<Token> tokens;
    private final List<Part> elements = new ArrayList<>();

    private CellSplitter(String text) {
        this.tokens = Lexer.tokens(text);
    }

    static List<Part> split(String text) {
        CellSplitter splitter = new CellSplitter(text);
        int next = 0;
        while (next < splitter.tokens.size()) {
            next = splitter.element(next);
        }
        return splitter.elements;
    }

    private boolean is(int index, String word) {
        return index >= 0 && index < tokens.size() && tokens.get(index).is(word);
    }

    private boolean isWord(int index) {
        return index >= 0 && index < tokens.size() && tokens.get(index).isWord();
    }

    /** Reads the element that begins at a token; returns the token after it. */
    private int element(int first) {
        if (is(first, ";")) {
            return first + 1;
        }
        int word = afterModifiers(first);
        if (is(word, "import")) {
            return add(Part.Kind.IMPORT, first, first, toSemicolon(word));
        }
        if (beginsType(word)) {
            return add(Part.Kind.TYPE, first, word, afterBody(word));
        }
        if (beginsStatement(first)) {
            return add(Part.Kind.STATEMENT, first, first, statement(first));
        }
        return simple(first, word);
    }

    private int add(Part.Kind kind, int first, int body, int next) {
        int end = tokens.get(Math.min(next, tokens.size()) - 1).end();
        int bodyStart = body < tokens.size() ? tokens.get(kept(first, body)).start() : end;
        boolean expression = (kind == Part.Kind.STATEMENT || kind == Part.Kind.OPEN) && isExpression(first, next);
        elements.add(new Part(kind, tokens.get(first).start(), end, bodyStart, expression));
        return next;
    }

    /** Returns the first token after modifiers that every member gets anyway. */
    private int kept(int first, int body) {
        int kept = first;
        while (kept < body && GIVEN_ANYWAY.contains(tokens.get(kept).text())) {
            kept++;
        }
        return kept;
    }

    private int afterModifiers(int first) {
        int i = first;
        while (i < tokens.size()) {
            if (is(i, "@") && isWord(i + 1) && !is(i + 1, "interface")) {
                i += 2;
                while (is(i, ".")) {
                    i += 2;
                }
                i = is(i, "(") ? match(i) + 1 : i;
            } else if (is(i, "non") && is(i + 1, "-") && is(i + 2, "sealed")) {
                i += 3;
            } else if (isWord(i) && MODIFIERS.contains(tokens.get(i).text())) {
                i++;
            } else {
                break;
            }
        }
        return i;
    }

    private boolean beginsType(int i) {
        return is(i, "class")
                || is(i, "interface")
                || is(i, "enum")
                || (is(i, "@") && is(i + 1, "interface"))
                || (is(i, "record") && isWord(i + 1) && (is(i + 2, "(") || is(i + 2, "<")));
    }

    private int afterBody(int from) {
        int i = from;
        while (i < tokens.size() && !is(i, "{")) {
            i = is(i, "(") ? match(i) + 1 : i + 1;
        }
        return Math.min(tokens.size(), match(i) + 1);
    }

    private boolean beginsStatement(int i) {
        return is(i, "{")
                || is(i, "if")
                || is(i, "for")
                || is(i, "while")
                || is(i, "do")
                || is(i, "try")
                || is(i, "switch")
                || (is(i, "synchronized") && is(i + 1, "("))
                || isLabel(i);
    }

    private boolean isLabel(int i) {
        return isWord(i) && is(i + 1, ":") && !is(i + 2, ":");
    }

    /** Reads the statement that begins at a token; returns the token after it. */
    private int statement(int i) {
        if (is(i, "{")) {
            return match(i) + 1;
        }
        if (isLabel(i)) {
            return statement(i + 2);
        }
        if (is(i, "if")) {
            int then = statement(match(i + 1) + 1);
            return is(then, "else") ? statement(then + 1) : then;
        }
        if (is(i, "for") || is(i, "while") || is(i, "switch") || is(i, "synchronized")) {
            return statement(match(i + 1) + 1);
        }
        if (is(i, "do")) {
            return toSemicolon(statement(i + 1));
        }
        if (is(i, "try")) {
            return afterTry(i + 1);
        }
        return toSemicolon(i);
    }

    private int afterTry(int from) {
        int i = is(from, "(") ? match(from) + 1 : from;
        i = match(i) + 1;
        while (is(i, "catch")) {
            i = match(match(i + 1) + 1) + 1;
        }
        return is(i, "finally") ? match(i + 1) + 1 : i;
    }

    /** Returns the token after the next semicolon outside brackets. */
    private int toSemicolon(int from) {
        int i = from;
        while (i < tokens.size() && !is(i, ";")) {
            i = isOpening(i) ? match(i) + 1 : i + 1;
        }
        return Math.min(tokens.size(), i + 1);
    }

    private boolean isOpening(int i) {
        return is(i, "(") || is(i, "[") || is(i, "{");
    }

    /** Returns the closing bracket of an opening one; the number of tokens when it is never closed. */
    private int match(int open) {
        int depth = 0;
        for (int i = open; i < tokens.size(); i++) {
            if (isOpening(i)) {
                depth++;
            } else if (is(i, ")") || is(i, "]") || is(i, "}")) {
                depth--;
            }
            if (depth <= 0) {
                return i;
            }
        }
        return tokens.size();
    }

    /** Returns whether the tokens look like an expression: they neither begin a statement nor declare a variable. */
    private boolean isExpression(int first, int next) {
        if (beginsStatement(first) || STATEMENT_WORDS.contains(tokens.get(first).text())) {
            return false;
        }
        int name = afterType(afterModifiers(first), next);
        boolean named = name >= 0 && name < next && isWord(name) && !is(name, "instanceof");
        return afterModifiers(first) == first
                && !(named
                        && (name + 1 >= next
                                || "=,;[:".contains(tokens.get(name + 1).text())));
    }

    /** Returns the token after what may be a type; -1 when it can be none. */
    private int afterType(int first, int next) {
        int i = first;
        if (!isWord(i) || NOT_A_TYPE.contains(tokens.get(i).text())) {
            return -1;
        }
        i++;
        while (is(i, ".") && isWord(i + 1)) {
            i += 2;
        }
        if (is(i, "<")) {
            int depth = 0;
            do {
                depth += is(i, "<") ? 1 : is(i, ">") ? -1 : 0;
                i++;
            } while (i < next && depth > 0);
        }
        while (is(i, "[") && is(i + 1, "]")) {
            i += 2;
        }
        return i;
    }

    /** Reads a method, a declaration of variables or an expression. */
    private int simple(int first, int word) {
        boolean assigned = false;
        int i = word;
        while (i < tokens.size() && !is(i, ";")) {
            assigned |= is(i, "=");
            if (is(i, "(") && !assigned && isMethodHead(word, i)) {
                return add(Part.Kind.METHOD, first, word, afterBody(i));
            }
            i = isOpening(i) ? match(i) + 1 : i + 1;
        }
        boolean open = i >= tokens.size();
        return add(open ? Part.Kind.OPEN : Part.Kind.STATEMENT, first, first, Math.min(tokens.size(), i + 1));
    }

    private boolean isMethodHead(int first, int open) {
        boolean named = open - 2 >= first && isWord(open - 1);
        boolean typed = is(open - 2, ">")
                || is(open - 2, "]")
                || (isWord(open - 2)
                        && !NOT_A_TYPE.contains(tokens.get(open - 2).text()));
        int after = match(open) + 1;
        if (is(after, "throws")) {
            while (after < tokens.size() && !is(after, "{") && !is(after, ";")) {
                after++;
            }
        }
        return named && typed && is(after, "{");
    }
}

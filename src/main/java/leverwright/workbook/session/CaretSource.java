package leverwright.workbook.session;

import java.util.List;

/**
 * A script up to the caret, written as the beginning of a class, so that JShell can say what may come next. The class stands
 * inside classes that extend the cells above, so that their names are known; what was finished before the caret comes
 * first, methods and types as members, statements in the body of a method.
 */
record CaretSource(String text, int shift) {

    /**
     * Writes the source.
     *
     * @param script the script as it is being written
     * @param caret the offset of the caret in it
     * @param above the classes of the cells above, in order of the sheet
     */
    static CaretSource of(String script, int caret, List<String> above) {
        String before = script.substring(0, caret);
        List<Part> parts = CellSplitter.split(before);
        StringBuilder members = new StringBuilder();
        StringBuilder statements = new StringBuilder();
        int done = 0;
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            boolean last = i == parts.size() - 1;
            if (last && !isFinished(before, part)) {
                break;
            }
            String words = before.substring(part.isMember() ? part.bodyStart() : part.start(), part.end());
            if (part.isMember()) {
                members.append("public static ").append(words).append('\n');
            } else if (part.isStatement()) {
                statements.append(words).append('\n');
            }
            done = part.end();
        }
        String open = before.substring(done);
        boolean inMember =
                done < before.length() && !parts.isEmpty() && isOpenMember(parts.get(parts.size() - 1), done);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < above.size(); i++) {
            text.append(i == 0 ? "" : "static ").append("class Above").append(i);
            text.append(" extends ").append(above.get(i)).append(" {\n");
        }
        text.append(above.isEmpty() ? "" : "static ").append("class Caret {\n").append(members);
        text.append("void $run() throws Throwable {\n").append(statements);
        text.append(inMember ? "class Inner {\n" : "");
        int word = beginOfWord(open);
        boolean alone = standsAlone(open.substring(0, word));
        text.append(open, 0, word).append(alone ? "return " : "").append(open, word, open.length());
        return new CaretSource(text.toString(), text.length() - caret);
    }

    private static int beginOfWord(String open) {
        int start = open.length();
        while (start > 0 && Character.isJavaIdentifierPart(open.charAt(start - 1))) {
            start--;
        }
        return start;
    }

    /** A statement that is but begun is no place that JShell knows; behind {@code return} it is. */
    private static boolean standsAlone(String open) {
        List<Token> tokens = Lexer.tokens(open);
        Token last = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
        return last == null || last.is(";") || last.is("{") || last.is("}");
    }

    private static boolean isFinished(String before, Part part) {
        char end = before.charAt(part.end() - 1);
        return part.kind() != Part.Kind.OPEN && (end == '}' || end == ';') && isBalanced(before, part);
    }

    private static boolean isBalanced(String before, Part part) {
        int depth = 0;
        for (Token token : Lexer.tokens(before.substring(part.start(), part.end()))) {
            depth += token.is("{") || token.is("(") ? 1 : token.is("}") || token.is(")") ? -1 : 0;
        }
        return depth == 0;
    }

    private static boolean isOpenMember(Part part, int done) {
        return part.isMember() && part.start() >= done;
    }

    /** Returns the offset in the script of an offset here that lies at the caret or shortly before it. */
    int toScript(int offset) {
        return offset - shift;
    }
}

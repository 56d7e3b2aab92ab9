package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * The names that a cell can read from the cells above it, for suggestions at the caret. JShell finds what follows a dot of
 * such a name, but not the name itself, since it lists no inherited members.
 */
final class NamesAbove {

    private final List<ParsedCell> above;

    /** Takes the cells above in order of the sheet. */
    NamesAbove(List<ParsedCell> above) {
        this.above = above;
    }

    List<String> classes() {
        return above.stream().map(ParsedCell::className).toList();
    }

    /** Returns the suggestions that complete the word before the caret, if one stands there that is no member. */
    List<Suggestion> suggestions(String before) {
        List<Token> tokens = Lexer.tokens(before);
        Token word = tokens.isEmpty() ? null : tokens.get(tokens.size() - 1);
        if (word == null || !word.isWord() || word.end() < before.length() || isAfterDot(tokens, tokens.size() - 1)) {
            return List.of();
        }
        List<Suggestion> found = new ArrayList<>();
        kinds().forEach((name, kind) -> {
            if (name.startsWith(word.text())) {
                String text = kind == Suggestion.Kind.METHOD ? name + "(" : name;
                found.add(new Suggestion(word.start(), text, kind, false));
            }
        });
        return found;
    }

    private static boolean isAfterDot(List<Token> tokens, int index) {
        return index > 0
                && (tokens.get(index - 1).is(".") || tokens.get(index - 1).is("import"));
    }

    private Map<String, Suggestion.Kind> kinds() {
        Map<String, Suggestion.Kind> kinds = new LinkedHashMap<>();
        for (ParsedCell cell : above) {
            cell.names().variables().forEach(variable -> kinds.put(variable.name(), Suggestion.Kind.NAME));
            cell.names().types().forEach(type -> kinds.put(type, Suggestion.Kind.TYPE));
            cell.names().methods().forEach(method -> kinds.put(method, Suggestion.Kind.METHOD));
        }
        return kinds;
    }

    /** Returns the signatures of the method from above that is being called at the caret. */
    List<String> signatures(String before) {
        String called = called(Lexer.tokens(before));
        for (int i = above.size() - 1; i >= 0 && called != null; i--) {
            if (above.get(i).names().methods().contains(called)) {
                return heads(above.get(i), called);
            }
        }
        return List.of();
    }

    /** Returns the name before the last bracket that is still open; null when there is none or it is a member. */
    private static @Nullable String called(List<Token> tokens) {
        int open = 0;
        for (int i = tokens.size() - 1; i > 0; i--) {
            open += tokens.get(i).is("(") ? 1 : tokens.get(i).is(")") ? -1 : 0;
            if (open > 0) {
                Token name = tokens.get(i - 1);
                return name.isWord() && !isAfterDot(tokens, i - 1) ? name.text() : null;
            }
        }
        return null;
    }

    private static List<String> heads(ParsedCell cell, String name) {
        Pattern head = Pattern.compile("[^(]*\\b" + Pattern.quote(name) + "\\s*\\(.*");
        return cell.elements().stream()
                .filter(part -> part.kind() == Part.Kind.METHOD)
                .map(part -> cell.script().text().substring(part.bodyStart(), part.end()))
                .map(text -> text.substring(0, text.indexOf('{')).strip().replaceAll("\\s+", " "))
                .filter(text -> head.matcher(text).matches())
                .toList();
    }
}

package leverwright.face.publish;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leverwright.face.draw.Markup;

/** Scripts as markup: words of the language, texts, numbers, remarks and names in capitals each in a class of their own. */
final class CodeHtml {
    private static final Pattern TOKEN = Pattern.compile(
            "(?<remark>//[^\\n]*|/\\*.*?(?:\\*/|\\z))"
                    + "|(?<text>\"\"\".*?(?:\"\"\"|\\z)|\"(?:\\\\.|[^\"\\\\\\n])*+\"?|'(?:\\\\.|[^'\\\\\\n])*+'?)"
                    + "|(?<number>(?<![\\p{L}\\p{N}_$.])\\.?[0-9][0-9_]*+(?:\\.[0-9_]*+)?(?:[eE][+-]?[0-9]++)?[dDfFlL]?)"
                    + "|(?<word>[\\p{L}_$][\\p{L}\\p{N}_$]*+)",
            Pattern.DOTALL);

    private static final Set<String> LANGUAGE = Set.of(
            "var",
            "new",
            "return",
            "if",
            "else",
            "for",
            "while",
            "do",
            "break",
            "continue",
            "switch",
            "case",
            "default",
            "record",
            "class",
            "interface",
            "enum",
            "static",
            "final",
            "int",
            "long",
            "double",
            "boolean",
            "char",
            "void",
            "true",
            "false",
            "null",
            "this",
            "try",
            "catch",
            "finally",
            "throw",
            "import",
            "instanceof",
            "private",
            "public",
            "extends",
            "implements",
            "yield");

    private static final String LINE_START = "<span class=\"line\">";

    private CodeHtml() {}

    /** Returns the script as content of a {@code code} element, one element a line; its text is the script's. */
    static String of(String script) {
        StringBuilder html = new StringBuilder(script.length() * 2);
        Matcher tokens = TOKEN.matcher(script);
        int end = 0;
        while (tokens.find()) {
            html.append(between(script.substring(end, tokens.start())));
            html.append(token(tokens));
            end = tokens.end();
        }
        html.append(between(script.substring(end)));
        return LINE_START + html.toString().replace("\n", "\n</span>" + LINE_START) + "</span>";
    }

    /** Signs between words; a long line may break before a dot. */
    private static String between(String signs) {
        return Markup.text(signs).replace(".", "<wbr/>.");
    }

    private static String token(Matcher token) {
        String safe = Markup.text(token.group());
        if (token.group("remark") != null) {
            return span("remark", safe);
        }
        if (token.group("text") != null) {
            return span("text", safe);
        }
        if (token.group("number") != null) {
            return span("digits", safe);
        }
        String word = token.group("word");
        if (LANGUAGE.contains(word)) {
            return span("language", safe);
        }
        boolean capitals =
                word.length() > 1 && word.equals(word.toUpperCase(Locale.ROOT)) && Character.isLetter(word.charAt(0));
        return capitals ? span("constant", safe) : safe;
    }

    private static String span(String kind, String safe) {
        String start = "<span class=\"" + kind + "\">";
        return start + safe.replace("\n", "</span>\n" + start) + "</span>";
    }
}

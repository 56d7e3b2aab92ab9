package leverwright.face.publish;

import java.util.ArrayList;
import java.util.List;
import leverwright.face.draw.Markup;

/** Plain text for a terminal: nothing in it steers the terminal, lines keep to a width, and ASCII is possible. */
final class PlainText {
    private static final String[][] ASCII = {
        {"N·m", "N m"},
        {"·", "*"},
        {"−", "-"},
        {"–", "-"},
        {"—", "-"},
        {"÷", "/"},
        {"×", "x"},
        {"±", "+/-"},
        {"²", "^2"},
        {"³", "^3"},
        {"°", " deg"},
        {"’", "'"},
        {"‘", "'"},
        {"“", "\""},
        {"”", "\""},
        {"…", "..."},
        {"≤", "<="},
        {"≥", ">="},
        {"√", "sqrt"},
        {"→", "->"},
        {"µ", "u"},
        {"½", "1/2"},
        {"\u00a0", " "},
        {"\u202f", " "}
    };

    private final boolean ascii;

    /** Prepares text in ASCII or with all characters. */
    PlainText(boolean ascii) {
        this.ascii = ascii;
    }

    /** Returns the text in this form: without what could steer a terminal, and in ASCII where that is asked. */
    String of(String text) {
        String clean = clean(text);
        return ascii ? ascii(clean) : clean;
    }

    /** Returns the text in this form as one line. */
    String line(String text) {
        return of(text).replace('\n', ' ');
    }

    /** Returns how many columns a text takes, counting one for every character. */
    static int columns(String text) {
        return text.codePointCount(0, text.length());
    }

    /** Returns the text without what could steer a terminal. */
    private static String clean(String text) {
        return Markup.clean(text).replace("\t", "    ").replace("\r", "");
    }

    /** Returns the text in ASCII: signs by their usual spelling, letters beyond as question marks. */
    private static String ascii(String text) {
        String spelled = text;
        for (String[] pair : ASCII) {
            spelled = spelled.replace(pair[0], pair[1]);
        }
        StringBuilder plain = new StringBuilder(spelled.length());
        spelled.codePoints().map(point -> point < 0x7F ? point : '?').forEach(plain::appendCodePoint);
        return plain.toString();
    }

    /**
     * Breaks one line at spaces so that it keeps to a width; a word that is longer than the width is broken anywhere.
     *
     * @param first what stands before the first line
     * @param next what stands before the lines that follow
     */
    static List<String> wrap(String text, int width, String first, String next) {
        List<String> lines = new ArrayList<>();
        String rest = text;
        String indent = first;
        int room = Math.max(8, width - Math.max(columns(first), columns(next)));
        while (columns(rest) > room) {
            int hard = rest.offsetByCodePoints(0, room);
            int space = rest.lastIndexOf(' ', hard);
            int cut = space > 0 ? space : hard;
            lines.add(indent + rest.substring(0, cut).stripTrailing());
            rest = rest.substring(cut).stripLeading();
            indent = next;
        }
        lines.add(indent + rest);
        return lines;
    }

    /** Returns the text followed by as many spaces as it lacks. */
    static String padRight(String text, int width) {
        return text + " ".repeat(Math.max(0, width - columns(text)));
    }

    /** Returns the text after as many spaces as it lacks. */
    static String padLeft(String text, int width) {
        return " ".repeat(Math.max(0, width - columns(text))) + text;
    }
}

package leverwright.workbook.document;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Text as lines without line ends. */
final class Lines {

    private static final Pattern LINE_END = Pattern.compile("\r\n|\r|\n");

    private Lines() {}

    /** Returns the lines; elements that hold line ends are split at them, half surrogate pairs become U+FFFD. */
    static List<String> split(List<String> elements) {
        List<String> lines = new ArrayList<>(elements.size());
        for (String element : elements) {
            String text = wellFormed(element);
            if (text.indexOf('\r') < 0 && text.indexOf('\n') < 0) {
                lines.add(text);
            } else {
                lines.addAll(List.of(LINE_END.split(text, -1)));
            }
        }
        return List.copyOf(lines);
    }

    /** Returns a text of one line unharmed, or says that it has more. */
    static String requireOne(String what, String text) {
        if (LINE_END.matcher(text).find()) {
            throw new IllegalArgumentException("the " + what + " has more than one line; write it in one line");
        }
        return wellFormed(text);
    }

    /** Returns a text that UTF-8 can carry: each half of a surrogate pair without its other half becomes U+FFFD. */
    static String wellFormed(String text) {
        if (!holdsSurrogate(text)) {
            return text;
        }
        StringBuilder mended = new StringBuilder(text.length());
        text.codePoints()
                .map(point -> point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE ? 0xFFFD : point)
                .forEach(mended::appendCodePoint);
        return mended.toString();
    }

    private static boolean holdsSurrogate(String text) {
        for (int at = 0; at < text.length(); at++) {
            if (Character.isSurrogate(text.charAt(at))) {
                return true;
            }
        }
        return false;
    }
}

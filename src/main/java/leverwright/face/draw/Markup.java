package leverwright.face.draw;

/** Makes any text harmless inside XML and HTML, as content and as an attribute's value between double quotes. */
public final class Markup {
    private Markup() {}

    /**
     * Returns the text with every character that markup could be made of replaced: {@code & < > " '} by references, and
     * what XML 1.0 does not allow (control characters, lone surrogates) by U+FFFD.
     */
    public static String text(String raw) {
        StringBuilder safe = new StringBuilder(raw.length() + 16);
        for (int i = 0; i < raw.length(); ) {
            int point = raw.codePointAt(i);
            i += Character.charCount(point);
            append(safe, point);
        }
        return safe.toString();
    }

    /**
     * Returns the text with what no reader's page or terminal should get replaced by U+FFFD: control characters other than
     * tab and line ends, lone surrogates, and characters that turn the direction of what follows.
     */
    public static String clean(String raw) {
        StringBuilder clean = new StringBuilder(raw.length());
        raw.codePoints().map(point -> allowed(point) ? point : 0xFFFD).forEach(clean::appendCodePoint);
        return clean.toString();
    }

    private static void append(StringBuilder safe, int point) {
        switch (point) {
            case '&' -> safe.append("&amp;");
            case '<' -> safe.append("&lt;");
            case '>' -> safe.append("&gt;");
            case '"' -> safe.append("&quot;");
            case '\'' -> safe.append("&#39;");
            default -> safe.appendCodePoint(allowed(point) ? point : 0xFFFD);
        }
    }

    /** Characters of XML 1.0, less those that turn the direction of what follows. */
    private static boolean allowed(int point) {
        if (within(point, 0x202A, 0x202E) || within(point, 0x2066, 0x2069)) {
            return false;
        }
        return point == '\t'
                || point == '\n'
                || point == '\r'
                || within(point, 0x20, 0x7E)
                || within(point, 0xA0, 0xD7FF)
                || within(point, 0xE000, 0xFFFD)
                || within(point, 0x10000, 0x10FFFF);
    }

    private static boolean within(int point, int first, int last) {
        return first <= point && point <= last;
    }
}

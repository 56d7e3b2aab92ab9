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
        boolean turning = point >= 0x202A && point <= 0x202E || point >= 0x2066 && point <= 0x2069;
        return !turning
                && (point == '\t'
                        || point == '\n'
                        || point == '\r'
                        || point >= 0x20 && point < 0x7F
                        || point >= 0xA0 && point <= 0xD7FF
                        || point >= 0xE000 && point <= 0xFFFD
                        || point >= 0x10000 && point <= 0x10FFFF);
    }
}

package leverwright.face.desk.editor;

/** Text as the workbook keeps it. */
final class PlainSource {

    private PlainSource() {}

    /**
     * Returns a text with a line feed at each line end, and with U+FFFD for every half of a surrogate pair that stands
     * alone.
     */
    static String of(String text) {
        if (isPlain(text)) {
            return text;
        }
        StringBuilder plain = new StringBuilder(text.length());
        text.replace("\r\n", "\n").replace('\r', '\n').codePoints().forEach(point -> {
            boolean half = point >= Character.MIN_SURROGATE && point <= Character.MAX_SURROGATE;
            plain.appendCodePoint(half ? 0xFFFD : point);
        });
        return plain.toString();
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char each = text.charAt(i);
            if (each == '\r' || Character.isSurrogate(each)) {
                return false;
            }
        }
        return true;
    }
}

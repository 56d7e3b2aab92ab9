package leverwright.face.draw;

/**
 * How wide words are, from a table of its own, so that layout needs no installed font and is the same everywhere. The
 * numbers are the advance widths of DejaVu Sans 2.37, a wide font: words set in another common sans-serif need less.
 */
final class TextWidth {
    /** Hundredths of the font size for the characters from space to tilde. */
    private static final int[] ASCII = {
        32, 40, 46, 84, 64, 95, 78, 27, 39, 39, 50, 84, 32, 36, 32, 34, //
        64, 64, 64, 64, 64, 64, 64, 64, 64, 64, 34, 34, 84, 84, 84, 53, //
        100, 68, 69, 70, 77, 63, 58, 77, 75, 29, 29, 66, 56, 86, 75, 79, //
        60, 79, 69, 63, 61, 73, 68, 99, 69, 61, 69, 39, 34, 39, 84, 50, //
        50, 61, 63, 55, 63, 62, 35, 63, 63, 28, 28, 58, 28, 97, 63, 61, //
        63, 63, 41, 52, 39, 63, 59, 82, 59, 59, 52, 64, 34, 64, 84
    };

    private static final String NARROW = "°·²³¹’‘\u00a0\u202f\u2009";

    private TextWidth() {}

    /** Returns the width of words as a multiple of the font size. */
    static double of(String text) {
        double hundredths = 0;
        for (int i = 0; i < text.length(); ) {
            int point = text.codePointAt(i);
            i += Character.charCount(point);
            hundredths += width(point);
        }
        return hundredths / 100;
    }

    private static int width(int point) {
        if (point >= ' ' && point - ' ' < ASCII.length) {
            return ASCII[point - ' '];
        }
        if (NARROW.indexOf(point) >= 0) {
            return 40;
        }
        return point > 0x2e80 ? 100 : 84;
    }
}

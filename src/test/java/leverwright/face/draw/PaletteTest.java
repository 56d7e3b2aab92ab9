package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Contrast as WCAG 2.2 defines it (w3.org/TR/WCAG22, relative luminance and contrast ratio; formula from memory). */
class PaletteTest {
    private static final List<Ink> GROUNDS = List.of(Ink.PAPER, Ink.WARM);
    private static final List<Ink> WORDS = List.of(
            Ink.TEXT,
            Ink.QUIET,
            Ink.ACCENT,
            Ink.LOAD,
            Ink.SUPPORT,
            Ink.GEAR,
            Ink.WORDS_1,
            Ink.WORDS_2,
            Ink.WORDS_3,
            Ink.WORDS_4,
            Ink.WORDS_5);

    @Test
    void wordsCanBeReadOnBothGrounds() {
        for (Palette palette : Palette.values()) {
            for (Ink ground : GROUNDS) {
                for (Ink words : WORDS) {
                    double contrast = contrast(palette.shade(words), palette.shade(ground));
                    assertTrue(contrast >= 4.5, palette + " " + words + " on " + ground + ": " + contrast);
                }
            }
        }
    }

    @Test
    void curvesCanBeSeenOnTheGroundOfResults() {
        for (Palette palette : Palette.values()) {
            for (int i = 0; i < Ink.CURVES; i++) {
                double contrast = contrast(palette.shade(Ink.curve(i)), palette.shade(Ink.WARM));
                assertTrue(contrast >= (i < 4 ? 3 : 2.8), palette + " curve " + i + ": " + contrast);
            }
        }
    }

    /** Okabe and Ito 2008, "Color Universal Design", table of eight colours (values from memory). */
    @Test
    void curvesTakeThePublishedColours() {
        List<String> published = List.of("#0072b2", "#d55e00", "#009e73", "#cc79a7", "#e69f00", "#56b4e9", "#f0e442");
        for (Palette palette : Palette.values()) {
            for (int i = 0; i < Ink.CURVES; i++) {
                String shade = palette.hexadecimal(Ink.curve(i));
                assertTrue(
                        published.contains(shade) || shade.equals(palette.hexadecimal(Ink.TEXT)),
                        palette + " " + shade);
            }
        }
    }

    @Test
    void contrastOfBlackOnWhiteIsTwentyOne() {
        assertEquals(21, contrast(Color.BLACK, Color.WHITE), 1e-9);
    }

    private static double contrast(Color one, Color other) {
        double first = luminance(one);
        double second = luminance(other);
        return (Math.max(first, second) + 0.05) / (Math.min(first, second) + 0.05);
    }

    private static double luminance(Color colour) {
        return 0.2126 * linear(colour.getRed())
                + 0.7152 * linear(colour.getGreen())
                + 0.0722 * linear(colour.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}

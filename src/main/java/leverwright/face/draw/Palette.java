package leverwright.face.draw;

import java.awt.Color;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * The shades of the inks by day and by night. Curves take the colours of Okabe and Ito (2008, "Color Universal Design",
 * jfly.uni-koeln.de/color), by day the darker ones and by night the lighter ones of the eight; their words take a darker
 * or lighter shade of the same hue, so that they can be read.
 */
public enum Palette {
    /** Dark ink on light paper; also the palette of printed pages. */
    LIGHT("fffefa fbf7ef 22262b 5b5e64 e0dacd 0b5c8e d3ccbd 5b5e64 9a2a10 006b4d"
            + " 0072b2 d55e00 009e73 22262b cc79a7 005f96 a34400 006b4d 22262b 8f3f6b b9b4a8"),
    /** Light ink on dark paper. */
    DARK("191a1b 211f1c e9e6df b3ada1 3b3833 7cc4ee 55504a a7a297 ff9e80 5ad1a8"
            + " 56b4e9 e69f00 009e73 e9e6df cc79a7 7cc4ee f0b840 5ad1a8 e9e6df e0a0c4 6a655c"),
    /** Black on white, with strong lines. */
    CONTRAST("ffffff ffffff 000000 000000 767676 00308f b8b8b8 000000 8f0000 004d33"
            + " 0072b2 d55e00 009e73 000000 cc79a7 00308f 8f3c00 004d33 000000 7a2f5a 8c8c8c");

    private final Map<Ink, Color> shades = new EnumMap<>(Ink.class);

    Palette(String hexadecimals) {
        String[] each = hexadecimals.split(" ");
        for (Ink ink : Ink.values()) {
            shades.put(ink, new Color(Integer.parseInt(each[ink.ordinal()], 16)));
        }
    }

    /** Returns the shade of an ink. */
    public Color shade(Ink ink) {
        Color shade = shades.get(ink);
        if (shade == null) {
            throw new IllegalStateException("no shade for " + ink);
        }
        return shade;
    }

    /** Returns the shade of an ink as a style sheet writes it, for example {@code "#0072b2"}. */
    public String hexadecimal(Ink ink) {
        return String.format(Locale.ROOT, "#%06x", shade(ink).getRGB() & 0xffffff);
    }

    /** Returns the declarations of all shades as variables of a style sheet, without braces. */
    public String variables() {
        StringBuilder css = new StringBuilder();
        for (Ink ink : Ink.values()) {
            css.append("--lw-")
                    .append(ink.key())
                    .append(':')
                    .append(hexadecimal(ink))
                    .append(';');
        }
        return css.toString();
    }
}

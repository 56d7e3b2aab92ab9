package leverwright.face.draw;

import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

/**
 * Writes pictures as SVG: words stay words, colours are variables of the style sheet ({@code var(--lw-c1)}), coordinates
 * have one decimal, and nothing in it acts: no script, no link, no event. The same picture always gives the same text.
 */
public final class SvgText {
    /** The fonts that words of a drawing may take, in this order. */
    public static final String SANS = "system-ui,\"Segoe UI\",Roboto,\"Noto Sans\",\"DejaVu Sans\",Arial,sans-serif";

    /** How many numbers belong to a path's move, line, quadratic curve, cubic curve and end. */
    private static final int[] NUMBERS = {2, 2, 4, 6, 0};

    private SvgText() {}

    /**
     * Returns a drawing as an element that can stand in a page whose style sheet holds {@link #styles()} and the
     * variables of a {@link Palette}.
     *
     * @param picture the drawing
     * @param id a name for the element, unique in the page: letters, digits and hyphens
     * @throws IllegalArgumentException when the name holds anything else
     */
    public static String element(Picture picture, String id) {
        if (!id.matches("[A-Za-z][A-Za-z0-9-]*")) {
            throw new IllegalArgumentException(
                    "the name \"" + id + "\" of a drawing must be letters, digits and hyphens");
        }
        return write(picture, id, "", "");
    }

    /**
     * Returns a drawing as a file of its own, light or dark as the reader's system asks.
     *
     * @param picture the drawing
     * @param footnote the caution that stands under the drawing and goes wherever the file goes; not blank
     * @throws IllegalArgumentException when the footnote is blank
     */
    public static String file(Picture picture, String footnote) {
        if (footnote.isBlank()) {
            throw new IllegalArgumentException("a drawing in a file of its own needs a caution under it");
        }
        String style = "<style>svg{" + Palette.LIGHT.variables() + "background:var(--lw-warm)}"
                + "@media (prefers-color-scheme:dark){svg{" + Palette.DARK.variables() + "}}" + styles() + "</style>\n";
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + write(picture.withFootnote(footnote), "drawing", " xmlns=\"http://www.w3.org/2000/svg\"", style);
    }

    /** Returns the rules of the style sheet that drawings need beside the variables. */
    public static String styles() {
        StringBuilder css = new StringBuilder(".lw-d path,.lw-d circle,.lw-d ellipse{fill:none;stroke-linejoin:round}"
                + ".lw-d text{font-family:" + SANS + ";stroke-linejoin:round}"
                + ".lw-d .r{stroke-linecap:round}.lw-d .b{font-weight:700}"
                + ".lw-d .h{paint-order:stroke;stroke:var(--lw-warm);stroke-width:3px}");
        for (Ink ink : Ink.values()) {
            String key = ink.key();
            css.append(".lw-d .s-" + key + "{stroke:var(--lw-" + key + ")}");
            css.append(".lw-d .f-" + key + "{fill:var(--lw-" + key + ")}");
        }
        return css.toString();
    }

    private static String write(Picture picture, String id, String namespace, String style) {
        StringBuilder svg = new StringBuilder();
        svg.append("<svg" + namespace + " class=\"lw-d\" role=\"img\" aria-labelledby=\"" + id + "-t " + id + "-x\"");
        svg.append(" viewBox=\"0 0 " + decimal(picture.width()) + " " + decimal(picture.height()) + "\"");
        svg.append(" width=\"" + decimal(picture.width()) + "\" height=\"" + decimal(picture.height()) + "\">\n");
        svg.append("<title id=\"" + id + "-t\">" + Markup.text(picture.title()) + "</title>\n");
        svg.append("<desc id=\"" + id + "-x\">" + Markup.text(picture.description()) + "</desc>\n");
        svg.append(style);
        for (Mark mark : picture.marks()) {
            svg.append(element(mark)).append('\n');
        }
        return svg.append("</svg>\n").toString();
    }

    private static String element(Mark mark) {
        if (mark instanceof Mark.Stroke stroke) {
            return stroke(stroke);
        }
        if (mark instanceof Mark.Fill fill) {
            String opacity = fill.opacity() < 1 ? " opacity=\"" + hundredths(fill.opacity()) + "\"" : "";
            return shape(fill.shape(), " class=\"f-" + fill.ink().key() + "\"" + opacity);
        }
        return words((Mark.Words) mark);
    }

    private static String stroke(Mark.Stroke stroke) {
        Mark.Pen pen = stroke.pen();
        StringBuilder attributes = new StringBuilder(" class=\"s-" + pen.ink().key() + (pen.round() ? " r\"" : "\""));
        attributes.append(" stroke-width=\"" + decimal(pen.width()) + "\"");
        if (!pen.dash().isEmpty()) {
            StringJoiner dashes = new StringJoiner(" ");
            pen.dash().forEach(length -> dashes.add(decimal(length)));
            attributes.append(" stroke-dasharray=\"" + dashes + "\"");
        }
        return shape(stroke.shape(), attributes.toString());
    }

    private static String words(Mark.Words words) {
        Mark.Type type = words.type();
        List<String> classes = new ArrayList<>(List.of("f-" + type.ink().key()));
        if (type.bold()) {
            classes.add("b");
        }
        if (type.halo()) {
            classes.add("h");
        }
        String anchor = switch (words.anchor()) {
            case START -> "";
            case MIDDLE -> " text-anchor=\"middle\"";
            case END -> " text-anchor=\"end\"";
        };
        return "<text class=\"" + String.join(" ", classes) + "\" x=\"" + decimal(words.x()) + "\" y=\""
                + decimal(words.y()) + "\" font-size=\"" + decimal(type.size()) + "\"" + anchor + ">"
                + Markup.text(words.text()) + "</text>";
    }

    private static String shape(Shape shape, String attributes) {
        if (shape instanceof Ellipse2D round) {
            String centre = " cx=\"" + decimal(round.getCenterX()) + "\" cy=\"" + decimal(round.getCenterY()) + "\"";
            if (round.getWidth() == round.getHeight()) {
                return "<circle" + attributes + centre + " r=\"" + decimal(round.getWidth() / 2) + "\"/>";
            }
            return "<ellipse" + attributes + centre + " rx=\"" + decimal(round.getWidth() / 2) + "\" ry=\""
                    + decimal(round.getHeight() / 2) + "\"/>";
        }
        return "<path" + attributes + " d=\"" + path(shape) + "\"/>";
    }

    /** A shape as path data; steps too short to show are left out, so that many points stay small. */
    private static String path(Shape shape) {
        StringBuilder text = new StringBuilder();
        double[] at = new double[6];
        char last = ' ';
        String place = "";
        for (PathIterator way = shape.getPathIterator(null); !way.isDone(); way.next()) {
            int kind = way.currentSegment(at);
            char letter = "MLQCZ".charAt(kind);
            String numbers = numbers(at, NUMBERS[kind]);
            boolean repeats = letter == 'L' && last == 'L' && numbers.equals(place);
            if (!repeats) {
                text.append(letter != last || letter == 'M' ? letter : ' ').append(numbers);
                last = letter;
                place = numbers;
            }
        }
        return text.toString();
    }

    private static String numbers(double[] at, int count) {
        StringJoiner numbers = new StringJoiner(" ");
        for (int i = 0; i < count; i++) {
            numbers.add(decimal(at[i]));
        }
        return numbers.toString();
    }

    /** A share from 0 to 1 with two decimals. */
    private static String hundredths(double share) {
        return BigDecimal.valueOf(share).setScale(2, RoundingMode.HALF_EVEN).toPlainString();
    }

    /** A number with at most one decimal. */
    static String decimal(double value) {
        long tenths = Math.round(value * 10);
        String sign = tenths < 0 ? "-" : "";
        long size = Math.abs(tenths);
        return sign + size / 10 + (size % 10 == 0 ? "" : "." + size % 10);
    }
}

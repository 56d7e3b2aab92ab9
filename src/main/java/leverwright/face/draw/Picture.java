package leverwright.face.draw;

import java.awt.AlphaComposite;
import java.awt.BasicStroke;
import java.awt.Composite;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.font.GlyphVector;
import java.util.ArrayList;
import java.util.List;

/**
 * A finished drawing as marks in inks. It knows neither light nor dark: a {@link Palette} is chosen when it is painted
 * onto a screen, and a style sheet chooses when it is written as SVG.
 *
 * @param width natural width in picture units
 * @param height natural height in picture units
 * @param title the name of the drawing, read by screen readers
 * @param description the drawing in words, for readers who do not see it
 * @param marks the marks, those drawn first below the others
 */
public record Picture(double width, double height, String title, String description, List<Mark> marks) {

    /** Copies the marks. */
    public Picture {
        marks = List.copyOf(marks);
    }

    /**
     * Paints the drawing at its natural size from the origin of a graphics; scale and shift the graphics before. The
     * ground is not painted.
     *
     * @param graphics where to paint; its hints for smooth lines are set
     * @param palette the shades
     */
    public void paint(Graphics2D graphics, Palette palette) {
        graphics.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        graphics.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        graphics.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        // Words were placed by widths that are no whole pixels.
        graphics.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        for (Mark mark : marks) {
            if (mark instanceof Mark.Stroke stroke) {
                graphics.setColor(palette.shade(stroke.pen().ink()));
                graphics.setStroke(brush(stroke.pen()));
                graphics.draw(stroke.shape());
            } else if (mark instanceof Mark.Fill fill) {
                paintFill(graphics, palette, fill);
            } else if (mark instanceof Mark.Words words) {
                paintWords(graphics, palette, words);
            }
        }
    }

    /**
     * Returns the drawing with words of second rank under it, such as the caution that goes wherever the drawing goes.
     *
     * @param footnote the words; one line
     */
    public Picture withFootnote(String footnote) {
        List<Mark> all = new ArrayList<>(marks);
        double size = Math.min(9.5, (width - 16) / TextWidth.of(footnote));
        double lower = height + 20;
        all.add(new Mark.Words(
                footnote, 8, lower - 8, Mark.Anchor.START, new Mark.Type(Ink.QUIET, size, false, false)));
        return new Picture(width, lower, title, description, all);
    }

    private static BasicStroke brush(Mark.Pen pen) {
        int cap = pen.round() ? BasicStroke.CAP_ROUND : BasicStroke.CAP_BUTT;
        float[] dash = pen.dash().isEmpty() ? null : new float[pen.dash().size()];
        for (int i = 0; dash != null && i < dash.length; i++) {
            dash[i] = pen.dash().get(i).floatValue();
        }
        return new BasicStroke((float) pen.width(), cap, BasicStroke.JOIN_ROUND, 10, dash, 0);
    }

    private static void paintFill(Graphics2D graphics, Palette palette, Mark.Fill fill) {
        Composite before = graphics.getComposite();
        graphics.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, (float) fill.opacity()));
        graphics.setColor(palette.shade(fill.ink()));
        graphics.fill(fill.shape());
        graphics.setComposite(before);
    }

    private static void paintWords(Graphics2D graphics, Palette palette, Mark.Words words) {
        Mark.Type type = words.type();
        Font font = new Font(Font.SANS_SERIF, type.bold() ? Font.BOLD : Font.PLAIN, 1).deriveFont((float) type.size());
        GlyphVector glyphs = font.createGlyphVector(graphics.getFontRenderContext(), words.text());
        double width = glyphs.getLogicalBounds().getWidth();
        double left = words.x() - words.anchor().share() * width;
        if (type.halo()) {
            Shape outline = glyphs.getOutline((float) left, (float) words.y());
            graphics.setColor(palette.shade(Ink.WARM));
            graphics.setStroke(new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            graphics.draw(outline);
        }
        graphics.setColor(palette.shade(type.ink()));
        graphics.drawGlyphVector(glyphs, (float) left, (float) words.y());
    }
}

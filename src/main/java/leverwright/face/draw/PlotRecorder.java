package leverwright.face.draw;

import java.awt.Color;
import java.awt.Composite;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.GraphicsConfiguration;
import java.awt.Image;
import java.awt.Paint;
import java.awt.Rectangle;
import java.awt.RenderingHints;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.awt.image.BufferedImageOp;
import java.awt.image.ImageObserver;
import java.awt.image.RenderedImage;
import java.awt.image.renderable.RenderableImage;
import java.text.AttributedCharacterIterator;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Listens to the chart library as it draws, and keeps the shapes of each series. The library draws a curve piece by
 * piece, which would break dashes; here the pieces become one line again. A series is known by its colour: opaque colours
 * count series from 0 in their red, green and blue; what is drawn in a clear colour is left out.
 */
final class PlotRecorder extends Graphics2D {
    private final Map<Integer, Path2D> lines = new TreeMap<>();
    private final Map<Integer, Path2D> areas = new TreeMap<>();
    private Color colour = series(0);
    private Stroke stroke = new java.awt.BasicStroke();
    private @Nullable Shape clip;

    /** Returns the colour by which a series is known. */
    static Color series(int index) {
        return new Color(index);
    }

    /** Returns the curves drawn, by series. */
    Map<Integer, Path2D> lines() {
        return lines;
    }

    /** Returns the areas filled, by series. */
    Map<Integer, Path2D> areas() {
        return areas;
    }

    @Override
    public void draw(Shape shape) {
        if (colour.getAlpha() == 255 && shape instanceof Line2D line) {
            Path2D path = lines.computeIfAbsent(key(), unused -> new Path2D.Double());
            if (path.getCurrentPoint() == null || !path.getCurrentPoint().equals(line.getP1())) {
                path.moveTo(line.getX1(), line.getY1());
            }
            path.lineTo(line.getX2(), line.getY2());
        }
    }

    @Override
    public void fill(Shape shape) {
        if (colour.getAlpha() == 255) {
            areas.computeIfAbsent(key(), unused -> new Path2D.Double()).append(shape, false);
        }
    }

    private int key() {
        return colour.getRGB() & 0xffffff;
    }

    @Override
    public void setColor(Color colour) {
        this.colour = colour;
    }

    @Override
    public Color getColor() {
        return colour;
    }

    @Override
    public void setPaint(Paint paint) {
        if (paint instanceof Color plain) {
            colour = plain;
        }
    }

    @Override
    public Paint getPaint() {
        return colour;
    }

    @Override
    public void setStroke(Stroke stroke) {
        this.stroke = stroke;
    }

    @Override
    public Stroke getStroke() {
        return stroke;
    }

    @Override
    public @Nullable Shape getClip() {
        return clip;
    }

    @Override
    public void setClip(@Nullable Shape clip) {
        this.clip = clip;
    }

    // The library asks for none of what follows when it draws only series; it changes nothing here.

    @Override
    public boolean drawImage(Image image, AffineTransform transform, ImageObserver observer) {
        return true;
    }

    @Override
    public void drawImage(BufferedImage image, BufferedImageOp operation, int x, int y) {}

    @Override
    public void drawRenderedImage(RenderedImage image, AffineTransform transform) {}

    @Override
    public void drawRenderableImage(RenderableImage image, AffineTransform transform) {}

    @Override
    public void drawString(String text, int x, int y) {}

    @Override
    public void drawString(String text, float x, float y) {}

    @Override
    public void drawString(AttributedCharacterIterator text, int x, int y) {}

    @Override
    public void drawString(AttributedCharacterIterator text, float x, float y) {}

    @Override
    public void drawGlyphVector(GlyphVector glyphs, float x, float y) {}

    @Override
    public boolean hit(Rectangle area, Shape shape, boolean onStroke) {
        return false;
    }

    @Override
    public GraphicsConfiguration getDeviceConfiguration() {
        throw new UnsupportedOperationException("a recording has no device");
    }

    @Override
    public void setComposite(Composite composite) {}

    @Override
    public void setRenderingHint(RenderingHints.Key key, @Nullable Object value) {}

    @Override
    public @Nullable Object getRenderingHint(RenderingHints.Key key) {
        return null;
    }

    @Override
    public void setRenderingHints(Map<?, ?> hints) {}

    @Override
    public void addRenderingHints(Map<?, ?> hints) {}

    @Override
    public RenderingHints getRenderingHints() {
        return new RenderingHints(Map.of());
    }

    @Override
    public void translate(int x, int y) {}

    @Override
    public void translate(double x, double y) {}

    @Override
    public void rotate(double angle) {}

    @Override
    public void rotate(double angle, double x, double y) {}

    @Override
    public void scale(double x, double y) {}

    @Override
    public void shear(double x, double y) {}

    @Override
    public void transform(AffineTransform transform) {}

    @Override
    public void setTransform(AffineTransform transform) {}

    @Override
    public AffineTransform getTransform() {
        return new AffineTransform();
    }

    @Override
    public Composite getComposite() {
        return java.awt.AlphaComposite.SrcOver;
    }

    @Override
    public void setBackground(Color background) {}

    @Override
    public Color getBackground() {
        return series(0);
    }

    @Override
    public void clip(Shape shape) {}

    @Override
    public FontRenderContext getFontRenderContext() {
        return new FontRenderContext(null, true, true);
    }

    @Override
    public Graphics create() {
        return this;
    }

    @Override
    public void setPaintMode() {}

    @Override
    public void setXORMode(Color other) {}

    @Override
    public Font getFont() {
        return new Font(Font.SANS_SERIF, Font.PLAIN, 12);
    }

    @Override
    public void setFont(@Nullable Font font) {}

    @Override
    public FontMetrics getFontMetrics(Font font) {
        throw new UnsupportedOperationException("a recording measures no words");
    }

    @Override
    public @Nullable Rectangle getClipBounds() {
        return clip == null ? null : clip.getBounds();
    }

    @Override
    public void clipRect(int x, int y, int width, int height) {}

    @Override
    public void setClip(int x, int y, int width, int height) {
        clip = new Rectangle(x, y, width, height);
    }

    @Override
    public void copyArea(int x, int y, int width, int height, int right, int down) {}

    @Override
    public void drawLine(int x1, int y1, int x2, int y2) {
        draw(new Line2D.Double(x1, y1, x2, y2));
    }

    @Override
    public void fillRect(int x, int y, int width, int height) {
        fill(new Rectangle(x, y, width, height));
    }

    @Override
    public void clearRect(int x, int y, int width, int height) {}

    @Override
    public void drawRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {}

    @Override
    public void fillRoundRect(int x, int y, int width, int height, int arcWidth, int arcHeight) {}

    @Override
    public void drawOval(int x, int y, int width, int height) {}

    @Override
    public void fillOval(int x, int y, int width, int height) {}

    @Override
    public void drawArc(int x, int y, int width, int height, int start, int extent) {}

    @Override
    public void fillArc(int x, int y, int width, int height, int start, int extent) {}

    @Override
    public void drawPolyline(int[] xs, int[] ys, int count) {}

    @Override
    public void drawPolygon(int[] xs, int[] ys, int count) {}

    @Override
    public void fillPolygon(int[] xs, int[] ys, int count) {}

    @Override
    public boolean drawImage(Image image, int x, int y, @Nullable ImageObserver observer) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, int width, int height, @Nullable ImageObserver observer) {
        return true;
    }

    @Override
    public boolean drawImage(Image image, int x, int y, Color ground, @Nullable ImageObserver observer) {
        return true;
    }

    @Override
    public boolean drawImage(
            Image image, int x, int y, int width, int height, Color ground, @Nullable ImageObserver observer) {
        return true;
    }

    @Override
    public boolean drawImage(
            Image image,
            int x1,
            int y1,
            int x2,
            int y2,
            int fromX1,
            int fromY1,
            int fromX2,
            int fromY2,
            @Nullable ImageObserver observer) {
        return true;
    }

    @Override
    public boolean drawImage(
            Image image,
            int x1,
            int y1,
            int x2,
            int y2,
            int fromX1,
            int fromY1,
            int fromX2,
            int fromY2,
            Color ground,
            @Nullable ImageObserver observer) {
        return true;
    }

    @Override
    public void dispose() {}
}

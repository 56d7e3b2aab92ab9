package leverwright.face.desk.sheet;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.nio.IntBuffer;
import java.util.Arrays;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import leverwright.face.draw.Palette;
import leverwright.face.draw.Picture;

/** Pixels that a drawing is painted on and the window shows without copying them. */
final class PixelSheet {

    private final BufferedImage painted;
    private final int[] data;
    private final PixelBuffer<IntBuffer> pixels;
    private final WritableImage shown;

    PixelSheet(int width, int height) {
        painted = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB_PRE);
        data = ((DataBufferInt) painted.getRaster().getDataBuffer()).getData();
        pixels = new PixelBuffer<>(width, height, IntBuffer.wrap(data), PixelFormat.getIntArgbPreInstance());
        shown = new WritableImage(pixels);
    }

    boolean hasSize(int width, int height) {
        return painted.getWidth() == width && painted.getHeight() == height;
    }

    /** Paints a drawing in place of what was there; on any one thread. */
    void paint(Picture picture, Palette palette, double scale) {
        Arrays.fill(data, 0);
        Graphics2D graphics = painted.createGraphics();
        graphics.scale(scale, scale);
        picture.paint(graphics, palette);
        graphics.dispose();
    }

    /** Returns the image with what was painted last; on the window's thread. */
    WritableImage updated() {
        pixels.updateBuffer(whole -> null);
        return shown;
    }
}

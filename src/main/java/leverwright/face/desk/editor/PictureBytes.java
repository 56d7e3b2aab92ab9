package leverwright.face.desk.editor;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javafx.scene.image.Image;
import javafx.scene.image.PixelFormat;
import javax.imageio.ImageIO;

/** Pictures that come without a file, as a file's bytes. */
final class PictureBytes {

    private PictureBytes() {}

    /** Returns a picture as a PNG file; empty when it has no pixels. */
    static byte[] png(Image picture) {
        int width = (int) picture.getWidth();
        int height = (int) picture.getHeight();
        if (width == 0 || height == 0 || picture.getPixelReader() == null) {
            return new byte[0];
        }
        int[] pixels = new int[width * height];
        picture.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage copy = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
        copy.setRGB(0, 0, width, height, pixels, 0, width);
        try {
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            ImageIO.write(copy, "png", bytes);
            return bytes.toByteArray();
        } catch (IOException cannotBe) {
            throw new UncheckedIOException("a picture could not be written into memory", cannotBe);
        }
    }
}

package leverwright.face.desk.sheet;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import javax.imageio.ImageIO;
import leverwright.face.draw.ChartDrawing;
import leverwright.face.draw.FigureDrawing;
import leverwright.face.draw.Ink;
import leverwright.face.draw.MapDrawing;
import leverwright.face.draw.Palette;
import leverwright.face.draw.Picture;
import leverwright.face.draw.SvgText;
import leverwright.face.publish.Cautions;
import leverwright.face.publish.Csv;
import leverwright.face.publish.TextReport;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;

/** Results as they leave the desk. Each carries the caution. */
final class ResultFiles {

    private static final double PNG_SCALE = 2;

    private ResultFiles() {}

    /** Returns the name that a file with a result is suggested to have, without ending. */
    static String name(Result result) {
        String words = result.title().isEmpty() ? "result" : result.title();
        String name = words.toLowerCase(Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return name.isEmpty() ? "result" : name.substring(0, Math.min(60, name.length()));
    }

    /** Returns a result as plain text, with its working. */
    static String text(Result result) {
        TextReport report = TextReport.standard();
        return report.result(result) + report.caution();
    }

    /** Returns a table or the data of a chart, one line a row. */
    static String values(Result result, char separator) {
        if (result instanceof TableResult table) {
            return Csv.of(table, separator);
        }
        if (result instanceof CurvesResult curves) {
            return Csv.of(curves.curves(), separator);
        }
        if (result instanceof MapResult map) {
            return Csv.of(map.map(), separator);
        }
        throw new IllegalArgumentException("only tables and charts have rows, not " + result.title());
    }

    static byte[] csv(Result result) {
        return values(result, ',').getBytes(StandardCharsets.UTF_8);
    }

    /** Returns a chart or figure in the size of a page. */
    static Picture picture(Result result) {
        if (result instanceof CurvesResult curves) {
            return ChartDrawing.of(curves);
        }
        if (result instanceof MapResult map) {
            return MapDrawing.of(map);
        }
        if (result instanceof FigureResult figure) {
            return FigureDrawing.of(figure);
        }
        throw new IllegalArgumentException("only charts and figures are drawn, not " + result.title());
    }

    static byte[] svg(Result result) {
        return SvgText.file(picture(result), Cautions.SHORT).getBytes(StandardCharsets.UTF_8);
    }

    /** Returns a chart or figure as an image with two pixels for every picture unit. */
    static BufferedImage image(Result result, Palette palette) {
        Picture picture = picture(result).withFootnote(Cautions.SHORT);
        int width = (int) Math.ceil(picture.width() * PNG_SCALE);
        int height = (int) Math.ceil(picture.height() * PNG_SCALE);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = image.createGraphics();
        graphics.setColor(palette.shade(Ink.WARM));
        graphics.fillRect(0, 0, width, height);
        graphics.scale(PNG_SCALE, PNG_SCALE);
        picture.paint(graphics, palette);
        graphics.dispose();
        return image;
    }

    static byte[] png(Result result, Palette palette) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            ImageIO.write(image(result, palette), "png", bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }
}

package leverwright.face.desk.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Pin;
import leverwright.face.draw.Palette;
import leverwright.run.result.Result;

/**
 * Where a result is shown, and what is done with it there.
 *
 * @param model the workbook
 * @param pin which result it is
 * @param places asks where to save
 */
record ResultHost(DeskModel model, Pin pin, SavePlace places) {

    Palette palette() {
        return PicturePane.palette(model.looks().get().colours());
    }

    void copy(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }

    /** Copies a chart or figure as an image. */
    void copyPicture(Result result, Consumer<String> told) {
        Palette palette = palette();
        CompletableFuture.supplyAsync(() -> ResultFiles.image(result, palette))
                .thenAccept(image -> Platform.runLater(() -> {
                    int width = image.getWidth();
                    int height = image.getHeight();
                    WritableImage copy = new WritableImage(width, height);
                    int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
                    copy.getPixelWriter()
                            .setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
                    ClipboardContent content = new ClipboardContent();
                    content.putImage(copy);
                    content.putString(ResultFiles.text(result));
                    Clipboard.getSystemClipboard().setContent(content);
                    told.accept("Copied.");
                }));
    }

    /**
     * Asks where to save a result and writes it there, off the window's thread.
     *
     * @param at the node that asks
     * @param result the result
     * @param ending the ending of the file's name without a dot
     * @param kind what such files are called
     * @param bytes makes what is written
     * @param told takes what came of it, in words, on the window's thread
     */
    void save(Node at, Result result, String ending, String kind, Supplier<byte[]> bytes, Consumer<String> told) {
        places.ask(at.getScene() == null ? null : at.getScene().getWindow(), ResultFiles.name(result), ending, kind)
                .ifPresent(file -> CompletableFuture.supplyAsync(() -> written(file, bytes))
                        .thenAccept(words -> Platform.runLater(() -> told.accept(words))));
    }

    private static String written(Path file, Supplier<byte[]> bytes) {
        try {
            Files.write(file, bytes.get());
            return "Saved in " + file + ".";
        } catch (IOException | RuntimeException failure) {
            return file + " cannot be written; choose another folder.";
        }
    }
}

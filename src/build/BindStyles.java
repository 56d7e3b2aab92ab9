import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.css.Stylesheet;

/**
 * Binds the desk's style sheets into one, in JavaFX's binary form: parsing them takes a noticeable part of a window's start.
 *
 * <p>Arguments: the file to write, then the style sheets in the order in which they hold.
 */
final class BindStyles {

    private BindStyles() {}

    public static void main(String[] arguments) throws IOException {
        Path bound = Path.of(arguments[0]);
        StringBuilder all = new StringBuilder();
        for (int i = 1; i < arguments.length; i++) {
            all.append(Files.readString(Path.of(arguments[i]))).append('\n');
        }
        Files.createDirectories(bound.toAbsolutePath().getParent());
        Path text = Files.createTempFile("desk", ".css");
        Path binary = Files.createTempFile("desk", ".bss");
        try {
            Files.writeString(text, all);
            Stylesheet.convertToBinary(text.toFile(), binary.toFile());
            byte[] bytes = Files.readAllBytes(binary);
            if (!Files.exists(bound) || !java.util.Arrays.equals(bytes, Files.readAllBytes(bound))) {
                Files.write(bound, bytes);
            }
        } finally {
            Files.delete(text);
            Files.delete(binary);
        }
    }
}

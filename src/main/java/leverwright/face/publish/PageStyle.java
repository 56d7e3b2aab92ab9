package leverwright.face.publish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import leverwright.face.draw.Palette;
import leverwright.face.draw.SvgText;

/** The style sheet of a page: the variables of both palettes, the rules of drawings, and those of {@code page.css}. */
final class PageStyle {
    private static final String FILE = "page.css";

    private PageStyle() {}

    /** Returns the style sheet; on paper and where nothing is asked the light palette holds. */
    static String css() {
        return ":root{" + Palette.LIGHT.variables() + "}\n"
                + "@media screen and (prefers-color-scheme:dark){:root{" + Palette.DARK.variables() + "}}\n"
                + SvgText.styles() + "\n" + read();
    }

    private static String read() {
        try (InputStream file = PageStyle.class.getResourceAsStream(FILE)) {
            if (file == null) {
                throw new IllegalStateException(FILE + " is missing from the program; build it again with Maven");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("cannot read " + FILE + " in the program", unreadable);
        }
    }
}

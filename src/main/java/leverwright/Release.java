package leverwright;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Properties;

/** Which release of Leverwright this is. */
public final class Release {

    private static final String RESOURCE = "release.properties";

    private Release() {}

    /**
     * The version of this program as the build stamped it, for example {@code 0.1.0}.
     *
     * @return the version, never empty
     * @throws IllegalStateException if the program was put together without its version
     */
    public static String version() {
        Properties stamped = new Properties();
        try (InputStream resource = Release.class.getResourceAsStream(RESOURCE)) {
            if (resource == null) {
                throw new IllegalStateException(RESOURCE + " is missing from the program; build it again with Maven");
            }
            stamped.load(resource);
        } catch (IOException unreadable) {
            throw new UncheckedIOException("cannot read " + RESOURCE + " in the program", unreadable);
        }
        String version = stamped.getProperty("version", "");
        if (version.isEmpty()) {
            throw new IllegalStateException(RESOURCE + " names no version; build the program again with Maven");
        }
        return version;
    }
}

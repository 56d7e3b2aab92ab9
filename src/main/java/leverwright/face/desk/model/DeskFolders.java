package leverwright.face.desk.model;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * The user's folders of the desk.
 *
 * @param config settings, recent files and trust
 * @param state journals, locks and the log
 * @param cache what can be made again at any time
 */
public record DeskFolders(Path config, Path state, Path cache) {

    /** Returns the folders of this user: XDG base directories, AppData on Windows, Library on macOS. */
    public static DeskFolders ofUser() {
        return of(System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", ".")), System.getenv());
    }

    /**
     * Returns all folders inside another.
     *
     * @param folder any folder; made when something is kept in it
     */
    public static DeskFolders under(Path folder) {
        return new DeskFolders(folder.resolve("config"), folder.resolve("state"), folder.resolve("cache"));
    }

    static DeskFolders of(String system, Path home, Map<String, String> environment) {
        String name = system.toLowerCase(Locale.ROOT);
        if (name.startsWith("windows")) {
            return new DeskFolders(
                    folder(environment, "APPDATA", home.resolve("AppData/Roaming"))
                            .resolve("Leverwright"),
                    folder(environment, "LOCALAPPDATA", home.resolve("AppData/Local"))
                            .resolve("Leverwright"),
                    folder(environment, "LOCALAPPDATA", home.resolve("AppData/Local"))
                            .resolve("Leverwright/Cache"));
        }
        if (name.startsWith("mac")) {
            Path library = home.resolve("Library");
            return new DeskFolders(
                    library.resolve("Preferences/Leverwright"),
                    library.resolve("Application Support/Leverwright"),
                    library.resolve("Caches/Leverwright"));
        }
        return new DeskFolders(
                folder(environment, "XDG_CONFIG_HOME", home.resolve(".config")).resolve("leverwright"),
                folder(environment, "XDG_STATE_HOME", home.resolve(".local/state"))
                        .resolve("leverwright"),
                folder(environment, "XDG_CACHE_HOME", home.resolve(".cache")).resolve("leverwright"));
    }

    /** Returns the folder that a variable names; a relative one does not count, as the XDG specification says. */
    private static Path folder(Map<String, String> environment, String variable, Path otherwise) {
        String value = environment.getOrDefault(variable, "");
        return !value.isBlank() && Path.of(value).isAbsolute() ? Path.of(value) : otherwise;
    }
}

package leverwright.face.desk;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Tells before the window's toolkit starts whether a window is possible here, since a failed start cannot be repeated. */
public final class Display {

    private static final int PATIENCE_MILLISECONDS = 2000;
    private static final Pattern NAME = Pattern.compile("(.*):(\\d+)(\\.\\d+)?");

    /** What the toolkit loads, and the Debian package that brings each. */
    private static final Map<String, String> LIBRARIES = Map.of(
            "libgtk-3.so.0", "libgtk-3-0",
            "libGL.so.1", "libgl1",
            "libXtst.so.6", "libxtst6",
            "libXxf86vm.so.1", "libxxf86vm1");

    private static final List<String> ORDER = List.of("libgtk-3.so.0", "libGL.so.1", "libXtst.so.6", "libXxf86vm.so.1");

    private static final List<String> FOLDERS = List.of("/lib", "/usr/lib", "/lib64", "/usr/lib64", "/usr/local/lib");

    /** The flag of a socket that accepts connections, in the list of Linux. */
    private static final String LISTENING = " 00010000 ";

    private final Map<String, String> environment;
    private final Path root;

    Display(Map<String, String> environment, Path root) {
        this.environment = environment;
        this.root = root;
    }

    /**
     * Returns what is missing for a window, in one line with the package that brings it; empty when nothing is.
     *
     * <p>Only Linux is looked at: Windows and macOS bring what a window needs.
     */
    public static Optional<String> missing() {
        if (!System.getProperty("os.name", "").toLowerCase(Locale.ROOT).startsWith("linux")) {
            return Optional.empty();
        }
        return new Display(System.getenv(), Path.of("/")).lacking();
    }

    Optional<String> lacking() {
        String display = environment.getOrDefault("DISPLAY", "");
        if (display.isBlank()) {
            return Optional.of(
                    "there is no display: DISPLAY is not set; a desktop sets it (Wayland needs Debian's package"
                            + " xwayland), and Debian's package xvfb brings a display without a screen");
        }
        Optional<String> library = missingLibraries();
        if (library.isPresent()) {
            return library;
        }
        return answers(display)
                ? Optional.empty()
                : Optional.of("the display " + display + " (DISPLAY) does not answer; name one that runs, or start one"
                        + " with Debian's package xvfb");
    }

    private Optional<String> missingLibraries() {
        List<String> files = new ArrayList<>(ORDER);
        removeFound(files, usualFolders());
        if (!files.isEmpty()) {
            removeFound(files, configuredFolders());
        }
        if (files.isEmpty()) {
            return Optional.empty();
        }
        List<String> packages = new ArrayList<>();
        files.forEach(file -> packages.add(LIBRARIES.getOrDefault(file, file)));
        return Optional.of("the system lacks " + String.join(" and ", files) + "; on Debian: apt install "
                + String.join(" ", packages));
    }

    /** In plain loops: a window waits for this. */
    private static void removeFound(List<String> libraries, List<Path> folders) {
        for (Path folder : folders) {
            for (int i = libraries.size() - 1; i >= 0; i--) {
                if (folder.resolve(libraries.get(i)).toFile().exists()) {
                    libraries.remove(i);
                }
            }
        }
    }

    private List<Path> usualFolders() {
        List<Path> folders = new ArrayList<>();
        for (String own : environment.getOrDefault("LD_LIBRARY_PATH", "").split(":")) {
            if (!own.isBlank()) {
                folders.add(Path.of(own));
            }
        }
        for (String name : FOLDERS) {
            Path folder = inRoot(name);
            folders.add(folder);
            String[] inside = folder.toFile().list();
            if (inside != null) {
                for (String each : inside) {
                    if (each.contains("-linux-")) {
                        folders.add(folder.resolve(each));
                    }
                }
            }
        }
        return folders;
    }

    private List<Path> configuredFolders() {
        List<Path> folders = new ArrayList<>();
        Path configured = inRoot("/etc/ld.so.conf.d");
        try (Stream<Path> files = Files.isDirectory(configured) ? Files.list(configured) : Stream.empty()) {
            for (Path file : (Iterable<Path>) files::iterator) {
                Files.readAllLines(file).stream()
                        .map(String::strip)
                        .filter(line -> line.startsWith("/"))
                        .forEach(line -> folders.add(inRoot(line)));
            }
        } catch (IOException unreadable) {
            // Then only the usual folders are looked at.
            return folders;
        }
        return folders;
    }

    private Path inRoot(String absolute) {
        return root.resolve(absolute.substring(1));
    }

    /** Whether somebody listens at the display. Whether it lets us in only the toolkit finds out. */
    private boolean answers(String display) {
        Matcher name = NAME.matcher(display);
        if (!name.matches()) {
            return false;
        }
        String host = name.group(1);
        int number = Integer.parseInt(name.group(2));
        if (host.isEmpty() || host.equals("unix")) {
            return answersHere(number) || connects("127.0.0.1", number);
        }
        return connects(host, number);
    }

    private boolean answersHere(int number) {
        Path socket = inRoot("/tmp/.X11-unix/X" + number);
        if (isListening("/tmp/.X11-unix/X" + number)) {
            return true;
        }
        if (Files.exists(socket)) {
            try (SocketChannel channel = SocketChannel.open(UnixDomainSocketAddress.of(socket))) {
                return channel.isConnected();
            } catch (IOException | UnsupportedOperationException refused) {
                return false;
            }
        }
        try {
            // A display may listen at a name that is no file.
            return Files.readString(inRoot("/proc/net/unix")).contains("@/tmp/.X11-unix/X" + number + "\n");
        } catch (IOException unreadable) {
            return false;
        }
    }

    /** Whether the system's own list names a socket at which somebody listens; that is quicker than to knock at it. */
    private boolean isListening(String path) {
        try {
            for (String line : Files.readString(inRoot("/proc/net/unix")).split("\n")) {
                if (line.endsWith(" " + path) && line.contains(LISTENING)) {
                    return true;
                }
            }
            return false;
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static boolean connects(String host, int number) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress(host, 6000 + number), PATIENCE_MILLISECONDS);
            return true;
        } catch (IOException | IllegalArgumentException refused) {
            return false;
        }
    }
}

package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Whether there can be a window is told before the toolkit starts, in one line. */
@EnabledOnOs(OS.LINUX)
class DisplayTest {

    private static final List<String> ALL = List.of("libgtk-3.so.0", "libGL.so.1", "libXtst.so.6", "libXxf86vm.so.1");

    @TempDir
    private Path root;

    private void libraries(List<String> names) throws Exception {
        Path folder = Files.createDirectories(root.resolve("usr/lib/x86_64-linux-gnu"));
        for (String name : names) {
            Files.createFile(folder.resolve(name));
        }
    }

    private String missing(String display) {
        return new Display(Map.of("DISPLAY", display), root).lacking().orElse("");
    }

    @Test
    void noDisplayNamesTheVariableAndThePackage() throws Exception {
        libraries(ALL);
        String line = new Display(Map.of(), root).lacking().orElse("");
        assertTrue(line.contains("DISPLAY is not set") && line.contains("xvfb"), line);
        assertEquals(1, line.lines().count());
    }

    @Test
    void missingLibrariesAreNamedWithTheirPackages() throws Exception {
        libraries(List.of("libXtst.so.6", "libXxf86vm.so.1"));
        String line = missing(":0");
        assertTrue(line.contains("libgtk-3.so.0 and libGL.so.1"), line);
        assertTrue(line.contains("apt install libgtk-3-0 libgl1"), line);
    }

    @Test
    void aDisplayThatDoesNotAnswerIsNamed() throws Exception {
        libraries(ALL);
        assertTrue(missing(":4711").contains(":4711 (DISPLAY) does not answer"), missing(":4711"));
        assertTrue(missing("nonsense").contains("does not answer"));
    }

    @Test
    void aDisplayThatListensIsTaken() throws Exception {
        libraries(ALL);
        try (ServerSocket listening = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            int number = listening.getLocalPort() - 6000;
            if (number >= 0) {
                assertEquals("", missing("127.0.0.1:" + number));
            }
        }
        Path unix = Files.createDirectories(root.resolve("proc/net")).resolve("unix");
        Files.writeString(unix, "0000: 00000002 00000000 00010000 0001 01 12345 @/tmp/.X11-unix/X99\n");
        assertEquals(Optional.empty(), new Display(Map.of("DISPLAY", ":99.0"), root).lacking());
    }
}

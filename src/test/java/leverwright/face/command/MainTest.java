package leverwright.face.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;

class MainTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @Test
    void versionNamesTheReleaseAndTheJavaThatRunsIt() {
        assertEquals(0, run("--version"));
        List<String> lines = out.toString().lines().toList();
        assertTrue(lines.get(0).matches("leverwright \\d+\\.\\d+\\.\\d+(-SNAPSHOT)?"), lines.get(0));
        assertEquals("Java " + Runtime.version(), lines.get(1));
        assertEquals("", err.toString());
    }

    @Test
    void helpGoesToStandardOutputWithTheCautionAndTheExitCodes() {
        assertEquals(0, run("--help"));
        assertTrue(out.toString().startsWith("Usage: leverwright"), out.toString());
        assertTrue(out.toString().contains("not medical or training advice"), out.toString());
        assertTrue(out.toString().contains("Exit codes: 0 fine"), out.toString());
        assertEquals("", err.toString());
    }

    @Test
    void anUnknownWordIsRefusedInOneLineWithExitCodeTwo() {
        assertEquals(2, run("juggle"));
        assertEquals("leverwright: Unmatched argument at index 0: 'juggle' (see 'leverwright --help')", oneErrorLine());
    }

    @Test
    void anUnknownOptionIsRefusedInOneLineWithExitCodeTwo() {
        assertEquals(2, run("--jumgle"));
        assertEquals("leverwright: Unknown option: '--jumgle' (see 'leverwright --help')", oneErrorLine());
    }

    @Test
    void noCommandAtAllIsBadUsage() {
        assertEquals(2, run());
        assertEquals("leverwright: no command given (see 'leverwright --help')", oneErrorLine());
    }

    @Test
    void aRuntimeWithoutCompilerIsNoticed() {
        assertFalse(Main.hasCompiler(ModuleLayer.empty()));
        assertTrue(Main.hasCompiler(ModuleLayer.boot()));
    }

    private int run(String... arguments) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), arguments);
    }

    private String oneErrorLine() {
        List<String> lines = err.toString().lines().toList();
        assertEquals(1, lines.size(), err.toString());
        assertEquals("", out.toString());
        return lines.get(0);
    }
}

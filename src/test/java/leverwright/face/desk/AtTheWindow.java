package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** A test at the desk's windows, with folders of its own; no exception may have gone astray by its end. */
abstract class AtTheWindow {

    @TempDir
    Path folder;

    WindowBench bench;

    @BeforeEach
    final void begin() throws Exception {
        bench = new WindowBench(folder);
    }

    @AfterEach
    final void end() throws Exception {
        bench.close();
        assertEquals(List.of(), bench.failures);
    }
}

package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.scene.Scene;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Starter;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What is closed goes: nothing of fifty windows stays in memory. */
class DeskLeakTest extends AtTheWindow {

    private static final int WINDOWS = 50;
    private static final int PATIENCE = 100;

    @Test
    @Tag("minute")
    void fiftyWindowsOpenedAndClosedLeaveNothing() throws Exception {
        Path file = folder.resolve("stranger.leverwright.json");
        Files.copy(WindowBench.demo(), file);
        List<WeakReference<Object>> gone = new ArrayList<>();
        Path small = folder.resolve("small.leverwright.json");
        WorkbookFiles.onDisk().saveNew(small, Starter.IN_DEPTH.workbook());
        for (int i = 0; i < WINDOWS; i++) {
            openAndClose(i % 5 == 0 ? file : small, gone);
        }
        // One more window, so that what the toolkit keeps of the last one is another one's.
        DeskWindow last = bench.open(file);
        List<String> left = List.of();
        for (int i = 0; i < PATIENCE; i++) {
            System.gc();
            Thread.sleep(50);
            left = gone.stream()
                    .map(WeakReference::get)
                    .filter(Objects::nonNull)
                    .map(object -> object.getClass().getSimpleName())
                    .toList();
            if (left.isEmpty()) {
                break;
            }
        }
        assertEquals(List.of(), left);
        bench.doing(() -> last.close(() -> {}));
    }

    private void openAndClose(Path file, List<WeakReference<Object>> gone) throws Exception {
        DeskWindow window = bench.open(file);
        DeskModel model = window.model();
        Scene scene = bench.at(() -> window.stage().getScene());
        Thread.sleep(20);
        bench.doing(() -> window.close(() -> {}));
        gone.add(new WeakReference<>(window));
        gone.add(new WeakReference<>(model));
        gone.add(new WeakReference<>(scene));
    }
}

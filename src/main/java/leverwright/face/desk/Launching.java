package leverwright.face.desk;

import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import leverwright.workbook.document.WorkbookFiles;

/** What can be got ready on other threads while the toolkit starts. */
final class Launching {

    private Launching() {}

    static void begin(DeskApp.Request request) {
        CompletableFuture.runAsync(() -> request.files().stream().findFirst().ifPresent(Launching::readAhead));
    }

    /** Reads a file once, so that the reader's classes are there when it is opened; what is wrong with it is told then. */
    private static void readAhead(Path file) {
        try {
            WorkbookFiles.onDisk().read(file);
        } catch (java.io.IOException | RuntimeException toldLater) {
            return;
        }
    }
}

package leverwright.face.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;

/** A small text file of the desk's own, replaced as a whole. */
final class KeptLines {

    private final Path file;
    private final DeskLog log;

    KeptLines(Path file, DeskLog log) {
        this.file = file;
        this.log = log;
    }

    List<String> read() {
        try {
            return Files.exists(file) ? Files.readAllLines(file) : List.of();
        } catch (IOException unreadable) {
            log.failure("a file of the desk could not be read", unreadable);
            return List.of();
        }
    }

    void write(List<String> lines) {
        Path folder = file.toAbsolutePath().getParent();
        try {
            Files.createDirectories(folder);
            Path next = Files.createTempFile(folder, file.getFileName().toString(), ".part");
            Files.write(next, lines);
            Files.move(next, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException unwritable) {
            log.failure("a file of the desk could not be written", unwritable);
        }
    }
}

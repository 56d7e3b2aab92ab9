package leverwright.workbook.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/** Writes a file so that at every moment the old content or the new one stands there whole. */
final class AtomicFile {

    private static final String ENDING = ".saving";

    /** A save takes seconds; what nobody has written to for this long was left by a program that is gone. */
    private static final Duration STALE = Duration.ofMinutes(10);

    private AtomicFile() {}

    /**
     * Replaces or makes a file: the bytes go to a new file in the same folder, onto the disk, and then in one step in the
     * place of the old. When that fails, the old file is as it was and the new one is removed if it can be. What a killed program left of an earlier
     * save is removed with the next one.
     *
     * @param storage where
     * @param file a path without links
     * @param bytes the new content
     * @throws IOException when the file was not replaced
     */
    static void write(Storage storage, Path file, byte[] bytes) throws IOException {
        String prefix = "." + file.getFileName() + ".";
        Path temporary =
                file.resolveSibling(prefix + UUID.randomUUID().toString().substring(0, 8) + ENDING);
        try {
            try (OutputStream stream = storage.create(temporary, file)) {
                stream.write(bytes);
            }
            storage.force(temporary);
            storage.replace(temporary, file);
        } catch (IOException failure) {
            removeQuietly(storage, temporary, failure);
            throw failure;
        }
        clearQuietly(storage, file.getParent(), prefix);
    }

    /** Removes what an earlier save of the same file left behind when its program was killed. */
    private static void clearQuietly(Storage storage, @Nullable Path folder, String prefix) {
        try {
            if (folder != null) {
                storage.deleteStale(folder, prefix, ENDING, STALE);
            }
        } catch (IOException failure) {
            // the file itself is saved, and what lies beside it is hidden and harmless
            return;
        }
    }

    private static void removeQuietly(Storage storage, Path temporary, IOException failure) {
        try {
            storage.delete(temporary);
        } catch (IOException second) {
            failure.addSuppressed(second);
        }
    }
}

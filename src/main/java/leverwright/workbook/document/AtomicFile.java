package leverwright.workbook.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.UUID;

/** Writes a file so that at every moment the old content or the new one stands there whole. */
final class AtomicFile {

    private AtomicFile() {}

    /**
     * Replaces or makes a file: the bytes go to a new file in the same folder, onto the disk, and then in one step in the
     * place of the old. When that fails, the old file is as it was and the new one is removed if it can be.
     *
     * @param storage where
     * @param file a path without links
     * @param bytes the new content
     * @throws IOException when the file was not replaced
     */
    static void write(Storage storage, Path file, byte[] bytes) throws IOException {
        String name =
                "." + file.getFileName() + "." + UUID.randomUUID().toString().substring(0, 8) + ".saving";
        Path temporary = file.resolveSibling(name);
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
    }

    private static void removeQuietly(Storage storage, Path temporary, IOException failure) {
        try {
            storage.delete(temporary);
        } catch (IOException second) {
            failure.addSuppressed(second);
        }
    }
}

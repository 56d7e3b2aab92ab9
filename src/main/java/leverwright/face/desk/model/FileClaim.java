package leverwright.face.desk.model;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import leverwright.workbook.document.FileStamp;

/**
 * The sole right of one window to save over a file: a lock of the system on a small file in the state folder, which ends
 * with the process at the latest.
 */
final class FileClaim implements AutoCloseable {

    private final FileChannel channel;
    private final FileLock lock;

    private FileClaim(FileChannel channel, FileLock lock) {
        this.channel = channel;
        this.lock = lock;
    }

    /** Returns the claim; empty when another window has it. */
    static Optional<FileClaim> on(Path state, String name) throws IOException {
        Path folder = state.resolve("locks");
        Files.createDirectories(folder);
        String digest = FileStamp.of(name.getBytes(StandardCharsets.UTF_8)).digest();
        FileChannel channel = FileChannel.open(
                folder.resolve(digest.substring(0, 32) + ".lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        try {
            FileLock lock = channel.tryLock();
            if (lock != null) {
                return Optional.of(new FileClaim(channel, lock));
            }
        } catch (OverlappingFileLockException sameProcess) {
            // Another window of this process has it; the answer is the same as for another process.
            channel.close();
            return Optional.empty();
        }
        channel.close();
        return Optional.empty();
    }

    @Override
    public void close() throws IOException {
        lock.release();
        channel.close();
    }
}

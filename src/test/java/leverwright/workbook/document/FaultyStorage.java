package leverwright.workbook.document;

import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;

/**
 * The disk, with a fault at a chosen step of saving. After a crash nothing works any more, as when the program is gone; after
 * another fault everything else goes on.
 */
final class FaultyStorage implements Storage {

    /** Where saving goes wrong. */
    enum Fault {
        NONE,
        CREATE,
        WRITE,
        CLOSE,
        FORCE,
        BEFORE_REPLACE,
        AFTER_REPLACE
    }

    private final Storage disk = new DiskStorage();
    private final Fault fault;
    private final boolean crash;
    private final int bytesLeft;
    private boolean gone;

    FaultyStorage(Fault fault, int bytesLeft, boolean crash) {
        this.fault = fault;
        this.bytesLeft = bytesLeft;
        this.crash = crash;
    }

    private void step(Fault here) throws IOException {
        if (gone || here == fault) {
            gone = crash;
            throw new IOException("No space left on device");
        }
    }

    @Override
    public Path target(Path path) throws IOException {
        return disk.target(path);
    }

    @Override
    public boolean exists(Path path) {
        return disk.exists(path);
    }

    @Override
    public byte[] read(Path path, int mostBytes) throws IOException {
        return disk.read(path, mostBytes);
    }

    @Override
    public OutputStream create(Path path, Path pattern) throws IOException {
        step(Fault.CREATE);
        return new FilterOutputStream(disk.create(path, pattern)) {
            @Override
            public void write(byte[] bytes, int offset, int length) throws IOException {
                int room = fault == Fault.WRITE ? Math.min(length, bytesLeft) : length;
                out.write(bytes, offset, room);
                if (room < length) {
                    step(Fault.WRITE);
                }
            }

            @Override
            public void close() throws IOException {
                super.close();
                step(Fault.CLOSE);
            }
        };
    }

    @Override
    public void force(Path path) throws IOException {
        step(Fault.FORCE);
        disk.force(path);
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        step(Fault.BEFORE_REPLACE);
        disk.replace(from, to);
        step(Fault.AFTER_REPLACE);
    }

    @Override
    public void delete(Path path) throws IOException {
        if (gone) {
            throw new IOException("the program is gone");
        }
        disk.delete(path);
    }

    @Override
    public void deleteStale(Path folder, String prefix, String suffix, Duration untouched) throws IOException {
        if (gone) {
            throw new IOException("the program is gone");
        }
        disk.deleteStale(folder, prefix, suffix, untouched);
    }
}

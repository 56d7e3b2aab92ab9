package leverwright.workbook.document;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonProblem;

/**
 * Reads and saves workbooks. Nothing is ever saved over a file that this version cannot read as a workbook, nor, unless
 * told so, over one that somebody else changed. Saving is atomic: when it fails, the old file is whole.
 */
public final class WorkbookFiles {

    private static final int MOST_BYTES = JsonLimits.STANDARD.bytes();

    private final Storage storage;

    /**
     * Reads and saves through some storage.
     *
     * @param storage where files live
     */
    public WorkbookFiles(Storage storage) {
        this.storage = storage;
    }

    /** Returns one that reads and saves on this computer's file system. */
    public static WorkbookFiles onDisk() {
        return new WorkbookFiles(new DiskStorage());
    }

    /**
     * Returns the workbook in a file.
     *
     * @param file the file
     * @throws WorkbookFileException when the file cannot be read or is larger than 64 MiB
     * @throws JsonProblem when the file is not a workbook that this version can read; names file, line and column
     */
    public OpenedWorkbook read(Path file) throws WorkbookFileException {
        byte[] bytes = bytes(file);
        return new OpenedWorkbook(file, parsed(file, bytes), bytes, true);
    }

    /**
     * Returns the workbook in a file without its record where that takes less time, so that its text can be shown at once;
     * {@link OpenedWorkbook#whole()} reads the rest.
     *
     * @param file the file
     * @throws WorkbookFileException when the file cannot be read or is larger than 64 MiB
     * @throws JsonProblem when the file is not a workbook that this version can read; names file, line and column
     */
    public OpenedWorkbook readTextFirst(Path file) throws WorkbookFileException {
        byte[] bytes = bytes(file);
        Optional<Workbook> text = WorkbookFormat.readWithoutRecord(bytes);
        return text.isPresent()
                ? new OpenedWorkbook(file, text.get(), bytes, false)
                : new OpenedWorkbook(file, parsed(file, bytes), bytes, true);
    }

    /**
     * Returns the stamp of a file as it is now.
     *
     * @param file the file
     * @throws WorkbookFileException when the file cannot be read or is larger than 64 MiB
     */
    public FileStamp stamp(Path file) throws WorkbookFileException {
        return FileStamp.of(bytes(file));
    }

    /**
     * Saves a workbook under a name that is not taken.
     *
     * @param file the new file
     * @param workbook the workbook
     * @return the stamp of the new file
     * @throws WorkbookFileException when something has that name, or the file could not be written
     */
    public FileStamp saveNew(Path file, Workbook workbook) throws WorkbookFileException {
        if (storage.exists(target(file))) {
            throw WorkbookFileException.refused(file, "was not saved: something with this name exists; choose another");
        }
        return write(file, workbook);
    }

    /**
     * Saves a workbook over the file it was read from or last saved to. A file that is gone is made again.
     *
     * @param file the file
     * @param workbook the workbook
     * @param lastSeen the stamp of the file when it was last read or saved
     * @return the stamp of the file as saved
     * @throws WorkbookFileException when the file has changed since, or could not be written
     */
    public FileStamp save(Path file, Workbook workbook, FileStamp lastSeen) throws WorkbookFileException {
        if (storage.exists(target(file)) && !stamp(file).equals(lastSeen)) {
            throw WorkbookFileException.refused(
                    file,
                    "was not saved: the file was changed by somebody else since it was read; save under another name,"
                            + " read it again, or say that it shall be replaced");
        }
        return write(file, workbook);
    }

    /**
     * Saves a workbook over whatever workbook is in the file now, because the user said so.
     *
     * @param file the file
     * @param workbook the workbook
     * @return the stamp of the file as saved
     * @throws WorkbookFileException when the file could not be read or written
     * @throws JsonProblem when the file is not a workbook that this version can read; such a file is never replaced
     */
    public FileStamp replace(Path file, Workbook workbook) throws WorkbookFileException {
        if (storage.exists(target(file))) {
            parsed(file, bytes(file));
        }
        return write(file, workbook);
    }

    /**
     * Writes what was made of a workbook, such as a page, whole or not at all.
     *
     * @param file the file; what stood there is replaced
     * @param bytes its content
     * @throws WorkbookFileException when the file could not be written; then what stood there is unchanged
     */
    public void writeMade(Path file, byte[] bytes) throws WorkbookFileException {
        try {
            AtomicFile.write(storage, storage.target(file), bytes);
        } catch (IOException failure) {
            throw WorkbookFileException.unwritten(file, failure);
        }
    }

    private Path target(Path file) throws WorkbookFileException {
        try {
            return storage.target(file);
        } catch (IOException failure) {
            throw WorkbookFileException.unread(file, failure);
        }
    }

    private byte[] bytes(Path file) throws WorkbookFileException {
        try {
            return storage.read(storage.target(file), MOST_BYTES);
        } catch (IOException failure) {
            throw WorkbookFileException.unread(file, failure);
        }
    }

    static Workbook parsed(Path file, byte[] bytes) {
        try {
            return WorkbookFormat.read(bytes);
        } catch (JsonProblem problem) {
            throw problem.in(file.toString());
        }
    }

    private FileStamp write(Path file, Workbook workbook) throws WorkbookFileException {
        byte[] bytes = WorkbookFormat.write(workbook);
        requireReadable(file, bytes);
        try {
            AtomicFile.write(storage, storage.target(file), bytes);
            return FileStamp.of(bytes);
        } catch (IOException failure) {
            throw WorkbookFileException.unwritten(file, failure);
        }
    }

    /** What could not be read again is not saved, so that no old file gives way to a useless one. */
    private static void requireReadable(Path file, byte[] bytes) throws WorkbookFileException {
        try {
            WorkbookFormat.read(bytes);
        } catch (JsonProblem problem) {
            throw WorkbookFileException.refused(
                    file, "was not saved, since it could not be read again: " + problem.getMessage());
        }
    }
}

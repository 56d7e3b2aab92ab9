package leverwright.workbook.document;

import java.nio.file.Path;

/** A workbook as it was read from a file. */
public final class OpenedWorkbook {

    private final Path file;
    private final Workbook workbook;
    private final byte[] bytes;

    OpenedWorkbook(Path file, Workbook workbook, byte[] bytes) {
        this.file = file;
        this.workbook = workbook;
        this.bytes = bytes;
    }

    /** Returns the file as the user named it. */
    public Path file() {
        return file;
    }

    /** Returns what it holds. */
    public Workbook workbook() {
        return workbook;
    }

    /**
     * Returns the file's content when it was read; needed to save over it. Computed when asked for, since who only runs a
     * workbook is not to wait for it.
     */
    public FileStamp stamp() {
        return FileStamp.of(bytes);
    }
}

package leverwright.workbook.document;

import java.nio.file.Path;

/** A workbook as it was read from a file. */
public final class OpenedWorkbook {

    private final Path file;
    private final Workbook workbook;
    private final byte[] bytes;

    private final boolean whole;

    OpenedWorkbook(Path file, Workbook workbook, byte[] bytes, boolean whole) {
        this.file = file;
        this.workbook = workbook;
        this.bytes = bytes;
        this.whole = whole;
    }

    /** Returns the file as the user named it. */
    public Path file() {
        return file;
    }

    /** Returns what it holds; without its record when it was read for its text first. */
    public Workbook workbook() {
        return workbook;
    }

    /** Returns whether {@link #workbook()} is all that it holds. */
    public boolean isWhole() {
        return whole;
    }

    /**
     * Returns all that it holds, also where its text was read first.
     *
     * @throws leverwright.workbook.json.JsonProblem when it is not a workbook that this version can read
     */
    public Workbook whole() {
        return whole ? workbook : WorkbookFiles.parsed(file, bytes);
    }

    /**
     * Returns the file's content when it was read; needed to save over it. Computed when asked for, since who only runs a
     * workbook is not to wait for it.
     */
    public FileStamp stamp() {
        return FileStamp.of(bytes);
    }
}

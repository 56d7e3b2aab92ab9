package leverwright.workbook.document;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import org.jspecify.annotations.Nullable;

/** A file could not be read or was not written. The message is one line for people: file, what happened, what to do. */
public final class WorkbookFileException extends IOException {

    private static final long serialVersionUID = 1L;

    private WorkbookFileException(String message, @Nullable IOException cause) {
        super(message, cause);
    }

    /** A refusal of our own. */
    static WorkbookFileException refused(Path file, String why) {
        return new WorkbookFileException(file + ": " + why, null);
    }

    /** A file that could not be read. */
    static WorkbookFileException unread(Path file, IOException cause) {
        return new WorkbookFileException(file + ": could not be read: " + reason(file, cause), cause);
    }

    /** A file that was not written; what stood there before still stands there. */
    static WorkbookFileException unwritten(Path file, IOException cause) {
        return new WorkbookFileException(
                file + ": was not saved, and what stood there is unchanged: " + reason(file, cause), cause);
    }

    private static String reason(Path file, IOException cause) {
        if (cause instanceof NoSuchFileException missing) {
            boolean itself = file.toAbsolutePath().normalize().toString().equals(missing.getFile());
            return itself ? "there is no such file; check its name" : "the folder does not exist; make it first";
        }
        if (cause instanceof NotDirectoryException) {
            return "part of the path is not a folder; check its name";
        }
        if (cause instanceof AccessDeniedException) {
            return "this user may not; change the permissions or use another folder";
        }
        String said = cause instanceof FileSystemException system && system.getReason() != null
                ? system.getReason()
                : cause.getMessage();
        return said == null || said.isBlank() ? "the system gives no reason; try another folder" : said;
    }
}

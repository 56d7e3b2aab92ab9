package leverwright.face.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/**
 * The one log of the desk, in the user's state folder, in two files that take turns. It holds what failed and where in the
 * program, never the text of a workbook: of a failure only the class and the places, not the message.
 */
public final class DeskLog implements AutoCloseable {

    private static final int MOST_BYTES = 512 * 1024;

    private final Logger logger = Logger.getAnonymousLogger();

    private DeskLog() {
        logger.setUseParentHandlers(false);
    }

    /**
     * Opens the log; where it cannot be written, the desk works without one.
     *
     * @param folder the user's state folder
     */
    public static DeskLog in(Path folder) {
        DeskLog log = new DeskLog();
        try {
            Files.createDirectories(folder);
            String pattern = folder.toString().replace("%", "%%") + "/leverwright-%g.log";
            FileHandler file = new FileHandler(pattern, MOST_BYTES, 2, true);
            file.setFormatter(new SimpleFormatter());
            log.logger.addHandler(file);
        } catch (IOException unwritable) {
            log.logger.setLevel(Level.OFF);
        }
        return log;
    }

    /**
     * Writes a line.
     *
     * @param words what happened; no text of a workbook
     */
    public void note(String words) {
        logger.info(words);
    }

    /**
     * Writes a failure: its class and where in the program it came from, without its message.
     *
     * @param words what was being done; no text of a workbook
     * @param failure what failed
     */
    public void failure(String words, Throwable failure) {
        StringBuilder text = new StringBuilder(words);
        for (Throwable cause = failure; cause != null; cause = cause.getCause()) {
            text.append('\n').append(cause.getClass().getName());
            for (StackTraceElement place : cause.getStackTrace()) {
                text.append("\n    at ").append(place);
            }
        }
        logger.warning(text.toString());
    }

    @Override
    public void close() {
        for (java.util.logging.Handler handler : logger.getHandlers()) {
            handler.close();
        }
    }
}

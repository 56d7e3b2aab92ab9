package leverwright.face.command;

import java.time.Duration;
import leverwright.workbook.session.CleanRun;
import picocli.CommandLine.Option;

/** How the commands that compute a workbook run its cells. */
final class RunOptions {

    private static final int MOST_SECONDS = 86_400;

    @Option(
            names = "--trust",
            description = "let the cells use any Java class: only for workbooks whose author you trust")
    private boolean trusted;

    @Option(
            names = "--seconds",
            paramLabel = "N",
            description = "how long one cell may take, in seconds (default: ${DEFAULT-VALUE})")
    private int seconds = (int) CleanRun.MOST_PER_CELL.toSeconds();

    boolean isTrusted() {
        return trusted;
    }

    /**
     * Returns how long one cell may take.
     *
     * @throws IllegalArgumentException when that is less than a second or more than a day
     */
    Duration mostPerCell() {
        if (seconds < 1 || seconds > MOST_SECONDS) {
            throw new IllegalArgumentException("--seconds is " + seconds + "; allowed: 1 to " + MOST_SECONDS
                    + "; leave it out for " + CleanRun.MOST_PER_CELL.toSeconds());
        }
        return Duration.ofSeconds(seconds);
    }
}

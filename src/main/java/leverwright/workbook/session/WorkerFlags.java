package leverwright.workbook.session;

import java.util.List;

/** The flags of the worker's Java. */
final class WorkerFlags {

    /** Exit code of a worker whose memory ran out, as {@code -XX:+ExitOnOutOfMemoryError} gives it. */
    static final int EXIT_OUT_OF_MEMORY = 3;

    /**
     * What each is for: bounded memory, and an end instead of a half-dead process when it runs out; room for the young, so that
     * a dial's turn is not held up; the serial collector, since a worker must start quickly, but both compilers, since a dial
     * is turned hundreds of times; one language, time zone and encoding, so that digits and text are the same everywhere;
     * identity numbers that are all alike, so that nothing depends on an address; no messages of Java's own between the frames
     * on standard output; assertions that a cell makes; nothing written
     * outside the worker's own folder.
     */
    static final List<String> STANDARD = List.of(
            "-Xmx512m",
            "-Xms64m",
            "-Xmn40m",
            "-XX:+UseSerialGC",
            "-XX:+ExitOnOutOfMemoryError",
            "-XX:+IgnoreUnrecognizedVMOptions",
            "-XX:+UnlockExperimentalVMOptions",
            "-XX:hashCode=2",
            "-XX:+DisplayVMOutputToStderr",
            "-XX:-UsePerfData",
            "-XX:+DisableAttachMechanism",
            "-XX:-CreateCoredumpOnCrash",
            "-Xshare:auto",
            "-ea:REPL...",
            "-Xlog:disable",
            "-Duser.language=en",
            "-Duser.country=",
            "-Duser.variant=",
            "-Duser.timezone=UTC",
            "-Dfile.encoding=UTF-8",
            "-Djava.awt.headless=true");

    private WorkerFlags() {}
}

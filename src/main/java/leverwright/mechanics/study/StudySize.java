package leverwright.mechanics.study;

import java.util.Locale;

/** How many settings a study may have: what would take too long, or too much room, is refused before it starts. */
final class StudySize {
    /** Greatest number of settings of a sweep or family. */
    static final int MOST = 20_000_000;

    /** What one setting takes with a handful of readings, on one core: 1 to 5 µs were measured. */
    private static final double SECONDS = 3e-6;

    private static final double MINUTE = 60;
    private static final double HOUR = 3600;
    private static final double DAY = 24 * HOUR;
    private static final double YEAR = 365 * DAY;
    private static final double BYTES = 8;
    private static final double GIGABYTE = 1e9;

    private StudySize() {}

    static void check(double settings, int least, String what) {
        if (settings > MOST) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "%s has %.3g settings, which would take about %s and, kept, %.3g GB for each reading; allowed: %d to %d."
                            + " Take fewer points or larger steps.",
                    what,
                    settings,
                    time(settings * SECONDS),
                    settings * BYTES / GIGABYTE,
                    least,
                    MOST));
        }
        if (!(settings >= least) || settings != Math.rint(settings)) {
            throw new IllegalArgumentException(what + " has " + number(settings) + " settings; allowed: " + least
                    + " to " + MOST + ", a whole number");
        }
    }

    private static String number(double settings) {
        return settings == Math.rint(settings) && Math.abs(settings) < MOST
                ? Long.toString((long) settings)
                : Double.toString(settings);
    }

    /** Returns a time in words, in the unit that suits it. */
    static String time(double seconds) {
        if (seconds < 2 * MINUTE) {
            return String.format(Locale.ROOT, "%.0f s", seconds);
        }
        if (seconds < 2 * HOUR) {
            return String.format(Locale.ROOT, "%.0f minutes", seconds / MINUTE);
        }
        if (seconds < 2 * DAY) {
            return String.format(Locale.ROOT, "%.0f hours", seconds / HOUR);
        }
        return seconds < YEAR
                ? String.format(Locale.ROOT, "%.0f days", seconds / DAY)
                : String.format(Locale.ROOT, "%.0f years", seconds / YEAR);
    }
}

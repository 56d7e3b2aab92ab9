package leverwright.run.cell;

import java.util.Locale;
import leverwright.mechanics.study.Spread;

/** How many draws a cell may ask for: what would take too long is refused before it starts, with an estimate. */
final class SpreadLimits {
    private static final double SECONDS_A_DRAW = 1e-5;
    private static final double HOUR = 3600;

    private SpreadLimits() {}

    static Spread checked(Spread spread, double count) {
        if (count > Spread.MOST_DRAWS) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a spread of %.3g draws would take about %s, at 10 µs for each result of a draw; allowed: up to %d",
                    count,
                    time(count * SECONDS_A_DRAW),
                    Spread.MOST_DRAWS));
        }
        if (!(count >= 10) || count != Math.rint(count)) {
            throw new IllegalArgumentException(
                    "a spread has " + count + " draws; allowed: a whole number from 10 to " + Spread.MOST_DRAWS);
        }
        return spread.draws((long) count);
    }

    private static String time(double seconds) {
        if (seconds < 2 * HOUR) {
            return String.format(Locale.ROOT, "%.0f minutes", seconds / 60);
        }
        double hours = seconds / HOUR;
        return hours < 48
                ? String.format(Locale.ROOT, "%.0f hours", hours)
                : String.format(Locale.ROOT, "%.0f days", hours / 24);
    }
}

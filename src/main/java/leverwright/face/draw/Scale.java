package leverwright.face.draw;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.NumberText;

/**
 * An axis: where it begins and ends and which round numbers it shows.
 *
 * @param from the least value
 * @param to the greatest value, above {@code from}
 * @param ticks the round numbers on it, rising
 */
record Scale(double from, double to, List<BigDecimal> ticks) {

    /** Copies the ticks. */
    Scale {
        ticks = List.copyOf(ticks);
    }

    /** Returns an axis that begins and ends exactly where the values do. */
    static Scale tight(double least, double greatest, int about) {
        double[] room = room(least, greatest);
        BigDecimal step = step(room[1] - room[0], about);
        return new Scale(room[0], room[1], ticks(room[0], room[1], step));
    }

    /**
     * Returns an axis that begins and ends at round numbers, and shows zero unless the values lie far from it: so that
     * the heights of curves can be compared.
     */
    static Scale round(double least, double greatest, int about) {
        double low = least > 0 && least < 0.75 * greatest ? 0 : least;
        double high = greatest < 0 && greatest > 0.75 * least ? 0 : greatest;
        double[] room = room(low, high);
        BigDecimal step = step(room[1] - room[0], about);
        double size = step.doubleValue();
        double from = Math.floor(room[0] / size + 1e-9) * size;
        double to = Math.ceil(room[1] / size - 1e-9) * size;
        return new Scale(from, to, ticks(from, to, step));
    }

    /** Returns a tick as people read it. */
    static String words(BigDecimal tick) {
        return NumberText.print(tick.signum() == 0 ? BigDecimal.ZERO : tick);
    }

    private static double[] room(double least, double greatest) {
        double width = greatest - least;
        double size = Math.max(Math.abs(least), Math.abs(greatest));
        if (width > size * 1e-9) {
            return new double[] {least, greatest};
        }
        double half = size == 0 ? 1 : size * 0.1;
        return new double[] {least - half, greatest + half};
    }

    /** The step among 1, 2, 5 times a power of ten that gives at most about so many ticks. */
    private static BigDecimal step(double width, int about) {
        BigDecimal power = BigDecimal.ONE.scaleByPowerOfTen((int) Math.floor(Math.log10(width / about)));
        for (int times : new int[] {1, 2, 5}) {
            BigDecimal step = power.multiply(BigDecimal.valueOf(times));
            if (width / step.doubleValue() <= about) {
                return step;
            }
        }
        return power.multiply(BigDecimal.TEN);
    }

    private static List<BigDecimal> ticks(double from, double to, BigDecimal step) {
        List<BigDecimal> ticks = new ArrayList<>();
        double size = step.doubleValue();
        long first = (long) Math.ceil(from / size - 1e-9);
        long last = (long) Math.floor(to / size + 1e-9);
        for (long i = first; i <= last; i++) {
            ticks.add(step.multiply(BigDecimal.valueOf(i)));
        }
        return ticks;
    }
}

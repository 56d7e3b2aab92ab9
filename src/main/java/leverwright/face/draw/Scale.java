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
 * @param byRatio whether equal ratios take equal room, as on a logarithmic scale; both ends then lie above zero
 */
record Scale(double from, double to, List<BigDecimal> ticks, boolean byRatio) {
    /** From this ratio of its ends on, a scale by ratio shows 1, 2, 5 times the powers of ten. */
    private static final double DECADE = 10;
    /** Of ways with more settings perhaps only some are kept. */
    private static final int MANY = 1000;

    /** Copies the ticks. */
    Scale {
        ticks = List.copyOf(ticks);
    }

    /** Returns an axis that begins and ends exactly where the values do. */
    static Scale tight(double least, double greatest, int about) {
        double[] room = room(least, greatest);
        BigDecimal step = step(room[1] - room[0], about);
        return new Scale(room[0], room[1], ticks(room[0], room[1], step), false);
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
        return new Scale(from, to, ticks(from, to, step), false);
    }

    /** Returns an axis on which equal ratios take equal room, with ends above zero. */
    static Scale byRatio(double least, double greatest, int about) {
        if (greatest / least < DECADE) {
            return new Scale(least, greatest, tight(least, greatest, about).ticks(), true);
        }
        List<BigDecimal> ticks = powers(least, greatest, new int[] {1, 2, 5});
        if (ticks.size() > about) {
            ticks = powers(least, greatest, new int[] {1});
        }
        int each = (ticks.size() + about - 1) / about;
        List<BigDecimal> few = new ArrayList<>();
        for (int i = 0; i < ticks.size(); i += each) {
            few.add(ticks.get(i));
        }
        return new Scale(least, greatest, few, true);
    }

    private static List<BigDecimal> powers(double least, double greatest, int[] times) {
        List<BigDecimal> ticks = new ArrayList<>();
        int last = (int) Math.floor(Math.log10(greatest));
        for (int power = (int) Math.floor(Math.log10(least)); power <= last; power++) {
            for (int one : times) {
                BigDecimal tick = BigDecimal.valueOf(one).scaleByPowerOfTen(power);
                double value = tick.doubleValue();
                if (value >= least * (1 - 1e-9) && value <= greatest * (1 + 1e-9)) {
                    ticks.add(tick);
                }
            }
        }
        return ticks;
    }

    /** Returns how far along the axis a value lies, 0 at its beginning, 1 at its end. */
    double share(double value) {
        return byRatio
                ? Math.log(Math.max(value, Double.MIN_NORMAL) / from) / Math.log(to / from)
                : (value - from) / (to - from);
    }

    /** Returns the value at a share of the axis. */
    double at(double share) {
        return byRatio ? from * Math.pow(to / from, share) : from + share * (to - from);
    }

    /**
     * Returns whether settings go by equal ratios over at least twice the first: all of a short way; of a long one, of which only
     * some are kept, those a quarter, half and three quarters along it.
     */
    static boolean goByRatio(List<Double> settings) {
        int last = settings.size() - 1;
        if (last < 3 || !(settings.get(0) > 0) || settings.get(last) < 2 * settings.get(0)) {
            return false;
        }
        double first = settings.get(0);
        double whole = Math.log(settings.get(last) / first);
        boolean all = true;
        boolean some = last >= MANY;
        for (int i = 0; i <= last; i++) {
            double off = Math.abs(Math.log(settings.get(i) / first) / whole - (double) i / last);
            all &= off < 1e-6;
            boolean looked = i == last / 4 || i == last / 2 || i == last * 3 / 4;
            some &= !looked || off < 0.02;
        }
        return all || some;
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

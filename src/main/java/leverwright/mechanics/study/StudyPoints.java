package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.ImpossibleSetting;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.numeric.Crew;

/**
 * What readings say at many settings of variables: the one loop behind sweeps, families and maps. Points are worked out block
 * by block by a crew and handed on in order, so that only a few blocks are held at a time; where a point has no value stands
 * NaN, with the reason.
 *
 * <p>Every point is found by the same steps as when it is asked for alone: posture, balance, cuts. Most of the time goes into
 * finding the posture, whose search has its own number of tries at each setting; so blocks are spread over threads instead of
 * being turned into arrays.
 */
final class StudyPoints {
    /** Points of a block of a long study: long enough to be worth handing over, short enough to stop at once. */
    static final int BLOCK = 1024;
    /** Points of a block of a short one, so that two threads share it evenly. */
    private static final int SMALL_BLOCK = 32;

    private final List<Reading<?>> readings;
    private final boolean bands;

    /**
     * A reading without a value at a point.
     *
     * @param point from 0
     * @param reading which one; −1 for all
     * @param reason in words
     */
    record Missing(int point, int reading, String reason) {}

    /** Some points in order: values point by point, by reading, SI; NaN where there is none. */
    static final class Block {
        final int from;
        final int count;
        final double[] values;
        /** Ends of bands, laid out likewise; empty without bands. */
        final double[] low;

        final double[] high;
        final List<Missing> missing = new ArrayList<>();

        Block(int from, int count, int readings, boolean bands) {
            this.from = from;
            this.count = count;
            values = none(count * readings);
            low = none(bands ? count * readings : 0);
            high = none(bands ? count * readings : 0);
        }
    }

    /** Makes the performance of a point. */
    @FunctionalInterface
    interface Setter {
        Performance at(int point);
    }

    /** Takes blocks in order, on the caller's thread. */
    @FunctionalInterface
    interface Taker {
        void take(Block block);
    }

    StudyPoints(List<Reading<?>> readings, boolean bands) {
        this.readings = List.copyOf(readings);
        this.bands = bands;
    }

    /**
     * Works points out.
     *
     * @return how many, from the first: all unless stopped
     */
    int work(Crew crew, int count, Setter setter, Taker taker) {
        int size = count > KeptPoints.WHOLE ? BLOCK : SMALL_BLOCK;
        return crew.inOrder(count, size, (from, to) -> block(setter, from, to), taker::take);
    }

    private Block block(Setter setter, int from, int to) {
        Block block = new Block(from, to - from, readings.size(), bands);
        for (int point = from; point < to; point++) {
            work(setter, point, block);
        }
        return block;
    }

    private void work(Setter setter, int point, Block block) {
        Performance performance;
        try {
            performance = setter.at(point);
        } catch (IllegalArgumentException notAllowed) {
            block.missing.add(new Missing(point, -1, String.valueOf(notAllowed.getMessage())));
            return;
        }
        HeldPosture held;
        try {
            held = performance.posture();
        } catch (ImpossibleSetting nowhere) {
            block.missing.add(new Missing(point, -1, String.valueOf(nowhere.getMessage())));
            return;
        }
        if (held.standing().wouldFall()) {
            block.missing.add(new Missing(point, -1, held.standing().words()));
            return;
        }
        for (int r = 0; r < readings.size(); r++) {
            read(held, r, point, block);
        }
    }

    private void read(HeldPosture held, int r, int point, Block block) {
        Reading<?> reading = readings.get(r);
        int at = (point - block.from) * readings.size() + r;
        try {
            double value = reading.si(held);
            if (bands) {
                HeldPosture.Span span = held.span(reading);
                block.low[at] = span.low();
                block.high[at] = span.high();
            }
            block.values[at] = value;
        } catch (IllegalArgumentException none) {
            block.missing.add(new Missing(point, r, String.valueOf(none.getMessage())));
        }
    }

    private static double[] none(int size) {
        double[] none = new double[size];
        Arrays.fill(none, Double.NaN);
        return none;
    }
}

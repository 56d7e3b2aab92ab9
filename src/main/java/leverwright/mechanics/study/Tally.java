package leverwright.mechanics.study;

import java.util.Arrays;

/**
 * Statistics of one quantity over many draws, taken in one after another with bounded memory. Up to {@value #KEPT} values are
 * kept and quantiles are exact; beyond, values are counted in {@value #BINS} bins over the range of those kept, widened by a
 * half to either side, and a quantile is known to the width of a bin.
 */
final class Tally {
    /** How many values are kept before counting in bins begins. */
    static final int KEPT = 1 << 18;

    static final int BINS = 1 << 16;
    private static final double WIDENED = 0.5;

    private double[] kept = new double[1024];
    private int keptCount;
    private boolean sorted;
    private long[] bins = {};
    private double binsFrom;
    private double binWidth;
    private long count;
    private long missing;
    private double mean;
    private double squares;
    private double least = Double.POSITIVE_INFINITY;
    private double most = Double.NEGATIVE_INFINITY;

    /** Takes in a value; NaN counts as missing. */
    void add(double value) {
        if (Double.isNaN(value)) {
            missing++;
            return;
        }
        count++;
        double away = value - mean;
        mean += away / count;
        squares += away * (value - mean);
        least = Math.min(least, value);
        most = Math.max(most, value);
        if (bins.length > 0) {
            bin(value);
        } else {
            keep(value);
        }
    }

    private void keep(double value) {
        if (keptCount == kept.length) {
            if (keptCount == KEPT) {
                openBins();
                bin(value);
                return;
            }
            kept = Arrays.copyOf(kept, 2 * keptCount);
        }
        kept[keptCount++] = value;
        sorted = false;
    }

    private void openBins() {
        double span = most - least;
        double width = span > 0 ? span : Math.max(1, Math.abs(most)) * 1e-9;
        binsFrom = least - WIDENED * width;
        binWidth = (1 + 2 * WIDENED) * width / BINS;
        bins = new long[BINS];
        for (int k = 0; k < keptCount; k++) {
            bin(kept[k]);
        }
        kept = new double[] {};
        keptCount = 0;
    }

    private void bin(double value) {
        double place = (value - binsFrom) / binWidth;
        bins[(int) Math.max(0, Math.min(BINS - 1, place))]++;
    }

    long count() {
        return count;
    }

    long missing() {
        return missing;
    }

    double mean() {
        return mean;
    }

    /** The variance of those taken in, by the number less one. */
    double variance() {
        return count > 1 ? squares / (count - 1) : 0;
    }

    double deviation() {
        return Math.sqrt(variance());
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }

    /** How far a quantile may be off, in the unit of the values: 0 while all values are kept. */
    double grain() {
        return bins.length > 0 ? binWidth : 0;
    }

    /** The value below which a part of the draws lies, 0 to 1, between neighbours in proportion. */
    double quantile(double part) {
        if (count == 0) {
            throw new IllegalArgumentException("no draw gave a value");
        }
        if (bins.length == 0) {
            if (!sorted) {
                Arrays.sort(kept, 0, keptCount);
                sorted = true;
            }
            double place = part * (keptCount - 1);
            int below = (int) place;
            double low = kept[below];
            return below + 1 < keptCount ? low + (place - below) * (kept[below + 1] - low) : low;
        }
        double wanted = part * count;
        long before = 0;
        for (int k = 0; k < BINS; k++) {
            if (before + bins[k] >= wanted && bins[k] > 0) {
                double value = binsFrom + binWidth * (k + (wanted - before) / bins[k]);
                return Math.max(least, Math.min(most, value));
            }
            before += bins[k];
        }
        return most;
    }

    /** Which part of the draws is not greater than a value, 0 to 1. */
    double below(double value) {
        if (bins.length == 0) {
            quantile(0);
            int low = 0;
            int high = keptCount;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (kept[middle] <= value) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return (double) low / keptCount;
        }
        double place = (value - binsFrom) / binWidth;
        long before = 0;
        for (int k = 0; k < Math.min(BINS, (int) Math.max(0, place)); k++) {
            before += bins[k];
        }
        return (double) before / count;
    }
}

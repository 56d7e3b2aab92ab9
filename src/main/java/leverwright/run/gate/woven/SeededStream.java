package leverwright.run.gate.woven;

import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * The random numbers of a cell. Every run of the same workbook gives a cell the same numbers: {@code new Random()},
 * {@code Math.random()} and {@code Collections.shuffle(list)} draw from here.
 */
public final class SeededStream {

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;
    private static long state;
    private static Random random = new Random(0);

    private SeededStream() {}

    /**
     * Starts the stream anew, before a cell runs.
     *
     * @param seed where the stream starts
     */
    public static void restart(long seed) {
        state = seed;
        random = new Random(nextSeed());
    }

    /** Returns the next seed, for a generator that the cell makes without giving one. */
    public static long nextSeed() {
        state += GOLDEN;
        return mix(state);
    }

    /** Returns the next number from 0 to below 1. */
    public static double next() {
        return random.nextDouble();
    }

    /**
     * Shuffles a list with the cell's stream.
     *
     * @param list the list to put into a random order
     */
    public static void shuffle(List<?> list) {
        Collections.shuffle(list, random);
    }

    /**
     * Returns a seed for a cell.
     *
     * @param workbookSeed the workbook's seed
     * @param cell the cell's id
     */
    public static long seedOf(long workbookSeed, String cell) {
        long mixed = mix(workbookSeed);
        for (int i = 0; i < cell.length(); i++) {
            mixed = mix(mixed * 31 + cell.charAt(i) + GOLDEN);
        }
        return mixed;
    }

    /** Spreads the bits: Stafford's variant 13, as in {@link java.util.SplittableRandom}. */
    private static long mix(long bits) {
        long z = (bits ^ (bits >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }
}

package leverwright.mechanics.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SamplingTest {

    @ParameterizedTest
    @EnumSource(Sampling.class)
    void pointsDependOnTheirNumberAlone(Sampling sampling) {
        Sampling.Points points = sampling.points(5, 1000, 7);
        double[][] all = points.rows(0, 1000);
        double[][] late = points.rows(640, 700);
        for (int k = 0; k < late.length; k++) {
            assertArrayEquals(all[640 + k], late[k]);
        }
        for (double[] row : all) {
            for (double value : row) {
                assertTrue(value > 0 && value < 1);
            }
        }
    }

    /** What a Latin hypercube is by its definition (McKay, Beckman and Conover 1979: from memory). */
    @Test
    void latinHypercubeHasOnePointInEverySliceOfEveryAxis() {
        for (int count : new int[] {1, 2, 3, 10, 777, 1024}) {
            double[][] rows = Sampling.LATIN_HYPERCUBE.points(4, count, 11).rows(0, count);
            for (int j = 0; j < 4; j++) {
                boolean[] taken = new boolean[count];
                for (double[] row : rows) {
                    int slice = (int) (row[j] * count);
                    assertTrue(!taken[slice], "slice " + slice + " of " + count + " is taken twice");
                    taken[slice] = true;
                }
            }
        }
    }

    @Test
    void latinHypercubeMixesTheOrderOfTheSlices() {
        double[][] rows = Sampling.LATIN_HYPERCUBE.points(2, 1000, 3).rows(0, 1000);
        double together = 0;
        for (double[] row : rows) {
            together += (row[0] - 0.5) * (row[1] - 0.5) * 12 / 1000;
        }
        assertTrue(Math.abs(together) < 0.1, "correlation of two axes " + together);
    }

    /**
     * What makes Sobol' points a net (I. M. Sobol', 1967: from memory): of 2^m points from a multiple of 2^m on, every one of
     * 2^m equal slices of an axis has one; in the first two axes every one of 4 × 4 squares has one of 16. A shift of the digits
     * keeps it.
     */
    @Test
    void sobolPointsFillEverySliceAndSquareAlike() {
        double[][] rows = Sampling.SOBOL.points(30, 4096, 5).rows(0, 4096);
        for (int from : new int[] {0, 256, 1024}) {
            for (int j = 0; j < 30; j++) {
                int[] slices = new int[256];
                for (int i = 0; i < 256; i++) {
                    slices[(int) (rows[from + i][j] * 256)]++;
                }
                for (int slice : slices) {
                    assertEquals(1, slice);
                }
            }
        }
        int[] squares = new int[16];
        for (int i = 0; i < 16; i++) {
            squares[4 * (int) (rows[i][0] * 4) + (int) (rows[i][1] * 4)]++;
        }
        for (int square : squares) {
            assertEquals(1, square);
        }
    }

    /** The mean of a product of 1 + (x − ½)/2 over the unit cube is 1: by points as even as these to a thousandth. */
    @Test
    void sobolPointsTakeAMeanCloserThanIndependentOnes() {
        double bySobol = Math.abs(meanOfProduct(Sampling.SOBOL) - 1);
        double byChance = Math.abs(meanOfProduct(Sampling.RANDOM) - 1);
        assertTrue(bySobol < 1e-3, "off by " + bySobol);
        assertTrue(bySobol < byChance, bySobol + " against " + byChance);
    }

    private static double meanOfProduct(Sampling sampling) {
        double sum = 0;
        for (double[] row : sampling.points(8, 4096, 2).rows(0, 4096)) {
            double product = 1;
            for (double value : row) {
                product *= 1 + (value - 0.5) / 2;
            }
            sum += product / 4096;
        }
        return sum;
    }

    @Test
    void badNumbersOfPointsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> Sampling.SOBOL.points(0, 10, 1));
        assertThrows(IllegalArgumentException.class, () -> Sampling.SOBOL.points(30_000, 10, 1));
        assertThrows(IllegalArgumentException.class, () -> Sampling.RANDOM.points(1, 0, 1));
    }

    @Test
    void blocksAreTakenInOrderWhateverTheThreads() {
        ExecutorService pool = Executors.newFixedThreadPool(3);
        try {
            List<String> alone = new ArrayList<>();
            List<String> several = new ArrayList<>();
            Crew.alone().inOrder(1000, 64, (from, to) -> from + "-" + to, alone::add);
            new Crew(pool, 3, () -> false, (done, all) -> {})
                    .inOrder(1000, 64, (from, to) -> from + "-" + to, several::add);
            assertEquals(alone, several);
            assertEquals(16, alone.size());
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void aStoppedCrewKeepsWhatIsDone() {
        List<Integer> taken = new ArrayList<>();
        List<Long> told = new ArrayList<>();
        Crew crew = new Crew(Runnable::run, 1, () -> taken.size() == 3, (done, all) -> told.add(done));
        assertEquals(300, crew.inOrder(1000, 100, (from, to) -> from, taken::add));
        assertEquals(List.of(0, 100, 200), taken);
        assertEquals(List.of(100L, 200L, 300L), told);
    }

    @Test
    void aFailingBlockFailsTheStudyWithItsOwnWords() {
        IllegalStateException failed = assertThrows(
                IllegalStateException.class,
                () -> Crew.alone()
                        .inOrder(
                                10,
                                5,
                                (from, to) -> {
                                    throw new IllegalStateException("broken");
                                },
                                each -> {}));
        assertEquals("broken", failed.getMessage());
    }
}

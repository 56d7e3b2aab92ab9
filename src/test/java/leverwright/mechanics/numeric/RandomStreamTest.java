package leverwright.mechanics.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The stream against the JDK's SplittableRandom, whose algorithm is SplitMix64. */
class RandomStreamTest {
    @Test
    void givesTheBitsOfSplitMix() {
        RandomStream own = new RandomStream(42);
        SplittableRandom other = new SplittableRandom(42);
        for (int i = 0; i < 1000; i++) {
            assertEquals(other.nextLong(), own.nextLong());
        }
    }

    @Test
    void spreadsNormalNumbersAsTheirLawSays() {
        RandomStream random = new RandomStream(7);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < 100_000; i++) {
            double x = random.nextNormal();
            sum += x;
            squares += x * x;
        }
        assertEquals(0, sum / 100_000, 0.015);
        assertEquals(1, squares / 100_000, 0.02);
    }

    @Test
    void staysInItsRange() {
        RandomStream random = new RandomStream(8);
        for (int i = 0; i < 1000; i++) {
            double between = random.nextBetween(-2, 3);
            assertTrue(between >= -2 && between < 3);
            int index = random.nextIndex(4);
            assertTrue(index >= 0 && index < 4);
        }
    }
}

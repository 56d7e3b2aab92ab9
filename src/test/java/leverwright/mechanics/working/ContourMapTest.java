package leverwright.mechanics.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class ContourMapTest {
    private static final Curves.Axis ACROSS = new Curves.Axis("lean", Unit.DEGREE, List.of(0.0, 1.0, 3.0));
    private static final Curves.Axis UP = new Curves.Axis("bar", Unit.KILOGRAM, List.of(10.0, 20.0));

    private static ContourMap map(List<Double> levels, @Nullable Double... values) {
        return new ContourMap(
                "map",
                "hip",
                Unit.NEWTON_METRE,
                Sides.TOTAL,
                ACROSS,
                UP,
                Arrays.asList(values),
                levels,
                null,
                null,
                List.of());
    }

    @Test
    void nodesAreCountedRowByRowFromTheFoot() {
        ContourMap map = map(List.of(), 1.0, 2.0, 3.0, 4.0, 5.0, null);
        assertEquals(3.0, map.at(2, 0));
        assertEquals(5.0, map.at(1, 1));
        assertNull(map.at(2, 1));
    }

    /** x·y is linear along either side alone, so that what lies between its nodes is exact. */
    @Test
    void betweenNodesAProductIsExact() {
        ContourMap map = map(List.of(), 0.0, 10.0, 30.0, 0.0, 20.0, 60.0);
        for (double x : new double[] {0, 0.25, 1, 2.5, 3}) {
            for (double y : new double[] {10, 12.5, 20}) {
                Double between = map.between(x, y);
                assertNotNull(between);
                assertEquals(x * y, between, 1e-12);
            }
        }
    }

    @Test
    void outsideAndBesideAGapThereIsNoValue() {
        ContourMap map = map(List.of(), 0.0, 10.0, 30.0, 0.0, 20.0, null);
        assertNull(map.between(3.1, 15));
        assertNull(map.between(1, 9.9));
        assertNull(map.between(2, 15));
        assertNotNull(map.between(0.5, 15));
    }

    @Test
    void whatIsNoMapIsRefusedInWords() {
        assertTrue(message(() -> map(List.of(), 1.0)).contains("1 values for 3 by 2 settings"));
        assertTrue(message(() -> map(List.of(), 1.0, 2.0, 3.0, 4.0, 5.0, Double.NaN))
                .contains("holds NaN"));
        assertTrue(message(() -> map(List.of(2.0, 1.0), 1.0, 2.0, 3.0, 4.0, 5.0, 6.0))
                .contains("level 2 does not"));
    }

    private static String message(Runnable work) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, work::run).getMessage());
    }
}

package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.Quantity;
import leverwright.run.result.TableResult;
import org.junit.jupiter.api.Test;

class TableSidesTest {
    @Test
    void aColumnOfOneSideSaysItInItsHeading() {
        TableSides sides =
                new TableSides(table(List.of(Sides.PER_SIDE, Sides.TOTAL), List.of(Sides.PER_SIDE, Sides.TOTAL)));
        assertEquals("a, per side", sides.heading(0));
        assertEquals("b, total", sides.heading(1));
        assertFalse(sides.hasColumn());
        assertEquals("", sides.beside(0, entry(Sides.PER_SIDE)));
    }

    @Test
    void aMixedColumnGetsAColumnThatSaysWhichSideARowCounts() {
        TableResult table = table(List.of(Sides.PER_SIDE, Sides.NOT_SIDED), List.of(Sides.TOTAL, Sides.NOT_SIDED));
        TableSides sides = new TableSides(table);
        assertEquals("a", sides.heading(0));
        assertTrue(sides.hasColumn());
        assertEquals("per side", sides.ofRow(table.rows().get(0)));
        assertEquals("total", sides.ofRow(table.rows().get(1)));
        assertEquals("", sides.beside(0, entry(Sides.PER_SIDE)));
    }

    @Test
    void severalMixedColumnsSayItBesideEachNumber() {
        TableSides sides =
                new TableSides(table(List.of(Sides.PER_SIDE, Sides.TOTAL), List.of(Sides.TOTAL, Sides.PER_SIDE)));
        assertFalse(sides.hasColumn());
        assertEquals("per side", sides.beside(0, entry(Sides.PER_SIDE)));
        assertEquals("total", sides.beside(1, entry(Sides.TOTAL)));
    }

    private static TableResult table(List<Sides> first, List<Sides> second) {
        return new TableResult(
                "t",
                List.of("a", "b"),
                List.of(
                        List.of(entry(first.get(0)), entry(first.get(1))),
                        List.of(entry(second.get(0)), entry(second.get(1)))),
                List.of());
    }

    private static TableResult.NumberEntry entry(Sides sides) {
        return new TableResult.NumberEntry(Quantity.exact(1, Unit.NEWTON), sides, null);
    }
}

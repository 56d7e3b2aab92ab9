package leverwright.face.desk.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.face.SampleResults;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.Quantity;
import leverwright.run.result.TableResult;
import org.junit.jupiter.api.Test;

class ShownTableTest {

    private static TableResult with(TableResult table, int row, int column, double value, Unit unit, Sides sides) {
        List<List<TableResult.Entry>> rows = new ArrayList<>();
        for (int i = 0; i < table.rows().size(); i++) {
            List<TableResult.Entry> entries = new ArrayList<>(table.rows().get(i));
            if (i == row) {
                entries.set(column, new TableResult.NumberEntry(Quantity.exact(value, unit), sides, null));
            }
            rows.add(entries);
        }
        return new TableResult(table.title(), table.headings(), rows, table.notes());
    }

    private static List<String> headings(ShownTable table) {
        return table.columns().stream().map(ShownTable.Column::heading).toList();
    }

    @Test
    void withoutAHeldSettingThereAreNoChanges() {
        assertEquals(
                List.of("joint", "extension moment", "load above", "load arm", "counts"),
                headings(ShownTable.of(SampleResults.table(), null)));
    }

    @Test
    void onlyColumnsThatChangedShowTheChange() {
        TableResult before = SampleResults.table();
        TableResult now = with(before, 0, 1, 143.04, Unit.NEWTON_METRE, Sides.PER_SIDE);
        ShownTable shown = ShownTable.of(now, before);
        assertEquals(
                List.of("joint", "extension moment", "change", "load above", "load arm", "counts"), headings(shown));
        assertEquals("+20.0 N·m", shown.rows().get(0).get(2).text());
        assertEquals("same", shown.rows().get(1).get(2).text());
    }

    @Test
    void aBandThatChangedByItselfIsAChange() {
        Quantity narrow = new Quantity(120, 118, 122, Unit.NEWTON_METRE);
        Quantity broad = new Quantity(120, 107.8, 126, Unit.NEWTON_METRE);
        Quantity none = Quantity.exact(120, Unit.NEWTON_METRE);
        assertEquals("was 107.8 to 126.0", Change.words(broad, narrow));
        assertEquals("had no band", Change.words(none, narrow));
        assertEquals("same", Change.words(narrow, narrow));
        assertTrue(Change.isChange(none, broad));
    }

    @Test
    void rowsAreFoundAgainByTheirFirstWords() {
        TableResult before = SampleResults.table();
        List<List<TableResult.Entry>> fewer =
                before.rows().subList(1, before.rows().size());
        TableResult now = with(
                new TableResult(before.title(), before.headings(), fewer, before.notes()),
                0,
                1,
                -20.59,
                Unit.NEWTON_METRE,
                Sides.PER_SIDE);
        ShownTable shown = ShownTable.of(now, before);
        assertEquals("+3.00 N·m", shown.rows().get(0).get(2).text());
        assertEquals("same", shown.rows().get(1).get(2).text());
    }

    @Test
    void rowsAreSortedByValueAndNotByItsDigits() {
        ShownTable shown = ShownTable.of(SampleResults.table(), null);
        assertEquals(List.of(1, 2, 0, 3), shown.order(1, false));
        assertEquals(List.of(3, 0, 2, 1), shown.order(1, true));
        assertEquals(List.of(2, 0, 1, 3), shown.order(0, false));
        assertEquals(List.of(0, 1, 2, 3), shown.order(-1, false));
    }

    @Test
    void columnsShareTheWidthThereIs() {
        double[] wide = GridWidths.share(new double[] {50, 60}, new double[] {80, 100}, 400);
        assertEquals(400, wide[0] + wide[1], 1e-9);
        assertEquals(100, wide[1], 1e-9);
        double[] tight = GridWidths.share(new double[] {50, 60}, new double[] {80, 100}, 140);
        assertTrue(tight[0] >= 50 && tight[1] >= 60 && tight[0] + tight[1] <= 140, tight[0] + " " + tight[1]);
        double[] narrow = GridWidths.share(new double[] {50, 60}, new double[] {80, 100}, 55);
        assertTrue(narrow[0] + narrow[1] <= 55);
    }
}

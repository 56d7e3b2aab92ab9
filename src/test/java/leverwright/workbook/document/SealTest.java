package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.CellState;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import org.junit.jupiter.api.Test;

class SealTest {

    private final Workbook sheet = Workbook.empty("The torso leans")
            .withAdded(0, new NoteCell("n1", "Guess first."))
            .withAdded(1, new ScriptCell("c1", "var a = 1;"))
            .withDial("Torso lean", "45 deg");

    private static WorkbookRecord record(Workbook workbook, double value) {
        NumberResult number = new NumberResult(
                "moment", Quantity.exact(value, Unit.NEWTON_METRE), Sides.PER_SIDE, null, false, List.of());
        CellRecord cell = CellRecord.of(CellState.FRESH, "", List.of(), List.of(number));
        return WorkbookRecord.of(workbook, "0.1.0", "17", 1, Map.of("c1", cell));
    }

    /** The digest was computed by another program: {@code sha256sum} of the canonical text, written by hand. */
    @Test
    void theSealIsTheDigestOfTheCanonicalForm() {
        assertEquals("sha256:4be71e95f5419fde7323d3f1d66f96fa61f52185eb12a67806776605a715c55c", Seal.of(sheet));
    }

    @Test
    void aSealedWorkbookIsIntactUntilSheetDialsOrRecordChange() {
        Workbook sealed = Seal.seal(sheet.withRecord(record(sheet, 120)));
        assertEquals(Seal.State.INTACT, Seal.state(sealed));
        assertEquals(Seal.State.INTACT, Seal.state(WorkbookFormat.read(WorkbookFormat.write(sealed))));
        assertEquals(Seal.State.INTACT, Seal.state(sealed.withWords("Another title", "", "")));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withText("n1", "Guess now.")));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withText("c1", "var a = 2;")));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withMoved("c1", 0)));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withDial("Torso lean", "46 deg")));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withoutRecord()));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withRecord(record(sheet, Math.nextUp(120.0)))));
        assertEquals(Seal.State.CHANGED, Seal.state(sealed.withSeal(Optional.of("sha256:0"))));
        assertEquals(Seal.State.NONE, Seal.state(sealed.withSeal(Optional.empty())));
    }

    @Test
    void theOrderOfKeysDoesNotChangeTheSeal() {
        Map<String, String> dials = new LinkedHashMap<>();
        dials.put("b", "1");
        dials.put("a", "2");
        Map<String, String> turned = new LinkedHashMap<>();
        turned.put("a", "2");
        turned.put("b", "1");
        assertEquals(Seal.of(sheet.withDials(dials)), Seal.of(sheet.withDials(turned)));
    }

    @Test
    void theDigestOfTheScriptsLooksPastNotesAndDials() {
        String digest = Seal.scripts(sheet);
        assertEquals(16, digest.length());
        assertEquals(digest, Seal.scripts(sheet.withText("n1", "Other words.").withDial("Torso lean", "50 deg")));
        assertNotEquals(digest, Seal.scripts(sheet.withText("c1", "var a = 3;")));
    }

    @Test
    void aRecordIsCurrentWhileScriptsAndDialsAreThoseItWasComputedFrom() {
        Workbook recorded = sheet.withRecord(record(sheet, 120));
        assertEquals(false, sheet.recordIsCurrent());
        assertEquals(true, recorded.recordIsCurrent());
        assertEquals(true, recorded.withText("n1", "Other words.").recordIsCurrent());
        assertEquals(false, recorded.withText("c1", "var a = 2;").recordIsCurrent());
        assertEquals(false, recorded.withDial("Torso lean", "50 deg").recordIsCurrent());
        assertEquals(
                true,
                recorded.withDial("Torso lean", "50 deg")
                        .withDial("Torso lean", "45 deg")
                        .recordIsCurrent());
    }
}

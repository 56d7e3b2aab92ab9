package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import leverwright.run.result.CellState;
import leverwright.run.result.Result;
import org.junit.jupiter.api.Test;

/** A study that takes long tells how far it is, and a stop keeps what is done. */
class StudyInSessionTest {
    private static final String LONG = """
            var ines = lifter("Ines").of(FEMALE, cm(178), kg(71));
            spread(backSquat().barbell(kg(30)).by(ines)).vary(BAR, withinLimits(kg(5))).draws(20_000_000).of(peak(moment(HIP)))
            """;

    @Test
    void aStopKeepsTheDrawsThatAreDone() {
        List<String> told = new CopyOnWriteArrayList<>();
        AtomicReference<Session> open = new AtomicReference<>();
        SessionListener listener = outcome -> {
            Session session = open.get();
            if (outcome.state() == CellState.RUNNING && !outcome.message().isEmpty() && session != null) {
                told.add(outcome.message());
                session.stop();
            }
        };
        try (Session session = Session.open(new SessionOptions(false, 1, Map.of(), listener))) {
            open.set(session);
            CellOutcome outcome = session.run(List.of(new CellScript("long", LONG)))
                    .outcomes()
                    .get(0);
            assertTrue(told.get(0).matches("\\d+ of 20000000, about \\d+ (s|minutes) left"), told.get(0));
            assertEquals(CellState.FAILED, outcome.state());
            assertEquals("stopped", outcome.message());
            assertEquals(1, outcome.results().size());
            Result table = outcome.results().get(0);
            assertTrue(
                    table.notes().stream().anyMatch(note -> note.startsWith("Stopped: of 20000000 draws")),
                    () -> "" + table.notes());
            CellOutcome after = session.run(List.of(new CellScript("short", "show(\"one\", 1)")))
                    .outcomes()
                    .get(0);
            assertEquals(CellState.FRESH, after.state());
        }
    }
}

package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicReference;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.Result;
import leverwright.run.result.Verdict;
import org.junit.jupiter.api.Test;

/** A study that takes long tells how far it is, and a stop keeps what is done. */
class StudyInSessionTest {
    /** What a student could write who wonders where the moments go. */
    private static final String WHERE_MOMENTS_GO = """
            var oda = lifter("Oda").of(FEMALE, cm(169), kg(62));
            var squat = backSquat().barbell(kg(60)).thighs(deg(20)).torsoLean(deg(35)).by(oda);
            sweep(TORSO_LEAN).from(deg(20)).to(deg(50)).points(31).of(squat).chart(moment(KNEE), moment(HIP), sum(moment(KNEE), moment(HIP)));
            var thighs = oda.body().segment(THIGH);
            var above = 62 + 60 - thighs.mass() - oda.body().segment(SHANK).mass() - oda.body().segment(FOOT).mass();
            var ahead = Math.abs(squat.posture().reach(THIGH).value().si());
            var both = 9.80665 * (above * ahead + thighs.mass() * ahead * (1 - thighs.centre() / thighs.length()));
            spread(squat).vary(TORSO_LEAN, withinLimits(deg(20), deg(50))).vary(PRESSURE, withinLimits(percent(40), percent(60))).draws(300)
                .of(sum(moment(KNEE), moment(HIP)))
                .holds("Leaning torso or shank moves moment between knee and hip and changes nothing of both together",
                    sum(moment(KNEE), moment(HIP)), between(newtonMetres(both / 2 - 1e-9), newtonMetres(both / 2 + 1e-9)));
            """;

    private static final String LONG = """
            var ines = lifter("Ines").of(FEMALE, cm(178), kg(71));
            spread(backSquat().barbell(kg(30)).by(ines)).vary(BAR, withinLimits(kg(5))).draws(20_000_000).of(peak(moment(HIP)))
            """;

    /**
     * Static squat on two legs: the extension moments of both knees and hips are g·[(mass above the hip + bar)·(x_knee − x_hip) +
     * mass of the thighs·(x_knee − x_centre of the thighs)], which has the thigh's angle alone in it (equilibrium of the thighs and
     * all above them about the knee, and of all above them about the hip).
     */
    @Test
    void aStudentFindsThatTheThighAloneSetsKneeAndHipTogether() {
        try (Session session = Session.open(SessionOptions.standard())) {
            CellOutcome outcome = session.run(List.of(new CellScript("moments", WHERE_MOMENTS_GO)))
                    .outcomes()
                    .get(0);
            assertEquals(CellState.FRESH, outcome.state(), outcome.message());
            Curves curves = ((CurvesResult) outcome.results().get(0)).curves();
            assertTrue(spanOf(curves.curves().get(0)) > 50, "the knee's moment changes");
            assertEquals(0, spanOf(curves.curves().get(2)), 1e-9, "both together do not");
            ClaimResult claim = (ClaimResult) outcome.results().get(2);
            assertEquals(Verdict.HOLDS, claim.verdict(), claim.reason());
        }
    }

    private static double spanOf(Curves.Curve curve) {
        List<Double> values =
                curve.values().stream().map(Objects::requireNonNull).toList();
        return Collections.max(values) - Collections.min(values);
    }

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

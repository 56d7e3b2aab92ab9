package leverwright.workbook.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.CellState;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.SessionOptions;
import org.junit.jupiter.api.Test;

class ExerciseShelfTest {

    private static ExerciseShelf.Entry entry(String name) {
        return ExerciseShelf.entries().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static int place(ExerciseShelf.Entry entry, String constant) {
        return entry.knobs().stream()
                .map(ExerciseShelf.Setting::constant)
                .toList()
                .indexOf(constant);
    }

    @Test
    void everyExerciseHasAFigureAndThoseThatMoveCurves() {
        assertEquals(Catalogue.exercises().size(), ExerciseShelf.entries().size());
        for (ExerciseShelf.Entry entry : ExerciseShelf.entries()) {
            ExerciseShelf.View view = ExerciseShelf.view(entry, Map.of(), ExerciseShelf.byInes());
            assertFalse(view.sketch().shapes().isEmpty(), entry.name());
            if (entry.way().isPresent()) {
                assertNotNull(view.curves(), entry.name());
            }
            assertEquals(List.of(), view.remarks(), entry.name());
        }
    }

    /** Every line that the catalogue writes for a cell is Java that computes: with every knob set, and with all that is shown. */
    @Test
    void everyLineComputesInACell() {
        StringBuilder knobs = new StringBuilder();
        List<CellScript> scripts = new ArrayList<>();
        scripts.add(new CellScript("ines", "var ines = lifter(\"Ines\").of(FEMALE, cm(178), kg(71));"));
        StringBuilder shows = new StringBuilder();
        for (ExerciseShelf.Entry entry : ExerciseShelf.entries()) {
            Map<Integer, Double> all = new LinkedHashMap<>();
            for (int k = 0; k < entry.knobs().size(); k++) {
                all.put(k, entry.knobs().get(k).standard());
            }
            knobs.append(line(entry, all)).append('\n');
            String name = "my" + entry.word();
            shows.append(ExerciseShelf.script(entry, name, Map.of(), ExerciseShelf.byInes(), true, true, true))
                    .append('\n');
        }
        scripts.add(new CellScript("knobs", knobs + "show(\"done\", 1)"));
        scripts.add(new CellScript("shows", shows.toString()));
        try (Session session = Session.open(SessionOptions.standard())) {
            for (CellOutcome outcome : session.run(scripts).outcomes()) {
                assertEquals(CellState.FRESH, outcome.state(), () -> outcome.id() + ": " + outcome.message());
            }
        }
    }

    /** The first line alone: settings that contradict each other may be written, though no posture has them. */
    private static String line(ExerciseShelf.Entry entry, Map<Integer, Double> all) {
        StringBuilder line = new StringBuilder("var k" + entry.word() + " = " + entry.word() + "()");
        all.forEach((place, si) -> {
            ExerciseShelf.Setting knob = entry.knobs().get(place);
            line.append('.').append(knob.word()).append(knob.inCell(si)).append(')');
        });
        return line + ";";
    }

    @Test
    void settingsStandInTheLineAsPeopleWriteThem() {
        ExerciseShelf.Entry front = entry("Front squat");
        Map<Integer, Double> set = new LinkedHashMap<>();
        set.put(place(front, "BAR"), 62.5);
        set.put(place(front, "PRESSURE"), 0.4);
        set.put(place(front, "TORSO_LEAN"), Unit.DEGREE.toSi(-5));
        String script = ExerciseShelf.script(front, "mine", set, ExerciseShelf.byInes(), true, false, true);
        assertEquals(
                List.of(
                        "var mine = frontSquat().torsoLean(deg(-5)).with(PRESSURE, percent(40)).barbell(kg(62.5));",
                        "figure(mine.by(ines).posture()).loadArms(KNEE, HIP, ANKLE);",
                        "sweep(THIGH_ABOVE_LEVEL).from(deg(0)).to(deg(90)).of(mine.alongItsWay().by(ines)).chart(moment(KNEE),"
                                + " moment(HIP), moment(ANKLE));"),
                script.lines().toList());
    }

    @Test
    void impossibleSettingsAreAnsweredInWords() {
        ExerciseShelf.Entry step = entry("Step-up");
        String words = assertThrows(
                        IllegalArgumentException.class,
                        () -> ExerciseShelf.view(step, Map.of(place(step, "STEP_HEIGHT"), 0.8), ExerciseShelf.byInes()))
                .getMessage();
        assertTrue(words.contains("the step is 0.8 m high"), words);
        ExerciseShelf.Entry thrust = entry("Hip thrust");
        List<String> remarks = ExerciseShelf.view(
                        thrust, Map.of(place(thrust, "BENCH_FORCE"), 1500.0), ExerciseShelf.byInes())
                .remarks();
        assertTrue(remarks.toString().contains("would slide"), remarks.toString());
    }
}

package leverwright.workbook.scenario;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.load.Resistances;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A catalogue exercise as a scenario, with loads beside its own; and the lifters of a workbook. */
class ExerciseScenarioTest {
    private static final String SQUAT = """
            {"format":"leverwright-scenario","version":1,"kind":"exercise","exercise":"Back squat",
             "lifter":{"sex":"female","stature":1.78,"mass":71},
             "knobs":{"Bar":60,"Thigh above level":0.2},
             "added":[{"kind":"vest","mass":5},{"kind":"chains","mass":16,"length":1.6},
              {"kind":"band","restLength":0.6,"stretched":[[0.3,70],[0.9,150]],"anchor":[0.15,0]}]}
            """;

    private static JsonCursor answer(String json) {
        ScenarioAnswer answer = ScenarioSolver.solve("squat.json", json);
        assertTrue(answer.solved(), answer.problem());
        return JsonCursor.at(JsonReader.read(answer.line().getBytes(StandardCharsets.UTF_8), JsonLimits.STANDARD));
    }

    @Test
    void addedLoadsCountAsInACell() {
        HeldPosture held = Exercises.backSquat()
                .vest(kg(5))
                .chains(kg(16), cm(160))
                .band(
                        Resistances.band(cm(60)).stretched(cm(30), newtons(70)).stretched(cm(90), newtons(150)),
                        cm(15),
                        cm(0))
                .barbell(kg(60))
                .thighs(leverwright.mechanics.measure.Measures.rad(0.2))
                .by(Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71)))
                .posture();
        for (JsonCursor joint : answer(SQUAT).member("joints").elements()) {
            for (Joint each : List.of(Joint.KNEE, Joint.HIP, Joint.LOW_BACK)) {
                if (joint.member("joint").text().equals(each.words())) {
                    assertEquals(
                            held.moment(each).value().si(),
                            joint.member("moment").number(),
                            1e-9,
                            each.words());
                }
            }
        }
    }

    @Test
    void aGuideIsAddedByItsKey() {
        String guided = SQUAT.replaceAll("(?s)\"added\".*", "\"added\":[{\"kind\":\"guide\"}]}");
        assertEquals("balanced", answer(guided).member("standing").text());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "\"Back squat\"|\"Black squat\"|exercise|names no exercise",
                "\"Bar\":60|\"Bar\":6000|knobs.Bar|allowed: 0 kg to",
                "\"Bar\":60|\"Barr\":60|knobs.Barr|it has: Bar",
                "\"female\"|\"woman\"|lifter.sex|\"female\", \"male\"",
                "\"kind\":\"vest\"|\"kind\":\"waistcoat\"|added[0].kind|\"vest\", \"chains\", \"band\", \"guide\"",
                "[0.9,150]|[0.2,150]|added[2]|positions that rise",
                "\"Back squat\"|\"Lateral raise\"|exercise|it has"
            })
    void badKeysAreToldWithTheirPlaceAndWhatIsAllowed(String right, String wrong, String place, String words) {
        ScenarioAnswer answer = ScenarioSolver.solve("squat.json", SQUAT.replace(right, wrong));
        assertTrue(!answer.solved());
        assertTrue(answer.problem().contains(words), answer.problem());
        if (!wrong.contains("Lateral")) {
            assertTrue(answer.problem().contains(place), answer.problem());
        }
    }

    @Test
    void liftersAreReadFromScripts() {
        List<ExerciseShelf.Trying> people = LifterLines.in("""
                var ines = lifter("Ines").of(FEMALE, cm(178), kg(71));
                var oda  = lifter("Oda").of(FEMALE, m(1.69), kg(62)).thigh(cm(41));
                var rudi = lifter("Rudi").of(MALE, feetInches(6, 1), lb(190)).segments(WINTER);
                var giant = lifter("Goliath").of(MALE, m(25), kg(90));
                var squat = backSquat();
                """);
        assertEquals(
                List.of("Ines, ines", "Oda, oda", "Rudi, rudi"),
                people.stream().map(ExerciseShelf.Trying::toString).toList());
        assertEquals(0.41, people.get(1).lifter().body().segment(Segment.THIGH).length(), 1e-12);
        assertEquals(1.8542, people.get(2).lifter().stature().si(), 1e-9);
    }

    @Test
    void addedLoadsStandInTheLineAndLoadTheFigure() {
        ExerciseShelf.Entry entry = ExerciseShelf.entries().stream()
                .filter(each -> each.name().equals("Back squat"))
                .findFirst()
                .orElseThrow();
        AddedLoads added = new AddedLoads(
                5,
                16,
                1.6,
                Optional.of(AddedLoads.Tied.of(
                        0.6,
                        List.of(new double[] {0.3, 70}, new double[] {0.9, 150}),
                        List.of(new double[] {0.9, 145}),
                        0.15,
                        0)),
                true);
        ExerciseShelf.Trying trying = ExerciseShelf.byInes().with(added);
        String script = ExerciseShelf.script(entry, "mine", Map.of(), trying, true, false, false);
        assertTrue(
                script.startsWith("var mine = backSquat().vest(kg(5)).chains(kg(16), cm(160)).band(band(cm(60))"
                        + ".stretched(cm(30), newtons(70)).stretched(cm(90), newtons(150)).returned(cm(90), newtons(145)),"
                        + " cm(15), cm(0)).guidedBar();\n"),
                script);
        ExerciseShelf.View view = ExerciseShelf.view(entry, Map.of(), trying);
        assertTrue(view.sketch().shapes().toString().contains("vest"));
    }
}

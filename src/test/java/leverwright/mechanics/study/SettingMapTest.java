package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.BAR;
import static leverwright.mechanics.exercise.Knobs.DUMBBELL;
import static leverwright.mechanics.exercise.Knobs.ELBOW_FLEXION;
import static leverwright.mechanics.exercise.Knobs.SHANK_LEAN;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.flexionMoment;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.study.Sweep.sweep;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.RomanianDeadlift;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Listing;
import org.junit.jupiter.api.Test;

class SettingMapTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final RomanianDeadlift HINGE =
            romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(deg(45));

    private static SettingMap hinge() {
        return SettingMap.of(
                sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).points(15),
                sweep(BAR).to(kg(100)).step(kg(10)),
                HINGE.by(INES));
    }

    private static double alone(double lean, double bar) {
        return HINGE.barbell(kg(bar))
                .by(INES)
                .with(TORSO_LEAN, deg(0).with(lean, 0))
                .posture()
                .moment(HIP)
                .value()
                .si();
    }

    @Test
    void everyNodeSaysWhatItsPostureSaysAlone() {
        ContourMap map = hinge().map(moment(HIP));
        assertEquals(15, map.columns());
        assertEquals(11, map.rows());
        for (int column = 0; column < 15; column += 7) {
            for (int row = 0; row < 11; row += 5) {
                assertEquals(alone(map.across().values().get(column), 10.0 * row), map.at(column, row), 0.0);
            }
        }
        assertEquals(deg(45).si(), map.presentAcross());
        assertEquals(50.0, map.presentUp());
    }

    /** Statics is linear in a weight where the posture does not follow it: at each angle, moments lie on one line. */
    @Test
    void momentsGrowInStepWithTheDumbbellAtEveryAngle() {
        ContourMap map = SettingMap.of(
                        sweep(ELBOW_FLEXION).from(deg(0)).to(deg(130)).points(14),
                        sweep(DUMBBELL).to(kg(20)).step(kg(2)),
                        dumbbellCurl().by(INES))
                .map(flexionMoment(ELBOW));
        for (int column = 0; column < map.columns(); column++) {
            double[] at = new double[map.rows()];
            for (int row = 0; row < at.length; row++) {
                Double value = map.at(column, row);
                assertNotNull(value);
                at[row] = value;
            }
            for (int row = 1; row + 1 < at.length; row++) {
                assertEquals((at[row - 1] + at[row + 1]) / 2, at[row], 1e-9 * Math.abs(at[row]) + 1e-9);
            }
        }
    }

    @Test
    void twoThreadsGiveTheSameBitsAsOne() throws Exception {
        ContourMap one = SettingMap.of(
                        sweep(TORSO_LEAN).points(90), sweep(BAR).to(kg(101)).points(50), HINGE.by(INES))
                .map(moment(KNEE));
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            ContourMap two = SettingMap.of(
                            sweep(TORSO_LEAN).points(90),
                            sweep(BAR).to(kg(101)).points(50),
                            HINGE.by(lifter("Other name").of(FEMALE, cm(178), kg(71))))
                    .map(new Crew(threads, 2, () -> false, (done, all) -> {}), moment(KNEE));
            assertEquals(one.values(), two.values());
        } finally {
            threads.shutdown();
        }
    }

    @Test
    void onceStoppedItEndsAtTheLastWholeRow() {
        long[] told = {0};
        Crew crew = new Crew(Runnable::run, 1, () -> told[0] >= 1000, (done, all) -> told[0] = done);
        ContourMap map = SettingMap.of(
                        sweep(TORSO_LEAN).points(100), sweep(BAR).to(kg(99)).points(100), HINGE.by(INES))
                .map(crew, moment(HIP));
        assertTrue(map.rows() >= 10 && map.rows() < 100, "rows " + map.rows());
        assertEquals(
                "Stopped: " + map.rows() + " of 100 rows are done, from the foot on.",
                map.notes().get(0));
    }

    @Test
    void nodesWithoutAPostureAreLeftOutAndToldOf() {
        ContourMap map = SettingMap.of(
                        sweep(TORSO_LEAN).points(21),
                        sweep(SHANK_LEAN).points(21),
                        backSquat().barbell(kg(40)).thighs(Exercises.LEVEL).by(INES))
                .map(moment(KNEE));
        assertNull(map.at(0, 0));
        assertTrue(
                map.notes().stream()
                        .anyMatch(note -> note.startsWith("No value at ") && note.contains("would fall backward")),
                map.notes().toString());
    }

    @Test
    void theTableShowsTheTopRowFirst() {
        Listing table = hinge().table(Crew.alone(), moment(HIP));
        assertEquals("Bar, by Torso lean", table.headings().get(0));
        assertEquals(10, table.headings().size());
        assertTrue(
                table.rows().get(0).get(0).toString().contains("100"),
                table.rows().get(0).get(0).toString());
    }

    @Test
    void whatCannotBeMappedIsRefusedInWords() {
        assertTrue(message(() -> SettingMap.of(sweep(TORSO_LEAN), sweep(TORSO_LEAN), HINGE.by(INES)))
                .contains("a map turns Torso lean both ways"));
        assertTrue(message(() -> SettingMap.of(sweep(TORSO_LEAN).points(401), sweep(BAR), HINGE.by(INES)))
                .contains("401 settings of Torso lean; allowed: 2 to 400"));
        assertTrue(message(() -> SettingMap.of(sweep(TORSO_LEAN).from(deg(60)).to(deg(20)), sweep(BAR), HINGE.by(INES)))
                .contains("from a smaller to a larger"));
        assertTrue(message(() -> sweep(TORSO_LEAN).points(1e12)).contains("would take about"));
    }

    private static String message(Runnable work) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, work::run).getMessage());
    }
}

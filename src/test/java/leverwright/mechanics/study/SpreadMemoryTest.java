package leverwright.mechanics.study;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Exercises;
import leverwright.mechanics.exercise.Knobs;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.numeric.Crew;
import org.junit.jupiter.api.Test;

/** A spread's room does not grow with its draws: a process with a small heap makes far more draws than fit into it. */
class SpreadMemoryTest {
    private static final int DRAWS = 600_000;
    private static final String HEAP = "-Xmx16m";

    /** Kept, two results of each draw and its point would take 600,000 × 4 × 8 bytes = 19 MB. */
    @Test
    void moreDrawsThanTheHeapHoldsAreMade() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(List.of(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        HEAP,
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SpreadMemoryTest.class.getName(),
                        String.valueOf(DRAWS)))
                .redirectErrorStream(true)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertTrue(process.waitFor(2, TimeUnit.MINUTES), said);
        assertEquals(0, process.exitValue(), said);
        assertEquals(DRAWS, Integer.parseInt(said.strip()), said);
    }

    /** Makes as many draws as asked for and prints how many were made. */
    public static void main(String[] arguments) {
        Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
        SpreadResult drawn = Spread.of(
                        Exercises.dumbbellCurl().elbowFlexion(deg(80)).by(ines))
                .vary(Knobs.ELBOW_FLEXION, Uncertainty.withinLimits(deg(5)))
                .vary(Knobs.DUMBBELL, Uncertainty.withinLimits(kg(1)))
                .draws(Integer.parseInt(arguments[0]))
                .of(Crew.alone(), Readings.flexionMoment(Joint.ELBOW), Readings.flexionMoment(Joint.SHOULDER));
        System.out.println(drawn.done());
    }
}

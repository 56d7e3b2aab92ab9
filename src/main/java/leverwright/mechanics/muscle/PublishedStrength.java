package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Moment;

/**
 * Mean strengths of people, one side (low back in total), held still unless said, as N·m per kilogram of body mass. Where a
 * source gives N·m alone, men of 75 kg and women of 62 kg are assumed.
 *
 * <p>Knee extension, middle of the pooled mean's 95 % CI at mid-range, and knee flexion of men: Sarabon 2021; knee flexion of
 * women by the ratio of the extensions (derived). Plantarflexion 207.8 N·m dorsiflexed 25° and dorsiflexion 47.2 N·m
 * plantarflexed 25°, 10 untrained men: Solianik; women 35 % less: Fugl-Meyer 1980. Elbow flexion 85 and 43 N·m, back extension
 * 240 and 130 N·m, shoulder flexion 67 and 29 N·m, angles as printed: Kamon 1981. Elbow extension: flexion over 1.19, Lategan
 * and Kruger 2003, moving (derived). Horizontal adduction 111.5 N·m moving at 60°/s, athletes: Clinics 2011; women by the
 * ratio of knee extensions (derived).
 */
final class PublishedStrength {
    /** What stands before the source of such a number. */
    static final String MARK = "published mean, ";

    private static final double WOMEN = 2.41 / 3.185;

    private record Row(Axis axis, int sign, int angle, double men, double women, String source) {}

    private static final List<Row> ROWS = List.of(
            new Row(Axis.KNEE, 1, 60, 3.185, 2.41, "Sarabon 2021"),
            new Row(Axis.KNEE, -1, 45, 1.385, 1.385 * WOMEN, "Sarabon 2021"),
            new Row(Axis.ANKLE, 1, 25, 207.8 / 75, 0.65 * 207.8 / 75, "Solianik"),
            new Row(Axis.ANKLE, -1, -25, 47.2 / 75, 0.65 * 47.2 / 75, "Solianik"),
            new Row(Axis.ELBOW, -1, 90, 85.0 / 75, 43.0 / 62, "Kamon 1981"),
            new Row(Axis.ELBOW, 1, 90, 85.0 / 75 / 1.19, 43.0 / 62 / 1.19, "Kamon 1981 over Lategan and Kruger 2003"),
            new Row(Axis.LOW_BACK, 1, 0, 240.0 / 75, 130.0 / 62, "Kamon 1981"),
            new Row(Axis.SHOULDER, -1, 45, 67.0 / 75, 29.0 / 62, "Kamon 1981"),
            new Row(Axis.SHOULDER_HORIZONTAL, 1, 45, 111.5 / 75, 111.5 / 75 * WOMEN, "Clinics 2011"));

    private PublishedStrength() {}

    static List<TestedStrength> of(Lifter lifter) {
        List<TestedStrength> all = new ArrayList<>();
        for (Row row : ROWS) {
            double perKilogram = lifter.sex() == Sex.FEMALE ? row.women() : row.men();
            all.add(new TestedStrength(
                    row.axis(),
                    Moment.of(row.sign() * perKilogram * lifter.bodyMass().si()),
                    Measures.deg(row.angle()),
                    MARK + row.source()));
        }
        return all;
    }
}

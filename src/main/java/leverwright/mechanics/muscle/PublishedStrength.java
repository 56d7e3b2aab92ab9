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
 * plantarflexed 25°, 10 untrained men: Solianik; women 35 % less: Fugl-Meyer 1980. Elbow flexion 85 and 43 N·m, shoulder
 * flexion 67 and 29 N·m, angles as printed: Kamon 1981. Elbow extension: flexion over 1.19, Lategan and Kruger 2003, moving
 * (derived). Horizontal adduction 111.5 N·m moving at 60°/s, athletes: Clinics 2011; women by the ratio of knee extensions
 * (derived). Abduction of the hip 1.29 and 1.13 N·m/kg, moving at 60°/s, athletes: Sugimoto 2014, abstract.
 *
 * <p>Extension of the back: J Korean Acad Rehabil Med 21 (1997) 1, 70 men and 30 women of about 49 years, {@link #LUMBAR}. How
 * far the back bends in a lift is not in the planar model, so the middle of the measured bending is taken, 36°, unless a model
 * says otherwise.
 */
final class PublishedStrength {
    private static final double WOMEN = 2.41 / 3.185;
    private static final double MAN = 75;
    private static final double WOMAN = 62;
    /** Bending of the back from full extension at which it was measured, deg. */
    static final double MOST_BENDING = 72;

    static final double MIDDLE_BENDING = 36;
    private static final double LUMBAR_STEP = 12;
    /** N·m at each 12° of lumbar flexion: men, women (printed in foot-pounds). */
    private static final double[][] LUMBAR = {
        {169.5, 222.4, 271.2, 299.6, 326.8, 348.4, 355.2}, {105.8, 142.4, 162.7, 183.0, 192.5, 204.7, 212.9}
    };

    private record Row(Axis axis, int sign, int angle, double men, double women, String source) {}

    private static final List<Row> ROWS = List.of(
            new Row(Axis.KNEE, 1, 60, 3.185, 2.41, "Sarabon 2021"),
            new Row(Axis.KNEE, -1, 45, 1.385, 1.385 * WOMEN, "Sarabon 2021"),
            new Row(Axis.ANKLE, 1, 25, 207.8 / MAN, 0.65 * 207.8 / MAN, "Solianik"),
            new Row(Axis.ANKLE, -1, -25, 47.2 / MAN, 0.65 * 47.2 / MAN, "Solianik"),
            new Row(Axis.ELBOW, -1, 90, 85.0 / MAN, 43.0 / WOMAN, "Kamon 1981"),
            new Row(
                    Axis.ELBOW,
                    1,
                    90,
                    85.0 / MAN / 1.19,
                    43.0 / WOMAN / 1.19,
                    "Kamon 1981 over Lategan and Kruger 2003"),
            new Row(Axis.SHOULDER, -1, 45, 67.0 / MAN, 29.0 / WOMAN, "Kamon 1981"),
            new Row(Axis.SHOULDER_HORIZONTAL, 1, 45, 111.5 / MAN, 111.5 / MAN * WOMEN, "Clinics 2011"),
            new Row(Axis.HIP_ABDUCTION, 1, 0, 1.29, 1.13, "Sugimoto 2014"));

    private PublishedStrength() {}

    /**
     * The means for a lifter.
     *
     * @param bending of the back from full extension, deg, 0 to 72
     */
    static List<TestedStrength> of(Lifter lifter, double bending) {
        List<TestedStrength> all = new ArrayList<>();
        boolean woman = lifter.sex() == Sex.FEMALE;
        for (Row row : ROWS) {
            all.add(mean(
                    lifter, row.axis(), row.sign() * (woman ? row.women() : row.men()), row.angle(), row.source()));
        }
        double back = lumbar(woman, bending) / (woman ? WOMAN : MAN);
        all.add(mean(
                lifter,
                Axis.LOW_BACK,
                back,
                0,
                "Isometric evaluation of the lumbar extensors, 1997, back bent " + Math.round(bending) + "°"));
        return all;
    }

    private static TestedStrength mean(Lifter lifter, Axis axis, double perKilogram, int angle, String source) {
        return new TestedStrength(
                axis,
                Moment.of(perKilogram * lifter.bodyMass().si()),
                Measures.deg(angle),
                "published mean, " + source);
    }

    private static double lumbar(boolean woman, double bending) {
        double[] curve = LUMBAR[woman ? 1 : 0];
        int k = (int) Math.min(curve.length - 2, Math.floor(bending / LUMBAR_STEP));
        return curve[k] + (curve[k + 1] - curve[k]) * (bending / LUMBAR_STEP - k);
    }
}

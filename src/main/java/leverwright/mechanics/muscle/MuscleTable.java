package leverwright.mechanics.muscle;

import java.util.List;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.numeric.Trigonometry;
import org.jspecify.annotations.Nullable;

/** The numbers of all muscles for a sex, laid out by muscle and axis: what is looked up once for many postures. */
final class MuscleTable {
    private static final double DEGREE = Math.PI / 180;
    private static final Muscle[] MUSCLES = Muscle.values();
    private static final int AXES = Axis.values().length;

    final double[] area = new double[MUSCLES.length];
    final double[] tension = new double[MUSCLES.length];
    final double[] optimumLength = new double[MUSCLES.length];
    final double[] cosine = new double[MUSCLES.length];
    private final @Nullable ArmCurve[] curves = new ArmCurve[MUSCLES.length * AXES];
    private final double[] upToOptimum = new double[MUSCLES.length * AXES];

    MuscleTable(MuscleData data, Sex sex) {
        for (Muscle muscle : MUSCLES) {
            int at = muscle.ordinal();
            area[at] = data.one(muscle, "area", sex).value();
            tension[at] = data.one(muscle, "tension", sex).value();
            optimumLength[at] = data.one(muscle, "optimum_length", sex).value();
            cosine[at] = Trigonometry.cosine(data.one(muscle, "pennation", sex).value() * DEGREE);
            for (Axis axis : Axis.values()) {
                curves[place(at, axis)] = data.curve(muscle, axis, sex).orElse(null);
                List<MuscleData.Row> optimum = data.of(muscle, axis.name(), "optimum_angle", sex);
                ArmCurve curve = curves[place(at, axis)];
                upToOptimum[place(at, axis)] = optimum.isEmpty() || curve == null
                        ? Double.NaN
                        : curve.upTo(optimum.get(0).value() * DEGREE);
            }
        }
    }

    private static int place(int muscle, Axis axis) {
        return muscle * AXES + axis.ordinal();
    }

    /** The arm of a muscle about an axis; null where it has none. */
    @Nullable
    ArmCurve curve(int muscle, Axis axis) {
        return curves[place(muscle, axis)];
    }

    /** The integral of the arm up to the angle at which the fibres are at their optimum, m; NaN where none is on file. */
    double upToOptimum(int muscle, Axis axis) {
        return upToOptimum[place(muscle, axis)];
    }
}

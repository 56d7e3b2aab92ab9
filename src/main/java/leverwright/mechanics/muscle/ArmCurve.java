package leverwright.mechanics.muscle;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.Sex;

/**
 * A muscle's arm about one axis over its flexion angle: straight lines between measured points, or a polynomial. Beyond the
 * measured range the nearer end's value is held, which is an extrapolation and marked as one.
 */
final class ArmCurve {
    private static final double DEGREE = Math.PI / 180;
    private static final double POLYNOMIAL_END = 120 * DEGREE;

    private final double[] angles;
    private final double[] values;
    /** The integral of the arm up to each measured angle. */
    private final double[] areas;

    private final double[] coefficients;
    private final double first;
    private final double last;
    private final double spread;
    private final ReadingStatus status;
    private final String source;

    private ArmCurve(
            double[] angles,
            double[] values,
            double[] coefficients,
            double first,
            double last,
            double spread,
            ReadingStatus status,
            String source) {
        this.angles = angles;
        this.values = values;
        this.areas = new double[angles.length];
        for (int k = 1; k < areas.length; k++) {
            areas[k] = areas[k - 1] + (angles[k] - angles[k - 1]) * (values[k - 1] + values[k]) / 2;
        }
        this.coefficients = coefficients;
        this.first = first;
        this.last = last;
        this.spread = spread;
        this.status = status;
        this.source = source;
    }

    static Optional<ArmCurve> of(MuscleData data, Muscle muscle, Axis axis, Sex sex) {
        List<MuscleData.Row> points = data.of(muscle, axis.name(), "arm", sex);
        List<MuscleData.Row> powers = data.of(muscle, axis.name(), "coefficient", sex);
        if (!points.isEmpty()) {
            double[] angles =
                    points.stream().mapToDouble(row -> row.at() * DEGREE).toArray();
            double[] values =
                    points.stream().mapToDouble(row -> row.value() / 1000).toArray();
            return Optional.of(new ArmCurve(
                    angles,
                    values,
                    new double[0],
                    angles[0],
                    angles[angles.length - 1],
                    points.get(0).spread() / 1000,
                    worst(points),
                    data.source(points.get(0))));
        }
        if (!powers.isEmpty()) {
            double[] c = powers.stream().mapToDouble(row -> row.value() / 100).toArray();
            double part = data.of(muscle, axis.name(), "arm_spread", sex).get(0).value() / 100;
            double spread = Math.abs(c[0]) * part;
            return Optional.of(new ArmCurve(
                    new double[0],
                    new double[0],
                    c,
                    0,
                    POLYNOMIAL_END,
                    spread,
                    worst(powers),
                    data.source(powers.get(0))));
        }
        return Optional.empty();
    }

    private static ReadingStatus worst(List<MuscleData.Row> rows) {
        ReadingStatus worst = rows.get(0).status();
        for (MuscleData.Row row : rows) {
            worst = worst.worse(row.status());
        }
        return worst;
    }

    /** The arm, m. */
    double at(double angle) {
        double held = Math.max(first, Math.min(last, angle));
        if (coefficients.length > 0) {
            double sum = 0;
            for (int k = coefficients.length - 1; k >= 0; k--) {
                sum = sum * held + coefficients[k];
            }
            return sum;
        }
        for (int k = 1; k < angles.length; k++) {
            if (held <= angles[k]) {
                return within(k, held);
            }
        }
        return values[values.length - 1];
    }

    /** Whether the angle lies beyond what was measured; of one point alone nothing is asked but that. */
    boolean isBeyond(double angle) {
        return angle < first - 1e-9 || angle > last + 1e-9;
    }

    /** How much longer the muscle is than at another angle, m: the integral of the arm, exactly. */
    double lengthening(double from, double to) {
        return upTo(to) - upTo(from);
    }

    /** The integral of the arm from its first angle on, m; beyond the ends the arm is held. */
    double upTo(double angle) {
        double held = Math.max(first, Math.min(last, angle));
        double sum = angle == held ? 0 : (angle - held) * at(held);
        if (coefficients.length > 0) {
            double inside = 0;
            for (int k = coefficients.length - 1; k >= 0; k--) {
                inside = inside * held + coefficients[k] / (k + 1);
            }
            return sum + inside * held;
        }
        int stretch = 1;
        while (stretch < angles.length && held > angles[stretch]) {
            stretch++;
        }
        if (stretch == angles.length) {
            return sum + areas[stretch - 1];
        }
        return sum
                + areas[stretch - 1]
                + (held - angles[stretch - 1]) * (values[stretch - 1] + within(stretch, held)) / 2;
    }

    private double within(int stretch, double held) {
        double part = (held - angles[stretch - 1]) / (angles[stretch] - angles[stretch - 1]);
        return values[stretch - 1] + (values[stretch] - values[stretch - 1]) * part;
    }

    double spread() {
        return spread;
    }

    ReadingStatus status() {
        return status;
    }

    String source() {
        return source;
    }

    double first() {
        return first;
    }

    double last() {
        return last;
    }
}

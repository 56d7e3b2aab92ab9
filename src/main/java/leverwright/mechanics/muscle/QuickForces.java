package leverwright.mechanics.muscle;

import java.util.Map;
import leverwright.mechanics.body.Lifter;

/**
 * Forces and capacities of muscles in a posture without words, marks and checks: for the many draws of a spread. By the cubes of
 * stress and without co-contraction alone, and to the same bits as {@link MuscleForces}; where the quick search does not settle,
 * nothing is given and the long way must be asked. For one posture and one thread.
 */
public final class QuickForces {
    private static final Muscle[] MUSCLES = Muscle.values();

    private final double[] forces = new double[MUSCLES.length];
    private final double[] capacities = new double[MUSCLES.length];
    private final boolean[] present = new boolean[MUSCLES.length];
    private final double[] divisors = new double[MUSCLES.length];
    private final double[][] arms;
    private final double[] moments;
    private boolean asked;
    private boolean settled;

    QuickForces(
            MuscleModel model,
            Lifter lifter,
            Map<Axis, Double> momentsByAxis,
            Map<Axis, Double> angles,
            double... strengths) {
        int joints = angles.size();
        arms = new double[joints][MUSCLES.length];
        moments = new double[joints];
        Axis[] axes = new Axis[joints];
        double[] at = new double[joints];
        int j = 0;
        for (Map.Entry<Axis, Double> each : angles.entrySet()) {
            axes[j] = each.getKey();
            at[j] = each.getValue();
            moments[j] = momentsByAxis.getOrDefault(each.getKey(), 0.0);
            j++;
        }
        for (int i = 0; i < MUSCLES.length; i++) {
            muscle(model, lifter, i, strengths[i], axes, at);
        }
    }

    private void muscle(MuscleModel model, Lifter lifter, int i, double strength, Axis[] axes, double... angles) {
        MuscleTable table = model.table(lifter.sex());
        double size = model.size(lifter);
        double longer = 0;
        double shortening = 0;
        for (int j = 0; j < axes.length; j++) {
            ArmCurve curve = table.curve(i, axes[j]);
            if (curve == null) {
                continue;
            }
            double arm = curve.at(angles[j]);
            arms[j][i] = model.shifted(MUSCLES[i], axes[j], arm, curve.spread()) * size;
            present[i] = true;
            double factor = model.armFactor(MUSCLES[i], axes[j]);
            shortening += model.shortening(axes[j], arm * factor);
            double from = table.upToOptimum(i, axes[j]);
            if (!Double.isNaN(from)) {
                longer += axes[j].lengthens() * (curve.upTo(angles[j]) - from) * size * factor;
            }
        }
        if (present[i]) {
            double area = model.area(lifter, MUSCLES[i], table.area[i]);
            capacities[i] = model.capacity(
                    lifter,
                    MUSCLES[i],
                    area,
                    table.tension[i],
                    strength,
                    longer,
                    shortening,
                    model.optimum(MUSCLES[i], table.optimumLength[i]),
                    table.cosine[i]);
            divisors[i] = model.divisorOf(area, capacities[i]);
        }
    }

    /** Solves the joints that muscles join, part by part. */
    private boolean solve() {
        int joints = moments.length;
        int[] group = new int[joints];
        for (int j = 0; j < joints; j++) {
            group[j] = j;
        }
        for (int i = 0; i < MUSCLES.length; i++) {
            int first = -1;
            for (int j = 0; j < joints; j++) {
                if (arms[j][i] != 0 && first < 0) {
                    first = j;
                } else if (arms[j][i] != 0) {
                    join(group, group[first], group[j]);
                }
            }
        }
        for (int g = 0; g < joints; g++) {
            if (!part(group, g)) {
                return false;
            }
        }
        return true;
    }

    private static void join(int[] group, int kept, int lost) {
        for (int j = 0; j < group.length; j++) {
            if (group[j] == lost) {
                group[j] = kept;
            }
        }
    }

    private boolean part(int[] group, int wanted) {
        int[] joints = new int[group.length];
        int some = 0;
        boolean atRest = true;
        for (int j = 0; j < group.length; j++) {
            if (group[j] == wanted) {
                atRest &= moments[j] == 0;
                joints[some++] = j;
            }
        }
        if (atRest || some > CubicSharing.MOST_JOINTS) {
            return atRest;
        }
        int[] muscles = new int[MUSCLES.length];
        int count = 0;
        for (int i = 0; i < MUSCLES.length; i++) {
            boolean pulls = false;
            for (int k = 0; k < some; k++) {
                pulls |= arms[joints[k]][i] != 0;
            }
            if (pulls) {
                muscles[count++] = i;
            }
        }
        return count > 0 && share(joints, some, muscles, count);
    }

    private boolean share(int[] joints, int some, int[] muscles, int count) {
        CubicSharing solver = new CubicSharing(count);
        for (int k = 0; k < count; k++) {
            int i = muscles[k];
            solver.muscle(
                    k,
                    divisors[i],
                    capacities[i],
                    arms[joints[0]][i],
                    some > 1 ? arms[joints[1]][i] : 0,
                    some > 2 ? arms[joints[2]][i] : 0);
        }
        solver.moments(moments[joints[0]], some > 1 ? moments[joints[1]] : 0, some > 2 ? moments[joints[2]] : 0);
        if (!solver.solve()) {
            return false;
        }
        for (int k = 0; k < count; k++) {
            forces[muscles[k]] += solver.force(k);
        }
        return true;
    }

    /** Returns whether the quick search settled, so that forces may be asked for. */
    public boolean isSettled() {
        if (!asked) {
            asked = true;
            settled = solve();
        }
        return settled;
    }

    /** The moment about the first axis of every muscle of one direction at its capacity, N·m by its place. */
    double[] greatestMoments(boolean positive) {
        double[] made = new double[MUSCLES.length];
        for (int i = 0; i < MUSCLES.length; i++) {
            double arm = arms[0][i];
            made[i] = present[i] && arm > 0 == positive ? Math.abs(arm) * capacities[i] : 0;
        }
        return made;
    }

    /** Returns whether any of some muscles works about an axis of this posture. */
    public boolean has(Muscles muscles) {
        for (Muscle muscle : muscles.members()) {
            if (present[muscle.ordinal()]) {
                return true;
            }
        }
        return false;
    }

    /** Returns the force of some muscles together, N. */
    public double force(Muscles muscles) {
        return sum(muscles, forces);
    }

    /** Returns force over capacity of some muscles together. */
    public double capacityUsed(Muscles muscles) {
        return sum(muscles, forces) / sum(muscles, capacities);
    }

    /** In the order of all muscles, as elsewhere, so that no digit differs. */
    private double sum(Muscles muscles, double... values) {
        double sum = 0;
        for (int i = 0; i < MUSCLES.length; i++) {
            if (present[i] && muscles.members().contains(MUSCLES[i])) {
                sum += values[i];
            }
        }
        return sum;
    }
}

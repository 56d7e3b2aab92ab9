package leverwright.mechanics.motion;

import java.util.List;

/**
 * The energy account of one repetition, J, both sides together.
 *
 * <p>Work of all joints = growth of the energy of motion, height and loads + heat in loads − work of given forces − work of
 * what holds the body. {@link #residual} is how far both sides are apart.
 *
 * @param jointWork work of each joint, by the index of the link that starts there; the first entry is 0
 * @param positiveJointWork of each joint, the parts with positive power alone
 * @param growth of the energy of motion, height and loads from start to end
 * @param heat in loads
 * @param given work of forces given from outside
 * @param support work of what holds the body
 * @param lifting work against weights and loads while it is done against them
 * @param lowering work against weights and loads while they do it, negative
 * @param rise greatest energy on the way less that at the start
 */
public record Energies(
        List<Double> jointWork,
        List<Double> positiveJointWork,
        double growth,
        double heat,
        double given,
        double support,
        double lifting,
        double lowering,
        double rise) {
    /** Copies the lists. */
    public Energies {
        jointWork = List.copyOf(jointWork);
        positiveJointWork = List.copyOf(positiveJointWork);
    }

    /** Returns the work of all joints, positive and negative together, J. */
    public double totalJointWork() {
        return sum(jointWork);
    }

    /** Returns the positive work of all joints, J. */
    public double totalPositiveJointWork() {
        return sum(positiveJointWork);
    }

    private static double sum(List<Double> parts) {
        double sum = 0;
        for (double part : parts) {
            sum += part;
        }
        return sum;
    }

    /** Returns the difference of the account's two sides over the sum of the sizes of its parts. */
    public double residual() {
        double difference = totalJointWork() - growth - heat + given + support;
        double size = totalPositiveJointWork()
                + Math.abs(totalPositiveJointWork() - totalJointWork())
                + Math.abs(growth)
                + heat
                + Math.abs(given)
                + Math.abs(support);
        return size == 0 ? 0 : Math.abs(difference) / size;
    }
}

package leverwright.mechanics.muscle;

import java.util.List;
import java.util.OptionalDouble;
import leverwright.mechanics.measure.NumberText;

/**
 * How muscles share some moments.
 *
 * @param problem what was asked
 * @param rule by which rule
 * @param feasible whether the muscles can make the moments at all
 * @param forces N, one for each muscle; empty if not feasible
 * @param cost Σ (force/divisor)^p; the greatest force/divisor for the equal share; 0 if not feasible
 * @param greatestScale the greatest factor times the moments that the muscles could make; empty if all moments are 0
 * @param lacks N·m that each joint lacks, the least in sum, with the sign of what is missing; all 0 if feasible
 * @param momentResidual greatest difference between a joint's moment and what the forces make, N·m
 * @param optimality how far the forces are from the best by the conditions of optimality, relative; 0 is best
 */
public record SharingSolution(
        SharingProblem problem,
        SharingRule rule,
        boolean feasible,
        List<Double> forces,
        double cost,
        OptionalDouble greatestScale,
        List<Double> lacks,
        double momentResidual,
        double optimality) {

    /** Copies the lists. */
    public SharingSolution {
        forces = List.copyOf(forces);
        lacks = List.copyOf(lacks);
    }

    /**
     * Returns the force of a muscle, N.
     *
     * @throws IllegalArgumentException if the moments cannot be made; the message says which joint lacks how much
     */
    public double force(int muscle) {
        if (!feasible) {
            throw new IllegalArgumentException(shortage());
        }
        return forces.get(muscle);
    }

    /** Returns in words what the muscles cannot make; empty if they can. */
    public String shortage() {
        if (feasible) {
            return "";
        }
        StringBuilder text = new StringBuilder("the muscles cannot make these moments:");
        String comma = " ";
        for (int j = 0; j < lacks.size(); j++) {
            double lack = lacks.get(j);
            if (Math.abs(lack) > 1e-9 * Math.abs(problem.moment(j)) + 1e-12) {
                text.append(comma)
                        .append("the ")
                        .append(problem.joints().get(j))
                        .append(" lacks ");
                text.append(rounded(Math.abs(lack))).append(" of ").append(rounded(Math.abs(problem.moment(j))));
                text.append(" N·m");
                comma = ", ";
            }
        }
        greatestScale.ifPresent(scale -> text.append("; greatest share of the moments that they can make: ")
                .append(rounded(scale * 100))
                .append(" %"));
        return text.toString();
    }

    private static String rounded(double value) {
        return NumberText.rounded(value, 3).toPlainString();
    }
}

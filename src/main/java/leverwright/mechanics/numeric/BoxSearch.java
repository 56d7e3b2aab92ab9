package leverwright.mechanics.numeric;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for the least value of a function of a few numbers, each from 0 to 1, that must keep limits: a direct search without
 * slopes. It looks at evenly laid points first ({@link Sampling#SOBOL}); from the best of them it tries steps along the axes and
 * along turned axes, doubles the step where one is better and halves it where none is (mesh-adaptive direct search after C. Audet
 * and J. E. Dennis, SIAM J. Optim. 17 (2006): from memory). A point that breaks limits less is better than one that breaks them
 * more; among those that keep them the lesser value is better.
 */
public final class BoxSearch {
    /** Most numbers that are searched together. */
    public static final int MOST_AXES = 6;

    private static final int STARTS = 4;
    private static final int FIRST = 48;
    private static final int TRIES = 400;
    private static final double STEP = 0.25;
    private static final double SMALLEST = 1e-9;
    private static final int TURNED = 2;

    private final Goal goal;
    private final int axes;
    private final RandomStream random = new RandomStream(1);
    private int asked;

    /** What is sought: small values that break no limit. */
    @FunctionalInterface
    public interface Goal {
        /**
         * Returns value and breach at a point.
         *
         * @param point entries from 0 to 1
         */
        Score at(double... point);
    }

    /**
     * How good a point is.
     *
     * @param breach by how much limits are broken, 0 for none; infinite where nothing can be said
     * @param value what shall be small
     */
    public record Score(double breach, double value) {
        boolean isBetterThan(Score other) {
            return breach < other.breach || (breach == other.breach && value < other.value);
        }
    }

    /**
     * What was found.
     *
     * @param point the best point
     * @param score how good it is
     * @param evaluations how often the goal was asked
     */
    public record Best(List<Double> point, Score score, int evaluations) {}

    private record Tried(double[] point, Score score) {}

    private BoxSearch(Goal goal, int axes) {
        this.goal = goal;
        this.axes = axes;
    }

    /**
     * Looks for the best point.
     *
     * @param goal what is sought
     * @param axes how many numbers, 1 to {@value #MOST_AXES}
     * @param known a point to begin from too; empty for none
     */
    public static Best of(Goal goal, int axes, double... known) {
        Require.within(axes, 1, MOST_AXES, "number of settings that are searched together", "");
        return new BoxSearch(goal, axes).search(known);
    }

    private Best search(double... known) {
        List<Tried> first = new ArrayList<>();
        if (known.length == axes) {
            first.add(tried(known.clone()));
        }
        double[] middle = new double[axes];
        Arrays.fill(middle, 0.5);
        first.add(tried(middle));
        for (double[] row : Sampling.SOBOL.points(axes, FIRST * axes, 1).rows(0, FIRST * axes)) {
            first.add(tried(row));
        }
        first.sort(Comparator.<Tried>comparingDouble(each -> each.score().breach())
                .thenComparingDouble(each -> each.score().value()));
        Tried best = first.get(0);
        for (int k = 0; k < Math.min(STARTS, first.size()); k++) {
            Tried ended = improved(first.get(k));
            if (ended.score().isBetterThan(best.score())) {
                best = ended;
            }
        }
        List<Double> point = new ArrayList<>();
        for (double each : best.point()) {
            point.add(each);
        }
        return new Best(List.copyOf(point), best.score(), asked);
    }

    private Tried tried(double... point) {
        asked++;
        return new Tried(point, goal.at(point.clone()));
    }

    private Tried improved(Tried start) {
        Tried best = start;
        double step = STEP;
        int limit = asked + TRIES * axes;
        while (step > SMALLEST && asked < limit) {
            Tried next = polled(best, step);
            if (next.score().isBetterThan(best.score())) {
                best = next;
                step = Math.min(0.5, 2 * step);
            } else {
                step /= 2;
            }
        }
        return best;
    }

    private Tried polled(Tried from, double step) {
        for (double[] direction : directions()) {
            double[] point = new double[axes];
            boolean moved = false;
            for (int j = 0; j < axes; j++) {
                point[j] = Math.max(0, Math.min(1, from.point()[j] + step * direction[j]));
                moved |= point[j] != from.point()[j];
            }
            if (moved) {
                Tried next = tried(point);
                if (next.score().isBetterThan(from.score())) {
                    return next;
                }
            }
        }
        return from;
    }

    /** Both ways along the axes, then along axes turned by chance. */
    private List<double[]> directions() {
        List<double[]> all = new ArrayList<>();
        double[] still = new double[axes];
        reflected(all, still);
        for (int turn = 0; turn < TURNED && axes > 1; turn++) {
            double[] mirror = new double[axes];
            double size = 0;
            for (int j = 0; j < axes; j++) {
                mirror[j] = random.nextNormal();
                size += mirror[j] * mirror[j];
            }
            for (int j = 0; j < axes; j++) {
                mirror[j] /= Math.sqrt(size);
            }
            reflected(all, mirror);
        }
        return all;
    }

    private void reflected(List<double[]> all, double... mirror) {
        for (int j = 0; j < axes; j++) {
            double[] there = new double[axes];
            double[] back = new double[axes];
            for (int k = 0; k < axes; k++) {
                there[k] = (j == k ? 1 : 0) - 2 * mirror[j] * mirror[k];
                back[k] = -there[k];
            }
            all.add(there);
            all.add(back);
        }
    }
}

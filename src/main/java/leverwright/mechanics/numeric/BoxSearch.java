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

    private static final int ROUND = 32;

    private final Goal goal;
    private final int axes;

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
     * @param partial whether it was stopped before its end
     */
    public record Best(List<Double> point, Score score, int evaluations, boolean partial) {}

    private record Tried(double[] point, Score score) {}

    private BoxSearch(Goal goal, int axes) {
        this.goal = goal;
        this.axes = axes;
    }

    /** Looks for the best point on the caller's thread: see {@link #of(Crew, Goal, int, double...)}. */
    public static Best of(Goal goal, int axes, double... known) {
        return of(Crew.alone(), goal, axes, known);
    }

    /**
     * Looks for the best point. Once stopped, the best of those tried is given.
     *
     * @param crew who looks
     * @param goal what is sought; asked by several threads
     * @param axes how many numbers, 1 to {@value #MOST_AXES}
     * @param known a point to begin from too; empty for none
     * @throws IllegalArgumentException if it was stopped before any point was tried
     */
    public static Best of(Crew crew, Goal goal, int axes, double... known) {
        Require.within(axes, 1, MOST_AXES, "number of settings that are searched together", "");
        return new BoxSearch(goal, axes).search(crew, known);
    }

    private Best search(Crew crew, double... known) {
        List<double[]> begin = new ArrayList<>();
        if (known.length == axes) {
            begin.add(known.clone());
        }
        double[] middle = new double[axes];
        Arrays.fill(middle, 0.5);
        begin.add(middle);
        begin.addAll(List.of(Sampling.SOBOL.points(axes, FIRST * axes, 1).rows(0, FIRST * axes)));
        int bound = begin.size() + STARTS * TRIES * axes;
        Crew.Progress told = crew.progress();
        Crew quiet = new Crew(crew.executor(), crew.threads(), crew.stopped(), (done, all) -> told.done(done, bound));
        List<Tried> first = new ArrayList<>();
        int done = quiet.inOrder(
                begin.size(),
                FIRST / 4,
                (from, to) -> begin.subList(from, to).stream().map(this::tried).toList(),
                first::addAll);
        if (first.isEmpty()) {
            throw new IllegalArgumentException("the search was stopped before any setting was tried");
        }
        first.sort(Comparator.<Tried>comparingDouble(each -> each.score().breach())
                .thenComparingDouble(each -> each.score().value()));
        List<Climb> climbs = new ArrayList<>();
        for (int k = 0; k < Math.min(STARTS, first.size()); k++) {
            climbs.add(new Climb(first.get(k), k + 1));
        }
        boolean whole = done == begin.size() && climb(crew, climbs, done, bound);
        Tried best = first.get(0);
        int asked = done;
        for (Climb climb : climbs) {
            best = climb.best.score().isBetterThan(best.score()) ? climb.best : best;
            asked += climb.asked;
        }
        return new Best(Arrays.stream(best.point()).boxed().toList(), best.score(), asked, !whole);
    }

    /** Lets all climb, round after round side by side, until all have ended or it is stopped. */
    private static boolean climb(Crew crew, List<Climb> climbs, int before, int bound) {
        Crew quiet = crew.quiet();
        while (climbs.stream().anyMatch(each -> !each.ended)) {
            int done = quiet.inOrder(
                    climbs.size(), 1, (from, to) -> climbs.get(from).round(), unused -> {});
            if (done < climbs.size()) {
                return false;
            }
            int asked = before;
            for (Climb climb : climbs) {
                asked += climb.ended ? bound / STARTS : climb.asked;
            }
            crew.progress().done(Math.min(asked, bound), bound);
        }
        return true;
    }

    private Tried tried(double... point) {
        return new Tried(point, goal.at(point.clone()));
    }

    /** One way from a starting point to the best near it; for one thread at a time. */
    private final class Climb {
        private final RandomStream random;
        private Tried best;
        private double step = STEP;
        private int asked;
        private boolean ended;

        Climb(Tried start, int number) {
            best = start;
            random = new RandomStream(number);
        }

        /** Goes on for some tries. */
        Climb round() {
            int limit = asked + ROUND * axes;
            while (!ended && asked < limit) {
                Tried next = polled();
                if (next.score().isBetterThan(best.score())) {
                    best = next;
                    step = Math.min(0.5, 2 * step);
                } else {
                    step /= 2;
                }
                ended = step <= SMALLEST || asked >= TRIES * axes;
            }
            return this;
        }

        private Tried polled() {
            for (double[] direction : directions()) {
                double[] point = new double[axes];
                boolean moved = false;
                for (int j = 0; j < axes; j++) {
                    point[j] = Math.max(0, Math.min(1, best.point()[j] + step * direction[j]));
                    moved |= point[j] != best.point()[j];
                }
                if (moved) {
                    asked++;
                    Tried next = tried(point);
                    if (next.score().isBetterThan(best.score())) {
                        return next;
                    }
                }
            }
            return best;
        }

        /** Both ways along the axes, then along axes turned by chance. */
        private List<double[]> directions() {
            List<double[]> all = new ArrayList<>();
            reflected(all, new double[axes]);
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

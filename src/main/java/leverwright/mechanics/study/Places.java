package leverwright.mechanics.study;

import java.util.List;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.numeric.Powers;

/**
 * The settings of one variable on the way of a study, SI, rising: evenly spread between two ends, spread by equal ratios, or
 * listed.
 *
 * @param from the first
 * @param to the last
 * @param count how many, both ends counted
 * @param logarithmic whether neighbours have equal ratios instead of equal distances
 * @param listed the settings if they are listed; else empty
 */
record Places(double from, double to, int count, boolean logarithmic, List<Double> listed) {
    /** How far a step may miss the end and still count as reaching it, of a step. */
    private static final double CLOSE = 1e-9;

    static Places even(double from, double to, int count) {
        return new Places(from, to, count, false, List.of());
    }

    static Places listed(List<Double> settings) {
        return new Places(settings.get(0), settings.get(settings.size() - 1), settings.size(), false, settings);
    }

    /** The setting with a number from 0. */
    double at(int k) {
        if (!listed.isEmpty()) {
            return listed.get(k);
        }
        if (k == count - 1) {
            return to;
        }
        double part = logarithmic ? (double) k / (count - 1) : 0;
        return logarithmic ? from * Powers.power(to / from, part) : from + (to - from) * k / (count - 1);
    }

    boolean contains(double si) {
        return si >= from && si <= to;
    }

    /**
     * How the settings of a sweep lie between its ends.
     *
     * @param points how many, evenly spread; 0 where the step says it, or nothing does
     * @param step SI; 0 where the number says it
     * @param logarithmic whether ratios are equal
     */
    record Spacing(double points, double step, boolean logarithmic) {
        /**
         * The settings between two ends.
         *
         * @param unsaid how many where neither number nor step says it
         * @throws IllegalArgumentException if the ends do not rise, leave the variable's range or meet zero on a way of equal
         *     ratios, or if there are too few settings or too many
         */
        <Q extends Measure<Q>> Places between(Variable<Q> variable, Q from, Q to, int unsaid) {
            boolean rises = from.si() < to.si();
            if (!rises
                    || from.si() < variable.least().si()
                    || to.si() > variable.most().si()) {
                throw new IllegalArgumentException("a sweep of " + variable + " goes from " + text(variable, from)
                        + " to " + text(variable, to) + "; allowed: from a smaller to a larger value within "
                        + text(variable, variable.least()) + " to " + text(variable, variable.most()));
            }
            if (logarithmic && !(from.si() > 0)) {
                throw new IllegalArgumentException("a logarithmic sweep of " + variable + " starts at "
                        + text(variable, from) + "; allowed: above zero, since equal ratios never reach it");
            }
            double said = points > 0 ? points : unsaid;
            double settings = step > 0 ? Math.floor((to.si() - from.si()) / step + CLOSE) + 1 : said;
            StudySize.check(settings, 2, "a sweep of " + variable);
            double end = step > 0 ? Math.min(to.si(), from.si() + step * (settings - 1)) : to.si();
            return new Places(from.si(), end, (int) settings, logarithmic, List.of());
        }

        private static <Q extends Measure<Q>> String text(Variable<Q> variable, Q value) {
            return MeasureText.exact(value, variable.unit());
        }
    }
}

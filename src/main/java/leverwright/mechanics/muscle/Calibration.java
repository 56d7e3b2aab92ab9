package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.body.Lifter;

/**
 * How much stronger than the data each muscle of a lifter is, by tests of the lifter and, for actions without one, by published
 * means. Actions that fewest muscles make alone come first; the muscles that they fix stay so, and what an action lacks falls to
 * those that are free: each tested moment is met. Where nothing is left for the free ones, the tests contradict each other.
 */
final class Calibration {
    /** Two tests of one action may ask for strengths so far apart. */
    private static final double APART = 1.35;
    /** The least that free muscles may be left with, of what the test would give all muscles of the action alike. */
    private static final double LEFT = 0.25;

    private static final Muscle[] MUSCLES = Muscle.values();

    private final MuscleModel bare;
    private final Lifter lifter;
    private final double[] factors = new double[MUSCLES.length];
    /** Which test fixed a muscle; the muscles that none did are not in it. */
    private final Map<Muscle, Wanted> fixed = new EnumMap<>(Muscle.class);

    /** An action, what its muscles could make at the tested angle by the data, and what they were measured to make. */
    private record Wanted(TestedStrength test, double[] pulls, double whole, double moment, double alone) {
        double factor() {
            return moment / whole;
        }

        String words() {
            return test.axis().action(test.moment().si());
        }
    }

    private Calibration(MuscleModel bare, Lifter lifter) {
        this.bare = bare;
        this.lifter = lifter;
        Arrays.fill(factors, 1);
    }

    /**
     * The factor of each muscle, by its place.
     *
     * @param bare the model without tests
     * @throws IllegalArgumentException if tests contradict each other, naming actions and muscles
     */
    static double[] of(MuscleModel bare, Lifter lifter, List<TestedStrength> tests, List<TestedStrength> means) {
        Calibration calibration = new Calibration(bare, lifter);
        Map<String, Wanted> tested = new LinkedHashMap<>();
        tests.forEach(test -> tested.merge(key(test), calibration.wanted(test), Calibration::merged));
        calibration.fix(new ArrayList<>(tested.values()), true);
        List<Wanted> others = new ArrayList<>();
        means.stream()
                .filter(mean -> !tested.containsKey(key(mean)))
                .forEach(mean -> others.add(calibration.wanted(mean)));
        calibration.fix(others, false);
        return calibration.factors;
    }

    private static String key(TestedStrength test) {
        return test.axis().name() + (test.moment().si() > 0 ? "+" : "-");
    }

    private Wanted wanted(TestedStrength test) {
        boolean positive = test.moment().si() > 0;
        double[] pulls = bare.pulls(lifter, test.axis(), positive, test.angle().si());
        double whole = 0;
        double alone = 0;
        for (Muscle muscle : MUSCLES) {
            whole += pulls[muscle.ordinal()];
            alone += bare.axes(lifter, muscle) == 1 ? pulls[muscle.ordinal()] : 0;
        }
        if (whole == 0) {
            throw new IllegalArgumentException(
                    "no muscle on file makes " + test.axis().action(positive ? 1 : -1) + "; test another action");
        }
        return new Wanted(test, pulls, whole, Math.abs(test.moment().si()), alone / whole);
    }

    /** Two tests of one action: the mean of what they ask for, if they are not too far apart. */
    private static Wanted merged(Wanted first, Wanted other) {
        double one = first.factor();
        double two = other.factor();
        if (one > two * APART || two > one * APART) {
            throw new IllegalArgumentException("two tests of " + first.words() + " contradict each other: "
                    + told(first.test()) + " asks for muscles of " + percent(one) + " of the model's, "
                    + told(other.test()) + " for " + percent(two) + "; leave one out");
        }
        return new Wanted(first.test(), first.pulls(), first.whole(), (one + two) / 2 * first.whole(), first.alone());
    }

    private static String told(TestedStrength test) {
        return test.axis().action(test.moment().si()) + " "
                + Math.rint(Math.abs(test.moment().si())) + " N·m at " + test.angle() + " (" + test.how() + ")";
    }

    private static String percent(double factor) {
        return Math.round(100 * factor) + " %";
    }

    private void fix(List<Wanted> all, boolean strict) {
        all.sort(Comparator.comparingDouble(Wanted::alone));
        all.forEach(wanted -> fix(wanted, strict));
    }

    private void fix(Wanted wanted, boolean strict) {
        double bound = 0;
        double free = 0;
        for (Muscle muscle : MUSCLES) {
            double pull = wanted.pulls()[muscle.ordinal()];
            if (fixed.containsKey(muscle)) {
                bound += pull * factors[muscle.ordinal()];
            } else {
                free += pull;
            }
        }
        double least = LEFT * wanted.factor();
        double factor = free > 0 ? (wanted.moment() - bound) / free : bound / wanted.moment();
        if (strict && (free > 0 ? factor < least : factor > APART || factor * APART < 1)) {
            throw new IllegalArgumentException(acrossActions(wanted, bound));
        }
        for (Muscle muscle : MUSCLES) {
            if (wanted.pulls()[muscle.ordinal()] > 0 && !fixed.containsKey(muscle)) {
                factors[muscle.ordinal()] = Math.max(least, factor);
                fixed.put(muscle, wanted);
            }
        }
    }

    /** Which muscles another test has fixed so strong, or so weak, that this one cannot be met. */
    private String acrossActions(Wanted wanted, double bound) {
        List<String> names = new ArrayList<>();
        List<String> free = new ArrayList<>();
        List<String> by = new ArrayList<>();
        for (Muscle muscle : MUSCLES) {
            Wanted why = fixed.get(muscle);
            if (wanted.pulls()[muscle.ordinal()] > 0 && why != null) {
                names.add(muscle.words());
                if (!by.contains(told(why.test()))) {
                    by.add(told(why.test()));
                }
            } else if (wanted.pulls()[muscle.ordinal()] > 0) {
                free.add(muscle.words());
            }
        }
        return "the tests contradict each other at the "
                + wanted.test().axis().joint().words() + ": as strong as "
                + String.join(" and ", by) + " makes them, " + String.join(", ", names) + " give "
                + Math.rint(bound) + " N·m of the " + told(wanted.test())
                + (free.isEmpty()
                        ? ", and no other muscle does"
                        : ", which leaves too little for " + String.join(", ", free))
                + "; leave one test out or test again";
    }
}

package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.ImpossibleSetting;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/** Readings made of other readings: their peak, mean and least over the way of an exercise, their sum and difference. */
final class Measured {
    /** How many postures stand for the way of an exercise, both ends counted. */
    static final int PLACES = 25;

    private Measured() {}

    /** What becomes of the values on the way. */
    private interface Fold {
        double of(List<Double> values);
    }

    static <M extends Measure<M>> Reading<M> peak(Reading<M> reading) {
        return folded(
                "peak ",
                "greatest",
                reading,
                values -> values.stream().mapToDouble(v -> v).max().orElseThrow());
    }

    static <M extends Measure<M>> Reading<M> least(Reading<M> reading) {
        return folded(
                "least ",
                "least",
                reading,
                values -> values.stream().mapToDouble(v -> v).min().orElseThrow());
    }

    static <M extends Measure<M>> Reading<M> mean(Reading<M> reading) {
        return folded("mean ", "mean", reading, values -> {
            double sum = 0;
            for (double value : values) {
                sum += value;
            }
            return sum / values.size();
        });
    }

    private static <M extends Measure<M>> Reading<M> folded(String word, String how, Reading<M> reading, Fold fold) {
        ToDoubleFunction<HeldPosture> si = held -> {
            List<Double> values = new ArrayList<>();
            for (HeldPosture each : way(held.performance())) {
                try {
                    values.add(reading.si(each));
                } catch (IllegalArgumentException none) {
                    throw new IllegalArgumentException(place(each) + none.getMessage(), none);
                }
            }
            return fold.of(values);
        };
        return made(
                        word + reading.label(),
                        reading,
                        si,
                        held -> how + " at " + PLACES + " postures, " + course(held.performance()))
                .named(names -> word + names.get(0), reading)
                .ofMuscles(change -> folded(word, how, reading.redrawn(change), fold));
    }

    static <M extends Measure<M>> Reading<M> sum(Reading<M> one, Reading<M> other) {
        Order.comparable(one, other);
        return made(one.label() + " plus " + other.label(), one, held -> one.si(held) + other.si(held), held -> "sum")
                .named(names -> names.get(0) + " plus " + names.get(1), one, other)
                .ofMuscles(change -> sum(one.redrawn(change), other.redrawn(change)));
    }

    static <M extends Measure<M>> Reading<M> difference(Reading<M> one, Reading<M> other) {
        Order.comparable(one, other);
        return made(
                        one.label() + " less " + other.label(),
                        one,
                        held -> one.si(held) - other.si(held),
                        held -> "difference")
                .named(names -> names.get(0) + " less " + names.get(1), one, other)
                .ofMuscles(change -> difference(one.redrawn(change), other.redrawn(change)));
    }

    private interface Words {
        String of(HeldPosture held);
    }

    /** A reading of the same kind as another, whose working names how it was found. */
    static <M extends Measure<M>> Reading<M> made(
            String label, Reading<M> like, ToDoubleFunction<HeldPosture> si, Words how) {
        return Reading.of(label, like.unit(), like.sides(), si, held -> {
            Answer<M> there = like.of(held);
            M value = there.value().with(si.applyAsDouble(held), 0);
            HeldPosture.Span span = held.span(Reading.of(label, like.unit(), like.sides(), si, any -> there));
            return Answer.of(
                            label,
                            value,
                            like.sides(),
                            () -> Working.of(label, List.of(Step.given("v", value, how.of(held)))))
                    .between(
                            value.with(Math.min(span.low(), value.si()), 0),
                            value.with(Math.max(span.high(), value.si()), 0))
                    .shownIn(like.unit())
                    .noted(there.notes());
        });
    }

    /**
     * The postures on the way of an exercise that can be held; of one without a way, the posture that is set.
     *
     * @throws IllegalArgumentException if none can be
     */
    static List<HeldPosture> way(Performance performance) {
        Course course = performance.exercise().course().orElse(null);
        if (course == null) {
            return List.of(performance.posture());
        }
        List<HeldPosture> way = new ArrayList<>();
        String why = "";
        Performance along = performance.alongItsWay();
        for (int k = 0; k < PLACES; k++) {
            double place = course.from() + (course.to() - course.from()) * k / (PLACES - 1);
            try {
                HeldPosture held = along.withSi(course.knob(), place).posture();
                if (!held.standing().wouldFall()) {
                    way.add(held);
                } else {
                    why = held.standing().words();
                }
            } catch (ImpossibleSetting nowhere) {
                why = String.valueOf(nowhere.getMessage());
            }
        }
        if (way.isEmpty()) {
            throw new IllegalArgumentException("no posture on the way of " + performance + " can be held: " + why);
        }
        return way;
    }

    /** Where on the way a posture lies, for messages. */
    private static String place(HeldPosture held) {
        return held.performance()
                .exercise()
                .course()
                .map(course -> {
                    Knob<?> knob = course.knob();
                    double at = held.performance().exercise().get(knob).si();
                    return "at " + knob.name() + " " + knob.unit().format(at, 3) + ", ";
                })
                .orElse("");
    }

    /** The way in words, such as "Torso lean from 10° to 80°". */
    static String course(Performance performance) {
        return performance
                .exercise()
                .course()
                .map(course -> course.knob().name() + " from "
                        + course.knob().unit().format(course.from()) + " to "
                        + course.knob().unit().format(course.to()))
                .orElse("the posture that is set");
    }
}

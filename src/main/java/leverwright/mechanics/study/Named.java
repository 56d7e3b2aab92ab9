package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.MeasureText;

/** Names of performances side by side: exercise and lifter, as far as they differ, and settings where those are alike. */
final class Named {
    private Named() {}

    static List<String> of(List<Performance> performances) {
        Set<String> exercises = new LinkedHashSet<>();
        Set<String> lifters = new LinkedHashSet<>();
        for (Performance each : performances) {
            exercises.add(exercise(each));
            lifters.add(each.lifter().name());
        }
        List<String> names = new ArrayList<>();
        for (Performance each : performances) {
            String name = exercise(each);
            if (lifters.size() > 1) {
                name = exercises.size() > 1
                        ? name + " by " + each.lifter().name()
                        : each.lifter().name();
            }
            names.add(name);
        }
        List<String> apart = new ArrayList<>();
        for (int k = 0; k < names.size(); k++) {
            String name = names.get(k);
            boolean twice = names.indexOf(name) != names.lastIndexOf(name);
            apart.add(twice ? name + settings(performances.get(k), performances, names, name) : name);
        }
        return List.copyOf(apart);
    }

    private static String exercise(Performance performance) {
        return performance.exercise().name() + (performance.isOtherSide() ? ", other side" : "");
    }

    /** The settings in which a performance differs from others of its name. */
    private static String settings(Performance one, List<Performance> all, List<String> names, String name) {
        List<String> words = new ArrayList<>();
        for (Knob<?> knob : one.exercise().knobs()) {
            boolean differs = false;
            for (int k = 0; k < all.size(); k++) {
                Exercise<?> other = all.get(k).exercise();
                differs |= names.get(k).equals(name)
                        && other.knobs().contains(knob)
                        && other.get(knob).si() != one.exercise().get(knob).si();
            }
            if (differs) {
                words.add(knob.name() + " " + MeasureText.print(one.exercise().get(knob), knob.unit(), 4));
            }
        }
        return words.isEmpty() ? "" : ", " + String.join(", ", words);
    }
}

package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.working.Listing;

/**
 * The same limb in two exercises, one whose far end stands still and one whose far end moves. With equal forces from outside,
 * relative to the limb, the moments differ by the limb's own weight alone.
 */
final class WhichEnd {
    private WhichEnd() {}

    static Listing moves(HeldPosture one, HeldPosture other, List<Joint> joints) {
        if (joints.isEmpty()) {
            throw new IllegalArgumentException("no joint was named; name one of a limb or more, such as KNEE, HIP");
        }
        List<List<Object>> rows = new ArrayList<>();
        for (Joint joint : joints) {
            rows.add(List.of(
                    joint.words() + ", the whole moment",
                    one.moment(joint),
                    other.moment(joint),
                    other.moment(joint).minus(one.moment(joint))));
            rows.add(List.of(
                    joint.words() + ", from outside",
                    one.fromOutside(joint),
                    other.fromOutside(joint),
                    other.fromOutside(joint).minus(one.fromOutside(joint))));
            rows.add(List.of(
                    joint.words() + ", the limb's own weight",
                    one.ownWeight(joint),
                    other.ownWeight(joint),
                    other.ownWeight(joint).minus(one.ownWeight(joint))));
        }
        Set<String> notes = new LinkedHashSet<>(one.notes());
        notes.addAll(other.notes());
        return new Listing(
                "Which end moves",
                List.of("what", name(one, "1"), name(other, "2"), "2 less 1"),
                rows,
                List.copyOf(notes));
    }

    private static String name(HeldPosture held, String which) {
        return which + ": " + held.performance().exercise().name().toLowerCase(Locale.ROOT);
    }
}

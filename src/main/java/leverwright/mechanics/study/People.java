package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leverwright.mechanics.body.BodySegment;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Listing;

/** Two people compared: their bodies, or what one exercise asks of each. */
final class People {
    private People() {}

    static Listing bodies(Lifter one, Lifter other) {
        List<List<Object>> rows = new ArrayList<>();
        rows.add(row("stature", one.stature(), other.stature()));
        rows.add(row("body mass", one.bodyMass(), other.bodyMass()));
        for (Segment segment : Segment.values()) {
            BodySegment first = one.body().segment(segment);
            BodySegment second = other.body().segment(segment);
            rows.add(row("length of the " + segment.words(), Length.of(first.length()), Length.of(second.length())));
            rows.add(row(
                    "mass of " + (segment.sides() == 1 ? "the " : "") + segment.oneOf(),
                    Mass.of(first.mass() / segment.sides()),
                    Mass.of(second.mass() / segment.sides())));
        }
        return new Listing(
                "Two bodies", List.of("what", one.name(), other.name(), "second over first"), rows, notes(one, other));
    }

    private static <M extends Measure<M>> List<Object> row(String what, M one, M other) {
        return List.of(what, one, other, String.format(Locale.ROOT, "%.3f", other.si() / one.si()));
    }

    private static List<String> notes(Lifter one, Lifter other) {
        Set<String> notes = new LinkedHashSet<>();
        for (Lifter lifter : List.of(one, other)) {
            lifter.notes().forEach(note -> notes.add(note.text()));
        }
        return List.copyOf(notes);
    }

    static Listing at(Exercise<?> exercise, Lifter one, Lifter other, Reading<?>... readings) {
        HeldPosture first = exercise.by(one).posture();
        HeldPosture second = exercise.by(other).posture();
        List<List<Object>> rows = new ArrayList<>();
        for (Reading<?> reading : readings) {
            Answer<?> mine = reading.of(first);
            Answer<?> theirs = reading.of(second);
            double base = mine.value().si();
            rows.add(List.of(
                    reading.label(),
                    mine,
                    theirs,
                    base == 0
                            ? "not a ratio: 0"
                            : String.format(Locale.ROOT, "%.3f", theirs.value().si() / base)));
        }
        Set<String> notes = new LinkedHashSet<>(first.notes());
        notes.addAll(second.notes());
        return new Listing(
                exercise.name() + ", two people",
                List.of("what", one.name(), other.name(), "second over first"),
                rows,
                List.copyOf(notes));
    }
}

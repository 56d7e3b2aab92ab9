package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.measure.Work;
import leverwright.mechanics.working.Listing;

/**
 * The ledger of a training session: what each joint and each target is exposed to over sets, repetitions and time. Exposure is
 * the size of a moment or force summed over time; what it does to a body is outside this model. Immutable.
 *
 * <pre>{@code
 * session("Tuesday").rest(seconds(120)).add(squat, 3, 8).add(extension, 3, 12).ledger(HIP, KNEE, LOW_BACK)
 * }</pre>
 *
 * @param name in print
 * @param entries in order
 * @param rest between sets
 */
public record TrainingSession(String name, List<Entry> entries, Duration rest) {
    private static final int MOST = 1000;

    /**
     * One exercise of the session.
     *
     * @param repetition what is repeated
     * @param sets 1 to 1000
     * @param repetitions in each set, 1 to 1000
     */
    public record Entry(Repetition repetition, int sets, int repetitions) {
        /**
         * Makes an entry.
         *
         * @throws IllegalArgumentException if sets or repetitions are outside their range
         */
        public Entry {
            if (sets < 1 || sets > MOST || repetitions < 1 || repetitions > MOST) {
                throw new IllegalArgumentException(
                        sets + " sets of " + repetitions + " repetitions; allowed: 1 to " + MOST + " of each");
            }
        }

        private int count() {
            return sets * repetitions;
        }

        private double seconds() {
            return count() * repetition.tempo().total();
        }

        private String words() {
            return sets + " × " + repetitions + " " + repetition.performance();
        }
    }

    /** Copies the entries. */
    public TrainingSession {
        entries = List.copyOf(entries);
        if (!(rest.si() >= 0 && rest.si() <= 3600)) {
            throw new IllegalArgumentException("the rest between sets is " + rest + "; allowed: 0 s to 3600 s");
        }
    }

    /** Returns this session with one more exercise. */
    public TrainingSession add(Repetition repetition, int sets, int repetitions) {
        List<Entry> more = new ArrayList<>(entries);
        more.add(new Entry(repetition, sets, repetitions));
        return new TrainingSession(name, more, rest);
    }

    /** Returns this session with another rest between sets. */
    public TrainingSession rest(Duration betweenSets) {
        return new TrainingSession(name, entries, betweenSets);
    }

    private void needEntries() {
        if (entries.isEmpty()) {
            throw new IllegalArgumentException(
                    "the session \"" + name + "\" has no exercises; add one with .add(repetition, sets, repetitions)");
        }
    }

    /** Returns the time of the session with the rests between its sets, none before the first. */
    public Duration time() {
        double time = 0;
        int sets = 0;
        for (Entry entry : entries) {
            time += entry.seconds();
            sets += entry.sets();
        }
        return Duration.of(time + rest.si() * Math.max(0, sets - 1));
    }

    /**
     * Returns what each joint is exposed to: for every exercise its time, lifting work, and each joint's moment summed over
     * time, in motion.
     *
     * @param joints at least one
     */
    public Listing ledger(Joint... joints) {
        needEntries();
        List<String> headings = headings();
        for (Joint joint : joints) {
            headings.add(joint.words() + ", N·m·s " + joint.sides().words());
        }
        Map<Joint, Double> sums = new LinkedHashMap<>();
        List<List<Object>> rows = new ArrayList<>();
        for (Entry entry : entries) {
            List<Object> row = row(entry);
            for (Joint joint : joints) {
                double exposure = entry.count() * entry.repetition().exposure(joint);
                sums.merge(joint, exposure, Double::sum);
                row.add(text(exposure));
            }
            rows.add(row);
        }
        List<Object> total = total();
        sums.values().forEach(sum -> total.add(text(sum)));
        rows.add(total);
        return listing(headings, rows);
    }

    /**
     * Returns what readings are exposed to, such as the force of a target muscle: each reading's size summed over time,
     * postures taken as held still.
     *
     * @param readings at least one
     */
    public Listing ledger(Reading<?>... readings) {
        needEntries();
        List<String> headings = headings();
        for (Reading<?> reading : readings) {
            headings.add(
                    reading.label() + ", " + reading.unit().dimension().si().symbol() + "·s "
                            + reading.sides().words());
        }
        double[] sums = new double[readings.length];
        List<List<Object>> rows = new ArrayList<>();
        for (Entry entry : entries) {
            List<Object> row = row(entry);
            for (int k = 0; k < readings.length; k++) {
                double exposure = entry.count() * entry.repetition().exposure(readings[k]);
                sums[k] += exposure;
                row.add(text(exposure));
            }
            rows.add(row);
        }
        List<Object> total = total();
        for (double sum : sums) {
            total.add(text(sum));
        }
        rows.add(total);
        return listing(headings, rows);
    }

    private static List<String> headings() {
        return new ArrayList<>(List.of("exercise", "time under load", "lifting work"));
    }

    private static List<Object> row(Entry entry) {
        List<Object> row = new ArrayList<>();
        row.add(entry.words());
        row.add(Duration.of(entry.seconds()));
        row.add(Work.of(entry.count() * entry.repetition().energies().lifting()));
        return row;
    }

    private List<Object> total() {
        double seconds = 0;
        double work = 0;
        for (Entry entry : entries) {
            seconds += entry.seconds();
            work += entry.count() * entry.repetition().energies().lifting();
        }
        List<Object> row = new ArrayList<>();
        row.add("whole session, " + time() + " with rests");
        row.add(Duration.of(seconds));
        row.add(Work.of(work));
        return row;
    }

    private static String text(double exposure) {
        return String.format(Locale.ROOT, "%.0f", exposure);
    }

    private Listing listing(List<String> headings, List<List<Object>> rows) {
        Set<String> notes = new LinkedHashSet<>();
        notes.add("Exposure is a size summed over time, rests of " + rest
                + " between sets not counted; growth, fatigue," + " soreness and recovery are outside this model.");
        entries.forEach(entry -> notes.addAll(entry.repetition().cautionList()));
        return new Listing("Ledger of " + name, headings, rows, List.copyOf(notes));
    }
}

package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Recent;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listing;
import org.jspecify.annotations.Nullable;

/**
 * A performance over two of its settings at once, each turned as a sweep turns it: what a contour map shows; immutable.
 *
 * <pre>{@code
 * SettingMap.of(sweep(TORSO_LEAN).from(deg(10)).to(deg(80)), sweep(BAR).to(kg(100)), hinge.by(ines)).map(moment(HIP))
 * }</pre>
 */
public final class SettingMap {
    /** How many settings each way unless a sweep says otherwise. */
    public static final int NODES = 61;
    /** Greatest number of settings each way: more than a drawing has room for. */
    public static final int MOST_NODES = 400;

    private static final int MOST_REASONS = 3;
    /** Turning what is mapped changes no value: those made last are kept. */
    private static final Recent<Question, Made> RECENT = new Recent<>(8);

    private final Performance performance;
    private final Variable<?> across;
    private final Variable<?> up;
    private final Places columns;
    private final Places rows;

    private SettingMap(Performance performance, Variable<?> across, Places columns, Variable<?> up, Places rows) {
        this.performance = performance;
        this.across = across;
        this.columns = columns;
        this.up = up;
        this.rows = rows;
    }

    /**
     * Returns a map.
     *
     * @param across what is turned from left to right, and how far
     * @param up what is turned upwards, and how far
     * @param performance everything else
     * @throws IllegalArgumentException if both turn the same, if a range does not rise or leaves its variable's, if there are
     *     fewer than 2 or more than {@value #MOST_NODES} settings one way, or if the exercise does not have a knob
     */
    public static SettingMap of(Sweep<?> across, Sweep<?> up, Performance performance) {
        Variable<?> first = across.turned();
        Variable<?> second = up.turned();
        if (first.name().equals(second.name())) {
            throw new IllegalArgumentException("a map turns " + first
                    + " both ways; allowed: two different knobs or lengths, so that it has two sides");
        }
        Places columns = across.places(performance, NODES);
        Places rows = up.places(performance, NODES);
        check(columns, first);
        check(rows, second);
        return new SettingMap(performance, first, columns, second, rows);
    }

    private static void check(Places places, Variable<?> turned) {
        if (places.count() > MOST_NODES) {
            throw new IllegalArgumentException("a map has " + places.count() + " settings of " + turned
                    + "; allowed: 2 to " + MOST_NODES + " each way, more than can be drawn");
        }
    }

    /** Returns what is mapped. */
    public Performance performance() {
        return performance;
    }

    /** Reads a quantity off every posture of the map, on the caller's thread: see {@link #map(Crew, Reading)}. */
    public ContourMap map(Reading<?> reading) {
        return map(Crew.alone(), reading);
    }

    /**
     * Reads a quantity off every posture of the map. The present setting is marked if it lies on the map. Inputs with an error
     * stand at their middle. Where no posture has the setting, where the lifter would fall, or where the quantity has no
     * value, the map has none; notes say why. Once stopped, the map ends at the last whole row, and a note says so.
     *
     * @param crew who works
     * @param reading what to read
     * @throws IllegalArgumentException if it was stopped before two rows were done
     */
    public ContourMap map(Crew crew, Reading<?> reading) {
        return maps(crew, reading).get(0);
    }

    /** Reads several quantities off the same postures, a map for each: see {@link #map(Crew, Reading)}. */
    public List<ContourMap> maps(Crew crew, Reading<?>... readings) {
        Made made = made(crew, readings);
        Set<String> notes = new LinkedHashSet<>(made.notes());
        if (!performance.uncertainInputs().isEmpty()) {
            notes.add("Inputs carry errors; the map shows their middle.");
        }
        notes.addAll(performance.exercise().cautions());
        performance.lifter().notes().forEach(note -> notes.add(note.text()));
        Curves.Axis axisAcross = axis(across, columns, columns.count());
        Curves.Axis axisUp = axis(up, rows, made.rows());
        Double x = present(across, axisAcross);
        Double y = present(up, axisUp);
        boolean shown = x != null && y != null;
        List<ContourMap> maps = new ArrayList<>();
        for (int r = 0; r < readings.length; r++) {
            maps.add(new ContourMap(
                    performance + ", over " + across + " and " + up,
                    readings[r].label(performance),
                    readings[r].unit(),
                    readings[r].sides(),
                    axisAcross,
                    axisUp,
                    made.values().get(r),
                    List.of(),
                    shown ? x : null,
                    shown ? y : null,
                    List.copyOf(notes)));
        }
        return maps;
    }

    /**
     * Returns the same as a table: at most nine settings each way, a row for each setting upwards.
     *
     * @param crew who works
     * @param reading what to read
     */
    public Listing table(Crew crew, Reading<?> reading) {
        return MapTable.of(map(crew, reading));
    }

    private static Curves.Axis axis(Variable<?> variable, Places places, int count) {
        List<Double> settings = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            settings.add(places.at(i));
        }
        return new Curves.Axis(variable.name(), variable.unit(), settings);
    }

    private @Nullable Double present(Variable<?> variable, Curves.Axis axis) {
        double present = variable.present(performance);
        boolean on = present >= axis.values().get(0)
                && present <= axis.values().get(axis.values().size() - 1);
        return on ? present : null;
    }

    /** What the values depend on: all but the present settings of what is turned. */
    private record Question(
            Performance start, String across, String up, Places columns, Places rows, List<String> readings) {}

    /**
     * The values of a map.
     *
     * @param rows how many rows are done
     * @param values by reading, row by row
     */
    private record Made(int rows, List<List<@Nullable Double>> values, List<String> notes) {}

    private Made made(Crew crew, Reading<?>... readings) {
        Performance start = up.set(across.set(performance, columns.from()), rows.from());
        Question question = new Question(
                start,
                across.name(),
                up.name(),
                columns,
                rows,
                Arrays.stream(readings).map(Reading::label).toList());
        return RECENT.get(question, () -> make(crew, readings), made -> made.rows() == rows.count());
    }

    private Made make(Crew crew, Reading<?>... readings) {
        int width = columns.count();
        int all = width * rows.count();
        double[][] values = new double[readings.length][all];
        Map<String, Missing> missing = new LinkedHashMap<>();
        Performance[] byColumn = new Performance[width];
        for (int column = 0; column < width; column++) {
            byColumn[column] = across.set(performance, columns.at(column));
        }
        int done = new StudyPoints(List.of(readings), false)
                .work(
                        crew,
                        all,
                        point -> up.set(byColumn[point % width], rows.at(point / width)),
                        block -> take(block, values, missing, readings));
        int whole = done / width;
        if (whole < 2) {
            throw new IllegalArgumentException("the map was stopped before two of its rows were done");
        }
        List<String> notes = new ArrayList<>();
        if (done < all) {
            notes.add(String.format(
                    Locale.ROOT, "Stopped: %,d of %,d rows are done, from the foot on.", whole, rows.count()));
        }
        notes.addAll(reasons(missing, whole * width));
        List<List<@Nullable Double>> lists = new ArrayList<>();
        for (double[] each : values) {
            List<@Nullable Double> list = new ArrayList<>(whole * width);
            for (int i = 0; i < whole * width; i++) {
                list.add(Double.isNaN(each[i]) ? null : each[i]);
            }
            lists.add(list);
        }
        return new Made(whole, lists, notes);
    }

    private void take(
            StudyPoints.Block block, double[][] values, Map<String, Missing> missing, Reading<?>... readings) {
        for (int i = 0; i < block.count; i++) {
            for (int r = 0; r < readings.length; r++) {
                values[r][block.from + i] = block.values[i * readings.length + r];
            }
        }
        for (StudyPoints.Missing each : block.missing) {
            String what = each.reading() < 0 ? "" : " of " + readings[each.reading()].label(performance);
            missing.merge(
                    what + "\n" + Gaps.kind(each.reason()),
                    new Missing(what, each.point(), each.reason(), 1),
                    (before, now) -> new Missing(what, before.point(), before.reason(), before.count() + 1));
        }
    }

    /** Why values are missing: what misses, the first node, its reason, and how many nodes miss for reasons of this kind. */
    private record Missing(String what, int point, String reason, int count) {}

    private List<String> reasons(Map<String, Missing> missing, int all) {
        List<String> notes = new ArrayList<>();
        for (Missing each : missing.values()) {
            if (notes.size() == MOST_REASONS) {
                notes.add((missing.size() - MOST_REASONS) + " more reasons leave nodes without a value.");
                break;
            }
            int column = each.point() % columns.count();
            int row = each.point() / columns.count();
            notes.add(String.format(
                    Locale.ROOT,
                    "No value%s at %,d of %,d settings, such as %s %s with %s %s: %s",
                    each.what(),
                    each.count(),
                    all,
                    across,
                    across.rounded(columns.at(column)),
                    up,
                    up.rounded(rows.at(row)),
                    each.reason()));
        }
        return notes;
    }
}

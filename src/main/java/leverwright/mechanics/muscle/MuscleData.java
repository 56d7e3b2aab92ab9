package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import leverwright.mechanics.body.DataFile;
import leverwright.mechanics.body.ReadingStatus;
import leverwright.mechanics.body.Sex;
import org.jspecify.annotations.Nullable;

/** The numbers of all muscles, each with its spread, source and reading status, read once from the data file. */
public final class MuscleData {
    private static final String FILE = "/leverwright/mechanics/muscle/muscles.csv";
    private static final String COLUMNS = "muscle,axis,sex,quantity,at,value,spread,unit,status,source";
    private static final MuscleData STANDARD = parse("muscles.csv", DataFile.text(FILE));

    private final List<Row> rows;
    private final Map<String, String> sources;
    private final Map<String, List<Row>> index = new LinkedHashMap<>();
    private final Map<String, Optional<ArmCurve>> curves = new LinkedHashMap<>();
    private final @Nullable MuscleTable[] tables = new MuscleTable[Sex.values().length];

    /**
     * One number.
     *
     * @param muscle whose
     * @param axis about which axis; "-" for numbers of the muscle itself
     * @param sex FEMALE, MALE or BOTH
     * @param quantity what is given
     * @param at degrees of flexion of an arm, power of a coefficient
     * @param value the number in its unit
     * @param spread half width in which it is meant to lie, in the same unit
     * @param unit its unit
     * @param status how it was read
     * @param source key of the source
     */
    public record Row(
            Muscle muscle,
            String axis,
            String sex,
            String quantity,
            double at,
            double value,
            double spread,
            String unit,
            ReadingStatus status,
            String source) {}

    private MuscleData(List<Row> rows, Map<String, String> sources) {
        this.rows = List.copyOf(rows);
        this.sources = sources;
        for (Row row : rows) {
            for (Sex sex : Sex.values()) {
                if (row.sex().equals("BOTH") || row.sex().equals(sex.name())) {
                    index.computeIfAbsent(
                                    key(row.muscle(), row.axis(), row.quantity(), sex), unused -> new ArrayList<>())
                            .add(row);
                }
            }
        }
    }

    private static String key(Muscle muscle, String axis, String quantity, Sex sex) {
        return muscle.name() + " " + axis + " " + quantity + " " + sex.name();
    }

    /** The arm of a muscle about an axis; empty where it has none. */
    synchronized Optional<ArmCurve> curve(Muscle muscle, Axis axis, Sex sex) {
        return curves.computeIfAbsent(
                key(muscle, axis.name(), "arm", sex), unused -> ArmCurve.of(this, muscle, axis, sex));
    }

    /** Returns the numbers that travel with the program. */
    public static MuscleData standard() {
        return STANDARD;
    }

    /**
     * Reads numbers of one's own, in the form of the program's own file.
     *
     * @param name how to call it in messages
     * @param text lines of a head, "# source KEY: words", then the columns and a row a number
     * @throws IllegalArgumentException if a line cannot be read, an area is not greater than 0 or an arm is 0
     */
    public static MuscleData parse(String name, String text) {
        Map<String, String> sources = new LinkedHashMap<>();
        List<Row> rows = new ArrayList<>();
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.startsWith("# source ")) {
                int colon = line.indexOf(':');
                sources.put(
                        line.substring(9, colon).strip(),
                        line.substring(colon + 1).strip());
            } else if (!line.startsWith("#") && !line.equals(COLUMNS) && !line.isBlank()) {
                rows.add(row(name, number, line, sources));
            }
        }
        return new MuscleData(rows, sources);
    }

    private static Row row(String name, int number, String line, Map<String, String> sources) {
        String at = "line " + number + " of " + name + ": ";
        String[] cell = line.split(",", -1);
        if (cell.length != 10 || !sources.containsKey(cell[9])) {
            throw new IllegalArgumentException(at + "allowed: ten fields, the last a source of the head; " + COLUMNS);
        }
        Row row;
        try {
            row = new Row(
                    Muscle.valueOf(cell[0]),
                    cell[1],
                    cell[2],
                    cell[3],
                    Double.parseDouble(cell[4]),
                    Double.parseDouble(cell[5]),
                    Double.parseDouble(cell[6]),
                    cell[7],
                    ReadingStatus.valueOf(cell[8]),
                    cell[9]);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    at + "allowed: a muscle's name, numbers, a reading status; found " + line, e);
        }
        boolean positive = List.of("area", "tension", "optimum_length").contains(row.quantity());
        if (positive && !(row.value() > 0)) {
            throw new IllegalArgumentException(at + "the " + row.quantity().replace('_', ' ') + " of the "
                    + row.muscle().words() + " is " + cell[5] + " " + row.unit() + "; allowed: greater than 0");
        }
        if (row.quantity().equals("arm") && row.value() == 0) {
            throw new IllegalArgumentException(
                    at + "the arm of the " + row.muscle().words() + " about the " + row.axis()
                            + " is 0; a muscle without an arm makes no moment: leave the row out");
        }
        return row;
    }

    /** Returns all numbers in the order of the file. */
    public List<Row> rows() {
        return rows;
    }

    /** Returns the words of a source. */
    public String source(Row row) {
        return sources.getOrDefault(row.source(), row.source());
    }

    /** The rows of a quantity of a muscle about an axis ("-" for none), for a sex. */
    List<Row> of(Muscle muscle, String axis, String quantity, Sex sex) {
        return index.getOrDefault(key(muscle, axis, quantity, sex), List.of());
    }

    /** All numbers for a sex, laid out for many postures; made once. */
    MuscleTable table(Sex sex) {
        MuscleTable made = tables[sex.ordinal()];
        if (made == null) {
            made = new MuscleTable(this, sex);
            tables[sex.ordinal()] = made;
        }
        return made;
    }

    /** The one row of a quantity of a muscle itself. */
    Row one(Muscle muscle, String quantity, Sex sex) {
        List<Row> found = of(muscle, "-", quantity, sex);
        if (found.isEmpty()) {
            throw new IllegalArgumentException(
                    "the data lack the " + quantity.replace('_', ' ') + " of the " + muscle.words() + "; add a row");
        }
        return found.get(0);
    }
}

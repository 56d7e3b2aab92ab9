package leverwright.mechanics.body;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A table of published numbers that travels with the program; the only reader of files in the mechanics. It reads the class
 * path and nothing else.
 *
 * <p>Lines that begin with {@code #} are the header, each {@code # key: text}; keys may repeat. The first other line names
 * the columns; the rest are rows, comma separated, without quotes. Columns: {@code segment, end_points, sex, quantity, value,
 * unit, status, source}.
 *
 * @param name the file's name
 * @param header header texts by key, in order; repeated keys are joined by line feeds
 * @param rows the numbers, in order
 */
public record DataFile(String name, Map<String, String> header, List<Row> rows) {
    private static final String COLUMNS = "segment,end_points,sex,quantity,value,unit,status,source";
    private static final int COUNT = COLUMNS.split(",").length;

    /**
     * One number of a table.
     *
     * @param segment the row's name in the publication
     * @param endPoints its two end points, or "-"
     * @param sex FEMALE, MALE or BOTH
     * @param quantity what is given, such as "mass"
     * @param value the number as published
     * @param unit its unit; "1" for a ratio
     * @param status how it was read
     * @param source a key of the header's sources
     */
    public record Row(
            String segment,
            String endPoints,
            String sex,
            String quantity,
            double value,
            String unit,
            ReadingStatus status,
            String source) {}

    /** Makes a table; the collections are copied. */
    public DataFile {
        header = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(header));
        rows = List.copyOf(rows);
    }

    /**
     * Reads a table of this package from the class path.
     *
     * @param name file name without a path
     * @throws IllegalArgumentException if there is no such file or a line cannot be read; the message names file and line
     */
    public static DataFile read(String name) {
        return parse(name, text(name));
    }

    /**
     * Returns the text of a data file of the mechanics.
     *
     * @param name file name in this package, or a path on the class path that begins with a slash
     * @throws IllegalArgumentException if there is no such file
     */
    public static String text(String name) {
        try (InputStream in = DataFile.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalArgumentException("the program lacks its data file " + name + "; install it again");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("the data file " + name + " cannot be read; install the program again", e);
        }
    }

    /**
     * Reads a table from its text.
     *
     * @throws IllegalArgumentException if a line cannot be read; the message names file and line
     */
    static DataFile parse(String name, String text) {
        Map<String, String> header = new LinkedHashMap<>();
        List<Row> rows = new ArrayList<>();
        boolean columnsSeen = false;
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.startsWith("#")) {
                int colon = line.indexOf(':');
                require(colon > 1, name, number, "is not of the form \"# key: text\"");
                header.merge(
                        line.substring(1, colon).strip(),
                        line.substring(colon + 1).strip(),
                        (a, b) -> a + "\n" + b);
            } else if (!columnsSeen) {
                require(COLUMNS.equals(line), name, number, "should name the columns " + COLUMNS);
                columnsSeen = true;
            } else {
                rows.add(row(name, number, line, header));
            }
        }
        return new DataFile(name, header, rows);
    }

    private static Row row(String name, int number, String line, Map<String, String> header) {
        String[] cell = line.split(",", -1);
        require(cell.length == COUNT, name, number, "has " + cell.length + " fields; allowed: " + COUNT);
        require(
                header.containsKey("source " + cell[7]),
                name,
                number,
                "names source " + cell[7] + " not in the header");
        double value;
        ReadingStatus status;
        try {
            value = Double.parseDouble(cell[4]);
            status = ReadingStatus.valueOf(cell[6]);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "line " + number + " of " + name + " has the value " + cell[4] + " and the status " + cell[6]
                            + "; allowed: a number, and a reading status",
                    e);
        }
        require(Double.isFinite(value), name, number, "has the value " + cell[4] + "; allowed: a finite number");
        return new Row(cell[0], cell[1], cell[2], cell[3], value, cell[5], status, cell[7]);
    }

    private static void require(boolean holds, String name, int number, String what) {
        if (!holds) {
            throw new IllegalArgumentException("line " + number + " of " + name + " " + what);
        }
    }

    /**
     * Returns one number with its source, unscaled.
     *
     * @param endPoints the row's end points
     * @param sex whose number; a row for both sexes serves either
     * @throws IllegalArgumentException if the table has no such number
     */
    public SourcedValue value(String segment, String endPoints, Sex sex, String quantity) {
        for (Row row : rows) {
            if (row.segment.equals(segment)
                    && row.endPoints.equals(endPoints)
                    && row.quantity.equals(quantity)
                    && (row.sex.equals("BOTH") || row.sex.equals(sex.name()))) {
                return sourced(row);
            }
        }
        throw new IllegalArgumentException(
                name + " has no " + quantity + " of " + segment + " (" + endPoints + ") for " + sex.group());
    }

    private SourcedValue sourced(Row row) {
        String ends = row.endPoints.equals("-") ? "" : ", " + row.endPoints;
        return new SourcedValue(
                row.segment.replace('_', ' ') + " " + row.quantity.replace('_', ' '),
                row.value,
                row.unit,
                citation() + ", row " + row.segment.replace('_', ' ') + ends,
                row.status);
    }

    /** Returns the publication and the table in it, for print. */
    public String citation() {
        return header.getOrDefault("short", name) + ", " + header.getOrDefault("table", "");
    }
}

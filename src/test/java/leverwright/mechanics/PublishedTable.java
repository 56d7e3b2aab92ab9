package leverwright.mechanics;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A table copied from a published source, as it lies in {@code reference/}: its numbers are read, not typed again. */
public final class PublishedTable {

    private final Map<String, Map<String, String>> rows = new LinkedHashMap<>();

    private PublishedTable(List<List<String>> lines) {
        List<String> head = lines.get(0);
        for (List<String> line : lines.subList(1, lines.size())) {
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < line.size(); i++) {
                row.put(head.get(i), line.get(i));
            }
            rows.put(line.get(0), row);
        }
    }

    /**
     * Reads a table.
     *
     * @param name the file, such as {@code openstax_cp_9_6.csv}
     */
    public static PublishedTable read(String name) {
        try (InputStream in = PublishedTable.class.getResourceAsStream("/reference/" + name)) {
            String text = new String(Objects.requireNonNull(in, name).readAllBytes(), StandardCharsets.UTF_8);
            return new PublishedTable(text.lines().map(PublishedTable::fields).toList());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Fields parted by commas; a field in quotes may hold commas. */
    private static List<String> fields(String line) {
        List<String> fields = new ArrayList<>();
        Matcher field = Pattern.compile("\\G(?:^|,)(?:\"([^\"]*)\"|([^,]*))").matcher(line);
        while (field.find()) {
            fields.add(field.group(1) != null ? field.group(1) : field.group(2));
        }
        return fields;
    }

    /**
     * Returns the number that stands in a field.
     *
     * @param id the row
     * @param column the column
     * @param pattern words around the number, with {@code #} in its place
     */
    public double number(String id, String column, String pattern) {
        String field =
                Objects.requireNonNull(Objects.requireNonNull(rows.get(id), id).get(column), column);
        String[] around = pattern.split("#", -1);
        Matcher found = Pattern.compile(Pattern.quote(around[0]) + "(-?[\\d.]+(?:e\\d+)?)" + Pattern.quote(around[1]))
                .matcher(field);
        assertTrue(found.find(), () -> "no \"" + pattern + "\" in \"" + field + "\"");
        return Double.parseDouble(found.group(1));
    }
}

package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.Verdict;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Holds docs/workbook.schema.json against what is written and read, with a validator of JSON Schema 2020-12. */
class WorkbookSchemaTest {

    private static final long SEED = 20251130;
    private static final Path FILE = Path.of("docs/workbook.schema.json");
    private static final Path SAMPLE = Path.of("src/test/resources/workbook/golden/v1/hinge.leverwright.json");

    private static Schema schema;

    @BeforeAll
    static void readTheSchema() throws IOException {
        schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(Files.readString(FILE), InputFormat.JSON);
    }

    private static List<String> complaints(String text) {
        return schema.validate(text, InputFormat.JSON).stream()
                .map(Object::toString)
                .toList();
    }

    @Test
    void goldenAndShippedWorkbooksFitTheSchema() throws IOException {
        int seen = 0;
        for (Path folder : List.of(Path.of("src/test/resources/workbook/golden/v1"), Path.of("workbooks"))) {
            if (!Files.isDirectory(folder)) {
                continue;
            }
            try (Stream<Path> files = Files.walk(folder)) {
                for (Path file : files.filter(path -> path.toString().endsWith(WorkbookFormat.EXTENSION))
                        .toList()) {
                    assertEquals(List.of(), complaints(Files.readString(file)), file.toString());
                    seen++;
                }
            }
        }
        assertTrue(seen >= 2, seen + " files seen");
    }

    @Test
    void whatIsWrittenFitsTheSchema() {
        RandomWorkbooks random = new RandomWorkbooks(SEED);
        for (int round = 0; round < 60; round++) {
            String text = new String(WorkbookFormat.write(random.workbook()), StandardCharsets.UTF_8);
            assertEquals(List.of(), complaints(text), "seed " + SEED + ", round " + round);
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"version\": 1|\"version\": 2",
                "\"id\": \"n1\"|\"id\": \"\"",
                "\"id\": \"n1\",|\"id\": \"n1\", \"script\": [],",
                "\"state\": \"failed\"|\"state\": \"stale\"",
                "\"seed\": 20251125|\"seed\": 0.5",
                "\"unit\": \"degree\"|\"unit\": \"grad\"",
                "\"verdict\": \"does not hold\"|\"verdict\": \"maybe\"",
                "\"value\": 123.04|\"value\": \"123.04\"",
                "\"type\": \"load arm\"|\"type\": \"arm\"",
                "\"type\": \"cosine\"|\"type\": \"tangent\"",
                "\"number\": \"4.0\"|\"number\": \"1e9\"",
            })
    void whatIsNotReadDoesNotFitTheSchemaEither(String right, String wrong) throws IOException {
        String text = Files.readString(SAMPLE);
        assertTrue(text.contains(right), right);
        String damaged = text.replace(right, wrong);
        assertFalse(complaints(damaged).isEmpty(), wrong);
        boolean read = true;
        try {
            WorkbookFormat.read(damaged.getBytes(StandardCharsets.UTF_8));
        } catch (IllegalArgumentException refused) {
            read = false;
        }
        assertFalse(read, wrong);
    }

    @Test
    void theSchemaKnowsTheConstantsAndKindsThatFilesHold() throws IOException {
        JsonCursor definitions = JsonCursor.at(JsonReader.read(Files.readAllBytes(FILE), JsonLimits.STANDARD))
                .member("$defs");
        assertEquals(
                words(Unit.values()), definitions.member("unit").member("enum").texts());
        assertEquals(
                words(Dimension.values()),
                definitions.member("dimension").member("enum").texts());
        assertEquals(
                words(Sides.values()),
                definitions.member("sides").member("enum").texts());
        JsonCursor claim = definitions.member("claimResult").member("properties");
        assertEquals(
                words(Verdict.values()), claim.member("verdict").member("enum").texts());
        Set<String> named = new TreeSet<>();
        definitions
                .members()
                .values()
                .forEach(definition -> definition
                        .optional("properties")
                        .flatMap(properties -> properties.optional("type"))
                        .ifPresent(type -> named.add(type.member("const").text())));
        Set<String> written = new TreeSet<>();
        ResultCodec.allowed().forEach((type, kind) -> {
            if (Arrays.stream(type.getInterfaces()).anyMatch(Class::isSealed)) {
                written.add(kind);
            }
        });
        assertEquals(written, named);
    }

    private static List<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants)
                .map(constant -> constant.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .toList();
    }
}

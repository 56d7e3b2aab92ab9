package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Consumer;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonNothing;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.json.JsonReader;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A damaged file gives one line that says where, and never another exception. */
class DamagedFileTest {

    private static final long SEED = 20251129;
    private static final Path SAMPLE = Path.of("src/test/resources/workbook/golden/v1/hinge.leverwright.json");
    private static final List<JsonValue> OTHERS = List.of(
            new JsonNothing(),
            new JsonNumber(-1.5),
            new JsonNumber(1e308),
            new JsonText("c1\nx"),
            new JsonArray(List.of(new JsonNumber(1))),
            JsonObject.EMPTY);

    private byte[] sample = new byte[0];
    private int refused;
    private int accepted;

    @BeforeEach
    void readTheSample() throws IOException {
        JsonValue tree = JsonReader.read(Files.readAllBytes(SAMPLE), JsonLimits.STANDARD);
        sample = JsonWriter.compact(tree).getBytes(StandardCharsets.UTF_8);
    }

    /** Reads bytes; what is refused is refused in one line with a place, what is accepted can be written and read again. */
    private void tryToRead(byte[] bytes, String damage) {
        try {
            Workbook workbook = WorkbookFormat.read(bytes);
            accepted++;
            assertEquals(workbook, WorkbookFormat.read(WorkbookFormat.write(workbook)), damage);
            workbook.record().ifPresent(record -> record.cells().values().forEach(CellRecord::results));
        } catch (JsonProblem problem) {
            refused++;
            String message = String.valueOf(problem.getMessage());
            assertTrue(message.matches("line \\d+, column \\d+.*: .+"), damage + ": " + message);
            assertTrue(message.length() < 1000, damage + ": " + message);
        }
    }

    @Test
    void aFileCutOffAnywhereIsRefusedInWords() {
        for (int length = 0; length < sample.length; length++) {
            tryToRead(Arrays.copyOf(sample, length), "cut to " + length + " bytes");
        }
        assertEquals(0, accepted);
    }

    @Test
    void flippedBytesAreRefusedInWordsOrGiveAnotherWholeWorkbook() {
        Random random = new Random(SEED);
        for (int round = 0; round < 2000; round++) {
            byte[] damaged = sample.clone();
            for (int flips = 1 + random.nextInt(3); flips > 0; flips--) {
                damaged[random.nextInt(damaged.length)] ^= (byte) (1 << random.nextInt(8));
            }
            tryToRead(damaged, "seed " + SEED + ", round " + round);
        }
        assertTrue(refused > 500 && accepted > 100, refused + " refused, " + accepted + " accepted");
    }

    @Test
    void aWrongValueAnywhereIsRefusedInWordsOrGivesAnotherWholeWorkbook() {
        JsonValue tree = JsonReader.read(sample, JsonLimits.STANDARD);
        changed(
                tree,
                damaged -> tryToRead(
                        JsonWriter.compact(damaged).getBytes(StandardCharsets.UTF_8), "a value replaced or removed"));
        assertTrue(refused > 2000, refused + " refused, " + accepted + " accepted");
    }

    /** Hands over every tree in which one value is another or one member or element is gone. */
    private static void changed(JsonValue tree, Consumer<JsonValue> each) {
        OTHERS.forEach(each);
        if (tree instanceof JsonObject object) {
            object.members().forEach((key, member) -> {
                each.accept(object.without(List.of(key)));
                changed(member, other -> {
                    Map<String, JsonValue> members = new LinkedHashMap<>(object.members());
                    members.put(key, other);
                    each.accept(new JsonObject(members));
                });
            });
        } else if (tree instanceof JsonArray array) {
            for (int index = 0; index < array.elements().size(); index++) {
                int place = index;
                List<JsonValue> fewer = new ArrayList<>(array.elements());
                fewer.remove(place);
                each.accept(new JsonArray(fewer));
                changed(array.elements().get(index), other -> {
                    List<JsonValue> elements = new ArrayList<>(array.elements());
                    elements.set(place, other);
                    each.accept(new JsonArray(elements));
                });
            }
        }
    }
}

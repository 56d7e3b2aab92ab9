package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.FigureResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonReader;
import leverwright.workbook.json.JsonWriter;
import org.junit.jupiter.api.Test;

class ResultCodecTest {

    private static final long SEED = 20251126;

    private static Result throughText(Result result) {
        String text = JsonWriter.laidOut(ResultCodec.write(result));
        return ResultCodec.readResult(
                JsonCursor.at(JsonReader.read(text.getBytes(StandardCharsets.UTF_8), JsonLimits.STANDARD)));
    }

    @Test
    void everyKindOfResultReadsBackEqualWithTheSameBits() {
        RandomWorkbooks random = new RandomWorkbooks(SEED);
        TreeSet<String> kinds = new TreeSet<>();
        for (int round = 0; round < 500; round++) {
            Result result = random.result();
            kinds.add(result.getClass().getSimpleName());
            assertEquals(result, throughText(result), "seed " + SEED + ", round " + round);
        }
        assertEquals(Result.class.getPermittedSubclasses().length, kinds.size(), kinds.toString());
    }

    @Test
    void anyDoubleKeepsItsRawBits() {
        RandomWorkbooks random = new RandomWorkbooks(SEED);
        List<Double> values = new ArrayList<>(List.of(
                0.0, 0.1, Double.MIN_VALUE, -Double.MIN_VALUE, Double.MIN_NORMAL, Double.MAX_VALUE, -Double.MAX_VALUE));
        for (int round = 0; round < 5000; round++) {
            values.add(random.number());
        }
        for (double value : values) {
            NumberResult number =
                    new NumberResult("", Quantity.exact(value, Unit.METRE), Sides.TOTAL, null, false, List.of());
            double back = ((NumberResult) throughText(number)).quantity().value();
            assertEquals(Double.doubleToRawLongBits(value), Double.doubleToRawLongBits(back), "value " + value);
        }
    }

    @Test
    void aNumberThatIsNotFiniteIsRefusedWhereverItHides() {
        Sketch.Shape disc = new Sketch.Disc("plate", new Sketch.Point(0, 0), Double.NaN);
        Sketch sketch = new Sketch("", List.of(disc), List.of(), List.of());
        FigureResult figure = new FigureResult("", "", sketch, List.of());
        assertThrows(IllegalArgumentException.class, () -> ResultCodec.write(figure));
    }

    @Test
    void aFigureWithoutTimesHasNoKeyForThemAndIsReadAsFilesHadIt() throws Exception {
        Sketch still = new Sketch("", List.of(), List.of(), List.of());
        FigureResult figure = new FigureResult("", "", still, List.of());
        assertTrue(!ResultCodec.write(figure).toString().contains("play"), "a key that older versions do not know");
        assertEquals(figure, throughText(figure));
        Sketch.Play play =
                new Sketch.Play("Torso lean", "2 s out", List.of(new Sketch.Beat(0, 0.25), new Sketch.Beat(2, 1)));
        FigureResult played = new FigureResult("", "", still.playing(play), List.of());
        assertEquals(played, throughText(played));
    }

    @Test
    void everyMemberOfEveryFamilyMayBeWrittenAndHasAKindOfItsOwn() {
        for (Class<?> family : List.of(Result.class, TableResult.Entry.class, Expression.class, Sketch.Shape.class)) {
            List<String> kinds = Arrays.stream(family.getPermittedSubclasses())
                    .map(member -> ResultCodec.allowed().getOrDefault(member, ""))
                    .toList();
            assertTrue(!kinds.contains(""), family + ": " + kinds);
            assertEquals(kinds.size(), new TreeSet<>(kinds).size(), family + ": " + kinds);
        }
    }

    @Test
    void onlyPublicRecordsAreMadeFromAFile() {
        ResultCodec.allowed().keySet().forEach(type -> {
            assertTrue(type.isRecord(), type.getName());
            assertTrue(Modifier.isPublic(type.getModifiers()), type.getName());
        });
    }

    @Test
    void aRecordThatIsNotOfTheSetIsNotWritten() {
        RecordCodec codec = new RecordCodec(Map.of());
        Quantity quantity = Quantity.exact(1, Unit.ONE);
        assertThrows(IllegalArgumentException.class, () -> codec.write(quantity, Quantity.class));
    }
}

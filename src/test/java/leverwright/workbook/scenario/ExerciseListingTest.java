package leverwright.workbook.scenario;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonReader;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;
import org.junit.jupiter.api.Test;

class ExerciseListingTest {
    private static final JsonLimits LIMITS = JsonLimits.STANDARD;

    @Test
    void theListHasALineForEveryExercise() {
        String text = ExerciseListing.text();
        for (Exercise<?> exercise : Catalogue.exercises()) {
            assertTrue(text.contains("  " + exercise.name() + " "), exercise.name());
        }
    }

    @Test
    void oneExerciseIsFoundByNameAndByWordWithKnobsRangesAndCautions() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            String text = ExerciseListing.text(exercise.name());
            for (Knob<?> knob : exercise.knobs()) {
                assertTrue(text.contains(knob.name()) && text.contains(knob.range()), exercise + ", " + knob);
            }
            exercise.freeComponents().forEach(free -> assertTrue(text.contains(free), free));
            exercise.cautions().forEach(caution -> assertTrue(text.contains(caution), caution));
            assertFalse(text.contains("in a cell exercise()"), exercise.name());
        }
        assertEquals(ExerciseListing.text("Front squat"), ExerciseListing.text("frontSquat"));
        String message = assertThrows(IllegalArgumentException.class, () -> ExerciseListing.text("juggling"))
                .getMessage();
        assertTrue(message.contains("there is no exercise \"juggling\"; there are: Back squat"), message);
    }

    @Test
    void jsonIsAListOfObjectsWithNames() {
        JsonArray all = (JsonArray) read(ExerciseListing.json());
        assertEquals(Catalogue.exercises().size(), all.elements().size());
        for (int k = 0; k < all.elements().size(); k++) {
            assertEquals(
                    Catalogue.exercises().get(k).name(), name(all.elements().get(k)));
        }
        JsonArray one = (JsonArray) read(ExerciseListing.json("benchPress"));
        assertEquals(1, one.elements().size());
        assertEquals("Bench press", name(one.elements().get(0)));
    }

    private static JsonValue read(String json) {
        return JsonReader.read(json.getBytes(StandardCharsets.UTF_8), LIMITS);
    }

    private static String name(JsonValue object) {
        return ((JsonText) ((JsonObject) object).get("name").orElseThrow()).text();
    }
}

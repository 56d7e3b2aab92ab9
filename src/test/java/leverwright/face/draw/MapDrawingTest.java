package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import leverwright.face.SampleResults;
import leverwright.run.result.MapResult;
import org.junit.jupiter.api.Test;

class MapDrawingTest {
    private final MapResult sample = SampleResults.map();

    private static List<Mark.Words> words(Picture picture) {
        List<Mark.Words> words = new ArrayList<>();
        for (Mark mark : picture.marks()) {
            if (mark instanceof Mark.Words each) {
                words.add(each);
            }
        }
        return words;
    }

    private static List<String> texts(Picture picture) {
        return words(picture).stream().map(Mark.Words::text).toList();
    }

    @Test
    void contoursCarryTheirRoundValuesAndThePresentSettingItsOwn() {
        List<String> texts = texts(MapDrawing.of(sample));
        for (String text :
                List.of("pivot moment, total (N·m)", "Bar (kg)", "Torso lean", "200", "400", "600", "no value")) {
            assertTrue(texts.contains(text), text + " in " + texts);
        }
        // 50·9.80665·sin 45° = 346.7
        assertTrue(texts.contains("346.7 N·m at 45°, 50 kg"), texts.toString());
    }

    @Test
    void chosenLevelsTakeThePlaceOfRoundOnes() {
        MapResult chosen = new MapResult(sample.title(), sample.map().withLevels(List.of(123.0, 321.0)), List.of());
        List<String> texts = texts(MapDrawing.of(chosen));
        assertTrue(texts.containsAll(List.of("123", "321")), texts.toString());
        assertFalse(texts.contains("400"));
    }

    @Test
    void noWordsCoverEachOtherOrLeaveThePicture() {
        for (int width : new int[] {280, 600, 900}) {
            Picture picture = MapDrawing.of(sample, width, 420);
            List<Mark.Words> words = words(picture);
            Rectangle2D page = new Rectangle2D.Double(0, 0, picture.width(), picture.height());
            for (int i = 0; i < words.size(); i++) {
                assertTrue(page.contains(Placer.box(words.get(i))), words.get(i).text() + " at width " + width);
                for (int k = i + 1; k < words.size(); k++) {
                    assertFalse(
                            Placer.box(words.get(i)).intersects(Placer.box(words.get(k))),
                            words.get(i).text() + " covers " + words.get(k).text() + " at width " + width);
                }
            }
        }
    }

    @Test
    void placesAndSettingsAreEachOthersInverse() {
        PlotArea area = MapDrawing.draw(sample, new MapWish(600, 400, new MapWindow(0.5, 1, 20, 60), null))
                .area();
        assertEquals(0.5, area.settingAt(area.left()), 1e-12);
        assertEquals(60, area.valueAt(area.top()), 1e-12);
        assertEquals(0.7, area.settingAt(area.across(0.7)), 1e-12);
        assertEquals(33, area.valueAt(area.down(33)), 1e-12);
    }

    @Test
    void theMapIsToldInWords() {
        String words = MapDrawing.description(sample.map());
        assertEquals(
                "pivot moment, total over Torso lean from 10° to 90° and Bar from 0 kg to 100 kg: least 0 N·m at Torso lean"
                        + " 10°, Bar 0 kg, greatest 980.7 N·m at Torso lean 90°, Bar 100 kg, at the present 45° and 50 kg"
                        + " about 346.7 N·m; no value at 64 of 1681 settings.",
                words);
    }

    @Test
    void tooSmallASizeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> MapDrawing.of(sample, 100, 400));
    }
}

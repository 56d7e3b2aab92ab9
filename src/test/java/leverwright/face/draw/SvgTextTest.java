package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import leverwright.face.Hostile;
import leverwright.face.SampleResults;
import leverwright.face.Xml;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class SvgTextTest {
    private static final String CAUTION = "A model's estimate.";

    private static final Set<String> ELEMENTS =
            Set.of("svg", "title", "desc", "style", "path", "circle", "ellipse", "text");
    private static final Set<String> ATTRIBUTES = Set.of(
            "xmlns",
            "class",
            "role",
            "aria-labelledby",
            "viewBox",
            "width",
            "height",
            "id",
            "d",
            "stroke-width",
            "stroke-dasharray",
            "opacity",
            "cx",
            "cy",
            "r",
            "rx",
            "ry",
            "x",
            "y",
            "font-size",
            "text-anchor");

    @Test
    void aChartOfTwoHundredPointsIsSmall() {
        String svg = SvgText.file(ChartDrawing.of(SampleResults.curves(200, true)), CAUTION);
        assertTrue(svg.getBytes(StandardCharsets.UTF_8).length <= 40_000, "bytes: " + svg.length());
    }

    @Test
    void aHundredTimesThePointsStaySmall() {
        String svg = SvgText.file(ChartDrawing.of(SampleResults.curves(20_000, true)), CAUTION);
        assertTrue(svg.length() <= 300_000, "bytes: " + svg.length());
    }

    @Test
    void drawingsAreWellFormedAndHoldNothingThatActs() {
        for (String svg : List.of(
                SvgText.file(ChartDrawing.of(SampleResults.curves(200, true)), CAUTION),
                SvgText.file(ChartDrawing.of(SampleResults.manyCurves()), CAUTION),
                SvgText.file(FigureDrawing.of(SampleResults.figure()), CAUTION),
                SvgText.element(FigureDrawing.of(SampleResults.figure()), "figure"))) {
            assertOnlyKnownMarkup(Xml.parse(svg));
        }
    }

    @Test
    void hostileWordsStayWords() {
        for (String text : Hostile.TEXTS) {
            Mark.Words words = new Mark.Words(text, 1, 2, Mark.Anchor.START, new Mark.Type(Ink.TEXT, 12, false, true));
            Document document = Xml.parse(SvgText.file(new Picture(10, 10, text, text, List.of(words)), CAUTION));
            assertOnlyKnownMarkup(document);
            assertEquals(6, Xml.elements(document).size());
            String shown = document.getElementsByTagName("text").item(0).getTextContent();
            assertEquals(Markup.clean(text), shown);
        }
    }

    private static void assertOnlyKnownMarkup(Document document) {
        for (Element element : Xml.elements(document)) {
            assertTrue(ELEMENTS.contains(element.getTagName()), element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String name = element.getAttributes().item(i).getNodeName();
                assertTrue(ATTRIBUTES.contains(name), element.getTagName() + " " + name);
            }
        }
    }

    @Test
    void coloursAreVariablesForLightAndDark() {
        String element = SvgText.element(ChartDrawing.of(SampleResults.manyCurves()), "chart");
        assertFalse(element.contains("#"), "a colour is written into the drawing");
        Set<String> used = new TreeSet<>();
        for (Element each : Xml.elements(Xml.parse(element))) {
            for (String name : each.getAttribute("class").split(" ")) {
                if (name.startsWith("s-") || name.startsWith("f-")) {
                    used.add(name);
                }
            }
        }
        assertTrue(used.size() > 8, "inks used: " + used);
        String file = SvgText.file(ChartDrawing.of(SampleResults.manyCurves()), CAUTION);
        used.forEach(name -> {
            assertTrue(file.contains("." + name + "{"), name);
            assertEquals(3, occurrences(file, "--lw-" + name.substring(2) + ":") + 1, name + " in both palettes");
        });
        assertTrue(file.contains("@media (prefers-color-scheme:dark)"));
    }

    private static int occurrences(String text, String part) {
        return text.split(java.util.regex.Pattern.quote(part), -1).length - 1;
    }

    @Test
    void aScreenReaderFindsNameAndDescription() {
        Document document = Xml.parse(SvgText.element(FigureDrawing.of(SampleResults.figure()), "f1"));
        Element svg = document.getDocumentElement();
        assertEquals("img", svg.getAttribute("role"));
        assertEquals("f1-t f1-x", svg.getAttribute("aria-labelledby"));
        assertEquals(
                "Ines holds 50 kg",
                document.getElementsByTagName("title").item(0).getTextContent());
        String description = document.getElementsByTagName("desc").item(0).getTextContent();
        assertTrue(description.contains("hinges at the hip"), description);
    }

    @Test
    void aNameThatCouldBreakOutIsRefused() {
        Picture picture = new Picture(10, 10, "", "", List.of());
        assertThrows(IllegalArgumentException.class, () -> SvgText.element(picture, "a\" onload=\"x"));
    }

    /** The stored drawings were looked at by eye; every machine and Java must give the same bytes. */
    @Test
    void drawingsAreTheSameEverywhere() throws IOException {
        assertEquals(stored("chart.svg"), SvgText.file(ChartDrawing.of(SampleResults.curves(200, true)), CAUTION));
        assertEquals(stored("figure.svg"), SvgText.file(FigureDrawing.of(SampleResults.figure()), CAUTION));
    }

    private static String stored(String name) throws IOException {
        try (InputStream file = SvgTextTest.class.getResourceAsStream(name)) {
            return new String(file.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    @Test
    void drawingNeedsNoFont(@TempDir Path folder) throws IOException, InterruptedException {
        Path nothing = Files.writeString(folder.resolve("fonts.conf"), "<fontconfig><dir>/none</dir></fontconfig>");
        ProcessBuilder child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Djava.awt.headless=true",
                        "-cp",
                        System.getProperty("java.class.path"),
                        DrawWithoutFonts.class.getName())
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("out.txt").toFile());
        child.environment().put("FONTCONFIG_FILE", nothing.toString());
        Process process = child.start();
        assertTrue(process.waitFor(60, TimeUnit.SECONDS));
        String said = Files.readString(folder.resolve("out.txt"));
        assertEquals(0, process.exitValue(), said);
        assertEquals("drawn" + System.lineSeparator(), said);
    }

    /** Draws what the test draws, in a process that finds no font. */
    static final class DrawWithoutFonts {
        private DrawWithoutFonts() {}

        public static void main(String[] arguments) throws IOException {
            boolean same =
                    stored("chart.svg").equals(SvgText.file(ChartDrawing.of(SampleResults.curves(200, true)), CAUTION));
            boolean figure =
                    stored("figure.svg").equals(SvgText.file(FigureDrawing.of(SampleResults.figure()), CAUTION));
            System.out.println(same && figure ? "drawn" : "drawn otherwise");
        }
    }
}

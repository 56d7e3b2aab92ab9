package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import leverwright.face.Hostile;
import leverwright.face.HostileWorkbook;
import leverwright.face.SampleWorkbook;
import leverwright.face.Xml;
import leverwright.run.result.CellState;
import leverwright.run.result.TableResult;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.NoteCell;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.json.JsonObject;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PublisherTest {
    private static final String PAGE = Publisher.page(SampleWorkbook.sealed());
    private static final Document READ = Xml.parse(PAGE);
    private static final String WORDS = words(READ);

    /** Workbooks that begin with a prediction and end with what the model leaves out. */
    private static final Set<String> TAUGHT = Set.of(
            "which-end-moves",
            "where-the-force-goes",
            "a-limb-folds-back",
            "long-thighs-short-thighs",
            "strength-through-the-range");

    private static String words(Document page) {
        return page.getElementsByTagName("body").item(0).getTextContent();
    }

    @Test
    void thePageStandsForItself() {
        for (Element element : Xml.elements(READ)) {
            assertFalse(
                    Set.of(
                                    "script",
                                    "iframe",
                                    "object",
                                    "embed",
                                    "link",
                                    "base",
                                    "form",
                                    "image",
                                    "use",
                                    "foreignObject")
                            .contains(element.getTagName()),
                    element.getTagName());
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String name = element.getAttributes().item(i).getNodeName();
                assertFalse(name.startsWith("on") || name.equals("style") || name.equals("srcset"), name);
                assertFalse(name.equals("src") && !element.getAttribute("src").startsWith("data:image/"), PAGE);
            }
        }
        String style = READ.getElementsByTagName("style").item(0).getTextContent();
        assertFalse(Pattern.compile("@import|url\\(|expression").matcher(style).find());
        assertTrue(PAGE.contains("content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:\""));
    }

    /** Every workbook of the shelf, as recorded, is one well-formed page with its pictures and all it says. */
    @Test
    void everyShippedWorkbookIsAPage() throws IOException {
        List<Path> files;
        try (var shelf = Files.list(Path.of("workbooks"))) {
            files = shelf.sorted().toList();
        }
        assertTrue(files.size() >= 5);
        for (Path file : files) {
            Workbook workbook = WorkbookFiles.onDisk().read(file).workbook();
            String page = Publisher.page(workbook);
            Document read = Xml.parse(page);
            String all = words(read);
            assertTrue(all.contains(workbook.title()), file.toString());
            assertTrue(all.contains("What this leaves out") || !TAUGHT.contains(title(file)), file.toString());
            assertTrue(all.contains("Guess before you turn a dial") || !TAUGHT.contains(title(file)), file.toString());
            assertTrue(read.getElementsByTagName("svg").getLength() >= 2, file + " has pictures");
        }
    }

    private static String title(Path file) {
        return file.getFileName().toString().replace(".leverwright.json", "");
    }

    @Test
    void theSameWorkbookGivesTheSameBytes() {
        assertEquals(PAGE, Publisher.page(SampleWorkbook.sealed()));
    }

    @Test
    void itTellsWhatTheWorkbookHolds() {
        for (String words : List.of(
                "The torso leans",
                "Larkmere Boat Club, strength notes",
                "123.0 N·m per side (118.3 to 127.1)",
                "M_hip = W·d_hip/2 = 962.4·0.2556/2 = 123.0 N·m [moment of a force]",
                "does not hold in this model",
                "cannot tell in this model",
                "outside this model",
                "Line 2: a number was divided by zero",
                "10° to 80°",
                "var ines  = lifter(\"Ines\").of(FEMALE, cm(178), kg(71));",
                "mass above both hips: 48.14 kg",
                "both cuts agree",
                "Leverwright 0.1.0",
                "17.0.15",
                "sealed and intact",
                "leverwright recheck FILE")) {
            assertTrue(WORDS.contains(words), words);
        }
    }

    @Test
    void cautionsStandAtTopAndBottom() {
        int first = WORDS.indexOf(Cautions.SHORT);
        int sheet = WORDS.indexOf("At 45 degrees, who carries the bar?");
        assertTrue(first > 0 && first < sheet);
        assertTrue(WORDS.lastIndexOf(Cautions.SHORT) > sheet);
        Cautions.FULL.forEach(caution -> assertTrue(WORDS.contains(caution), caution));
    }

    @Test
    void everyNameInThePageIsUniqueAndEveryLinkLeadsSomewhere() {
        Set<String> names = new HashSet<>();
        for (Element element : Xml.elements(READ)) {
            String name = element.getAttribute("id");
            assertTrue(name.isEmpty() || names.add(name), "twice: " + name);
        }
        for (Element element : Xml.elements(READ)) {
            String link = element.getAttribute("href");
            assertTrue(!link.startsWith("#") || names.contains(link.substring(1)), link);
            for (String part : element.getAttribute("aria-labelledby").split(" ")) {
                assertTrue(part.isEmpty() || names.contains(part), part);
            }
        }
    }

    @Test
    void readersWithoutEyesFindTheirWay() {
        assertEquals("en", READ.getDocumentElement().getAttribute("lang"));
        for (String landmark : List.of("header", "main", "footer", "nav", "h1")) {
            assertEquals(1, READ.getElementsByTagName(landmark).getLength(), landmark);
        }
        for (Element element : Xml.elements(READ)) {
            if (element.getTagName().equals("th")) {
                assertFalse(element.getAttribute("scope").isEmpty());
            }
            if (element.getTagName().equals("svg")) {
                assertTrue(element.getAttribute("role").equals("img")
                        || element.getAttribute("aria-hidden").equals("true"));
            }
        }
    }

    @Test
    void lightDarkPaperAndContrastAreProvidedFor() {
        for (String rule : List.of(
                "@media screen and (prefers-color-scheme:dark)",
                "@media print",
                "@media (prefers-contrast:more)",
                "::details-content",
                ":focus-visible")) {
            assertTrue(PAGE.contains(rule), rule);
        }
        String body = PAGE.substring(PAGE.indexOf("<body>"));
        assertFalse(Pattern.compile("#[0-9a-f]{6}\\b").matcher(body).find(), "a colour outside the style sheet");
    }

    @Test
    void hostileTextsChangeNoMarkup() {
        List<String> harmless = Xml.shape(Xml.parse(Publisher.page(HostileWorkbook.with("words"))));
        for (String text : Hostile.TEXTS) {
            String page = Publisher.page(HostileWorkbook.with(text));
            assertEquals(fixedParts(harmless), fixedParts(Xml.shape(Xml.parse(page))), text);
        }
    }

    /** Scripts are coloured by what they hold, and drawings place and break words by their length. */
    private static List<String> fixedParts(List<String> shape) {
        List<String> kept = new ArrayList<>(shape);
        kept.removeIf(element -> element.equals("span class")
                || element.equals("wbr")
                || element.startsWith("text class font-size ")
                || element.startsWith("path class d"));
        return kept;
    }

    @Test
    void notesCannotReachOutOfTheirSection() {
        for (String text : Hostile.TEXTS) {
            Workbook workbook = new Workbook(
                    "t",
                    "",
                    "",
                    List.of(new NoteCell("n", text)),
                    Map.of(),
                    Optional.empty(),
                    Optional.empty(),
                    JsonObject.EMPTY);
            Document page = Xml.parse(Publisher.page(workbook));
            assertEquals(1, page.getElementsByTagName("section").getLength() - 2, text);
            assertEquals(0, page.getElementsByTagName("img").getLength());
        }
    }

    @Test
    void aWorkbookWithoutRecordSaysSo() {
        String words = words(Xml.parse(Publisher.page(SampleWorkbook.sealed().withoutRecord())));
        assertTrue(words.contains("has not been computed"));
        assertTrue(words.contains("not run"));
        assertTrue(words.contains("sealed, but changed since"));
    }

    @Test
    void aRecordOfOtherScriptsIsCalledStale() {
        Workbook changed = SampleWorkbook.sealed().withText("c2", "table(held.moments(HIP))");
        String words = words(Xml.parse(Publisher.page(changed)));
        assertTrue(words.contains("they are stale until the workbook is computed again"));
        assertTrue(words.contains("sealed, but changed since"));
        assertFalse(words.contains("fresh"));
    }

    @Test
    void aTableOfManyColumnsStandsBelowItsScriptInFullWidth() {
        List<String> headings = List.of("exercise", "force", "share", "back", "lifting", "lowering");
        List<TableResult.Entry> row = headings.stream()
                .map(TableResult.TextEntry::new)
                .map(TableResult.Entry.class::cast)
                .toList();
        Workbook workbook = new Workbook(
                "Broad",
                "",
                "",
                List.of(new ScriptCell("c1", "table(x)")),
                Map.of(),
                Optional.empty(),
                Optional.empty(),
                JsonObject.EMPTY);
        CellRecord record = CellRecord.of(
                CellState.FRESH, "", List.of(), List.of(new TableResult("", headings, List.of(row), List.of())));
        Workbook computed =
                workbook.withRecord(WorkbookRecord.of(workbook, "0.1.0", "17.0.15", 1, Map.of("c1", record)));
        assertTrue(Publisher.page(computed).contains("<section class=\"strip stacked\" id=\"cell-c1\""));
        assertTrue(PAGE.contains("<section class=\"strip\" id=\"cell-c2\""), "four columns stand beside their script");
    }
}

package leverwright.face.desk.editor;

import static leverwright.face.desk.WindowThread.at;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import javafx.application.Platform;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DeskTiming;
import leverwright.face.desk.model.Query;
import leverwright.face.desk.model.Starter;
import leverwright.face.desk.style.DeskStyle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** What is typed and what the model says stay the same, whatever is done in which order. */
class EditorsTest {

    private static final List<String> PIECES = List.of(
            "a",
            "var x = 1;\n",
            "/* open",
            "*/",
            "\"\"\"",
            "\r\n",
            "\r",
            "\t",
            "𝛼β",
            "\uD835",
            "(",
            "}",
            "  ",
            "table(held.moments(HIP))\r\nfigure(held)\n");

    @TempDir
    private Path folder;

    private DeskHome home;
    private DeskModel model;
    private Stage stage;
    private final VBox column = new VBox();
    private final Map<String, Region> editors = new LinkedHashMap<>();
    private final FxRobot robot = new FxRobot();

    @BeforeEach
    void open() throws Exception {
        FxToolkit.registerPrimaryStage();
        Platform.setImplicitExit(false);
        DeskTiming timing = new DeskTiming(
                Duration.ofMillis(60),
                Duration.ofMillis(60),
                Duration.ofMillis(100),
                Duration.ofMillis(100),
                Duration.ofMillis(1200));
        at(() -> {
            home = new DeskHome(
                    DeskFolders.under(folder.resolve("user")), folder.resolve("shelf"), timing, Platform::runLater);
            model = home.begin(Starter.EMPTY);
            stage = new Stage();
            ScrollPane pane = new ScrollPane(column);
            pane.setFitToWidth(true);
            stage.setScene(new Scene(pane, 900, 700));
            DeskStyle.dress(stage.getScene(), model.looks());
            stage.show();
            lay();
            return 0;
        });
    }

    @AfterEach
    void close() throws Exception {
        at(() -> {
            editors.values().forEach(EditorsTest::dispose);
            model.close();
            home.close();
            stage.close();
            return 0;
        });
    }

    private static void dispose(Region editor) {
        if (editor instanceof ScriptEditor script) {
            script.dispose();
        } else if (editor instanceof NoteEditor note) {
            note.dispose();
        }
    }

    /** Lays one editor for each cell, as the sheet does; those of cells that stay are kept. */
    private void lay() {
        Map<String, Region> before = new LinkedHashMap<>(editors);
        editors.clear();
        for (CellView cell : model.cells()) {
            Region kept = before.remove(cell.id());
            editors.put(
                    cell.id(),
                    kept != null
                            ? kept
                            : cell.isScript() ? new ScriptEditor(model, cell.id()) : new NoteEditor(model, cell.id()));
        }
        before.values().forEach(EditorsTest::dispose);
        column.getChildren().setAll(editors.values());
    }

    private SourceArea area(String id) {
        Region editor = editors.get(id);
        if (editor instanceof ScriptEditor script) {
            script.focusAt(new Caret(id, 0));
        } else if (editor instanceof NoteEditor note) {
            note.focusAt(new Caret(id, 0));
        }
        return (SourceArea) stage.getScene().getFocusOwner();
    }

    @Test
    void sourceStandsWholeAtEveryWidth() throws Exception {
        String script = "var hinge = romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(deg(45));\n\n"
                + "sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(hinge).chart(moment(HIP), tiltRule(HIP)) // 𝛼 and ω\n}";
        at(() -> {
            model.type(model.cells().get(0).id(), script, 0);
            model.addNote(
                    1, "A note that is **long** enough to be broken, in several places, whatever the width.\n\nEnd");
            lay();
            return 0;
        });
        for (CellView cell : at(() -> List.copyOf(model.cells()))) {
            SourceArea area = at(() -> area(cell.id()));
            for (double width : new double[] {900, 320, 610, 250, 480}) {
                at(() -> {
                    column.setMinWidth(width);
                    column.setMaxWidth(width);
                    return 0;
                });
                Thread.sleep(150);
                at(() -> {
                    double text = area.totalHeightEstimateProperty().getValue();
                    assertEquals(text, area.getHeight(), 4, () -> cell.id() + " at " + width);
                    assertEquals(
                            area.getParagraphs().size() - 1,
                            area.lastVisibleParToAllParIndex(),
                            () -> cell.id() + " at " + width);
                    return 0;
                });
            }
        }
    }

    private void assertAgree(String step) {
        for (CellView cell : model.cells()) {
            Region editor = editors.get(cell.id());
            SourceArea area = (SourceArea) editor.lookup(".source");
            if (area != null) {
                assertEquals(cell.text().get(), area.getText(), step + ", cell " + cell.id());
            }
        }
    }

    @Test
    @Tag("minute")
    void textOfModelAndEditorsAgreeAfterAnyEditsUndoRedoAndMoves() throws Exception {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        for (int i = 0; i < 120; i++) {
            String step = "seed " + seed + ", step " + i;
            at(() -> {
                act(random);
                lay();
                return 0;
            });
            WaitForAsyncUtils.waitForFxEvents();
            at(() -> {
                assertAgree(step);
                return 0;
            });
        }
        at(() -> {
            while (model.undo().isPresent()) {
                lay();
            }
            assertAgree("seed " + seed + ", all undone");
            while (model.redo().isPresent()) {
                lay();
            }
            assertAgree("seed " + seed + ", all done again");
            return 0;
        });
    }

    private void act(Random random) {
        List<CellView> cells = model.cells();
        String id =
                cells.isEmpty() ? "" : cells.get(random.nextInt(cells.size())).id();
        switch (random.nextInt(cells.isEmpty() ? 3 : 12)) {
            case 0 -> model.addScript(random.nextInt(cells.size() + 1), PIECES.get(random.nextInt(PIECES.size())));
            case 1 -> model.undo();
            case 2 -> model.redo();
            case 3 -> model.addNote(random.nextInt(cells.size() + 1), "# A\n");
            case 4 -> model.move(id, random.nextInt(cells.size()));
            case 5 -> {
                if (cells.size() > 3) {
                    model.delete(id);
                }
            }
            case 6 -> {
                model.finding().seek(new Query("a", true, false, false));
                model.finding().replaceAll("𝛽a");
                model.finding().end();
            }
            default -> edit(area(id), random);
        }
    }

    private static void edit(SourceArea area, Random random) {
        int from = random.nextInt(area.getLength() + 1);
        int to = Math.min(area.getLength(), from + random.nextInt(4));
        String piece = PIECES.get(random.nextInt(PIECES.size()));
        if (random.nextInt(4) == 0) {
            ClipboardContent content = new ClipboardContent();
            content.putString(piece);
            Clipboard.getSystemClipboard().setContent(content);
            area.selectRange(from, to);
            area.paste();
        } else {
            area.replaceText(from, to, random.nextInt(3) == 0 ? "" : piece);
        }
    }

    @Test
    void fiveThousandPastedLinesAreTakenWhole() throws Exception {
        String id = model.cells().get(0).id();
        String lines = "var x = 1; // one\r\n".repeat(5000);
        at(() -> {
            SourceArea area = area(id);
            area.replaceText(0, area.getLength(), lines);
            assertEquals(
                    lines.replace("\r\n", "\n"),
                    model.cell(id).orElseThrow().text().get());
            assertEquals(area.getText(), model.cell(id).orElseThrow().text().get());
            model.type(id, "", 0);
            assertEquals("", area.getText());
            return 0;
        });
    }

    @Test
    void keysIndentCommentAndLeaveAScript() throws Exception {
        String id = model.cells().get(0).id();
        SourceArea area = at(() -> {
            model.type(id, "if (true) {", 0);
            SourceArea opened = area(id);
            opened.moveTo(opened.getLength());
            model.addScript(1, "second");
            lay();
            return opened;
        });
        robot.push(KeyCode.ENTER);
        robot.push(KeyCode.TAB);
        assertEquals("if (true) {\n        ", at(area::getText));
        robot.push(KeyCode.CONTROL, KeyCode.SLASH);
        robot.push(KeyCode.SHIFT, KeyCode.TAB);
        assertEquals("if (true) {\n    // ", at(area::getText));
        robot.push(KeyCode.CONTROL, KeyCode.SLASH);
        assertEquals("if (true) {\n    ", at(area::getText));
        robot.push(KeyCode.ESCAPE);
        robot.push(KeyCode.TAB);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(at(() -> !area.isFocused()), "Tab after Escape stays in the script");
        at(() -> {
            area.requestFocus();
            return 0;
        });
        robot.push(KeyCode.CONTROL, KeyCode.TAB);
        assertTrue(at(() -> !area.isFocused()), "Ctrl+Tab stays in the script");
        assertEquals("if (true) {\n    ", at(area::getText));
    }

    @Test
    void aScriptTellsItsTextToAssistiveTechnology() throws Exception {
        String id = model.cells().get(0).id();
        at(() -> {
            model.type(id, "one\ntwo", 0);
            SourceArea area = area(id);
            assertEquals(AccessibleRole.TEXT_AREA, area.getAccessibleRole());
            assertTrue(area.getAccessibleText().startsWith("Script"));
            assertEquals("one\ntwo", area.queryAccessibleAttribute(AccessibleAttribute.TEXT));
            assertEquals(1, area.queryAccessibleAttribute(AccessibleAttribute.LINE_FOR_OFFSET, 5));
            assertEquals(4, area.queryAccessibleAttribute(AccessibleAttribute.LINE_START, 1));
            assertEquals(7, area.queryAccessibleAttribute(AccessibleAttribute.LINE_END, 1));
            return 0;
        });
    }

    @Test
    void replacingEverywhereIsOneStep() throws Exception {
        at(() -> {
            model.type(model.cells().get(0).id(), "cat catalogue Cat", 0);
            model.addScript(1, "a cat");
            lay();
            model.endTyping();
            model.finding().seek(new Query("cat", false, true, false));
            assertEquals(3, model.finding().replaceAll("dog"));
            assertEquals("dog catalogue dog", model.cells().get(0).text().get());
            assertEquals("a dog", model.cells().get(1).text().get());
            model.undo();
            assertEquals("cat catalogue Cat", model.cells().get(0).text().get());
            assertEquals("a cat", model.cells().get(1).text().get());
            return 0;
        });
    }

    @Test
    void aPictureOnTheClipboardIsPutIntoTheNoteItself() throws Exception {
        String text = at(() -> {
            String id = model.addNote(0, "");
            lay();
            javafx.scene.input.ClipboardContent content = new javafx.scene.input.ClipboardContent();
            content.putImage(new javafx.scene.image.WritableImage(3, 2));
            javafx.scene.input.Clipboard.getSystemClipboard().setContent(content);
            area(id).paste();
            return model.cell(id).orElseThrow().text().get();
        });
        java.util.regex.Matcher address = java.util.regex.Pattern.compile(
                        "!\\[picture\\]\\((data:image/png;base64,.*)\\)")
                .matcher(text);
        assertTrue(address.matches(), text);
        byte[] bytes = NoteAddress.image(address.group(1)).orElseThrow();
        var picture = javax.imageio.ImageIO.read(new java.io.ByteArrayInputStream(bytes));
        assertEquals(3, picture.getWidth());
        assertEquals(2, picture.getHeight());
    }
}

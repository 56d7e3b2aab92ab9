package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Starter;
import leverwright.run.result.CellState;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.session.CleanRun;
import org.fxmisc.richtext.CodeArea;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whatever is done at the window in whatever order, the window, the file and a clean run of the workbook agree. The reader's
 * deeds are random; beside them a plain list with a plain history of lists says what the sheet must be.
 */
class DeskAgreementTest extends AtTheWindow {

    private static final List<String> SCRIPTS = List.of(
            "var a = 2;",
            "var a = 7; show(\"a\", a)",
            "var b = a + 1;\nshow(\"b\", b)",
            "a = a + 5;\nshow(\"a now\", a)",
            "var lean = dial(\"Lean\", deg(45)).from(deg(10)).to(deg(80));",
            "show(\"twice\", lean.times(2))",
            "var bar = dial(\"Bar\", kg(50)).from(kg(20)).to(kg(90));\nshow(\"bar\", bar)",
            "var list = new ArrayList<Integer>();\nlist.add(3);",
            "list.add(list.size());\nshow(\"size\", list.size())",
            "table(\"t\").columns(\"what\", \"how much\").row(\"bar\", kg(3))",
            "System.out.println(\"said\")",
            "show(\"nothing\", nothing)",
            "show(\"c\", 1 +)",
            "System.exit(0);",
            "if (a > 5) { throw new IllegalStateException(\"too many\"); }\nshow(\"few\", a)",
            "");

    private static final List<String> NOTES = List.of("# A note", "Some words.\n\n- one\n- two", "", "$M = W·d$");
    private static final List<String> LEANS = List.of("30 deg", "45 ± 5 deg", "0.8 rad", "79 deg");

    /** One cell as the sheet must have it. */
    private record Kept(String id, boolean script, String text) {}

    private final Deque<List<Kept>> undone = new ArrayDeque<>();
    private final Deque<List<Kept>> done = new ArrayDeque<>();
    private final List<String> deeds = new ArrayList<>();
    private List<Kept> sheet = List.of();
    private List<Kept> saved = List.of();
    private DeskWindow window;
    private Path file;
    private Random random;

    @Test
    void aFewRandomDeedsLeaveWindowFileAndCleanRunAgreeing() throws Exception {
        agree(Long.getLong("random.seed", new Random().nextLong()), 14, 5);
    }

    @Test
    @Tag("minute")
    void manyRandomDeedsLeaveWindowFileAndCleanRunAgreeing() throws Exception {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(20);
        do {
            agree(new Random().nextLong(), 40, 10);
            bench.close();
            begin();
            undone.clear();
            done.clear();
        } while (System.nanoTime() < end);
    }

    private void agree(long seed, int steps, int between) throws Exception {
        deeds.clear();
        deeds.add("seed " + seed);
        random = new Random(seed);
        file = folder.resolve("agreed-" + Long.toHexString(seed) + ".leverwright.json");
        bench.doing(() -> bench.desk.begin(Starter.EMPTY));
        window = bench.at(() -> bench.desk.windows().get(0));
        sheet = now();
        saved = sheet;
        try {
            change(sheet.get(0), SCRIPTS.get(0));
            for (int step = 1; step <= steps; step++) {
                deed();
                agreeInTheWindow();
                if (step % between == 0) {
                    agreeWithACleanRun();
                }
            }
            save();
            agreeWithTheFile();
            reload();
            agreeWithACleanRun();
        } catch (AssertionError | Exception failure) {
            throw new AssertionError(String.join("\n", deeds), failure);
        }
    }

    private DeskModel model() {
        return window.model();
    }

    private void press(KeyCode... keys) {
        bench.robot.push(keys);
    }

    private void deed() throws Exception {
        switch (random.nextInt(16)) {
            case 0, 1, 2, 3 -> edit();
            case 4, 5, 6 -> add();
            case 7 -> move();
            case 8 -> delete();
            case 9, 10 -> dial();
            case 11, 12 -> undo();
            case 13 -> redo();
            case 14 -> {
                deeds.add("from the top");
                press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.T);
            }
            default -> {
                save();
                agreeWithTheFile();
                if (random.nextBoolean()) {
                    reload();
                }
            }
        }
    }

    private <T> T any(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }

    private CodeArea inside(Kept cell) throws Exception {
        bench.doing(() -> window.stage().requestFocus());
        bench.doing(() -> window.reveal(cell.id()));
        bench.until(
                "the caret is in " + cell.id(),
                () -> window.stage().getScene().getFocusOwner() instanceof CodeArea
                        && model().caret().cell().equals(cell.id()));
        return (CodeArea) bench.at(() -> window.stage().getScene().getFocusOwner());
    }

    private void edit() throws Exception {
        if (!sheet.isEmpty()) {
            Kept cell = any(sheet);
            change(cell, any(cell.script() ? SCRIPTS : NOTES));
        }
    }

    private void change(Kept cell, String text) throws Exception {
        deeds.add(cell.id() + " = " + text.replace("\n", "⏎"));
        CodeArea area = inside(cell);
        bench.doing(() -> area.replaceText(text));
        if (!cell.text().equals(text)) {
            List<Kept> next = new ArrayList<>(sheet);
            next.set(sheet.indexOf(cell), new Kept(cell.id(), cell.script(), text));
            step(next);
        }
    }

    private void step(List<Kept> next) {
        done.push(sheet);
        undone.clear();
        sheet = List.copyOf(next);
    }

    private void add() throws Exception {
        boolean script = random.nextInt(4) > 0;
        int at = sheet.isEmpty() ? 0 : 1 + random.nextInt(sheet.size());
        if (!sheet.isEmpty()) {
            inside(sheet.get(at - 1));
        }
        press(KeyCode.CONTROL, KeyCode.SHIFT, script ? KeyCode.N : KeyCode.M);
        int size = sheet.size() + 1;
        bench.until("a new cell", () -> model().cells().size() == size);
        Kept made = new Kept(bench.at(() -> model().cells().get(at).id()), script, "");
        deeds.add("new " + made.id() + " at " + at);
        List<Kept> next = new ArrayList<>(sheet);
        next.add(at, made);
        step(next);
        change(made, any(script ? SCRIPTS : NOTES));
    }

    private void move() throws Exception {
        if (sheet.isEmpty()) {
            return;
        }
        Kept cell = any(sheet);
        int from = sheet.indexOf(cell);
        int to = from + (random.nextBoolean() ? 1 : -1);
        deeds.add("move " + cell.id() + " to " + to);
        inside(cell);
        press(KeyCode.CONTROL, KeyCode.SHIFT, to > from ? KeyCode.DOWN : KeyCode.UP);
        if (to >= 0 && to < sheet.size()) {
            List<Kept> next = new ArrayList<>(sheet);
            next.remove(from);
            next.add(to, cell);
            step(next);
        }
    }

    private void delete() throws Exception {
        if (sheet.isEmpty()) {
            return;
        }
        Kept cell = any(sheet);
        deeds.add("delete " + cell.id());
        inside(cell);
        press(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.DELETE);
        List<Kept> next = new ArrayList<>(sheet);
        next.remove(cell);
        step(next);
    }

    private void dial() throws Exception {
        List<Node> typed = bench.nodes(
                window,
                node -> node instanceof TextField
                        && String.valueOf(node.getAccessibleText()).startsWith("Lean")
                        && WindowThread.isShown(node));
        if (typed.isEmpty()) {
            bench.doing(model()::resetDials);
            deeds.add("reset every dial");
            return;
        }
        String setting = any(LEANS);
        deeds.add("Lean: " + setting);
        TextField field = (TextField) typed.get(0);
        bench.doing(field::requestFocus);
        bench.doing(() -> field.setText(setting));
        press(KeyCode.ENTER);
    }

    private void undo() throws Exception {
        deeds.add("undo");
        intoTheSheet();
        press(KeyCode.CONTROL, KeyCode.Z);
        if (!done.isEmpty()) {
            undone.push(sheet);
            sheet = done.pop();
        }
    }

    private void redo() throws Exception {
        deeds.add("do again");
        intoTheSheet();
        press(KeyCode.CONTROL, KeyCode.Y);
        if (!undone.isEmpty()) {
            done.push(sheet);
            sheet = undone.pop();
        }
    }

    private void intoTheSheet() throws Exception {
        if (sheet.isEmpty()) {
            bench.doing(window::goToOutline);
        } else {
            inside(any(sheet));
        }
    }

    private void save() throws Exception {
        deeds.add("save");
        if (model().file().get().isEmpty()) {
            bench.answers.add(file);
        }
        press(KeyCode.CONTROL, KeyCode.S);
        bench.until(
                "saved", () -> !model().unsaved().get() && model().file().get().isPresent() && Files.exists(file));
        saved = sheet;
    }

    private void reload() throws Exception {
        deeds.add("close and open");
        bench.doing(() -> window.close(() -> {}));
        bench.until("closed without a question", () -> bench.desk.windows().isEmpty());
        window = bench.open(file);
        done.clear();
        undone.clear();
    }

    private List<Kept> now() throws Exception {
        return bench.at(() -> model().cells().stream()
                .map(cell -> new Kept(cell.id(), cell.isScript(), cell.text().get()))
                .toList());
    }

    private void agreeInTheWindow() throws Exception {
        List<Kept> wanted = sheet;
        bench.until("the sheet is " + wanted, () -> cells(model()).equals(wanted));
        assertEquals(!sheet.equals(saved), bench.at(() -> model().wouldBeLost().isPresent()), "what would be lost");
        // Strips far below need not be there; those that are show the texts in their order.
        List<String> texts = sheet.stream().map(Kept::text).toList();
        List<String> shown =
                bench.nodes(window, node -> node instanceof CodeArea && WindowThread.isShown(node)).stream()
                        .map(node -> ((CodeArea) node).getText())
                        .toList();
        int at = 0;
        for (String text : shown) {
            while (at < texts.size() && !texts.get(at).equals(text)) {
                at++;
            }
            assertEquals(true, at < texts.size(), "the window shows " + shown + " of " + texts);
            at++;
        }
    }

    private static List<Kept> cells(DeskModel model) {
        return model.cells().stream()
                .map(cell -> new Kept(cell.id(), cell.isScript(), cell.text().get()))
                .toList();
    }

    private void agreeWithACleanRun() throws Exception {
        deeds.add("and a clean run?");
        List<Kept> wanted = sheet;
        bench.until("the sheet is " + wanted, () -> cells(model()).equals(wanted));
        Workbook workbook = bench.at(() -> model().workbook().get());
        WorkbookRecord clean = CleanRun.of(workbook, false, outcome -> {});
        bench.until("shown as a clean run gives it", () -> isAsIn(clean));
    }

    /** Whether every script shows what a clean run gave; a replay after a rest brings the workings that turns leave out. */
    private boolean isAsIn(WorkbookRecord clean) {
        return !model().busy().get()
                && model().cells().stream().filter(CellView::isScript).allMatch(cell -> {
                    CellShown shown = cell.shown().get();
                    CellRecord record = clean.cells().get(cell.id());
                    return record != null
                            && record.state() == shown.state()
                            && record.dials().equals(shown.dials())
                            && (shown.state() != CellState.FRESH
                                    || record.results().equals(shown.results()));
                });
    }

    private void agreeWithTheFile() throws Exception {
        deeds.add("and the file?");
        Workbook kept = WorkbookFiles.onDisk().read(file).workbook();
        assertEquals(
                sheet,
                kept.sheet().stream()
                        .map(cell -> new Kept(cell.id(), cell instanceof ScriptCell, cell.text()))
                        .toList());
        assertEquals(bench.at(() -> model().workbook().get().dials()), kept.dials());
        if (kept.recordIsCurrent()) {
            WorkbookRecord clean = CleanRun.of(kept, false, outcome -> {});
            WorkbookRecord record = kept.record().orElseThrow();
            for (Cell cell : kept.sheet()) {
                CellRecord one = record.cells().get(cell.id());
                if (one != null) {
                    CellRecord other = clean.cells().get(cell.id());
                    assertEquals(other.state(), one.state(), cell.id());
                    assertEquals(other.problem(), one.problem(), cell.id());
                    assertEquals(other.dials(), one.dials(), cell.id());
                }
            }
        }
    }
}

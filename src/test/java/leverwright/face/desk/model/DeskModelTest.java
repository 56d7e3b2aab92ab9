package leverwright.face.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import leverwright.run.result.CellState;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Result;
import leverwright.workbook.document.RecordComparison;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.session.CleanRun;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class DeskModelTest {

    private static final String DIAL = "var lean = dial(\"Lean\", deg(45)).from(deg(10)).to(deg(80));";
    private static final String TWICE = "show(\"twice\", lean.times(2))";

    @TempDir
    private Path folder;

    private DeskBench bench;
    private final List<DeskModel> open = new ArrayList<>();

    @BeforeEach
    void layTheTable() {
        bench = new DeskBench(folder.resolve("user"), folder.resolve("shelf"));
    }

    @AfterEach
    void clearTheTable() throws Exception {
        for (DeskModel model : open) {
            bench.doing(model::close);
        }
        bench.close();
    }

    private DeskModel opened(Path file) throws Exception {
        DeskModel model = bench.at(() -> bench.home.open(file));
        open.add(model);
        return model;
    }

    private DeskModel begun(Starter starter) throws Exception {
        DeskModel model = bench.at(() -> bench.home.begin(starter));
        open.add(model);
        return model;
    }

    private Path strangers(String name) throws Exception {
        Path file = folder.resolve(name + ".leverwright.json");
        Workbook workbook = Workbook.empty("From elsewhere")
                .withAdded(0, new ScriptCell("a", DIAL))
                .withAdded(1, new ScriptCell("b", TWICE));
        WorkbookFiles.onDisk().saveNew(file, workbook);
        return file;
    }

    /** What a script shows as its first number, in SI units. */
    private double number(DeskModel model, String cell) throws Exception {
        Result first = bench.at(
                () -> model.cell(cell).orElseThrow().shown().get().results().get(0));
        return ((NumberResult) first).quantity().value();
    }

    private SaveOutcome saved(DeskModel model) throws Exception {
        return bench.at(model::save).get(60, TimeUnit.SECONDS);
    }

    private SaveOutcome savedAs(DeskModel model, Path file) throws Exception {
        return bench.at(() -> model.saveAs(file)).get(60, TimeUnit.SECONDS);
    }

    @ParameterizedTest
    @EnumSource(Starter.class)
    void everyStarterComputesWithoutAFault(Starter starter) throws Exception {
        DeskModel model = begun(starter);
        bench.untilFresh(model);
        assertFalse(bench.at(() -> model.unsaved().get()));
        assertTrue(bench.at(model::wouldBeLost).isEmpty());
    }

    @Test
    void aStrangersWorkbookRunsOnlyWhenAsked() throws Exception {
        DeskModel model = opened(strangers("stranger"));
        bench.doing(() -> model.type("b", TWICE + ";", 0));
        Thread.sleep(200);
        assertEquals(Permission.ASLEEP, bench.at(() -> model.permission().get()));
        assertEquals(0, bench.at(() -> model.batch().get()), "something ran");
        bench.doing(model::computeFromTheTop);
        bench.untilFresh(model);
        assertEquals(Math.PI / 2, number(model, "b"), 1e-15);
    }

    @Test
    void whatThisUserSavedComputesOnOpening() throws Exception {
        Path file = folder.resolve("own.leverwright.json");
        DeskModel model = begun(Starter.IN_DEPTH);
        bench.untilFresh(model);
        assertTrue(savedAs(model, file).isSaved());
        bench.doing(model::close);
        bench.untilFresh(opened(file));
    }

    @Test
    void theShelfComputesOnOpeningAndIsNotSavedOver() throws Exception {
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        Path file = Files.move(strangers("shipped"), shelf.resolve("shipped.leverwright.json"));
        DeskModel model = opened(file);
        bench.untilFresh(model);
        assertEquals(SaveOutcome.Kind.NEEDS_NAME, saved(model).kind());
    }

    @Test
    void computingFromTheTopWhileARunIsUnderWayComesToItsEnd() throws Exception {
        Path shelf = Files.createDirectories(folder.resolve("shelf"));
        Path file = Files.copy(
                Path.of("workbooks/the-torso-leans.leverwright.json"), shelf.resolve("demo.leverwright.json"));
        DeskModel model = opened(file);
        bench.doing(model::computeFromTheTop);
        bench.until("something has come", () -> model.batch().get() > 0);
        bench.doing(model::computeFromTheTop);
        bench.untilFresh(model);
        bench.doing(model::computeFromTheTop);
        bench.doing(() -> model.turn("Torso lean", 0.5));
        bench.untilFresh(model);
    }

    @Test
    void trustLiftsTheAllowList() throws Exception {
        DeskModel model = begun(Starter.EMPTY);
        bench.doing(() -> model.type("c1", "show(\"n\", new java.util.zip.CRC32().getValue() * 1.0)", 0));
        bench.until(
                "refused", () -> model.cell("c1").orElseThrow().shown().get().state() == CellState.REFUSED);
        bench.doing(model::trust);
        bench.untilFresh(model);
    }

    @Test
    void resultsFollowADialAndItsLatestTurnWins() throws Exception {
        DeskModel model = opened(strangers("dial"));
        bench.doing(model::computeFromTheTop);
        bench.untilFresh(model);
        long before = bench.at(() -> model.batch().get());
        bench.doing(() -> {
            for (int degrees = 10; degrees <= 80; degrees++) {
                model.turn("Lean", Math.toRadians(degrees));
            }
        });
        bench.until("a batch", () -> model.batch().get() > before);
        bench.until(
                "settled",
                () -> !model.dials().isEmpty()
                        && model.dials().get(0).declared().get().setting().value()
                                == model.dials().get(0).value().get());
        assertEquals(Math.toRadians(160), number(model, "b"), 1e-12);
        long batches = bench.at(() -> model.batch().get()) - before;
        assertTrue(batches < 20, () -> batches + " batches for 71 turns");
        assertEquals("80 deg", bench.at(() -> model.dials().get(0).setting().get()));
    }

    @Test
    void aSettingThatCannotBeReadIsNotTakenAndSaysWhy() throws Exception {
        DeskModel model = opened(strangers("typed"));
        bench.doing(model::computeFromTheTop);
        bench.untilFresh(model);
        bench.doing(() -> model.typeDial("Lean", "forty"));
        assertFalse(bench.at(() -> model.dials().get(0).error().get()).isEmpty());
        bench.doing(() -> model.typeDial("Lean", "95 deg"));
        assertTrue(bench.at(() -> model.dials().get(0).error().get()).contains("80"));
        assertEquals(Map.of(), bench.at(() -> model.workbook().get().dials()));
        bench.doing(() -> model.typeDial("Lean", "30"));
        assertEquals("", bench.at(() -> model.dials().get(0).error().get()));
        assertEquals("30 deg", bench.at(() -> model.workbook().get().dials().get("Lean")));
    }

    @Test
    void anErrorIsMarkedAtItsPlaceAndGoesWithItsCause() throws Exception {
        DeskModel model = opened(strangers("error"));
        bench.doing(model::computeFromTheTop);
        bench.untilFresh(model);
        bench.doing(() -> model.type("b", "show(\"twice\", laen.times(2))", 12));
        bench.until("failed", () -> model.cell("b").orElseThrow().shown().get().state() == CellState.FAILED);
        CellShown shown = bench.at(() -> model.cell("b").orElseThrow().shown().get());
        assertEquals(15, shown.span().column());
        bench.doing(model::undo);
        bench.untilFresh(model);
    }

    @Test
    void typingWithinAPauseIsOneStepAndStructureIsAnother() throws Exception {
        DeskModel model = begun(Starter.EMPTY);
        bench.doing(() -> {
            model.type("c1", "v", 1);
            model.type("c1", "va", 2);
            model.type("c1", "var", 3);
            String added = model.addNote(1, "words");
            model.move(added, 0);
            model.delete("c1");
        });
        assertEquals(1, bench.at(() -> model.cells().size()));
        bench.doing(model::undo);
        bench.doing(model::undo);
        bench.doing(model::undo);
        assertEquals("var", bench.at(() -> model.cell("c1").orElseThrow().text().get()));
        assertEquals(Optional.of("c1"), bench.at(() -> model.undo().map(Caret::cell)));
        assertEquals("", bench.at(() -> model.cell("c1").orElseThrow().text().get()));
        assertFalse(bench.at(() -> model.undoable().get()));
    }

    @Test
    void aHeldSettingStandsBesideTheLiveOne() throws Exception {
        DeskModel model = opened(strangers("held"));
        bench.doing(model::computeFromTheTop);
        bench.untilFresh(model);
        bench.doing(model::hold);
        bench.doing(() -> model.typeDial("Lean", "60 deg"));
        bench.until("live", () -> {
            Result now = model.cell("b").orElseThrow().shown().get().results().get(0);
            return now instanceof NumberResult number && number.quantity().value() > 2;
        });
        CellShown held =
                bench.at(() -> model.cell("b").orElseThrow().held().get().orElseThrow());
        assertEquals(
                Math.PI / 2, ((NumberResult) held.results().get(0)).quantity().value(), 1e-15);
    }

    @Test
    void aSecondWindowDoesNotSaveOverTheFirst() throws Exception {
        Path file = strangers("two");
        DeskModel first = opened(file);
        DeskModel second = opened(file);
        assertEquals(
                List.of(Notice.Kind.OPEN_ELSEWHERE),
                bench.at(() -> second.notices().stream().map(Notice::kind).toList()));
        bench.doing(() -> first.type("a", DIAL + " ", 0));
        bench.doing(() -> second.type("b", TWICE + " ", 0));
        assertTrue(saved(first).isSaved());
        assertEquals(SaveOutcome.Kind.OPEN_ELSEWHERE, saved(second).kind());
        assertTrue(savedAs(second, folder.resolve("other.leverwright.json")).isSaved());
    }

    @Test
    void aFileThatSomebodyElseChangedIsNoticedAndNotSavedOver() throws Exception {
        Path file = strangers("changed");
        DeskModel model = opened(file);
        bench.doing(() -> model.type("b", TWICE + " ", 0));
        Workbook other = WorkbookFiles.onDisk().read(file).workbook().withWords("Other words", "", "");
        WorkbookFiles.onDisk().replace(file, other);
        bench.until(
                "noticed",
                () -> model.notices().stream().anyMatch(notice -> notice.kind() == Notice.Kind.CHANGED_ON_DISK));
        assertEquals(SaveOutcome.Kind.CHANGED_ON_DISK, saved(model).kind());
        assertEquals("", bench.at(model::readAgain).get(60, TimeUnit.SECONDS));
        assertEquals("Other words", bench.at(() -> model.workbook().get().title()));
        assertTrue(bench.at(model::wouldBeLost).isEmpty());
        bench.doing(model::undo);
        assertEquals(
                TWICE + " ", bench.at(() -> model.cell("b").orElseThrow().text().get()));
    }

    @Test
    void foldersFollowTheSystem() {
        Path home = Path.of("/home/ines");
        assertEquals(
                new DeskFolders(
                        Path.of("/conf/leverwright"),
                        home.resolve(".local/state/leverwright"),
                        home.resolve(".cache/leverwright")),
                DeskFolders.of("Linux", home, Map.of("XDG_CONFIG_HOME", "/conf", "XDG_STATE_HOME", "relative")));
        assertEquals(
                home.resolve("Library/Application Support/Leverwright"),
                DeskFolders.of("Mac OS X", home, Map.of()).state());
        assertEquals(
                home.resolve("AppData/Roaming/Leverwright"),
                DeskFolders.of("Windows 11", home, Map.of()).config());
    }

    @Test
    void windowFileAndCleanRunAgreeAfterAnythingThatIsDone() throws Exception {
        long seed = new Random().nextLong();
        Random random = new Random(seed);
        Path file = strangers("any");
        DeskModel model = opened(file);
        bench.doing(model::computeFromTheTop);
        List<String> texts =
                List.of(TWICE, "show(\"half\", lean.times(0.5))", "var more = lean.times(3); show(\"more\", more)");
        for (int i = 0; i < 60; i++) {
            int what = random.nextInt(8);
            bench.doing(() -> step(model, random, texts, what));
            if (random.nextInt(5) == 0) {
                Thread.sleep(random.nextInt(60));
            }
        }
        bench.doing(() -> {
            if (model.cell("a").isEmpty()) {
                model.undo();
            }
        });
        // Saving waits for the last run, so what is on the disk is the record of what the window then shows.
        assertTrue(saved(model).isSaved());
        Workbook onDisk = WorkbookFiles.onDisk().read(file).workbook();
        assertEquals(bench.at(() -> model.workbook().get().sheet()), onDisk.sheet(), "seed " + seed);
        assertEquals(bench.at(() -> model.workbook().get().dials()), onDisk.dials(), "seed " + seed);
        var clean = CleanRun.of(onDisk, false, outcome -> {});
        bench.doing(() -> {});
        for (var cell : clean.cells().entrySet()) {
            CellShown shown = bench.at(
                    () -> model.cell(cell.getKey()).orElseThrow().shown().get());
            assertEquals(cell.getValue().state(), shown.state(), "seed " + seed + ", cell " + cell.getKey());
            assertEquals(cell.getValue().results(), shown.results(), "seed " + seed + ", cell " + cell.getKey());
        }
        if (onDisk.recordIsCurrent()) {
            assertEquals(List.of(), RecordComparison.compare(onDisk, clean).differences(), "seed " + seed);
        }
    }

    private static void step(DeskModel model, Random random, List<String> texts, int what) {
        List<CellView> scripts =
                model.cells().stream().filter(cell -> !cell.id().equals("a")).toList();
        switch (what) {
            case 0, 1 -> model.turn("Lean", Math.toRadians(10 + random.nextInt(71)));
            case 2 ->
                model.addScript(1 + random.nextInt(model.cells().size()), texts.get(random.nextInt(texts.size())));
            case 3 -> model.undo();
            case 4 -> model.redo();
            case 5 -> {
                if (scripts.size() > 3) {
                    model.delete(scripts.get(random.nextInt(scripts.size())).id());
                }
            }
            case 6 -> {
                if (!scripts.isEmpty()) {
                    String id = scripts.get(random.nextInt(scripts.size())).id();
                    model.type(id, texts.get(random.nextInt(texts.size())), 0);
                }
            }
            default -> model.resetDial("Lean");
        }
    }
}

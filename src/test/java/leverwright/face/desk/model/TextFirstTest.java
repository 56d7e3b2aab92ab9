package leverwright.face.desk.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leverwright.workbook.document.OpenedWorkbook;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A workbook whose text is shown before its record has been read. */
class TextFirstTest {

    private static final Path SHELF = Path.of("workbooks");
    private static final Path DEMO = SHELF.resolve("the-torso-leans.leverwright.json");

    @TempDir
    private Path folder;

    private DeskBench bench;

    @BeforeEach
    void layTheTable() {
        bench = new DeskBench(folder.resolve("user"), folder.resolve("shelf"));
    }

    @AfterEach
    void clearTheTable() {
        bench.close();
    }

    private DeskModel textOf(Path file) throws Exception {
        return bench.at(() -> {
            bench.home.holdBack();
            return bench.home.open(bench.home.readTextFirst(file));
        });
    }

    private void goOn() throws Exception {
        bench.doing(() -> bench.home.goOn(bench.view));
    }

    @Test
    void everyWorkbookOfTheShelfIsTheSameOnceItIsWhole() throws Exception {
        List<Path> files;
        try (Stream<Path> found = Files.list(SHELF)) {
            files = found.filter(file -> file.toString().endsWith(".json")).toList();
        }
        assertFalse(files.isEmpty());
        for (Path file : files) {
            OpenedWorkbook first = WorkbookFiles.onDisk().readTextFirst(file);
            OpenedWorkbook all = WorkbookFiles.onDisk().read(file);
            assertFalse(first.isWhole(), file::toString);
            assertEquals(all.workbook().withoutRecord().withSeal(all.workbook().seal()), first.workbook());
            assertEquals(all.workbook(), first.whole());
            assertEquals(all.stamp(), first.stamp());
        }
    }

    @Test
    void fileLaidOutInAnotherWayIsReadAtOnce() throws Exception {
        Path file = folder.resolve("mine.leverwright.json");
        Files.writeString(file, Files.readString(DEMO).replace("\n  \"", "\n \""));
        OpenedWorkbook opened = WorkbookFiles.onDisk().readTextFirst(file);
        assertTrue(opened.isWhole());
        assertEquals(WorkbookFiles.onDisk().read(DEMO).workbook(), opened.workbook());
    }

    @Test
    void recordIsShownAndWhatWasTypedMeanwhileIsKept() throws Exception {
        DeskModel model = textOf(DEMO);
        String id = bench.at(() -> model.workbook().get().scripts().get(0).id());
        assertTrue(bench.at(
                () -> model.cell(id).orElseThrow().shown().get().results().isEmpty()));
        String typed = bench.at(() -> model.cell(id).orElseThrow().text().get() + " ");
        bench.doing(() -> model.type(id, typed, typed.length()));
        goOn();
        bench.until("all read", () -> model.whole().isDone());
        assertEquals(typed, bench.at(() -> model.cell(id).orElseThrow().text().get()));
        assertTrue(bench.at(() -> model.workbook().get().record().isPresent()));
        assertTrue(bench.at(() -> model.unsaved().get()));
        assertTrue(bench.at(() -> model.cells().stream()
                .anyMatch(cell -> !cell.shown().get().results().isEmpty())));
        bench.doing(model::undo);
        assertFalse(bench.at(() -> model.unsaved().get()));
        bench.doing(model::close);
    }

    @Test
    void savingWaitsUntilAllIsRead() throws Exception {
        Path file = folder.resolve("mine.leverwright.json");
        Files.copy(DEMO, file);
        Workbook before = WorkbookFiles.onDisk().read(file).workbook();
        DeskModel model = textOf(file);
        var saved = bench.at(model::save);
        Thread.sleep(50);
        assertFalse(saved.isDone());
        goOn();
        bench.until("saved", saved::isDone);
        assertTrue(saved.join().isSaved(), () -> saved.join().words());
        assertEquals(
                before.record(), WorkbookFiles.onDisk().read(file).workbook().record());
        bench.doing(model::close);
    }

    @Test
    void recordThatCannotBeReadIsToldInWordsAndNothingRuns() throws Exception {
        Path file = folder.resolve("mine.leverwright.json");
        String text = Files.readString(DEMO);
        Files.writeString(file, text.replaceFirst("\"engine\"", "\"machine\""));
        DeskModel model = textOf(file);
        goOn();
        bench.until("found out", () -> model.whole().isDone());
        assertTrue(model.whole().isCompletedExceptionally());
        String words = String.valueOf(
                model.whole().handle((read, problem) -> problem.getMessage()).join());
        assertTrue(words.contains("engine"), words);
        assertFalse(bench.at(() -> model.busy().get()));
        bench.doing(model::close);
    }
}

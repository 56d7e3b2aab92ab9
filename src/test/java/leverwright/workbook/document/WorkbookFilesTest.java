package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import leverwright.workbook.json.JsonProblem;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.api.io.TempDir;

class WorkbookFilesTest {

    private static final Workbook OLD = Workbook.empty("Old").withAdded(0, new NoteCell("n1", "The old text."));
    private static final Workbook NEW = Workbook.empty("New").withAdded(0, new NoteCell("n1", "Another, newer text."));

    private final WorkbookFiles files = WorkbookFiles.onDisk();

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void nameTheFile() {
        file = folder.resolve("hinge.leverwright.json");
    }

    private static String complaint(Executable action) {
        return assertThrows(Exception.class, action).getMessage();
    }

    private List<Path> left() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.sorted().toList();
        }
    }

    @Test
    void whatIsSavedIsRead() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        OpenedWorkbook opened = files.read(file);
        assertEquals(file, opened.file());
        assertEquals(OLD, opened.workbook());
        assertEquals(stamp, opened.stamp());
        FileStamp next = files.save(file, NEW, stamp);
        assertEquals(NEW, files.read(file).workbook());
        assertEquals(next, files.stamp(file));
        assertEquals(List.of(file), left());
    }

    @Test
    void whatAKilledProgramLeftBesideTheFileGoesWithALaterSave() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        FaultyStorage killed = new FaultyStorage(FaultyStorage.Fault.BEFORE_REPLACE, 0, true);
        assertThrows(WorkbookFileException.class, () -> new WorkbookFiles(killed).save(file, NEW, stamp));
        Path leftOver = left().get(0);
        assertTrue(leftOver.getFileName().toString().endsWith(".saving"));
        Path ofAnother = Files.writeString(folder.resolve(".knees.leverwright.json.12345678.saving"), "");
        FileTime longAgo = FileTime.from(Instant.now().minus(Duration.ofHours(1)));
        Files.setLastModifiedTime(ofAnother, longAgo);

        FileStamp next = files.save(file, NEW, stamp);
        assertTrue(Files.exists(leftOver), "somebody may be writing it just now");
        Files.setLastModifiedTime(leftOver, longAgo);
        files.save(file, OLD, next);
        assertFalse(Files.exists(leftOver));
        assertTrue(Files.exists(ofAnother), "it belongs to another file");
    }

    @Test
    void aPageIsWrittenWholeOrNotAtAll() throws IOException {
        Path page = Files.writeString(folder.resolve("page.html"), "the old page");
        FaultyStorage full = new FaultyStorage(FaultyStorage.Fault.WRITE, 3, false);
        assertEquals(
                page + ": was not saved, and what stood there is unchanged: No space left on device",
                complaint(() ->
                        new WorkbookFiles(full).writeMade(page, "the new page".getBytes(StandardCharsets.UTF_8))));
        assertEquals("the old page", Files.readString(page));
        assertEquals(List.of(page), left());
        files.writeMade(page, "the new page".getBytes(StandardCharsets.UTF_8));
        assertEquals("the new page", Files.readString(page));
    }

    @Test
    void aTakenNameIsNotOverwrittenByANewWorkbook() throws IOException {
        Files.writeString(file, "mine");
        assertEquals(
                file + ": was not saved: something with this name exists; choose another",
                complaint(() -> files.saveNew(file, NEW)));
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void aFileThatSomebodyElseChangedIsNotOverwrittenUnlessTheUserSaysSo() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        byte[] changed = WorkbookFormat.write(OLD.withText("n1", "Somebody else's text."));
        Files.write(file, changed);
        assertTrue(complaint(() -> files.save(file, NEW, stamp))
                .startsWith(file + ": was not saved: the file was changed by somebody else since it was read"));
        assertArrayEquals(changed, Files.readAllBytes(file));
        files.replace(file, NEW);
        assertEquals(NEW, files.read(file).workbook());
    }

    @Test
    void aFileThatIsGoneIsMadeAgain() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        Files.delete(file);
        files.save(file, NEW, stamp);
        assertEquals(NEW, files.read(file).workbook());
    }

    @Test
    void aFileThatCannotBeReadIsNeverReplaced() throws IOException {
        String whole = new String(WorkbookFormat.write(OLD), StandardCharsets.UTF_8);
        for (String content : List.of(
                "",
                "some notes of mine",
                "{\"format\": \"something-else\"}",
                whole.substring(0, whole.length() / 2),
                whole.replace("\"version\": 1", "\"version\": 2"))) {
            Files.writeString(file, content);
            String message = assertThrows(JsonProblem.class, () -> files.replace(file, NEW))
                    .getMessage();
            assertTrue(message.startsWith(file + ", line "), message);
            assertThrows(JsonProblem.class, () -> files.read(file));
            assertEquals(content, Files.readString(file));
        }
        assertEquals(List.of(file), left());
    }

    @Test
    void aMissingFileAFolderAndAMissingFolderAreNamed() {
        assertEquals(
                file + ": could not be read: there is no such file; check its name", complaint(() -> files.read(file)));
        assertEquals(
                folder + ": could not be read: this is a folder; name a workbook file",
                complaint(() -> files.read(folder)));
        Path deep = folder.resolve("none").resolve("a.leverwright.json");
        assertEquals(
                deep + ": was not saved, and what stood there is unchanged: the folder does not exist; make it first",
                complaint(() -> files.saveNew(deep, NEW)));
    }

    @Test
    void aHugeFileIsRefusedBeforeItIsRead() throws IOException {
        try (RandomAccessFile huge = new RandomAccessFile(file.toFile(), "rw")) {
            huge.setLength(200L << 20);
        }
        assertEquals(
                file
                        + ": could not be read: the file has 209715200 bytes; allowed are 67108864; split the workbook or record"
                        + " fewer results; the file was left as it is",
                complaint(() -> files.read(file)));
    }

    @Test
    void whateverFailsTheOldFileIsWholeAndNothingIsLeftBehind() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        byte[] old = Files.readAllBytes(file);
        for (FaultyStorage.Fault fault : FaultyStorage.Fault.values()) {
            if (fault == FaultyStorage.Fault.NONE || fault == FaultyStorage.Fault.AFTER_REPLACE) {
                continue;
            }
            FaultyStorage storage = new FaultyStorage(fault, 10, false);
            String message = complaint(() -> new WorkbookFiles(storage).save(file, NEW, stamp));
            assertEquals(file + ": was not saved, and what stood there is unchanged: No space left on device", message);
            assertArrayEquals(old, Files.readAllBytes(file), fault.toString());
            assertEquals(List.of(file), left(), fault.toString());
        }
    }

    @Test
    void aFullDiskAtAnyByteLeavesTheOldFileWhole() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        byte[] old = Files.readAllBytes(file);
        int length = WorkbookFormat.write(NEW).length;
        for (int room = 0; room < length; room++) {
            FaultyStorage storage = new FaultyStorage(FaultyStorage.Fault.WRITE, room, room % 2 == 0);
            assertThrows(WorkbookFileException.class, () -> new WorkbookFiles(storage).save(file, NEW, stamp));
            assertArrayEquals(old, Files.readAllBytes(file), "room for " + room + " bytes");
        }
        new WorkbookFiles(new FaultyStorage(FaultyStorage.Fault.WRITE, length, true)).save(file, NEW, stamp);
        assertEquals(NEW, files.read(file).workbook());
    }

    @Test
    void aCrashAtAnyStepLeavesTheOldFileOrTheNewOneWhole() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        byte[] old = Files.readAllBytes(file);
        for (FaultyStorage.Fault fault : FaultyStorage.Fault.values()) {
            Files.write(file, old);
            FaultyStorage storage = new FaultyStorage(fault, 25, true);
            if (fault == FaultyStorage.Fault.NONE) {
                new WorkbookFiles(storage).save(file, NEW, stamp);
            } else {
                assertThrows(WorkbookFileException.class, () -> new WorkbookFiles(storage).save(file, NEW, stamp));
            }
            boolean replaced = fault == FaultyStorage.Fault.NONE || fault == FaultyStorage.Fault.AFTER_REPLACE;
            assertEquals(replaced ? NEW : OLD, files.read(file).workbook(), fault.toString());
        }
    }

    @Test
    void savingThroughALinkChangesTheFileAndKeepsTheLink() throws IOException {
        Path real = Files.createDirectory(folder.resolve("real")).resolve("a.leverwright.json");
        FileStamp stamp = files.saveNew(real, OLD);
        Files.createSymbolicLink(file, Path.of("real", "a.leverwright.json"));
        files.save(file, NEW, stamp);
        assertTrue(Files.isSymbolicLink(file));
        assertEquals(NEW, files.read(real).workbook());
    }

    @Test
    void aCircleOfLinksIsNamed() throws IOException {
        Path other = folder.resolve("other");
        Files.createSymbolicLink(file, other);
        Files.createSymbolicLink(other, file);
        assertTrue(complaint(() -> files.saveNew(file, NEW)).contains("the link leads in a circle"));
    }

    @Test
    void permissionsAreKept() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        assumeTrue(view != null);
        view.setPermissions(PosixFilePermissions.fromString("rw-rw----"));
        files.save(file, NEW, stamp);
        assertEquals("rw-rw----", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
    }

    @Test
    void aWriteProtectedFileIsNotReplaced() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        assertTrue(file.toFile().setReadOnly());
        assertTrue(complaint(() -> files.save(file, NEW, stamp)).contains("the file is write-protected"));
        assertEquals(OLD, files.read(file).workbook());
    }

    @Test
    void whatCouldNotBeReadAgainIsNotSaved() throws IOException {
        FileStamp stamp = files.saveNew(file, OLD);
        Workbook tooLong = NEW.withText("n1", "x".repeat(2_000_000));
        assertTrue(complaint(() -> files.save(file, tooLong, stamp))
                .contains("was not saved, since it could not be read"));
        assertEquals(OLD, files.read(file).workbook());
        assertFalse(complaint(() -> files.save(file, tooLong, stamp)).contains("\n"));
    }
}

package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JournalTest {

    private static final long SEED = 20251128;
    private static final String NAME = "/home/larkmere/hinge.leverwright.json";
    private static final Workbook WORKBOOK = Workbook.empty("Hinge").withAdded(0, new ScriptCell("c1", "var a = 1;"));
    private static final Optional<FileStamp> BASE = Optional.of(new FileStamp("00ff"));

    @TempDir
    Path folder;

    private Path onlyFile() throws IOException {
        try (Stream<Path> list = Files.list(folder)) {
            return list.findFirst().orElseThrow();
        }
    }

    @Test
    void theLastTextKeptIsOfferedAgain() throws IOException {
        Journal journal = Journal.of(folder.resolve("deep"), NAME);
        assertEquals(Optional.empty(), journal.unsaved());
        journal.keep(WORKBOOK, Optional.empty());
        Workbook typed = WORKBOOK.withText("c1", "var a = 2;\nvar b = \"\u00e9\";");
        journal.keep(typed, BASE);
        Optional<Journal.Unsaved> expected = Optional.of(new Journal.Unsaved(NAME, BASE, typed));
        assertEquals(expected, Journal.of(folder.resolve("deep"), NAME).unsaved());
        assertEquals(
                Optional.empty(), Journal.of(folder.resolve("deep"), "another").unsaved());
        assertEquals(List.of(expected.orElseThrow()), Journal.all(folder.resolve("deep")));
        journal.clear();
        assertEquals(Optional.empty(), journal.unsaved());
        assertEquals(List.of(), Journal.all(folder.resolve("none")));
    }

    @Test
    void resultsAndSealAreNotInTheJournal() throws IOException {
        WorkbookRecord record = WorkbookRecord.of(WORKBOOK, "0", "17", 1, Map.of());
        Journal journal = Journal.of(folder, NAME);
        journal.keep(Seal.seal(WORKBOOK.withRecord(record)), BASE);
        assertEquals(WORKBOOK, journal.unsaved().orElseThrow().workbook());
    }

    @Test
    void aTailCutOffAtAnyByteGivesTheEntryBefore() throws IOException {
        Journal journal = Journal.of(folder, NAME);
        journal.keep(WORKBOOK, BASE);
        int first = (int) Files.size(onlyFile());
        Workbook typed = WORKBOOK.withText("c1", "var a = 2;");
        journal.keep(typed, BASE);
        byte[] whole = Files.readAllBytes(onlyFile());
        for (int length = 0; length < whole.length; length++) {
            Files.write(onlyFile(), Arrays.copyOf(whole, length));
            Optional<Workbook> found = journal.unsaved().map(Journal.Unsaved::workbook);
            Optional<Workbook> expected =
                    length < first - 1 ? Optional.empty() : Optional.of(length < whole.length - 1 ? WORKBOOK : typed);
            assertEquals(expected, found, "cut to " + length + " bytes");
        }
    }

    @Test
    void textKeptAfterACutTailIsFound() throws IOException {
        Journal journal = Journal.of(folder, NAME);
        journal.keep(WORKBOOK, BASE);
        Files.write(onlyFile(), Arrays.copyOf(Files.readAllBytes(onlyFile()), 100));
        Workbook typed = WORKBOOK.withText("c1", "var a = 2;");
        journal.keep(typed, BASE);
        assertEquals(typed, journal.unsaved().orElseThrow().workbook());
    }

    @Test
    void aFlippedByteLosesOneEntryAtMost() throws IOException {
        Journal journal = Journal.of(folder, NAME);
        journal.keep(WORKBOOK, BASE);
        Workbook typed = WORKBOOK.withText("c1", "var a = 2;");
        journal.keep(typed, BASE);
        byte[] whole = Files.readAllBytes(onlyFile());
        Random random = new Random(SEED);
        for (int round = 0; round < 300; round++) {
            byte[] damaged = whole.clone();
            damaged[random.nextInt(damaged.length)] ^= (byte) (1 + random.nextInt(255));
            Files.write(onlyFile(), damaged);
            Workbook found = journal.unsaved().orElseThrow().workbook();
            assertTrue(found.equals(typed) || found.equals(WORKBOOK), "seed " + SEED + ", round " + round);
        }
    }

    @Test
    void aLongJournalIsCutDownToItsLastEntry() throws IOException {
        Journal journal = Journal.of(folder, NAME);
        Workbook last = WORKBOOK;
        for (int round = 0; round < 12; round++) {
            last = WORKBOOK.withText("c1", "x".repeat(900_000) + round);
            journal.keep(last, BASE);
        }
        assertTrue(Files.size(onlyFile()) <= 8 << 20);
        assertEquals(last, journal.unsaved().orElseThrow().workbook());
    }

    @Test
    void onlyTheUserMayReadIt() throws IOException {
        Journal.of(folder, NAME).keep(WORKBOOK, BASE);
        assumeTrue(Files.getFileStore(folder).supportsFileAttributeView("posix"));
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(onlyFile())));
    }
}

package leverwright.workbook.document;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.json.JsonReader;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;

/**
 * The journal of text that was typed and not yet saved, one file a workbook in a folder of the user's own. Each entry is
 * one line, its SHA-256 digest and the workbook without its results, appended and forced to the disk; after a crash the
 * last whole entry is offered again, and a line that was cut off or damaged is passed over.
 */
public final class Journal {

    private static final String SUFFIX = ".journal";
    private static final int DIGEST = 64;
    private static final long LONGEST = 8L << 20;

    private final Path file;
    private final String name;

    private Journal(Path file, String name) {
        this.file = file;
        this.name = name;
    }

    /**
     * Text that was typed and not saved.
     *
     * @param name the workbook's file or whatever else names it
     * @param base the content of the workbook's file that the text goes on from; empty when there was no file yet
     * @param workbook the workbook as last typed, without record and seal
     */
    public record Unsaved(String name, Optional<FileStamp> base, Workbook workbook) {}

    /**
     * Returns the journal of one workbook; nothing is written yet.
     *
     * @param folder the folder of all journals; made when the first entry is kept
     * @param name the workbook's absolute path, or another name that is its own
     */
    public static Journal of(Path folder, String name) {
        String digest = Seal.sha256(name.getBytes(StandardCharsets.UTF_8));
        return new Journal(folder.resolve(digest.substring(0, 32) + SUFFIX), name);
    }

    /**
     * Returns what is left unsaved in all journals of a folder, in the order of their file names.
     *
     * @param folder the folder of all journals; need not exist
     * @throws IOException when the folder cannot be read
     */
    public static List<Unsaved> all(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        List<Unsaved> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(path -> path.toString().endsWith(SUFFIX))
                    .sorted()
                    .toList()) {
                new Journal(file, "").unsaved().ifPresent(found::add);
            }
        }
        return found;
    }

    /**
     * Keeps the text of a workbook; it is on the disk when this returns.
     *
     * @param workbook the workbook as typed
     * @param base the content of its file that the text goes on from; empty when there is no file yet
     * @throws IOException when the text could not be kept; earlier entries stand
     */
    public void keep(Workbook workbook, Optional<FileStamp> base) throws IOException {
        byte[] entry = entry(workbook, base);
        Files.createDirectories(file.toAbsolutePath().getParent());
        if (Files.exists(file) && Files.size(file) + entry.length > LONGEST) {
            AtomicFile.write(new DiskStorage(), file, entry);
            return;
        }
        try (FileChannel channel =
                FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.READ)) {
            keepPrivate();
            channel.position(channel.size());
            ByteBuffer bytes = ByteBuffer.wrap(startsLine(channel) ? entry : afterLineFeed(entry));
            while (bytes.hasRemaining()) {
                channel.write(bytes);
            }
            channel.force(true);
        }
    }

    private static boolean startsLine(FileChannel channel) throws IOException {
        if (channel.size() == 0) {
            return true;
        }
        ByteBuffer last = ByteBuffer.allocate(1);
        channel.read(last, channel.size() - 1);
        return last.get(0) == '\n';
    }

    private static byte[] afterLineFeed(byte[] entry) {
        byte[] bytes = new byte[entry.length + 1];
        bytes[0] = '\n';
        System.arraycopy(entry, 0, bytes, 1, entry.length);
        return bytes;
    }

    private void keepPrivate() throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(PosixFilePermissions.fromString("rw-------"));
        }
    }

    private byte[] entry(Workbook workbook, Optional<FileStamp> base) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("name", new JsonText(name));
        base.ifPresent(stamp -> members.put("base", new JsonText(stamp.digest())));
        members.put("workbook", WorkbookTree.of(workbook.withoutRecord().withSeal(Optional.empty())));
        String json = JsonWriter.compact(new JsonObject(members));
        String digest = Seal.sha256(json.getBytes(StandardCharsets.UTF_8));
        return (digest + " " + json + "\n").getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Returns the last whole entry; empty when there is none.
     *
     * @throws IOException when the journal cannot be read
     */
    public Optional<Unsaved> unsaved() throws IOException {
        if (!Files.exists(file)) {
            return Optional.empty();
        }
        String[] lines = new String(new DiskStorage().read(file, JsonLimits.STANDARD.bytes()), StandardCharsets.UTF_8)
                .split("\n");
        for (int index = lines.length - 1; index >= 0; index--) {
            Optional<Unsaved> entry = parsed(lines[index]);
            if (entry.isPresent()) {
                return entry;
            }
        }
        return Optional.empty();
    }

    private static Optional<Unsaved> parsed(String line) {
        if (line.length() <= DIGEST + 1) {
            return Optional.empty();
        }
        byte[] json = line.substring(DIGEST + 1).getBytes(StandardCharsets.UTF_8);
        if (!line.startsWith(Seal.sha256(json) + " ")) {
            return Optional.empty();
        }
        try {
            JsonCursor root = JsonCursor.at(JsonReader.read(json, JsonLimits.STANDARD));
            return Optional.of(new Unsaved(
                    root.member("name").text(),
                    root.optional("base").map(stamp -> new FileStamp(stamp.text())),
                    WorkbookFormat.read(root.member("workbook"))));
        } catch (JsonProblem written) {
            // Another version of Leverwright wrote this entry; an older one may still be readable.
            return Optional.empty();
        }
    }

    /**
     * Forgets the entries, after the workbook was saved or its text given up.
     *
     * @throws IOException when the journal cannot be removed
     */
    public void clear() throws IOException {
        Files.deleteIfExists(file);
    }
}

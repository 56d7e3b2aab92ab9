package leverwright.face.desk.model;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.concurrent.Executor;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import leverwright.workbook.document.FileStamp;
import leverwright.workbook.document.Journal;
import leverwright.workbook.document.OpenedWorkbook;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.session.CompiledCells;
import org.jspecify.annotations.Nullable;

/** The user's desk: where things are kept, what may compute on opening, recent files, settings, and how workbooks open. */
public final class DeskHome implements AutoCloseable {

    private static final int MOST_RECENT = 12;

    private final DeskFolders folders;
    private final @Nullable Path shelf;
    private final DeskTiming timing;
    private final Executor view;
    private final DeskLog log;
    private final TrustStore trust;
    private final KeptLines recentLines;
    private final KeptLines settingLines;
    private final ObservableList<Path> recent = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<Looks> looks = new ReadOnlyObjectWrapper<>(Looks.STANDARD);
    private final WorkbookFiles files = WorkbookFiles.onDisk();
    private final CompiledCells compiled;
    private final List<Runnable> heldBack = new ArrayList<>();
    private boolean holding;

    /**
     * Makes a desk.
     *
     * @param folders where the user's things are kept
     * @param shelf the folder of workbooks that come with the program, or null when there is none
     * @param timing how long the desk waits before it acts
     * @param view runs what changes observable values: the window's thread
     */
    public DeskHome(DeskFolders folders, @Nullable Path shelf, DeskTiming timing, Executor view) {
        this.folders = folders;
        this.shelf = shelf;
        this.timing = timing;
        this.view = view;
        log = DeskLog.in(folders.state());
        List<Path> cells = new ArrayList<>(List.of(folders.cache().resolve("cells")));
        if (shelf != null) {
            cells.add(shippedCells(shelf));
        }
        compiled = CompiledCells.in(cells);
        trust = new TrustStore(folders.config(), log);
        recentLines = new KeptLines(folders.config().resolve("recent.txt"), log);
        settingLines = new KeptLines(folders.config().resolve("settings.txt"), log);
        recentLines.read().forEach(line -> recent.add(Path.of(line)));
        looks.set(Looks.read(setting("colours", ""), setting("text", "1")));
    }

    /**
     * Returns the desk of this user with the waits of the window.
     *
     * @param view runs what changes observable values: {@code Platform::runLater}
     */
    public static DeskHome ofUser(Executor view) {
        return new DeskHome(DeskFolders.ofUser(), shippedShelf(), DeskTiming.standard(), view);
    }

    /**
     * Returns a desk that knows the shelf and nothing of this user.
     *
     * @param view runs what changes observable values
     */
    public static DeskHome forRehearsal(Executor view) {
        try {
            DeskFolders folders = DeskFolders.under(Files.createTempDirectory("leverwright-rehearsal"));
            return new DeskHome(folders, shippedShelf(), DeskTiming.standard(), view);
        } catch (IOException unwritable) {
            throw new UncheckedIOException("no temporary folder can be made", unwritable);
        }
    }

    /** Compiles every workbook of the shelf, so that none waits for the compiler when it is opened first. Takes seconds. */
    public void compileShelf() {
        Path folder = shelf;
        if (folder == null) {
            return;
        }
        CompiledCells shipped = CompiledCells.in(List.of(shippedCells(folder)));
        for (Path file : shelf()) {
            try {
                shipped.compile(SheetChange.scripts(files.read(file).workbook()));
            } catch (IOException | JsonProblem unreadable) {
                log.failure("a workbook of the shelf could not be read", unreadable);
            }
        }
    }

    private static Path shippedCells(Path shelf) {
        return shelf.resolveSibling("lib").resolve("cells");
    }

    /** Returns the folder of workbooks beside the packaged program, or null when the program is not packaged. */
    private static @Nullable Path shippedShelf() {
        try {
            Path jar = Path.of(DeskHome.class
                    .getProtectionDomain()
                    .getCodeSource()
                    .getLocation()
                    .toURI());
            Path lib = jar.getParent();
            Path folder = lib == null ? null : lib.resolveSibling("workbooks");
            return folder != null && jar.toString().endsWith(".jar") && Files.isDirectory(folder) ? folder : null;
        } catch (URISyntaxException strange) {
            return null;
        }
    }

    /**
     * A workbook as read from its file, ready to be opened.
     *
     * @param file its file
     * @param workbook what stands in it
     * @param stamp the file's content
     * @param permission what it may do on opening
     * @param rest reads all of it, where only its text was read so far
     */
    public record Read(
            Path file, Workbook workbook, FileStamp stamp, Permission permission, Optional<Supplier<Workbook>> rest) {}

    /**
     * Reads a workbook that is to be opened, on any thread.
     *
     * @param file the workbook's file
     * @throws IOException when it cannot be read, in words
     * @throws JsonProblem when it is not a workbook that this version can read, in words
     */
    public Read read(Path file) throws IOException {
        return read(file, files.read(file));
    }

    /**
     * Reads the text of a workbook that is to be shown at once, on any thread; its record is read after the first picture.
     *
     * @param file the workbook's file
     * @throws IOException when it cannot be read, in words
     * @throws JsonProblem when it is not a workbook that this version can read, in words
     */
    public Read readTextFirst(Path file) throws IOException {
        return read(file, files.readTextFirst(file));
    }

    private Read read(Path file, OpenedWorkbook opened) {
        Path whole = file.toAbsolutePath().normalize();
        FileStamp stamp = opened.stamp();
        boolean shipped = isOnShelf(whole) || isOfShelf(stamp);
        Permission permission = shipped ? Permission.GATED : trust.of(stamp);
        return new Read(
                whole,
                opened.workbook(),
                stamp,
                permission,
                opened.isWhole() ? Optional.empty() : Optional.of(opened::whole));
    }

    /**
     * Opens a workbook. It computes at once only if it comes with the program or this user saved or trusted exactly these
     * bytes.
     *
     * @param read the workbook as read
     */
    public DeskModel open(Read read) {
        remember(read.file());
        return new DeskModel(
                this,
                read.workbook(),
                Optional.of(read.file()),
                Optional.of(read.stamp()),
                read.permission(),
                read.rest());
    }

    /**
     * Reads and opens a workbook.
     *
     * @param file the workbook's file
     * @throws IOException when it cannot be read, in words
     * @throws JsonProblem when it is not a workbook that this version can read, in words
     */
    public DeskModel open(Path file) throws IOException {
        return open(read(file));
    }

    /**
     * Begins a new workbook from a starter; it has no file until it is saved.
     *
     * @param starter what to begin with
     */
    public DeskModel begin(Starter starter) {
        return new DeskModel(
                this, starter.workbook(), Optional.empty(), Optional.empty(), Permission.GATED, Optional.empty());
    }

    /**
     * Returns text that was typed and never saved in workbooks that had no file yet, from windows that are gone. Text of
     * workbooks with a file is offered when that file is opened.
     */
    public List<Journal.Unsaved> leftBehind() {
        List<Journal.Unsaved> found = new ArrayList<>();
        try {
            for (Journal.Unsaved unsaved : Journal.all(journals())) {
                if (unsaved.base().isEmpty() && isAbandoned(unsaved.name())) {
                    found.add(unsaved);
                }
            }
        } catch (IOException unreadable) {
            log.failure("journals could not be read", unreadable);
        }
        return found;
    }

    private boolean isAbandoned(String name) throws IOException {
        Optional<FileClaim> claim = FileClaim.on(folders.state(), name);
        if (claim.isPresent()) {
            claim.get().close();
        }
        return claim.isPresent();
    }

    /**
     * Brings text back that was left behind, as a new workbook without a file.
     *
     * @param unsaved one of {@link #leftBehind()}
     */
    public DeskModel bringBack(Journal.Unsaved unsaved) {
        DeskModel model = new DeskModel(
                this,
                Workbook.empty(unsaved.workbook().title()),
                Optional.empty(),
                Optional.empty(),
                Permission.GATED,
                Optional.empty());
        model.takeOver(unsaved.workbook());
        forget(unsaved);
        return model;
    }

    /**
     * Gives up text that was left behind.
     *
     * @param unsaved one of {@link #leftBehind()}
     */
    public void forget(Journal.Unsaved unsaved) {
        try {
            Journal.of(journals(), unsaved.name()).clear();
        } catch (IOException failure) {
            log.failure("a journal could not be removed", failure);
        }
    }

    /** Returns the files opened last, the newest first. */
    public ObservableList<Path> recent() {
        return FXCollections.unmodifiableObservableList(recent);
    }

    void remember(Path file) {
        recent.remove(file);
        recent.add(0, file);
        if (recent.size() > MOST_RECENT) {
            recent.remove(MOST_RECENT, recent.size());
        }
        recentLines.write(recent.stream().map(Path::toString).toList());
    }

    /**
     * Returns a setting of the desk, such as its colours or the scale of its text.
     *
     * @param key the setting's name, without an equals sign
     * @param otherwise what holds when it was never set
     */
    public String setting(String key, String otherwise) {
        return settings().getOrDefault(key, otherwise);
    }

    /**
     * Keeps a setting of the desk.
     *
     * @param key the setting's name, without an equals sign
     * @param value the setting, one line
     */
    public void set(String key, String value) {
        Map<String, String> all = settings();
        all.put(key, value);
        settingLines.write(all.entrySet().stream()
                .map(entry -> entry.getKey() + "=" + entry.getValue())
                .toList());
    }

    private Map<String, String> settings() {
        Map<String, String> all = new LinkedHashMap<>();
        for (String line : settingLines.read()) {
            int equals = line.indexOf('=');
            if (equals > 0) {
                all.put(line.substring(0, equals), line.substring(equals + 1));
            }
        }
        return all;
    }

    /** Returns how every window of the desk looks. */
    public ReadOnlyObjectProperty<Looks> looks() {
        return looks.getReadOnlyProperty();
    }

    /**
     * Changes how every window of the desk looks, and keeps that.
     *
     * @param chosen the looks
     */
    public void show(Looks chosen) {
        if (!chosen.equals(looks.get())) {
            looks.set(chosen);
            set("colours", chosen.colours().styleClass());
            set("text", Double.toString(chosen.textScale()));
        }
    }

    /**
     * Holds back until {@link #goOn} whatever the first picture of a window does not need: it is not to share the
     * processors with the compiler, nor the window's thread with menus.
     */
    public void holdBack() {
        holding = true;
    }

    /**
     * Does what was held back, in the order in which it was wished for, one after each picture: what is typed meanwhile is
     * shown in between.
     *
     * @param afterPicture does something on the window's thread after the next picture
     */
    public void goOn(Executor afterPicture) {
        if (heldBack.isEmpty()) {
            holding = false;
        } else {
            heldBack.remove(0).run();
            afterPicture.execute(() -> goOn(afterPicture));
        }
    }

    /** Returns whether there is still something that waits for the first picture of a window. */
    boolean isHoldingBack() {
        return holding;
    }

    /**
     * Does something now, or where the first picture of a window is still to come, after it.
     *
     * @param task what to do on the window's thread
     */
    public void afterFirstFrame(Runnable task) {
        if (holding) {
            heldBack.add(task);
        } else {
            task.run();
        }
    }

    /** Returns the workbooks that come with the program, by file name. */
    public List<Path> shelf() {
        Path folder = shelf;
        if (folder == null) {
            return List.of();
        }
        try (Stream<Path> found = Files.list(folder)) {
            return found.filter(file -> file.toString().endsWith(".leverwright.json"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            log.failure("the shelf could not be read", unreadable);
            return List.of();
        }
    }

    private boolean isOfShelf(FileStamp stamp) {
        for (Path file : shelf()) {
            try {
                if (files.stamp(file).equals(stamp)) {
                    return true;
                }
            } catch (IOException unreadable) {
                log.failure("a workbook of the shelf could not be read", unreadable);
            }
        }
        return false;
    }

    /** Returns whether a file lies in the program's own folder and is not to be saved over. */
    boolean isOnShelf(Path file) {
        Path folder = shelf;
        return folder != null && file.startsWith(folder.toAbsolutePath().normalize());
    }

    Path journals() {
        return folders.state().resolve("journals");
    }

    Path state() {
        return folders.state();
    }

    TrustStore trust() {
        return trust;
    }

    WorkbookFiles files() {
        return files;
    }

    /** Returns where cells that were compiled before are looked for. */
    CompiledCells compiled() {
        return compiled;
    }

    DeskTiming timing() {
        return timing;
    }

    Executor view() {
        return view;
    }

    /** Returns the log, for what the window itself has to say. */
    public DeskLog log() {
        return log;
    }

    static String newName() {
        return "untitled " + UUID.randomUUID();
    }

    @Override
    public void close() {
        log.close();
    }
}

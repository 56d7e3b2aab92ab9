package leverwright.face.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import leverwright.face.publish.Publisher;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.FileStamp;
import leverwright.workbook.document.NoteCell;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.SessionOptions;
import org.jspecify.annotations.Nullable;

/**
 * One open workbook. Call every method on the window's thread; none blocks, and everything observable changes on that
 * thread only.
 */
public final class DeskModel extends DeskFacts implements AutoCloseable {

    private final DeskHome home;
    private final OwnFile file;
    private final History history;
    private final RunQueue queue;
    private final Recording recording;
    private final ScriptAdvice advice;
    private final Finding finding = new Finding(this);
    private final ScheduledThreadPoolExecutor clock = OneThread.named("desk clock");
    private final ScheduledThreadPoolExecutor disk = OneThread.named("desk files");
    private final ScheduledThreadPoolExecutor slow = OneThread.named("desk rechecks");

    private Recheck checking = Recheck.none();
    private Workbook saved;
    private Caret caret = new Caret("", 0);
    private long version = 1;
    private Optional<Workbook> offered = Optional.empty();
    private @Nullable ScheduledFuture<?> journalling;
    private boolean closed;

    private final WholeFile wholeFile = new WholeFile();

    DeskModel(
            DeskHome home,
            Workbook opened,
            Optional<Path> file,
            Optional<FileStamp> stamp,
            Permission permitted,
            Optional<Supplier<Workbook>> rest) {
        this.home = home;
        this.file = new OwnFile(home, file, stamp);
        history = new History(home.timing().typingPause());
        saved = opened;
        queue = new RunQueue(home.timing(), home.view(), clock, home.log(), home.compiled(), this::take);
        recording = new Recording(queue);
        advice = new ScriptAdvice(
                queue::session, () -> SheetChange.unrun(workbook.get(), permission.get()), home.view(), home.log());
        workbook.set(opened);
        path.set(file);
        permission.set(permitted);
        views.take(opened.sheet());
        views.showRecord(opened);
        claims.set(views.claims());
        describe(null);
        if (file.isPresent() && !this.file.isOwned()) {
            tell(
                    Notice.Kind.OPEN_ELSEWHERE,
                    "Another window has this file open; this one can save under another name.");
        }
        offered = this.file.unsaved().filter(text -> !SheetChange.sameText(text, opened));
        offered.ifPresent(text -> tell(
                Notice.Kind.UNSAVED_TEXT,
                "Text of this workbook was typed and never saved. Bring it back or forget it."));
        long poll = home.timing().poll().toMillis();
        disk.scheduleWithFixedDelay(this::lookAtDisk, poll, poll, TimeUnit.MILLISECONDS);
        if (rest.isPresent()) {
            home.afterFirstFrame(() -> wholeFile.read(rest.get(), disk, home.view(), all -> takeWhole(opened, all)));
        } else {
            wholeFile.nothingMore();
            home.afterFirstFrame(() -> compute(Duration.ZERO));
        }
    }

    private void takeWhole(Workbook text, Workbook all) {
        if (closed) {
            return;
        }
        Workbook whole = WholeFile.with(text, all, workbook.get());
        saved = all;
        workbook.set(whole);
        views.take(whole.sheet());
        views.showRecord(whole);
        views.outdate(SheetChange.changed(SheetChange.scripts(all), SheetChange.scripts(whole)), version, true);
        claims.set(views.claims());
        wholeFile.nothingMore();
        afterChange();
        compute(Duration.ZERO);
    }

    /**
     * Completes on the window's thread when all of the workbook's file has been read, and its record is shown; exceptionally
     * when what follows the text cannot be read, with the words for that.
     */
    public CompletableFuture<Void> whole() {
        return wholeFile.read();
    }

    /**
     * Changes the text of a cell as it is typed. Consecutive typing in one cell is one step of the history.
     *
     * @param id the cell's id
     * @param text the whole new text
     * @param position the offset of the caret after the change, in UTF-16 units
     * @throws IllegalArgumentException when there is no cell of this id
     */
    public void type(String id, String text, int position) {
        change(workbook.get().withText(id, text), new Caret(id, position), id);
    }

    /** Ends a stretch of typing: the next typed text is a step of its own. */
    public void endTyping() {
        history.endTyping();
    }

    /**
     * Changes the texts of several cells in one step of the history, as find and replace does.
     *
     * @param texts the new texts by the cells' ids
     * @throws IllegalArgumentException when there is no cell of one of these ids
     */
    public void replaceTexts(Map<String, String> texts) {
        Workbook next = workbook.get();
        Caret place = caret;
        for (Map.Entry<String, String> text : texts.entrySet()) {
            next = next.withText(text.getKey(), text.getValue());
            place = new Caret(text.getKey(), 0);
        }
        change(next, place, null);
    }

    /**
     * Gives a script another title.
     *
     * @param id the script's id
     * @param title the title, one line; empty for none
     * @throws IllegalArgumentException when there is no script of this id or the title has more than one line
     */
    public void retitle(String id, String title) {
        Cell cell = workbook.get().cell(id).orElse(null);
        if (!(cell instanceof ScriptCell script)) {
            throw new IllegalArgumentException(
                    "there is no script called " + id + " in this workbook; name one there is");
        }
        change(workbook.get().withCell(script.withTitle(title)), new Caret(id, 0), "title of " + id);
    }

    /**
     * Changes the words about the workbook.
     *
     * @param title what it is called
     * @param author who wrote it
     * @param about what it is for
     */
    public void describe(String title, String author, String about) {
        change(workbook.get().withWords(title, author, about), caret, "words");
    }

    /**
     * Adds a script.
     *
     * @param index where it is to stand, 0 for the top
     * @param text its text
     * @return its id
     * @throws IllegalArgumentException when there is no such place
     */
    public String addScript(int index, String text) {
        return add(index, new ScriptCell(freshId(), text));
    }

    /**
     * Adds a note.
     *
     * @param index where it is to stand, 0 for the top
     * @param text its text
     * @return its id
     * @throws IllegalArgumentException when there is no such place
     */
    public String addNote(int index, String text) {
        return add(index, new NoteCell(freshId(), text));
    }

    private String freshId() {
        return workbook.get().newId();
    }

    private String add(int index, Cell cell) {
        change(
                workbook.get().withAdded(index, cell),
                new Caret(cell.id(), cell.text().length()),
                null);
        return cell.id();
    }

    /**
     * Moves a cell.
     *
     * @param id the cell's id
     * @param index where it is to stand afterwards, 0 for the top
     * @throws IllegalArgumentException when there is no such cell or place
     */
    public void move(String id, int index) {
        change(workbook.get().withMoved(id, index), new Caret(id, 0), null);
    }

    /**
     * Deletes a cell; undo brings it back.
     *
     * @param id the cell's id
     * @throws IllegalArgumentException when there is no such cell
     */
    public void delete(String id) {
        List<Cell> before = workbook.get().sheet();
        Workbook next = workbook.get().withoutCell(id);
        int index = 0;
        while (!before.get(index).id().equals(id)) {
            index++;
        }
        String near = next.sheet().isEmpty()
                ? ""
                : next.sheet().get(Math.min(index, next.sheet().size() - 1)).id();
        change(next, new Caret(near, 0), null);
    }

    /** Undoes one step; returns where it was made, empty when there is none. */
    public Optional<Caret> undo() {
        return history.undo().map(this::goTo);
    }

    /** Does one undone step again; returns where it was made, empty when there is none. */
    public Optional<Caret> redo() {
        return history.redo().map(this::goTo);
    }

    private Caret goTo(History.Place place) {
        Workbook there = place.workbook();
        caret = place.caret();
        settle(workbook.get().withSheet(there.sheet()).withWords(there.title(), there.author(), there.about()));
        return caret;
    }

    private void change(Workbook next, Caret place, @Nullable String typing) {
        Workbook before = workbook.get();
        if (SheetChange.sameText(before, next)) {
            return;
        }
        history.keep(before, next, caret.cell().isEmpty() ? place : caret, place, typing, System.nanoTime());
        caret = place;
        settle(next);
    }

    /** Tells the model where the caret is, so that a step can bring it back there. */
    public void caretAt(Caret place) {
        caret = place;
    }

    private void settle(Workbook next) {
        Workbook before = workbook.get();
        List<CellScript> old = SheetChange.scripts(before);
        List<CellScript> now = SheetChange.scripts(next);
        workbook.set(next);
        views.take(next.sheet());
        if (!old.equals(now)) {
            version++;
            views.outdate(SheetChange.changed(old, now), version, true);
            compute(home.timing().settle());
        }
        afterChange();
    }

    private void afterChange() {
        undoable.set(history.canUndo());
        redoable.set(history.canRedo());
        boolean text = !SheetChange.sameText(workbook.get(), saved);
        unsaved.set(text || !workbook.get().dials().equals(saved.dials()));
        if (text && journalling == null && !closed) {
            journalling = clock.schedule(
                    () -> home.view().execute(this::journal),
                    home.timing().journal().toMillis(),
                    TimeUnit.MILLISECONDS);
        }
        if (!text && offered.isEmpty() && !closed) {
            disk.execute(file::forget);
        }
        describe(null);
    }

    private void journal() {
        journalling = null;
        if (closed || SheetChange.sameText(workbook.get(), saved)) {
            return;
        }
        Workbook now = workbook.get();
        disk.execute(() -> {
            String problem = file.keep(now);
            if (!problem.isEmpty()) {
                home.view().execute(() -> tell(Notice.Kind.FILE, problem));
            }
        });
    }

    /**
     * Turns a dial to the nearest whole step, as slider, wheel, arrow keys, figure and chart do. Turns that come while a
     * run is under way replace one another.
     *
     * @param dial the dial's name; an unknown one is passed over
     * @param si where to, in SI units (radians for angles); outside the range its nearer end is taken
     */
    public void turn(String dial, double si) {
        DialView view = views.dial(dial);
        if (view != null && Double.isFinite(si)) {
            view.complain("");
            setting(
                    dial,
                    DialText.turned(view.declared().get(), si, view.halfWidth().get()));
        }
    }

    /**
     * Widens or narrows the band of a dial's setting, to the nearest whole step.
     *
     * @param dial the dial's name; an unknown one is passed over
     * @param halfWidth in SI units; 0 or less takes the band away
     */
    public void widen(String dial, double halfWidth) {
        DialView view = views.dial(dial);
        if (view != null && Double.isFinite(halfWidth)) {
            view.complain("");
            setting(dial, DialText.turned(view.declared().get(), view.value().get(), halfWidth));
        }
    }

    /**
     * Sets a dial to what the reader typed. What cannot be read or lies outside the range is not taken; then the dial's
     * {@link DialView#error()} says why.
     *
     * @param dial the dial's name; an unknown one is passed over
     * @param text for example {@code "45 deg"}, {@code "0.8 rad"}, {@code "45 ± 5 deg"}, or a number in the dial's unit
     */
    public void typeDial(String dial, String text) {
        DialView view = views.dial(dial);
        if (view == null) {
            return;
        }
        try {
            String taken = DialText.typed(view.declared().get(), text);
            view.complain("");
            setting(dial, taken);
        } catch (IllegalArgumentException refused) {
            view.complain(String.valueOf(refused.getMessage()));
        }
    }

    /**
     * Puts a dial back where its script puts it.
     *
     * @param dial the dial's name
     */
    public void resetDial(String dial) {
        Map<String, String> settings = new LinkedHashMap<>(workbook.get().dials());
        settings.remove(dial);
        settings(settings);
    }

    /** Puts every dial back where its script puts it. */
    public void resetDials() {
        settings(Map.of());
    }

    private void setting(String dial, String text) {
        settings(workbook.get().withDial(dial, text).dials());
    }

    private void settings(Map<String, String> settings) {
        Map<String, String> before = workbook.get().dials();
        if (before.equals(settings)) {
            return;
        }
        workbook.set(workbook.get().withDials(settings));
        version++;
        for (DialView view : views.dials) {
            String now = settings.get(view.name());
            if (!Objects.equals(before.get(view.name()), now)) {
                views.outdate(views.declarers(view.name()), version, permission.get() == Permission.ASLEEP);
                view.complain("");
                view.choose(now);
            }
        }
        compute(Duration.ZERO);
        afterChange();
    }

    /** Holds the present setting and what it shows, to be seen beside what comes. */
    public void hold() {
        hold(new Held(workbook.get().dials(), views.shown()));
    }

    private void hold(Held kept) {
        held.set(Optional.of(kept));
        for (CellView view : views.cells) {
            view.hold(Optional.ofNullable(kept.shown().get(view.id())));
        }
    }

    /** Lets go of the held setting. */
    public void letGo() {
        held.set(Optional.empty());
        views.cells.forEach(view -> view.hold(Optional.empty()));
    }

    /** Goes to the held setting and holds the one of before. */
    public void swapHeld() {
        Held kept = held.get().orElse(null);
        if (kept != null) {
            hold();
            settings(kept.settings());
        }
    }

    private void compute(Duration wait) {
        if (permission.get() != Permission.ASLEEP && !closed && wholeFile.isRead()) {
            queue.want(target(), wait);
        }
    }

    private RunQueue.Target target() {
        long seed = workbook.get().record().map(WorkbookRecord::seed).orElse(SessionOptions.STANDARD_SEED);
        return new RunQueue.Target(
                version,
                SheetChange.scripts(workbook.get()),
                workbook.get().dials(),
                permission.get() == Permission.TRUSTED,
                seed);
    }

    /** Runs every script from the top in a new worker; a workbook that was asleep computes behind the gate from now on. */
    public void computeFromTheTop() {
        if (!whole().isDone()) {
            whole().thenRun(this::computeFromTheTop);
            return;
        }
        if (permission.get() == Permission.ASLEEP) {
            permission.set(Permission.GATED);
        }
        version++;
        queue.fromTheTop(target());
    }

    /** Lifts the allow-list for this workbook, and remembers that for its file as it stands there. */
    public void trust() {
        permission.set(Permission.TRUSTED);
        file.stamp().ifPresent(stamp -> disk.execute(() -> home.trust().remember(stamp, Permission.TRUSTED)));
        version++;
        queue.fromTheTop(target());
    }

    /** Stops the run that is under way, and a recheck. */
    public void stop() {
        queue.stop();
        checking.stop();
    }

    /** Returns whether there is anything to stop: a run or a recheck. */
    public boolean canStop() {
        return busy.get() || !checking.report().isDone();
    }

    private void take(Batch arrived) {
        if (closed) {
            return;
        }
        views.take(arrived, workbook.get().dials());
        busy.set(!arrived.complete());
        progress.set(views.progress());
        claims.set(views.claims());
        notices.removeIf(notice -> notice.kind() == Notice.Kind.WORKER);
        if (!arrived.fault().isEmpty()) {
            tell(Notice.Kind.WORKER, arrived.fault());
        }
        if (!arrived.differences().isEmpty()) {
            tell(
                    Notice.Kind.DIFFERENCE,
                    "A run from the top gave other values in " + arrived.differences()
                            + " than were shown; those of the run from the top stand there now.");
        }
        describe(arrived);
        batch.set(batch.get() + 1);
    }

    private void describe(@Nullable Batch arrived) {
        status.set(StatusWords.of(views.scripts(), arrived));
    }

    /** Takes back the unsaved text that was found when the workbook was opened; undo goes to the file as it is. */
    public void bringBackUnsaved() {
        Optional<Workbook> found = offered;
        offered = Optional.empty();
        notices.removeIf(notice -> notice.kind() == Notice.Kind.UNSAVED_TEXT);
        found.ifPresent(this::takeOver);
    }

    /** Gives up the unsaved text that was found when the workbook was opened. */
    public void forgetUnsaved() {
        offered = Optional.empty();
        notices.removeIf(notice -> notice.kind() == Notice.Kind.UNSAVED_TEXT);
        disk.execute(file::forget);
        afterChange();
    }

    /** Takes sheet and words of another workbook as one step. */
    void takeOver(Workbook other) {
        Workbook next = workbook.get().withSheet(other.sheet()).withWords(other.title(), other.author(), other.about());
        change(
                next,
                new Caret(other.sheet().isEmpty() ? "" : other.sheet().get(0).id(), 0),
                null);
        settings(other.dials());
        journal();
    }

    private void lookAtDisk() {
        String change = file.changeOnDisk();
        home.view().execute(() -> {
            boolean told = notices.stream().anyMatch(notice -> notice.kind() == Notice.Kind.CHANGED_ON_DISK);
            if (change.isEmpty() && told) {
                notices.removeIf(notice -> notice.kind() == Notice.Kind.CHANGED_ON_DISK);
            } else if (!change.isEmpty() && !told) {
                tell(Notice.Kind.CHANGED_ON_DISK, change);
            }
        });
    }

    /**
     * Reads the file again after somebody else changed it; what stood here is one undo away. What came from elsewhere does
     * not run until the reader asks for it.
     *
     * @return empty when it was read, or else what went wrong, in words; completes on the window's thread
     */
    public CompletableFuture<String> readAgain() {
        CompletableFuture<String> answer = new CompletableFuture<>();
        disk.execute(() -> {
            try {
                Workbook there = file.read();
                Permission allowed = file.stamp().map(home.trust()::of).orElse(Permission.ASLEEP);
                home.view().execute(() -> {
                    permission.set(allowed);
                    saved = there;
                    takeOver(there);
                    afterChange();
                    answer.complete("");
                });
            } catch (IOException | JsonProblem failure) {
                home.view().execute(() -> answer.complete(String.valueOf(failure.getMessage())));
            }
        });
        return answer;
    }

    /** Saves the workbook in its file; completes on the window's thread. */
    public CompletableFuture<SaveOutcome> save() {
        return save(now -> file.save(now, false));
    }

    /** Saves the workbook over whatever workbook its file holds now, since the user said so. */
    public CompletableFuture<SaveOutcome> saveReplacing() {
        return save(now -> file.save(now, true));
    }

    /**
     * Saves the workbook under a name, which becomes its file. The user has agreed to replace what has that name.
     *
     * @param target the file
     */
    public CompletableFuture<SaveOutcome> saveAs(Path target) {
        return save(now -> file.saveAs(target, now));
    }

    private CompletableFuture<SaveOutcome> save(Function<Workbook, SaveOutcome> way) {
        return whole().thenCompose(read -> saveWhole(way));
    }

    private CompletableFuture<SaveOutcome> saveWhole(Function<Workbook, SaveOutcome> way) {
        CompletableFuture<SaveOutcome> answer = new CompletableFuture<>();
        Workbook now = workbook.get();
        Permission allowed = permission.get();
        history.endTyping();
        disk.execute(() -> {
            Workbook recorded = recording.toKeep(now, allowed == Permission.ASLEEP);
            SaveOutcome outcome = way.apply(recorded);
            if (outcome.isSaved()) {
                file.stamp().ifPresent(stamp -> home.trust().remember(stamp, allowed));
                queue.keepCompiled();
            }
            home.view().execute(() -> {
                if (outcome.isSaved()) {
                    afterSaving(recorded);
                }
                answer.complete(outcome);
            });
        });
        return answer;
    }

    private void afterSaving(Workbook written) {
        saved = written;
        written.record().ifPresent(record -> workbook.set(workbook.get().withRecord(record)));
        path.set(file.path());
        file.path().ifPresent(home::remember);
        notices.removeIf(notice -> notice.kind() == Notice.Kind.OPEN_ELSEWHERE
                || notice.kind() == Notice.Kind.CHANGED_ON_DISK
                || notice.kind() == Notice.Kind.UNSAVED_TEXT);
        offered = Optional.empty();
        afterChange();
    }

    /**
     * Writes the workbook as one page that stands for itself, with the results of its last run; those of the file when it
     * was not run.
     *
     * @param page the file to write
     * @return empty when it was written, or else what went wrong, in words; completes on the window's thread
     */
    public CompletableFuture<String> publish(Path page) {
        return whole().thenCompose(read -> publishWhole(page));
    }

    private CompletableFuture<String> publishWhole(Path page) {
        Workbook now = workbook.get();
        boolean asleep = permission.get() == Permission.ASLEEP;
        return inBackground(disk, () -> {
            try {
                Files.writeString(page, Publisher.page(recording.toPublish(now, asleep)));
                return "";
            } catch (IOException failure) {
                home.log().failure("a page could not be written", failure);
                return page + " cannot be written; choose another folder.";
            }
        });
    }

    /**
     * Computes the workbook anew in a clean worker, behind the gate unless it is trusted, and holds the record against that:
     * the record of the file, or of the last run where there is a newer one. A recheck that is still under way is stopped.
     *
     * @return the recheck, which fails in words when there is no record or no worker
     */
    public Recheck recheck() {
        checking.stop();
        Workbook now = workbook.get();
        Permission allowed = permission.get();
        Recheck begun = new Recheck(now, home.view());
        checking = begun;
        slow.execute(() -> begun.run(
                () -> now.recordIsCurrent() ? now : recording.toKeep(now, allowed == Permission.ASLEEP),
                allowed == Permission.TRUSTED));
        return begun;
    }

    /** Does something off the window's thread and answers on it. */
    private <T> CompletableFuture<T> inBackground(Executor where, Callable<T> task) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        where.execute(() -> {
            try {
                T value = task.call();
                home.view().execute(() -> answer.complete(value));
            } catch (Exception failure) {
                home.view().execute(() -> answer.completeExceptionally(failure));
            }
        });
        return answer;
    }

    /**
     * Puts a line into the script where the caret is, below the caret's line; where the caret is in no script, a new script
     * with the line is added below it.
     *
     * @param line one or more lines of script
     * @return where the line now ends
     */
    public Caret insertLine(String line) {
        history.endTyping();
        CellView at = views.find(caret.cell());
        if (at == null || !at.isScript()) {
            int index = at == null ? views.cells.size() : views.cells.indexOf(at) + 1;
            String id = addScript(index, line);
            return new Caret(id, line.length());
        }
        String text = at.text().get();
        int end = text.indexOf('\n', Math.min(caret.position(), text.length()));
        String above = end < 0 ? text : text.substring(0, end);
        String below = end < 0 ? "" : text.substring(end);
        String begin = above.isBlank() ? "" : above + "\n";
        Caret after = new Caret(at.id(), begin.length() + line.length());
        change(workbook.get().withText(at.id(), begin + line + below), after, null);
        return after;
    }

    /** Returns where the caret is, as last told. */
    public Caret caret() {
        return caret;
    }

    /** Returns what the compiler knows about scripts as they are written. */
    public ScriptAdvice advice() {
        return advice;
    }

    /** Returns the search in this workbook. */
    public Finding finding() {
        return finding;
    }

    /** Returns whether the window is still to show its first picture, which is to hold as little as can be. */
    public boolean isOpening() {
        return home.isHoldingBack();
    }

    /**
     * Does something now, or where the first picture of a window is still to come, some time after it.
     *
     * @param task what to do on the window's thread
     */
    public void afterFirstFrame(Runnable task) {
        home.afterFirstFrame(task);
    }

    /** Returns how every window of the desk looks. */
    public ReadOnlyObjectProperty<Looks> looks() {
        return home.looks();
    }

    /** Returns what closing would lose, as a question to the reader; empty when nothing would be lost. */
    public Optional<String> wouldBeLost() {
        return SheetChange.sameText(workbook.get(), saved)
                ? Optional.empty()
                : Optional.of("\"" + workbook.get().title() + "\" has text that is not saved. Save it before closing?");
    }

    /** Closes the workbook: ends its worker, gives its file free and forgets text that the reader gave up. */
    @Override
    public void close() {
        if (closed) {
            return;
        }
        closed = true;
        checking.stop();
        queue.close();
        advice.close();
        clock.shutdownNow();
        boolean keepsOffer = offered.isPresent();
        disk.execute(() -> {
            if (!keepsOffer) {
                file.forget();
            }
            file.release();
        });
        disk.shutdown();
        slow.shutdownNow();
    }
}

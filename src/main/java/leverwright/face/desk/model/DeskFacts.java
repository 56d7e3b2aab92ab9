package leverwright.face.desk.model;

import java.nio.file.Path;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyLongProperty;
import javafx.beans.property.ReadOnlyLongWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import leverwright.run.result.Result;
import leverwright.workbook.document.Workbook;

/** What can be observed of one open workbook. Everything here is read and changes on the window's thread only. */
abstract class DeskFacts {

    final ReadOnlyObjectWrapper<Workbook> workbook = new ReadOnlyObjectWrapper<>();
    final ReadOnlyObjectWrapper<Optional<Path>> path = new ReadOnlyObjectWrapper<>(Optional.empty());
    final ReadOnlyObjectWrapper<Permission> permission = new ReadOnlyObjectWrapper<>();
    final ReadOnlyBooleanWrapper unsaved = new ReadOnlyBooleanWrapper();
    final ReadOnlyBooleanWrapper undoable = new ReadOnlyBooleanWrapper();
    final ReadOnlyBooleanWrapper redoable = new ReadOnlyBooleanWrapper();
    final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
    final ReadOnlyObjectWrapper<Progress> progress = new ReadOnlyObjectWrapper<>(new Progress("", 0, 0));
    final ReadOnlyObjectWrapper<ClaimCount> claims = new ReadOnlyObjectWrapper<>(new ClaimCount(0, 0, 0, 0));
    final ReadOnlyObjectWrapper<Optional<Held>> held = new ReadOnlyObjectWrapper<>(Optional.empty());
    final ReadOnlyStringWrapper status = new ReadOnlyStringWrapper("");
    final ReadOnlyLongWrapper batch = new ReadOnlyLongWrapper();
    final ObservableList<Notice> notices = FXCollections.observableArrayList();
    final ObservableList<Pin> pins = FXCollections.observableArrayList();
    final SheetViews views = new SheetViews();

    /** Returns the workbook as it stands. */
    public ReadOnlyObjectProperty<Workbook> workbook() {
        return workbook.getReadOnlyProperty();
    }

    /** Returns the workbook's file; empty for one that was never saved. */
    public ReadOnlyObjectProperty<Optional<Path>> file() {
        return path.getReadOnlyProperty();
    }

    /** Returns the cells from top to bottom; not to be changed by the caller. */
    public ObservableList<CellView> cells() {
        return FXCollections.unmodifiableObservableList(views.cells);
    }

    /**
     * Returns the view of a cell.
     *
     * @param id the cell's id
     */
    public Optional<CellView> cell(String id) {
        return Optional.ofNullable(views.find(id));
    }

    /** Returns the dials in order of the sheet; not to be changed by the caller. */
    public ObservableList<DialView> dials() {
        return FXCollections.unmodifiableObservableList(views.dials);
    }

    /** Returns what the reader lets the workbook do. */
    public ReadOnlyObjectProperty<Permission> permission() {
        return permission.getReadOnlyProperty();
    }

    /** Returns whether something is not in the file: text, structure or the setting of a dial. */
    public ReadOnlyBooleanProperty unsaved() {
        return unsaved.getReadOnlyProperty();
    }

    /** Returns whether there is a step to undo. */
    public ReadOnlyBooleanProperty undoable() {
        return undoable.getReadOnlyProperty();
    }

    /** Returns whether there is a step to do again. */
    public ReadOnlyBooleanProperty redoable() {
        return redoable.getReadOnlyProperty();
    }

    /** Returns whether a run is under way that takes long enough to be told of. */
    public ReadOnlyBooleanProperty busy() {
        return busy.getReadOnlyProperty();
    }

    /** Returns how far the run has come. */
    public ReadOnlyObjectProperty<Progress> progress() {
        return progress.getReadOnlyProperty();
    }

    /** Returns how many claims came to which verdict. */
    public ReadOnlyObjectProperty<ClaimCount> claims() {
        return claims.getReadOnlyProperty();
    }

    /** Returns the setting that is held for before and after; empty when none is. */
    public ReadOnlyObjectProperty<Optional<Held>> held() {
        return held.getReadOnlyProperty();
    }

    /** Returns one line about the state of the whole, for example {@code "all 5 scripts fresh, 0.24 ms"}. */
    public ReadOnlyStringProperty status() {
        return status.getReadOnlyProperty();
    }

    /** Returns a number that grows by one after each batch of results. */
    public ReadOnlyLongProperty batch() {
        return batch.getReadOnlyProperty();
    }

    /** Returns what the reader should know; not to be changed by the caller. */
    public ObservableList<Notice> notices() {
        return FXCollections.unmodifiableObservableList(notices);
    }

    /** Returns the results that are kept in view; to be changed by {@link #pin} and {@link #unpin}. */
    public ObservableList<Pin> pins() {
        return FXCollections.unmodifiableObservableList(pins);
    }

    /**
     * Keeps a result in view.
     *
     * @param pin which one
     */
    public void pin(Pin pin) {
        if (!pins.contains(pin)) {
            pins.add(pin);
        }
    }

    /**
     * No longer keeps a result in view.
     *
     * @param pin which one
     */
    public void unpin(Pin pin) {
        pins.remove(pin);
    }

    /**
     * Returns the result that a pin points to now; empty while its script shows none there.
     *
     * @param pin a pin
     */
    public Optional<Result> pinned(Pin pin) {
        return cell(pin.cell())
                .map(view -> view.shown().get().results())
                .filter(results -> pin.index() < results.size())
                .map(results -> results.get(pin.index()));
    }

    void tell(Notice.Kind kind, String words) {
        notices.removeIf(notice -> notice.kind() == kind);
        notices.add(new Notice(kind, words));
    }

    /**
     * Takes a notice away.
     *
     * @param notice one of {@link #notices()}
     */
    public void dismiss(Notice notice) {
        notices.remove(notice);
    }
}

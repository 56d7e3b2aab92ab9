package leverwright.face.desk.model;

import java.util.Objects;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import leverwright.run.result.CellState;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.session.CellOutcome;
import org.jspecify.annotations.Nullable;

/** One cell as the window sees it; the same object as long as the cell is in the sheet. */
public final class CellView {

    private final String id;
    private final boolean script;
    private final ReadOnlyStringWrapper title = new ReadOnlyStringWrapper("");
    private final ReadOnlyStringWrapper text = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<CellShown> shown = new ReadOnlyObjectWrapper<>(CellShown.NOTHING);
    private final ReadOnlyObjectWrapper<Optional<CellShown>> held = new ReadOnlyObjectWrapper<>(Optional.empty());
    private @Nullable CellOutcome last;

    CellView(Cell cell) {
        id = cell.id();
        script = cell instanceof ScriptCell;
        take(cell);
    }

    /** Returns the cell's id. */
    public String id() {
        return id;
    }

    /** Returns whether this is a script; otherwise it is a note. */
    public boolean isScript() {
        return script;
    }

    /** Returns the title of a script; empty for a script without title and for notes. */
    public ReadOnlyStringProperty title() {
        return title.getReadOnlyProperty();
    }

    /** Returns the text, lines parted by a line feed. */
    public ReadOnlyStringProperty text() {
        return text.getReadOnlyProperty();
    }

    /** Returns what the script shows; never null. A note shows nothing. */
    public ReadOnlyObjectProperty<CellShown> shown() {
        return shown.getReadOnlyProperty();
    }

    /** Returns what the script showed at the setting that is held; empty when none is held or the script changed since. */
    public ReadOnlyObjectProperty<Optional<CellShown>> held() {
        return held.getReadOnlyProperty();
    }

    void take(Cell cell) {
        title.set(cell instanceof ScriptCell titled ? titled.title() : "");
        text.set(cell.text());
    }

    void show(CellShown now) {
        shown.set(now);
    }

    void take(CellOutcome outcome, boolean stale) {
        if (Objects.equals(outcome, last) && !stale && shown.get().state() == outcome.state()) {
            return;
        }
        last = outcome;
        CellShown now = CellShown.of(outcome, shown.get());
        shown.set(stale && now.state() == CellState.FRESH ? now.in(CellState.STALE) : now);
    }

    void becomeStale() {
        CellState state = shown.get().state();
        if (script && state != CellState.STALE && state != CellState.NOT_RUN) {
            shown.set(shown.get().in(CellState.STALE));
        }
    }

    void hold(Optional<CellShown> kept) {
        held.set(kept);
    }
}

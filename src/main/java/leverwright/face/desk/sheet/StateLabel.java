package leverwright.face.desk.sheet;

import javafx.scene.control.Label;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.StateSign;
import leverwright.run.result.CellState;
import org.jspecify.annotations.Nullable;

/** The state of a script in words and by a sign; its colour only repeats that. */
final class StateLabel extends Label {

    private @Nullable CellState state;

    StateLabel() {
        getStyleClass().add("state");
        setMinWidth(USE_PREF_SIZE);
    }

    void show(CellShown shown) {
        CellState now = shown.state();
        String far = now == CellState.RUNNING && !shown.problem().isEmpty() ? ", " + shown.problem() : "";
        String words = now.words() + far + " " + StateSign.of(now);
        String from = shown.recorded() && !shown.results().isEmpty() ? "results of the file, " : "";
        if (now == state && (from + words).equals(getText())) {
            return;
        }
        CellState before = state;
        if (before != null) {
            getStyleClass().remove(StateSign.styleClass(before));
        }
        getStyleClass().add(StateSign.styleClass(now));
        setText(from + words);
        setAccessibleText("State: " + from + now.words());
        state = now;
    }
}

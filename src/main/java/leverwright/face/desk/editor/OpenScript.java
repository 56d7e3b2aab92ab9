package leverwright.face.desk.editor;

import java.util.List;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.input.ContextMenuEvent;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.run.result.CellState;
import org.fxmisc.richtext.model.PlainTextChange;
import org.reactfx.Subscription;

/** The parts of a script that is being shown: area, colours, completion, words, marks. */
final class OpenScript {

    private final CellView cell;
    private final SourceArea area = new SourceArea();
    private final SourceFrame frame;
    private final CellText text;
    private final Colouring colouring;
    private final Brackets brackets;
    private final Completion completion;
    private final ScriptWords words;
    private final FoundMarks found;
    private final InvalidationListener follow = changed -> markError();
    private final WeakInvalidationListener weakly = new WeakInvalidationListener(follow);
    private final Subscription typing;
    private final InvalidationListener moved = changed -> moved();
    private final InvalidationListener focus = changed -> focusMoved();
    private String typed = "";
    private boolean wasTyped;

    OpenScript(DeskModel model, CellView cell) {
        this.cell = cell;
        area.setAccessibleText(
                cell.title().get().isEmpty()
                        ? "Script"
                        : "Script: " + cell.title().get());
        area.setAccessibleHelp(
                "Tab indents; Escape, then Tab, or Ctrl+Tab goes on. Ctrl+Space completes, F1 explains.");
        ScriptKeys.on(area);
        text = new CellText(model, cell, area);
        colouring = new Colouring(area, true);
        brackets = new Brackets(area, colouring);
        words = new ScriptWords(area, cell.id(), model.advice(), colouring);
        completion = new Completion(area, cell.id(), model.advice(), words::hint);
        frame = new SourceFrame(area);
        found = new FoundMarks(model.finding(), cell, area, colouring);
        cell.shown().addListener(weakly);
        typing = area.multiPlainChanges().subscribe(this::typed);
        area.caretPositionProperty().addListener(moved);
        area.focusedProperty().addListener(focus);
        area.addEventFilter(ContextMenuEvent.CONTEXT_MENU_REQUESTED, event -> {
            if (area.getContextMenu() == null) {
                area.setContextMenu(menu());
            }
        });
        markError();
    }

    SourceFrame frame() {
        return frame;
    }

    SourceArea area() {
        return area;
    }

    private ContextMenu menu() {
        return new ContextMenu(
                item("Cut", area::cut),
                item("Copy", area::copy),
                item("Paste", area::paste),
                item("Select all", area::selectAll));
    }

    private static MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(event -> action.run());
        return item;
    }

    private void typed(List<PlainTextChange> changes) {
        if (area.isFocused() && changes.size() == 1 && !text.isTaking()) {
            typed = changes.get(0).getInserted();
            wasTyped = true;
            // Deleting within a line may leave the caret where it was: then nothing else tells of it.
            javafx.application.Platform.runLater(this::afterTyping);
        } else {
            completion.hide();
            words.hide();
        }
    }

    private void afterTyping() {
        if (wasTyped) {
            wasTyped = false;
            completion.typed(typed);
            words.typed(typed);
        }
    }

    private void moved() {
        if (!wasTyped) {
            words.moved();
        }
        Optional<List<SourceMark>> pair =
                area.isFocused() ? brackets.at(area.getCurrentParagraph(), area.getCaretColumn()) : Optional.empty();
        colouring.mark(Colouring.Mark.BRACKET, pair.orElse(List.of()));
    }

    private void focusMoved() {
        if (!area.isFocused()) {
            completion.hide();
            words.hide();
        }
        moved();
    }

    private void markError() {
        CellShown shown = cell.shown().get();
        boolean wrong = shown.state() == CellState.FAILED || shown.state() == CellState.REFUSED;
        if (wrong && !shown.faults().isEmpty()) {
            colouring.mark(Colouring.Mark.ERROR, ErrorMarks.of(shown.faults(), area));
        } else if (shown.state() != CellState.STALE && shown.state() != CellState.RUNNING) {
            colouring.mark(Colouring.Mark.ERROR, List.of());
        }
    }

    void dispose() {
        cell.shown().removeListener(weakly);
        typing.unsubscribe();
        area.caretPositionProperty().removeListener(moved);
        area.focusedProperty().removeListener(focus);
        completion.dispose();
        words.dispose();
        found.dispose();
        colouring.dispose();
        text.dispose();
        frame.dispose();
    }
}

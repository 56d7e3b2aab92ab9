package leverwright.face.desk.sheet;

import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.editor.ScriptEditor;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.workbook.session.Span;
import org.jspecify.annotations.Nullable;

/** A script at the left and what it comes to at the right on a warmer ground; in a narrow sheet one under the other. */
final class ScriptStrip extends Strip {

    /** Width of the sheet, in em of the text, from which on script and results stand side by side. */
    private static final double BROAD = 48;

    private static final double SCRIPT_SHARE = 0.47;
    private static final double EM = 13;

    /** How high the line over a script is, in em of the text. */
    private static final double HEAD = 1.8;

    private final DeskModel model;
    private final StripDeeds deeds;
    private final SavePlace places;
    private final Region headPlace = new Region();
    private final Region resultsPlace = new Region();
    private @Nullable StripHead head;
    private final ScriptEditor editor;
    private final VBox left = new VBox();
    private @Nullable ResultsPane results;
    private final InvalidationListener follow = changed -> refresh();
    private boolean inView = true;
    private boolean behind;

    /**
     * Shows a script.
     *
     * @param model the workbook
     * @param cell the script
     * @param deeds what is done with strips
     * @param places where results are saved
     * @param bare whether only the text is shown for now, to be written in at once; {@link #complete()} adds the rest
     */
    ScriptStrip(DeskModel model, CellView cell, StripDeeds deeds, SavePlace places, boolean bare) {
        super(cell);
        this.model = model;
        this.deeds = deeds;
        this.places = places;
        getStyleClass().add("script-strip");
        editor = new ScriptEditor(model, cell.id());
        left.getStyleClass().add("strip-script");
        headPlace.setMinHeight(HEAD * EM * model.looks().get().textScale());
        left.getChildren().addAll(headPlace, editor);
        resultsPlace.getStyleClass().add("strip-results");
        getChildren().addAll(left, resultsPlace);
        cell.title().addListener(follow);
        cell.shown().addListener(follow);
        cell.held().addListener(follow);
        if (bare) {
            editor.open();
            refresh();
        } else {
            complete();
        }
    }

    @Override
    boolean isWhole() {
        return head != null;
    }

    @Override
    void complete() {
        if (head == null) {
            StripHead made = new StripHead(model, cell(), deeds);
            ResultsPane shown = new ResultsPane(model, cell(), places, this::go);
            head = made;
            results = shown;
            left.getChildren().set(0, made);
            getChildren().set(1, shown);
            refresh();
        }
    }

    private Region right() {
        ResultsPane shown = results;
        return shown == null ? resultsPlace : shown;
    }

    @Override
    void seen(boolean now) {
        inView = now;
        if (now && behind) {
            refresh();
        }
    }

    private void refresh() {
        // Asking for the value makes the property tell of its next change.
        CellShown shown = cell().shown().get();
        Optional<CellShown> held = cell().held().get();
        behind = !inView;
        StripHead line = head;
        ResultsPane pane = results;
        if (behind || line == null || pane == null) {
            return;
        }
        line.showTitle();
        line.showState(shown);
        pane.show(shown, held);
        String title = cell().title().get();
        setAccessibleText(title.isEmpty() ? "Script " + cell().id() : "Script " + title);
    }

    private void go(Span span) {
        focusAt(new Caret(cell().id(), offset(cell().text().get(), span)));
    }

    /** Returns the offset at which a span begins. */
    static int offset(String text, Span span) {
        int start = 0;
        for (int line = 1; line < span.line(); line++) {
            int next = text.indexOf('\n', start);
            if (next < 0) {
                return text.length();
            }
            start = next + 1;
        }
        return Math.min(text.length(), start + span.column() - 1);
    }

    @Override
    void focusAt(Caret caret) {
        editor.focusAt(caret);
    }

    private boolean isBroad(double width) {
        return width >= BROAD * EM * model.looks().get().textScale();
    }

    private double leftWidth(double width) {
        return snapSizeX(isBroad(width) ? width * SCRIPT_SHARE : width);
    }

    private double rightWidth(double width) {
        return isBroad(width) ? width - leftWidth(width) : width;
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = width > 0 ? width : getWidth();
        double one = snapSizeY(left.prefHeight(leftWidth(wide)));
        double two = snapSizeY(right().prefHeight(rightWidth(wide)));
        double rule = snappedBottomInset();
        return (isBroad(wide) ? Math.max(one, two) : one + two) + rule;
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight() - snappedBottomInset();
        if (isBroad(width)) {
            double middle = leftWidth(width);
            left.resizeRelocate(0, 0, middle, height);
            right().resizeRelocate(middle, 0, width - middle, height);
        } else {
            double one = snapSizeY(left.prefHeight(width));
            left.resizeRelocate(0, 0, width, one);
            right().resizeRelocate(0, one, width, Math.max(0, height - one));
        }
    }

    @Override
    void dispose() {
        cell().title().removeListener(follow);
        cell().shown().removeListener(follow);
        cell().held().removeListener(follow);
        editor.dispose();
        ResultsPane shown = results;
        if (shown != null) {
            shown.dispose();
        }
    }
}

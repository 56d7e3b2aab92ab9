package leverwright.face.desk.editor;

import javafx.beans.InvalidationListener;
import javafx.event.Event;
import javafx.geometry.Orientation;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import org.fxmisc.flowless.VirtualizedScrollPane;
import org.fxmisc.richtext.model.Paragraph;
import org.fxmisc.wellbehaved.event.EventPattern;
import org.fxmisc.wellbehaved.event.InputMap;
import org.fxmisc.wellbehaved.event.Nodes;

/**
 * A source area as tall as its text, up to a limit from which on it scrolls by itself.
 *
 * <p>Tab indents. Ctrl+Tab goes to the next control and Ctrl+Shift+Tab to the one before; so does Tab right after Escape.
 * Keys of the window, such as those of undo, pass through.
 */
final class SourceFrame extends Region {

    /** The most lines that are shown at once; a longer text scrolls in its strip. */
    static final int MOST_LINES = 40;

    private static final KeyCombination[] KEYS_OF_THE_WINDOW = {
        KeyCombination.keyCombination("Shortcut+Z"),
        KeyCombination.keyCombination("Shortcut+Shift+Z"),
        KeyCombination.keyCombination("Shortcut+Y"),
        KeyCombination.keyCombination("Shortcut+Shift+UP"),
        KeyCombination.keyCombination("Shortcut+Shift+DOWN"),
        KeyCombination.keyCombination("Shortcut+Shift+DELETE"),
    };

    private final SourceArea area;
    private final VirtualizedScrollPane<SourceArea> pane;
    private final SourceHeight measure = new SourceHeight();
    private final InvalidationListener grow = changed -> requestLayout();
    private boolean leaving;

    SourceFrame(SourceArea area) {
        this.area = area;
        pane = new VirtualizedScrollPane<>(area);
        getStyleClass().add("source-frame");
        getChildren().addAll(measure, pane);
        area.getParagraphs().sizeProperty().addListener(grow);
        area.totalHeightEstimateProperty().addListener(grow);
        area.setWrapText(true);
        area.setAutoHeight(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        area.addEventFilter(ScrollEvent.SCROLL, this::scroll);
        for (KeyCombination keys : KEYS_OF_THE_WINDOW) {
            Nodes.addInputMap(area, InputMap.ignore(EventPattern.keyPressed(keys)));
        }
        area.addEventFilter(KeyEvent.KEY_PRESSED, this::watchLeaving);
        area.focusedProperty().addListener(changed -> leaving = false);
        Nodes.addInputMap(
                area,
                InputMap.ignore(EventPattern.keyPressed().onlyIf(key -> leaving && key.getCode() == KeyCode.TAB)));
    }

    SourceArea area() {
        return area;
    }

    private void watchLeaving(KeyEvent key) {
        if (key.getCode() == KeyCode.TAB && key.isControlDown()) {
            key.consume();
            leaving = true;
            area.fireEvent(
                    new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.TAB, key.isShiftDown(), false, false, false));
            return;
        }
        if (key.getCode() == KeyCode.ESCAPE) {
            leaving = true;
        } else if (key.getCode() != KeyCode.TAB && key.getCode() != KeyCode.SHIFT) {
            leaving = false;
        }
    }

    /** Lets the sheet scroll wherever this text cannot. */
    private void scroll(ScrollEvent event) {
        Parent sheet = getParent();
        if (Math.abs(event.getDeltaX()) > Math.abs(event.getDeltaY()) || sheet == null || scrollsItself(event)) {
            return;
        }
        event.consume();
        Event.fireEvent(sheet, event.copyFor(sheet, sheet));
    }

    private boolean scrollsItself(ScrollEvent event) {
        if (!isLong()) {
            return false;
        }
        double at = area.estimatedScrollYProperty().getValue();
        double most = area.totalHeightEstimateProperty().getOrElse(0.0) - area.getViewportHeight();
        return event.getDeltaY() > 0 ? at > 0.5 : at < most - 0.5;
    }

    private Iterable<String> lines() {
        return () -> area.getParagraphs().stream().map(Paragraph::getText).iterator();
    }

    private boolean isLong() {
        return area.getParagraphs().size() > MOST_LINES;
    }

    @Override
    public Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefHeight(double width) {
        double wide = (width > 0 ? width : getWidth()) - snappedLeftInset() - snappedRightInset();
        double inside = wide - area.snappedLeftInset() - area.snappedRightInset();
        double text = isLong() ? MOST_LINES * measure.row() : measure.of(lines(), inside, Integer.MAX_VALUE);
        text += area.snappedTopInset() + area.snappedBottomInset();
        return snapSizeY(text + snappedTopInset() + snappedBottomInset());
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    protected void layoutChildren() {
        pane.setVbarPolicy(isLong() ? ScrollPane.ScrollBarPolicy.AS_NEEDED : ScrollPane.ScrollBarPolicy.NEVER);
        layoutInArea(
                pane,
                snappedLeftInset(),
                snappedTopInset(),
                getWidth() - snappedLeftInset() - snappedRightInset(),
                getHeight() - snappedTopInset() - snappedBottomInset(),
                0,
                javafx.geometry.HPos.LEFT,
                javafx.geometry.VPos.TOP);
    }

    void dispose() {
        area.dispose();
    }
}

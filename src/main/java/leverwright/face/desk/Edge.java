package leverwright.face.desk;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import leverwright.face.desk.style.Hint;
import org.jspecify.annotations.Nullable;

/** The column at the left: the outline, or for a while something to read beside the sheet. */
final class Edge extends BorderPane {

    /** The widths of the column in em of its text. */
    static final double NARROW = 15;

    static final double WIDE = 29;

    private @Nullable Node outline;
    private final Label heading = new Label();
    private final Button back = new Button("Outline");
    private boolean reading;
    private boolean wide;

    Edge() {
        getStyleClass().add("edge");
        setMinWidth(0);
    }

    /** Begins to show the outline; until then the column is empty. */
    void begin(Node filled) {
        outline = filled;
        heading.getStyleClass().add("heading");
        heading.setMinWidth(0);
        back.getStyleClass().add("plain");
        Hint.on(back, "Back to the outline (Escape)");
        back.setOnAction(event -> showOutline());
        back.managedProperty().bind(back.visibleProperty());
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox row = new HBox(heading, space, back);
        row.getStyleClass().add("heading-row");
        setTop(row);
        addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE && reading) {
                showOutline();
                event.consume();
            }
        });
        showOutline();
    }

    boolean isReading() {
        return reading;
    }

    void showOutline() {
        Node filled = outline;
        if (filled != null) {
            show("In this workbook", filled, false, false);
        }
    }

    /** Shows something to read in place of the outline. */
    void show(String title, Node pane) {
        show(title, pane, true, true);
        pane.requestFocus();
    }

    /** Shows something to read in place of the outline that needs no more room than that, so that the sheet stays as it is. */
    void showNarrow(String title, Node pane) {
        show(title, pane, true, false);
        pane.requestFocus();
    }

    private void show(String title, Node pane, boolean toRead, boolean asWide) {
        reading = toRead;
        wide = asWide;
        heading.setText(title.toUpperCase(java.util.Locale.ROOT));
        heading.setAccessibleText(title);
        back.setVisible(toRead);
        setCenter(pane);
        widthWanted.run();
    }

    private Runnable widthWanted = () -> {};

    /** Says what happens when another width is wanted. */
    void whenWidthChanges(Runnable action) {
        widthWanted = action;
    }

    /** The width that what is shown needs, in em. */
    double wantedEm() {
        return wide ? WIDE : NARROW;
    }
}

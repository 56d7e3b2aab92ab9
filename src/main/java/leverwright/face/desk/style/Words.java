package leverwright.face.desk.style;

import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Texts to read in the column at the left. */
public final class Words {

    private Words() {}

    /**
     * Returns texts one below the other, to be scrolled.
     *
     * @param name what they are, for assistive technology
     * @param parts from the top
     */
    public static ScrollPane pane(String name, List<? extends Node> parts) {
        VBox column = new VBox();
        column.getStyleClass().add("words");
        column.getChildren().addAll(parts);
        ScrollPane pane = new ScrollPane(column);
        pane.setFitToWidth(true);
        pane.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        pane.setAccessibleRole(AccessibleRole.SCROLL_PANE);
        pane.setAccessibleText(name);
        return pane;
    }

    /**
     * Returns a text that takes as many lines as it needs.
     *
     * @param text the words
     * @param styles its style classes
     */
    public static Label paragraph(String text, String... styles) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }

    /** Returns a term and what is said about it. */
    public static VBox entry(String term, String text) {
        VBox entry = new VBox(paragraph(term, "term"), paragraph(text));
        entry.getStyleClass().add("entry");
        entry.setAccessibleText(term + ": " + text);
        return entry;
    }
}

package leverwright.face.desk.editor;

import java.util.List;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;
import javafx.stage.Screen;
import org.jspecify.annotations.Nullable;

/** A small leaf that floats beside a place in a text, dressed as the window is; the focus stays in the text. */
final class Floating {

    private static final double GAP = 3;

    private final boolean hidesItself;
    private final VBox leaf = new VBox();

    /** Made when the leaf is first shown: a window of its own takes long to make, and most scripts are only read. */
    private @Nullable Popup made;

    Floating(String style, boolean hidesItself) {
        this.hidesItself = hidesItself;
        leaf.getStyleClass().add(style);
    }

    private Popup popup() {
        Popup popup = made;
        if (popup == null) {
            popup = new Popup();
            popup.getContent().add(new VBox(leaf));
            popup.setAutoFix(true);
            popup.setAutoHide(hidesItself);
            popup.setHideOnEscape(false);
            popup.setConsumeAutoHidingEvents(false);
            made = popup;
        }
        return popup;
    }

    VBox leaf() {
        return leaf;
    }

    boolean isShowing() {
        return made != null && made.isShowing();
    }

    void hide() {
        if (made != null) {
            made.hide();
        }
    }

    /**
     * Shows the leaf.
     *
     * @param owner the area it belongs to
     * @param place the place on the screen
     * @param above whether it is to stand above the place where there is room
     */
    void show(Node owner, Bounds place, boolean above) {
        Scene scene = owner.getScene();
        if (scene == null || scene.getWindow() == null || !scene.getWindow().isShowing()) {
            return;
        }
        Popup popup = popup();
        dress((Parent) popup.getContent().get(0), scene.getRoot());
        if (!popup.isShowing()) {
            popup.show(owner, place.getMinX(), place.getMaxY() + GAP);
        }
        leaf.applyCss();
        leaf.layout();
        double height = leaf.prefHeight(-1);
        Rectangle2D screen = Screen.getScreensForRectangle(place.getMinX(), place.getMinY(), 1, 1).stream()
                .findFirst()
                .orElse(Screen.getPrimary())
                .getVisualBounds();
        boolean roomAbove = place.getMinY() - height - GAP >= screen.getMinY();
        boolean roomBelow = place.getMaxY() + height + GAP <= screen.getMaxY();
        boolean up = above ? roomAbove : !roomBelow && roomAbove;
        popup.setAnchorX(place.getMinX());
        popup.setAnchorY(up ? place.getMinY() - height - GAP : place.getMaxY() + GAP);
    }

    private static void dress(Parent root, Parent window) {
        root.getStyleClass().setAll("floating");
        root.getStyleClass().addAll(window.getStyleClass());
        root.setStyle(window.getStyle());
    }

    static Label label(String text, String... styles) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.getStyleClass().addAll(styles);
        return label;
    }

    void say(List<? extends Node> parts) {
        leaf.getChildren().setAll(parts);
    }
}

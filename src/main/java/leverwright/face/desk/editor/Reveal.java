package leverwright.face.desk.editor;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ScrollPane;

/** Brings a place into view by scrolling the sheet in which it lies. */
final class Reveal {

    private static final double MARGIN = 40;

    private Reveal() {}

    /**
     * Scrolls as little as needed.
     *
     * @param node the node in which the place lies
     * @param place the place in the node's own coordinates
     */
    static void in(Node node, Bounds place) {
        for (Parent each = node.getParent(); each != null; each = each.getParent()) {
            if (each instanceof ScrollPane pane && pane.getContent() != null) {
                scroll(pane, node, place);
                return;
            }
        }
    }

    private static void scroll(ScrollPane pane, Node node, Bounds place) {
        Node content = pane.getContent();
        Bounds there = content.sceneToLocal(node.localToScene(place));
        double view = pane.getViewportBounds().getHeight();
        double free = content.getLayoutBounds().getHeight() - view;
        if (there == null || free <= 0) {
            return;
        }
        double top = pane.getVvalue() * free;
        double wanted = top;
        if (there.getMaxY() + MARGIN > top + view) {
            wanted = there.getMaxY() + MARGIN - view;
        }
        if (there.getMinY() - MARGIN < wanted) {
            wanted = there.getMinY() - MARGIN;
        }
        pane.setVvalue(Math.max(0, Math.min(1, wanted / free)));
    }
}

package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import org.jspecify.annotations.Nullable;

/** Goes by keyboard from part to part of a window. */
final class Parts {

    private Parts() {}

    /** Gives the focus to the first control in a part that takes it; returns whether there was one. */
    static boolean focusIn(Node part) {
        Node first = firstIn(part);
        if (first != null) {
            first.requestFocus();
        }
        return first != null;
    }

    private static @Nullable Node firstIn(Node node) {
        if (!node.isVisible() || node.isDisabled()) {
            return null;
        }
        if (node.isFocusTraversable()) {
            return node;
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) {
                Node found = firstIn(child);
                if (found != null) {
                    return found;
                }
            }
        }
        return null;
    }

    /** Goes to the part after the one that has the focus, round and round. */
    static void next(@Nullable Scene scene, List<Node> parts) {
        if (scene == null) {
            return;
        }
        int now = -1;
        for (int i = 0; i < parts.size(); i++) {
            now = holdsFocus(scene, parts.get(i)) ? i : now;
        }
        for (int step = 1; step <= parts.size(); step++) {
            Node part = parts.get((now + step) % parts.size());
            if (part.getScene() == scene && focusIn(part)) {
                return;
            }
        }
    }

    /** Goes to the next control of the whole window, or to the one before, also out of a text where Tab indents. */
    static void step(Scene scene, boolean forward) {
        List<Node> controls = new ArrayList<>();
        gather(scene.getRoot(), controls);
        int now = controls.indexOf(scene.getFocusOwner());
        int count = controls.size();
        if (count > 0) {
            controls.get((now + (forward ? 1 : count - 1) + count) % count).requestFocus();
        }
    }

    private static void gather(Node node, List<Node> controls) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        if (node.isFocusTraversable()) {
            controls.add(node);
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> gather(child, controls));
        }
    }

    private static boolean holdsFocus(Scene scene, Node part) {
        for (Node node = scene.getFocusOwner(); node != null; node = node.getParent()) {
            if (node == part) {
                return true;
            }
        }
        return false;
    }
}

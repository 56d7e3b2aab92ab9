package leverwright.face.desk.style;

import javafx.scene.Node;
import javafx.scene.control.Tooltip;
import javafx.scene.input.MouseEvent;
import org.jspecify.annotations.Nullable;

/**
 * Words that show when the mouse rests on a node. The little window they need is made when the mouse first comes there, since
 * making it takes long and most are never seen.
 */
public final class Hint {

    private Hint() {}

    /**
     * Gives a node words to show, in place of those it had; assistive technology takes them as help.
     *
     * @param node the node
     * @param words what to show
     */
    public static void on(Node node, String words) {
        node.setAccessibleHelp(words);
        if (node.getProperties().get(Hint.class) instanceof Holder holder) {
            holder.say(words);
        } else {
            Holder holder = new Holder(words);
            node.getProperties().put(Hint.class, holder);
            node.addEventFilter(MouseEvent.MOUSE_ENTERED, event -> holder.showOver(node));
        }
    }

    /** Returns the words of a node; empty when it has none. */
    public static String of(Node node) {
        return node.getProperties().get(Hint.class) instanceof Holder holder ? holder.words : "";
    }

    private static final class Holder {
        private String words;
        private @Nullable Tooltip made;

        Holder(String words) {
            this.words = words;
        }

        void say(String now) {
            words = now;
            if (made != null) {
                made.setText(now);
            }
        }

        void showOver(Node node) {
            if (made == null) {
                made = new Tooltip(words);
                Tooltip.install(node, made);
            }
        }
    }
}

package leverwright.face.desk.sheet;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** What a kind of result looks like. One body shows one result after another, so that a turning dial changes only values. */
interface ResultBody {

    /** Returns the node to be shown. */
    Node node();

    /** Returns whether this body can show a result. */
    boolean takes(Result result);

    /**
     * Shows a result.
     *
     * @param now the result; one that {@link #takes} says yes to
     * @param before what was shown at the held setting, or null when none is held or it is of another kind
     */
    void show(Result now, @Nullable Result before);

    /** Returns what can be done with the result. */
    List<MenuItem> tools(Telling telling);

    /** Returns the words that stand over the result. */
    default String title(Result now) {
        return now.title();
    }

    /** Returns words of second rank at the end of the title line. */
    default String aside(Result now) {
        return "";
    }

    /** Stops following the desk. */
    default void dispose() {}

    /** Takes words about what was done with a result. */
    interface Telling {
        void tell(String words);
    }

    /** Returns an entry of a menu. */
    static MenuItem item(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setOnAction(event -> action.run());
        return item;
    }
}

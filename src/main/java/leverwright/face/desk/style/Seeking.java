package leverwright.face.desk.style;

import java.util.List;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** A field to type in and the list of what was found below it, used together without leaving the field. */
public final class Seeking {

    private Seeking() {}

    /**
     * Joins a field and a list: up and down in the field move the choice, Enter in either takes it.
     *
     * @param sought where one types
     * @param found what was found
     * @param take takes what is chosen
     */
    public static void join(TextField sought, ListView<?> found, Runnable take) {
        sought.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            int by = event.getCode() == KeyCode.DOWN ? 1 : event.getCode() == KeyCode.UP ? -1 : 0;
            if (by != 0) {
                move(found, by);
                event.consume();
            } else {
                takeOnEnter(event, take);
            }
        });
        found.addEventHandler(KeyEvent.KEY_PRESSED, event -> takeOnEnter(event, take));
    }

    private static void move(ListView<?> found, int by) {
        int to = found.getSelectionModel().getSelectedIndex() + by;
        if (to >= 0 && to < found.getItems().size()) {
            found.getSelectionModel().select(to);
            found.scrollTo(Math.max(0, to - 1));
        }
    }

    private static void takeOnEnter(KeyEvent event, Runnable take) {
        if (event.getCode() == KeyCode.ENTER) {
            take.run();
            event.consume();
        }
    }

    /**
     * Shows what was found, with the first of it chosen.
     *
     * @param found the list
     * @param items what was found, the best first
     */
    public static <T> void show(ListView<T> found, List<? extends T> items) {
        found.getItems().setAll(items);
        found.getSelectionModel().selectFirst();
        found.scrollTo(0);
    }
}

package leverwright.face.desk.sheet;

import java.util.List;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The notes of a result: those that the reader has not seen yet stand open, the others unfold. */
final class NotesBox extends VBox {

    private final VBox open = new VBox();
    private final VBox folded = new VBox();
    private final ToggleButton unfold = new ToggleButton();
    private List<String> fresh = List.of();
    private List<String> known = List.of();

    NotesBox() {
        getStyleClass().add("result-notes");
        open.getStyleClass().add("result-notes");
        folded.getStyleClass().add("result-notes");
        unfold.getStyleClass().addAll("plain", "small", "unfold-notes");
        folded.visibleProperty().bind(unfold.selectedProperty());
        folded.managedProperty().bind(folded.visibleProperty());
        managedProperty().bind(visibleProperty());
        unfold.managedProperty().bind(unfold.visibleProperty());
        getChildren().addAll(open, unfold, folded);
    }

    /**
     * Shows notes.
     *
     * @param all the notes of the result
     * @param said those that the reader has seen above
     */
    void show(List<String> all, Set<String> said) {
        List<String> now = all.stream().filter(note -> !said.contains(note)).toList();
        List<String> before = all.stream().filter(said::contains).toList();
        setVisible(!all.isEmpty());
        if (now.equals(fresh) && before.equals(known)) {
            return;
        }
        fresh = now;
        known = before;
        fill(open, now);
        fill(folded, before);
        String count = before.size() == 1 ? "1 note" : before.size() + " notes";
        unfold.setText(now.isEmpty() ? count : count + " more, as above");
        unfold.setVisible(!before.isEmpty());
    }

    private static void fill(VBox box, List<String> notes) {
        box.getChildren().clear();
        for (String words : notes) {
            Label note = new Label(words);
            note.getStyleClass().add("result-note");
            note.setWrapText(true);
            note.setMinHeight(Region.USE_PREF_SIZE);
            box.getChildren().add(note);
        }
    }
}

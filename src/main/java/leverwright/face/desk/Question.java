package leverwright.face.desk;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.jspecify.annotations.Nullable;

/** One question over the window; nothing else there can be used until it is answered. Escape gives the last answer. */
final class Question {

    /**
     * One answer.
     *
     * @param words what the button says
     * @param then what follows
     */
    record Answer(String words, Runnable then) {}

    private final StackPane ground;
    private final Node behind;

    /**
     * Prepares questions over a window.
     *
     * @param over the window's root
     * @param behind what lies in it and cannot be used meanwhile
     */
    Question(StackPane over, Node behind) {
        ground = over;
        this.behind = behind;
    }

    boolean isAsking() {
        return ground.getChildren().size() > 1;
    }

    void ask(String title, String words, List<Answer> answers) {
        if (isAsking()) {
            return;
        }
        @Nullable
        Node before = ground.getScene() == null ? null : ground.getScene().getFocusOwner();
        Label heading = new Label(title);
        heading.getStyleClass().add("title");
        Label text = new Label(words);
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        HBox row = new HBox();
        row.getStyleClass().add("answers");
        row.setAlignment(Pos.CENTER_RIGHT);
        VBox box = new VBox(heading, text, row);
        box.getStyleClass().add("question");
        box.setMaxHeight(Region.USE_PREF_SIZE);
        box.setAccessibleRole(AccessibleRole.DIALOG);
        box.setAccessibleText(title + ". " + words);
        StackPane shade = new StackPane(box);
        shade.getStyleClass().add("question-ground");
        for (Answer answer : answers) {
            Button button = new Button(answer.words());
            button.setOnAction(event -> {
                close(shade, before);
                answer.then().run();
            });
            button.setDefaultButton(row.getChildren().isEmpty());
            if (row.getChildren().isEmpty()) {
                button.getStyleClass().add("primary");
            }
            row.getChildren().add(button);
        }
        shade.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                event.consume();
                close(shade, before);
                answers.get(answers.size() - 1).then().run();
            }
        });
        behind.setDisable(true);
        ground.getChildren().add(shade);
        row.getChildren().get(0).requestFocus();
    }

    private void close(Node shade, @Nullable Node before) {
        ground.getChildren().remove(shade);
        behind.setDisable(false);
        if (before != null) {
            before.requestFocus();
        }
    }
}

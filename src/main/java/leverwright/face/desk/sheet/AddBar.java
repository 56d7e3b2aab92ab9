package leverwright.face.desk.sheet;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;

/** Two buttons that add a script or a note. */
final class AddBar extends HBox {

    AddBar(Consumer<Boolean> add) {
        getStyleClass().add("add-bar");
        getChildren().addAll(button("+ script", true, add), button("+ note", false, add));
    }

    private static Button button(String words, boolean script, Consumer<Boolean> add) {
        Button button = new Button(words);
        button.getStyleClass().addAll("plain", "small");
        button.setAccessibleText(script ? "New script here" : "New note here");
        button.setOnAction(event -> add.accept(script));
        return button;
    }
}

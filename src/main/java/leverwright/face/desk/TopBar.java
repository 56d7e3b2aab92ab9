package leverwright.face.desk;

import javafx.beans.binding.Bindings;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.OverrunStyle;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.style.Hint;

/** What stands over the sheet: what the workbook is called, who wrote it, and what is done with the whole of it. */
final class TopBar extends HBox {

    private final ToggleButton beforeAfter = new ToggleButton("Before / after");
    private final Button swap = new Button("Swap");

    TopBar(DeskModel model, Runnable publish, Runnable about) {
        getStyleClass().add("top-bar");
        setAccessibleRole(AccessibleRole.TOOL_BAR);
        Label title = new Label();
        title.getStyleClass().add("workbook-title");
        title.textProperty().bind(Bindings.createStringBinding(() -> titleOf(model), model.workbook()));
        title.setMinWidth(60);
        Label author = new Label();
        author.getStyleClass().add("author");
        author.textProperty()
                .bind(Bindings.createStringBinding(() -> model.workbook().get().author(), model.workbook()));
        author.setTextOverrun(OverrunStyle.ELLIPSIS);
        author.setMinWidth(0);
        Button words = new Button("…");
        words.getStyleClass().add("plain");
        words.setAccessibleText("Title, author and purpose of the workbook");
        Hint.on(words, "Title, author and purpose");
        words.setOnAction(event -> about.run());
        words.setMinWidth(USE_PREF_SIZE);
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);

        Hint.on(beforeAfter, "Hold what is shown now, to see it beside what comes");
        beforeAfter.setOnAction(event -> {
            if (beforeAfter.isSelected()) {
                model.hold();
            } else {
                model.letGo();
            }
        });
        Hint.on(swap, "Go to the held setting, and hold the one of now");
        swap.setOnAction(event -> model.swapHeld());
        swap.managedProperty().bind(swap.visibleProperty());
        swap.visibleProperty()
                .bind(Bindings.createBooleanBinding(() -> model.held().get().isPresent(), model.held()));
        model.held().addListener((property, before, now) -> beforeAfter.setSelected(now.isPresent()));
        Button page = new Button("Publish");
        Hint.on(page, "Write the workbook as one page to read, print and check");
        page.setOnAction(event -> publish.run());
        Button top = new Button("Compute from the top");
        top.getStyleClass().add("primary");
        Hint.on(top, "Run every script anew, from the first to the last");
        top.setOnAction(event -> model.computeFromTheTop());
        for (Region button : new Region[] {beforeAfter, swap, page, top}) {
            button.setMinWidth(USE_PREF_SIZE);
        }
        getChildren().addAll(title, author, words, space, beforeAfter, swap, page, top);
    }

    static String titleOf(DeskModel model) {
        String title = model.workbook().get().title();
        return title.isBlank() ? "Untitled" : title;
    }
}

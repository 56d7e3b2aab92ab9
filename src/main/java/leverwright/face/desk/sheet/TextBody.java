package leverwright.face.desk.sheet;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SelectionMode;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import leverwright.run.result.Result;
import leverwright.run.result.TextResult;
import org.jspecify.annotations.Nullable;

/** Text as it was printed; from some lines on it scrolls by itself. */
final class TextBody implements ResultBody {

    private static final int MOST_LINES = 18;
    private static final double LINE_EM = 1.45;

    private final ResultHost host;
    private final VBox all = new VBox();
    private final Label left = new Label();
    private @Nullable Node content;
    private @Nullable TextResult shown;

    TextBody(ResultHost host) {
        this.host = host;
        all.getStyleClass().add("printed");
        left.getStyleClass().addAll("quiet", "small");
        left.setWrapText(true);
        left.managedProperty().bind(left.visibleProperty());
        all.getChildren().add(left);
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof TextResult;
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        TextResult now = (TextResult) result;
        if (now.equals(shown)) {
            return;
        }
        shown = now;
        List<String> lines = now.text().stripTrailing().lines().toList();
        if (lines.size() <= MOST_LINES) {
            setLabel(String.join("\n", lines));
        } else {
            setList(lines);
        }
        left.setText(now.leftOut() + " more characters are left out.");
        left.setVisible(now.leftOut() > 0);
    }

    private void setLabel(String words) {
        Label label;
        if (content instanceof Label before) {
            label = before;
        } else {
            label = new Label();
            label.getStyleClass().add("code");
            label.setWrapText(true);
            label.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
            put(label);
        }
        label.setText(words);
        label.setAccessibleText(words);
    }

    @SuppressWarnings("unchecked")
    private void setList(List<String> lines) {
        ListView<String> list;
        if (content instanceof ListView<?> before) {
            list = (ListView<String>) before;
        } else {
            list = new ListView<>();
            list.getStyleClass().addAll("code", "own-scroll");
            list.setAccessibleText("Printed text");
            list.getSelectionModel().setSelectionMode(SelectionMode.MULTIPLE);
            list.setOnKeyPressed(event -> {
                if (event.isShortcutDown() && event.getCode() == KeyCode.C) {
                    host.copy(String.join("\n", list.getSelectionModel().getSelectedItems()));
                    event.consume();
                }
            });
            double line = 13 * host.model().looks().get().textScale() * LINE_EM;
            list.setFixedCellSize(Math.ceil(line));
            list.setPrefHeight(Math.ceil(line) * MOST_LINES + 2);
            list.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
            put(list);
        }
        list.getItems().setAll(lines);
    }

    private void put(Node next) {
        if (content != null) {
            all.getChildren().remove(content);
        }
        content = next;
        all.getChildren().add(0, next);
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        return List.of(ResultBody.item("Copy as text", () -> {
            TextResult now = shown;
            if (now != null) {
                host.copy(ResultFiles.text(now));
                telling.tell("Copied.");
            }
        }));
    }
}

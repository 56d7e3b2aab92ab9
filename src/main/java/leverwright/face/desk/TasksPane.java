package leverwright.face.desk;

import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.editor.ApiHelp;
import leverwright.face.desk.style.Seeking;
import leverwright.face.desk.style.Words;
import org.jspecify.annotations.Nullable;

/** What one may want to compute, to be searched in plain words; each with a line of script that does it. */
final class TasksPane extends BorderPane {

    private final TextField sought = new TextField();
    private final ListView<ApiHelp.Task> found = new ListView<>();
    private final Consumer<ApiHelp.Task> insert;

    TasksPane(Consumer<ApiHelp.Task> insert) {
        this.insert = insert;
        getStyleClass().add("tasks");
        sought.setPromptText("for example: load on the hip");
        sought.setAccessibleText("Search what to compute");
        sought.textProperty().addListener((property, before, now) -> search());
        found.getStyleClass().add("task-list");
        found.setAccessibleText("What can be computed");
        found.setCellFactory(list -> new Entry(list));
        found.setPlaceholder(new Label("Nothing fits; try other words."));
        Seeking.join(sought, found, this::insertChosen);
        found.setOnMouseClicked(event -> {
            if (event.getClickCount() == 2) {
                insertChosen();
            }
        });
        Button put = new Button("Put the line into the sheet");
        put.getStyleClass().add("primary");
        put.disableProperty()
                .bind(found.getSelectionModel().selectedItemProperty().isNull());
        put.setOnAction(event -> insertChosen());
        VBox top = new VBox(sought);
        top.getStyleClass().add("task-search");
        HBox foot = new HBox(put);
        foot.getStyleClass().add("task-foot");
        setTop(top);
        setCenter(found);
        setBottom(foot);
        search();
    }

    private void search() {
        Seeking.show(found, ApiHelp.find(sought.getText()));
    }

    private void insertChosen() {
        ApiHelp.Task task = found.getSelectionModel().getSelectedItem();
        if (task != null) {
            insert.accept(task);
        }
    }

    @Override
    public void requestFocus() {
        sought.requestFocus();
    }

    private static final class Entry extends ListCell<ApiHelp.Task> {
        private final Label title = Words.paragraph("", "title");
        private final Label doc = Words.paragraph("", "quiet");
        private final Label line = Words.paragraph("", "line-of-script");
        private final VBox all = new VBox(title, doc, line);

        Entry(ListView<ApiHelp.Task> list) {
            all.getStyleClass().add("entry");
            line.setMaxWidth(Double.MAX_VALUE);
            all.setMinHeight(Region.USE_PREF_SIZE);
            prefWidthProperty().bind(list.widthProperty().subtract(20));
        }

        @Override
        protected void updateItem(ApiHelp.@Nullable Task item, boolean empty) {
            super.updateItem(item, empty);
            if (empty || item == null) {
                setGraphic(null);
                return;
            }
            title.setText(item.title());
            doc.setText(item.doc());
            line.setText(item.line());
            setGraphic(all);
            setAccessibleText(item.title() + ": " + item.doc());
        }
    }
}

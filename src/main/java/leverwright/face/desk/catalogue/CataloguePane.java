package leverwright.face.desk.catalogue;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.editor.ApiHelp;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.style.Seeking;
import leverwright.face.desk.style.Words;
import leverwright.workbook.scenario.ExerciseShelf;
import leverwright.workbook.scenario.LifterLines;
import org.jspecify.annotations.Nullable;

/**
 * The catalogue: a list found by family and words, and behind each name a page on which the exercise is tried and put into the
 * sheet. What it is computed from is loaded when the pane is first shown, off the window's thread.
 */
public final class CataloguePane extends BorderPane {
    private static final String ALL = "every family";

    private final DeskModel model;
    private final Consumer<String> insert;
    private final TextField sought = new TextField();
    private final ComboBox<String> family = new ComboBox<>();
    private final ListView<ExerciseShelf.Entry> found = new ListView<>();
    private final VBox top;
    private @Nullable ExercisePage page;
    private boolean filled;

    /**
     * Makes the pane.
     *
     * @param model the workbook that lines are put into
     * @param insert puts lines into the sheet
     */
    public CataloguePane(DeskModel model, Consumer<String> insert) {
        this.model = model;
        this.insert = insert;
        getStyleClass().addAll("tasks", "catalogue");
        sought.setPromptText("for example: hamstrings, cable, front squat");
        sought.setAccessibleText("Search the exercises");
        sought.textProperty().addListener((property, before, now) -> search());
        family.getItems().add(ALL);
        family.setValue(ALL);
        family.setAccessibleText("Family of exercises");
        family.setMaxWidth(Double.MAX_VALUE);
        family.valueProperty().addListener((property, before, now) -> search());
        found.getStyleClass().add("task-list");
        found.setAccessibleText("Exercises");
        found.setCellFactory(list -> new Row(list));
        found.setPlaceholder(new Label("Reading the catalogue…"));
        Seeking.join(sought, found, this::openChosen);
        found.setOnMouseClicked(event -> openChosen());
        top = new VBox(sought, family);
        top.getStyleClass().addAll("task-search", "catalogue-search");
        addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.ESCAPE && page != null && !(event.getTarget() instanceof TextField)) {
                showList();
                event.consume();
            }
        });
        sceneProperty().addListener((property, before, now) -> {
            if (now == null) {
                showList();
            }
        });
        showList();
        Trial.after(ExerciseShelf::entries, entries -> fill());
    }

    private void fill() {
        filled = true;
        family.getItems().addAll(ExerciseSearch.families());
        found.setPlaceholder(new Label("Nothing fits; try other words or every family."));
        search();
    }

    private void search() {
        if (filled) {
            String in = ALL.equals(family.getValue()) ? "" : family.getValue();
            Seeking.show(found, ExerciseSearch.find(in, sought.getText()));
        }
    }

    private void openChosen() {
        ExerciseShelf.Entry entry = found.getSelectionModel().getSelectedItem();
        if (entry != null) {
            open(entry);
        }
    }

    private void open(ExerciseShelf.Entry entry) {
        closePage();
        ExercisePage opened = new ExercisePage(model, entry, people(), this::insert);
        page = opened;
        Button back = new Button("All exercises");
        back.getStyleClass().add("plain");
        back.setOnAction(event -> showList());
        Label name = new Label(entry.name());
        name.getStyleClass().add("title");
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox head = new HBox(name, space, back);
        head.getStyleClass().addAll("task-search", "catalogue-head");
        setTop(head);
        setCenter(opened);
        back.requestFocus();
    }

    private void showList() {
        boolean back = page != null;
        closePage();
        setTop(top);
        setCenter(found);
        if (back && getScene() != null) {
            found.requestFocus();
        }
    }

    private void closePage() {
        ExercisePage open = page;
        if (open != null) {
            open.dispose();
            page = null;
        }
    }

    /** The lifters that the workbook declares, or the catalogue's own where it declares none. */
    private List<ExerciseShelf.Trying> people() {
        List<ExerciseShelf.Trying> own = LifterLines.in(scripts());
        return own.isEmpty() ? List.of(ExerciseShelf.byInes()) : own;
    }

    private void insert(
            ExerciseShelf.Entry entry,
            Map<Integer, Double> set,
            ExerciseShelf.Trying trying,
            ExercisePage.Shown shown) {
        String lines =
                ExerciseShelf.script(entry, freeName(entry), set, trying, shown.figure(), shown.table(), shown.chart());
        insert.accept(ApiHelp.toInsert(new ApiHelp.Task(entry.name(), "", lines, ""), model));
    }

    private String scripts() {
        return model.cells().stream()
                .filter(CellView::isScript)
                .map(cell -> cell.text().get())
                .reduce("", (all, one) -> all + "\n" + one);
    }

    /** A name for the exercise that no script says yet. */
    private String freeName(ExerciseShelf.Entry entry) {
        String scripts = scripts();
        String name = "my" + entry.word().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + entry.word().substring(1);
        String free = name;
        for (int k = 2; scripts.contains(free); k++) {
            free = name + k;
        }
        return free;
    }

    @Override
    public void requestFocus() {
        sought.requestFocus();
    }

    /** Returns what the list shows. */
    List<ExerciseShelf.Entry> listed() {
        return List.copyOf(found.getItems());
    }

    private static final class Row extends ListCell<ExerciseShelf.Entry> {
        private final Label name = new Label();
        private final Label trains = Words.paragraph("", "quiet");
        private final VBox all = new VBox(name, trains);

        Row(ListView<ExerciseShelf.Entry> list) {
            all.getStyleClass().add("entry");
            name.getStyleClass().add("title");
            all.setMinHeight(Region.USE_PREF_SIZE);
            prefWidthProperty().bind(list.widthProperty().subtract(20));
        }

        @Override
        protected void updateItem(ExerciseShelf.@Nullable Entry item, boolean empty) {
            super.updateItem(item, empty);
            if (empty || item == null) {
                setGraphic(null);
                setAccessibleText(null);
                return;
            }
            name.setText(item.name());
            trains.setText(String.join("; ", item.trains()));
            setGraphic(all);
            setAccessibleText(item.name() + ", " + item.family());
        }
    }
}

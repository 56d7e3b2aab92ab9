package leverwright.face.desk;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import leverwright.face.desk.model.Starter;
import leverwright.face.desk.style.DeskStyle;
import leverwright.face.desk.style.Words;
import leverwright.face.publish.Cautions;
import leverwright.workbook.document.Journal;

/** The page of beginnings: new workbooks, those that come along, those opened last, and text that was left behind. */
final class StartWindow {

    private final Desk desk;
    private final Stage stage;
    private final VBox told = new VBox(8);
    private final VBox left = new VBox(8);
    private List<Journal.Unsaved> offered = List.of();

    StartWindow(Desk desk, Stage stage) {
        this.desk = desk;
        this.stage = stage;
        VBox page = new VBox();
        page.getStyleClass().add("start");
        for (VBox part : List.of(told, left)) {
            part.managedProperty().bind(Bindings.isNotEmpty(part.getChildren()));
        }
        Label name = new Label("Leverwright");
        name.getStyleClass().add("big");
        page.getChildren().addAll(name, told, left);
        page.getChildren().addAll(Words.paragraph("BEGIN", "heading"), starters());
        page.getChildren().addAll(Words.paragraph("OPEN", "heading"), openers());
        page.getChildren().add(Words.paragraph(Cautions.SHORT, "quiet"));
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        Scene scene = new Scene(scroll, 860, 640);
        DeskStyle.dress(scene, desk.home().looks());
        scene.getAccelerators().put(KeyCombination.keyCombination("Shortcut+O"), this::choose);
        scene.getAccelerators().put(KeyCombination.keyCombination("Shortcut+W"), stage::close);
        scene.setOnDragOver((DragEvent event) -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
            }
        });
        scene.setOnDragDropped(event -> event.getDragboard().getFiles().forEach(file -> open(file.toPath())));
        stage.setTitle("Leverwright");
        stage.setScene(scene);
    }

    Stage stage() {
        return stage;
    }

    boolean hasNothingToOffer() {
        return offered.isEmpty();
    }

    private Node starters() {
        VBox choices = new VBox(8);
        for (Starter starter : Starter.values()) {
            Button button = new Button(starter.title());
            button.setAccessibleText("New workbook: " + starter.title() + ", " + starter.words());
            button.getStyleClass().add("choice");
            button.setOnAction(event -> desk.begin(starter));
            HBox row = new HBox(12, button, new Label(starter.words()));
            row.getStyleClass().add("row");
            choices.getChildren().add(row);
        }
        return choices;
    }

    private Node openers() {
        List<Node> lines = new ArrayList<>();
        Button open = new Button("Open a file…");
        open.setOnAction(event -> choose());
        lines.add(open);
        desk.home().shelf().forEach(file -> lines.add(link(file, "comes with the program")));
        desk.home()
                .recent()
                .forEach(file -> lines.add(
                        link(file, String.valueOf(file.toAbsolutePath().getParent()))));
        VBox all = new VBox(8);
        all.getChildren().setAll(lines);
        return all;
    }

    private Node link(Path file, String where) {
        Hyperlink link = new Hyperlink(file.getFileName().toString().replace(".leverwright.json", ""));
        link.setOnAction(event -> open(file));
        Label place = new Label(where);
        place.getStyleClass().addAll("quiet", "small");
        HBox row = new HBox(12, link, place);
        row.getStyleClass().add("row");
        return row;
    }

    private void choose() {
        desk.chooser().toOpen(stage).forEach(this::open);
    }

    private void open(Path file) {
        desk.open(file, this::tell);
    }

    /** Says what went wrong. */
    void tell(String message) {
        told.getChildren().setAll(Words.paragraph("! " + message, "state-failed"));
    }

    /** Offers text that was typed and never saved. */
    void offer(List<Journal.Unsaved> found) {
        offered = new ArrayList<>(found);
        showOffer();
    }

    private void showOffer() {
        left.getChildren().clear();
        if (offered.isEmpty()) {
            return;
        }
        left.getChildren().add(Words.paragraph("TYPED AND NEVER SAVED", "heading"));
        for (Journal.Unsaved unsaved : offered) {
            String title = unsaved.workbook().title();
            Label name = new Label(title.isBlank() ? "Untitled" : title);
            Button back = new Button("Bring it back");
            back.setAccessibleText("Bring back " + name.getText());
            back.setOnAction(event -> {
                answered(unsaved);
                desk.show(desk.home().bringBack(unsaved), new Stage());
            });
            Button forget = new Button("Forget it");
            forget.setAccessibleText("Forget " + name.getText());
            forget.setOnAction(event -> {
                answered(unsaved);
                desk.home().forget(unsaved);
            });
            HBox row = new HBox(12, name, back, forget);
            row.getStyleClass().add("row");
            left.getChildren().add(row);
        }
    }

    private void answered(Journal.Unsaved unsaved) {
        offered = offered.stream().filter(other -> !other.equals(unsaved)).toList();
        showOffer();
    }
}

package leverwright.face.desk;

import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.style.Words;
import leverwright.workbook.document.Workbook;

/** Title, author and purpose of a workbook, to be changed. */
final class AboutWorkbookPane {

    private AboutWorkbookPane() {}

    static ScrollPane of(DeskModel model) {
        Workbook now = model.workbook().get();
        TextField title = new TextField(now.title());
        TextField author = new TextField(now.author());
        TextArea about = new TextArea(now.about());
        about.setWrapText(true);
        about.setPrefRowCount(5);
        Runnable change = () -> model.describe(title.getText(), author.getText(), about.getText());
        title.textProperty().addListener((property, before, text) -> change.run());
        author.textProperty().addListener((property, before, text) -> change.run());
        about.textProperty().addListener((property, before, text) -> change.run());
        return Words.pane(
                "Title, author and purpose",
                List.of(
                        named("Title", title),
                        title,
                        named("Author", author),
                        author,
                        named("What it is for", about),
                        about,
                        Words.paragraph(
                                "They stand at the head of the sheet's page and travel with the file.", "quiet")));
    }

    private static Label named(String words, javafx.scene.Node field) {
        Label label = new Label(words);
        label.setLabelFor(field);
        field.setAccessibleText(words);
        return label;
    }
}

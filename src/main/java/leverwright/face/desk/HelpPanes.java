package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import leverwright.Release;
import leverwright.face.desk.editor.ApiHelp;
import leverwright.face.desk.style.Words;
import leverwright.face.publish.Cautions;

/** What can be read in place of the outline. */
final class HelpPanes {

    private HelpPanes() {}

    static ScrollPane cautions() {
        return Words.pane(
                "Cautions",
                Cautions.FULL.stream().map(line -> Words.paragraph(line)).toList());
    }

    static ScrollPane keys() {
        List<Node> lines = new ArrayList<>();
        String menu = "";
        for (Keys key : Keys.values()) {
            if (!key.menu().equals(menu)) {
                menu = key.menu();
                lines.add(Words.paragraph(menu.toUpperCase(java.util.Locale.ROOT), "heading"));
            }
            lines.add(line(key.keys().getDisplayText(), key.words()));
        }
        lines.add(Words.paragraph("ELSEWHERE", "heading"));
        Keys.others().forEach(other -> lines.add(line(other.keys(), other.words())));
        lines.add(Words.paragraph(
                "No key runs a script and goes on: scripts compute by themselves when typing rests.", "quiet"));
        return Words.pane("Keys", lines);
    }

    static ScrollPane glossary() {
        return Words.pane(
                "Glossary",
                ApiHelp.glossary().stream()
                        .map(term -> Words.entry(term.word(), term.meaning()))
                        .toList());
    }

    private static HBox line(String keys, String words) {
        Label left = Words.paragraph(keys, "code");
        left.setMinWidth(130);
        left.setPrefWidth(130);
        Label right = Words.paragraph(words);
        HBox line = new HBox(10, left, right);
        HBox.setHgrow(right, javafx.scene.layout.Priority.ALWAYS);
        return line;
    }

    static ScrollPane about() {
        return Words.pane(
                "About Leverwright",
                List.of(
                        Words.paragraph("Leverwright " + Release.version() + ", Java " + Runtime.version(), "term"),
                        Words.paragraph("A workbench for people who explain strength exercises with mechanics."),
                        Words.paragraph(Cautions.SHORT),
                        Words.paragraph(
                                "Licensed under Apache-2.0. The window is drawn by JavaFX (GPL 2 with the classpath"
                                        + " exception) and RichTextFX (BSD 2-clause); the licences of all that is carried"
                                        + " along are in the program's folder \"licence\".",
                                "quiet")));
    }
}

package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import leverwright.mechanics.working.Working;
import leverwright.mechanics.working.WorkingLine;
import leverwright.mechanics.working.WorkingText;
import org.jspecify.annotations.Nullable;

/** A hand calculation, typeset: symbols with their indices set low, sources set apart. Its text is the printed working. */
final class WorkingView extends VBox {

    private @Nullable Working shown;
    private List<String> lines = List.of();

    WorkingView() {
        getStyleClass().add("working");
        setAccessibleRole(AccessibleRole.TEXT);
    }

    void show(Working working) {
        if (working.equals(shown)) {
            return;
        }
        shown = working;
        lines = WorkingText.plain(working);
        List<WorkingLine> parts = WorkingText.lines(working);
        if (getChildren().size() > parts.size()) {
            getChildren().remove(parts.size(), getChildren().size());
        }
        for (int i = 0; i < parts.size(); i++) {
            if (i == getChildren().size()) {
                TextFlow flow = new TextFlow();
                flow.getStyleClass().addAll("line", "");
                getChildren().add(flow);
            }
            set((TextFlow) getChildren().get(i), parts.get(i));
        }
        setAccessibleText(String.join("\n", lines));
    }

    /** Sets one line; where only numbers changed, only their pieces are set. */
    private static void set(TextFlow flow, WorkingLine line) {
        String kind = "line-" + line.kind().name().toLowerCase(Locale.ROOT);
        if (!flow.getStyleClass().get(1).equals(kind)) {
            flow.getStyleClass().set(1, kind);
        }
        List<Text> texts = Typeset.line(line);
        List<Node> shown = flow.getChildren();
        boolean same = shown.size() == texts.size();
        for (int i = 0; same && i < texts.size(); i++) {
            same = shown.get(i).getStyleClass().equals(texts.get(i).getStyleClass());
        }
        if (!same) {
            flow.getChildren().setAll(texts);
            return;
        }
        for (int i = 0; i < texts.size(); i++) {
            String words = texts.get(i).getText();
            if (!((Text) shown.get(i)).getText().equals(words)) {
                ((Text) shown.get(i)).setText(words);
            }
        }
    }

    /** Returns the working as plain text. */
    String text() {
        return String.join("\n", lines) + "\n";
    }

    /** Sets lines of a working from pieces of text. */
    static final class Typeset {
        private Typeset() {}

        static List<Text> line(WorkingLine line) {
            List<Text> texts = new ArrayList<>();
            String whole = line.text();
            String source = line.source().isEmpty() ? "" : "[" + line.source() + "]";
            String rest = whole.substring(0, whole.length() - source.length());
            boolean sentence = line.symbol().isEmpty() && line.formula().isEmpty();
            if (sentence) {
                texts.add(text(rest, "words"));
            } else {
                addSymbols(texts, rest);
            }
            if (!source.isEmpty()) {
                texts.add(text(source, "cited"));
            }
            return texts;
        }

        /** Splits names such as {@code M_hip} into the letter and its low index. */
        private static void addSymbols(List<Text> texts, String words) {
            StringBuilder plain = new StringBuilder();
            int i = 0;
            while (i < words.length()) {
                boolean index = words.charAt(i) == '_' && i > 0 && Character.isLetterOrDigit(words.charAt(i - 1));
                if (!index) {
                    plain.append(words.charAt(i));
                    i++;
                    continue;
                }
                int end = i + 1;
                while (end < words.length()
                        && (Character.isLetterOrDigit(words.charAt(end)) || words.charAt(end) == '_')) {
                    end++;
                }
                if (plain.length() > 0) {
                    texts.add(text(plain.toString(), "formula"));
                    plain.setLength(0);
                }
                texts.add(text(words.substring(i + 1, end).replace('_', ' '), "formula", "index"));
                i = end;
            }
            if (plain.length() > 0) {
                texts.add(text(plain.toString(), "formula"));
            }
        }

        private static Text text(String words, String... classes) {
            Text text = new Text(words);
            text.getStyleClass().addAll(classes);
            return text;
        }
    }
}

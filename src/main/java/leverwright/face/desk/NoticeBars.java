package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Notice;
import leverwright.face.desk.model.Permission;

/** What the reader should know, one bar each, under the top bar; each with what can be done about it. */
final class NoticeBars extends VBox {

    /**
     * Something that can be done.
     *
     * @param words what the button says
     * @param run what it does
     */
    record Action(String words, Runnable run) {}

    /** What the window does when a notice asks for it. */
    interface Deeds {
        void saveAs();

        void saveReplacing();

        void readAgain();

        void trust();

        void recheck();
    }

    private final DeskModel model;
    private final Deeds deeds;
    private final List<Node> own = new ArrayList<>();

    NoticeBars(DeskModel model, Deeds deeds) {
        this.model = model;
        this.deeds = deeds;
        getStyleClass().add("notices");
        model.notices().addListener((ListChangeListener<Notice>) change -> refresh());
        model.permission().addListener((property, before, now) -> refresh());
        refresh();
    }

    /** Tells something of the window's own until it is dismissed; at most one such bar stands at a time. */
    void tell(String words, boolean calm, List<Action> actions) {
        own.clear();
        List<Action> all = new ArrayList<>(actions);
        all.add(new Action("Dismiss", this::dismissOwn));
        own.add(bar(words, calm, all));
        refresh();
    }

    void dismissOwn() {
        own.clear();
        refresh();
    }

    private void refresh() {
        List<Node> bars = new ArrayList<>();
        if (model.permission().get() == Permission.ASLEEP) {
            bars.add(bar(
                    "This workbook comes from elsewhere: nothing in it has run. What it shows was recorded by its author.",
                    true,
                    List.of(
                            new Action("Compute behind the gate", model::computeFromTheTop),
                            new Action("Recheck", deeds::recheck),
                            new Action("Trust it…", deeds::trust))));
        }
        for (Notice notice : model.notices()) {
            bars.add(bar(notice.words(), false, actions(notice)));
        }
        bars.addAll(own);
        getChildren().setAll(bars);
    }

    private List<Action> actions(Notice notice) {
        Action dismiss = new Action("Dismiss", () -> model.dismiss(notice));
        return switch (notice.kind()) {
            case CHANGED_ON_DISK ->
                List.of(
                        new Action("Read it again", deeds::readAgain),
                        new Action("Save over it", deeds::saveReplacing),
                        new Action("Save as…", deeds::saveAs));
            case OPEN_ELSEWHERE -> List.of(new Action("Save as…", deeds::saveAs), dismiss);
            case UNSAVED_TEXT ->
                List.of(
                        new Action("Bring it back", model::bringBackUnsaved),
                        new Action("Forget it", model::forgetUnsaved));
            case WORKER -> List.of(new Action("Compute from the top", model::computeFromTheTop), dismiss);
            case DIFFERENCE, FILE -> List.of(dismiss);
        };
    }

    private static HBox bar(String words, boolean calm, List<Action> actions) {
        Label sign = new Label(calm ? "i" : "!");
        sign.getStyleClass().add("sign");
        sign.setAccessibleText(calm ? "Note" : "Attention");
        Label text = new Label(words);
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        text.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(text, Priority.ALWAYS);
        HBox bar = new HBox(sign, text);
        bar.getStyleClass().add("notice");
        if (calm) {
            bar.getStyleClass().add("calm");
        }
        bar.setAccessibleRole(AccessibleRole.TOOL_BAR);
        bar.setAccessibleText((calm ? "Note: " : "Attention: ") + words);
        for (Action action : actions) {
            Button button = new Button(action.words());
            button.setMinWidth(Region.USE_PREF_SIZE);
            button.setOnAction(event -> action.run().run());
            bar.getChildren().add(button);
        }
        return bar;
    }
}

package leverwright.face.desk;

import javafx.beans.binding.Bindings;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.ClaimCount;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Permission;
import leverwright.face.publish.Cautions;

/** The line at the foot: how the scripts stand, how far a run has come, what is not saved, and the caution. */
final class StatusBar extends HBox {

    StatusBar(DeskModel model) {
        getStyleClass().add("status-bar");
        setAccessibleRole(AccessibleRole.TOOL_BAR);
        Label state = new Label();
        state.textProperty()
                .bind(Bindings.createStringBinding(() -> capital(model.status().get()), model.status()));
        state.setMinWidth(USE_PREF_SIZE);
        Label claims = new Label();
        claims.textProperty()
                .bind(Bindings.createStringBinding(() -> claims(model.claims().get()), model.claims()));
        Label allowed = new Label();
        allowed.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> model.permission().get() == Permission.TRUSTED ? "Trusted: any class may be used" : "",
                        model.permission()));
        Label unsaved = new Label();
        unsaved.textProperty()
                .bind(Bindings.when(model.unsaved()).then("Not saved").otherwise(""));
        ProgressBar progress = new ProgressBar();
        progress.setAccessibleText("Progress of the run");
        progress.progressProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> model.progress().get().total() == 0
                                ? 0
                                : (double) model.progress().get().done()
                                        / model.progress().get().total(),
                        model.progress()));
        Button stop = new Button("Stop");
        stop.setAccessibleText("Stop the run");
        stop.setOnAction(event -> model.stop());
        HBox running = new HBox(8, progress, stop);
        running.visibleProperty().bind(model.busy());
        running.managedProperty().bind(model.busy());
        for (Label label : new Label[] {claims, allowed, unsaved}) {
            label.managedProperty().bind(label.textProperty().isNotEmpty());
            label.setMinWidth(USE_PREF_SIZE);
        }
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        Label caution = new Label(Cautions.SHORT);
        caution.getStyleClass().add("caution");
        caution.setMinWidth(0);
        getChildren().addAll(state, running, claims, allowed, unsaved, space, caution);
    }

    private static String claims(ClaimCount count) {
        if (count.all() == 0) {
            return "";
        }
        StringBuilder words = new StringBuilder("Claims: " + count.holds() + (count.holds() == 1 ? " holds" : " hold"));
        add(words, count.doesNotHold(), count.doesNotHold() == 1 ? "does not" : "do not");
        add(words, count.outside(), "outside this model");
        add(words, count.cannotTell(), "cannot be told");
        return words.toString();
    }

    private static void add(StringBuilder words, int count, String kind) {
        if (count > 0) {
            words.append(", ").append(count).append(' ').append(kind);
        }
    }

    static String capital(String words) {
        return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }
}

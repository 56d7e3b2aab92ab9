package leverwright.face.desk.sheet;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.working.Working;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** A number with unit, side and band; its working unfolds under it. */
final class NumberBody implements ResultBody {

    private final ResultHost host;
    private final Label value = new Label();
    private final Label side = new Label();
    private final Label change = new Label();
    private final ToggleButton byHand = new ToggleButton("By hand");
    private final WorkingView working = new WorkingView();
    private final VBox all = new VBox();
    private @Nullable NumberResult shown;
    private @Nullable Working last;
    private boolean opened;

    NumberBody(ResultHost host) {
        this.host = host;
        value.getStyleClass().add("value");
        side.getStyleClass().add("quiet");
        change.getStyleClass().add("change");
        byHand.getStyleClass().addAll("plain", "by-hand");
        byHand.setAccessibleText("By hand: shows the calculation of this number");
        FlowPane line = new FlowPane(value, side, change, byHand);
        line.getStyleClass().add("number-line");
        all.getStyleClass().add("number");
        all.getChildren().addAll(line, working);
        byHand.setOnAction(event -> {
            opened = true;
            unfold();
        });
        for (Node each : List.of(change, byHand, working)) {
            each.managedProperty().bind(each.visibleProperty());
        }
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof NumberResult;
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        NumberResult now = (NumberResult) result;
        NumberResult earlier = shown;
        if (earlier == null || !earlier.title().equals(now.title())) {
            last = null;
        }
        shown = now;
        Working given = now.working();
        if (given != null) {
            last = given;
        }
        value.setText(ValueText.value(now.quantity(), given));
        String band = now.quantity().hasBand() ? "(" + ValueText.band(now.quantity()) + ")" : "";
        side.setText((now.sides().words() + " " + band).strip());
        String words = before instanceof NumberResult held
                ? "was " + ValueText.value(held.quantity(), held.working()) + ", "
                        + Change.words(held.quantity(), now.quantity())
                : "";
        change.setText(words);
        change.setVisible(!words.isEmpty());
        if (!opened) {
            byHand.setSelected(now.workingOpen());
        }
        unfold();
    }

    private void unfold() {
        NumberResult now = shown;
        Working steps = now == null ? null : now.working();
        // While a dial turns, folded workings stay away until it rests.
        byHand.setVisible(last != null);
        boolean open = byHand.isSelected() && last != null;
        if (open && steps != null) {
            working.show(steps);
        }
        working.setOpacity(steps == null ? 0.5 : 1);
        working.setVisible(open);
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        return List.of(
                ResultBody.item("Copy as text", () -> {
                    NumberResult now = shown;
                    if (now != null) {
                        host.copy(ResultFiles.text(now));
                        telling.tell("Copied.");
                    }
                }),
                ResultBody.item("Copy the value", () -> host.copy(value.getText())));
    }
}

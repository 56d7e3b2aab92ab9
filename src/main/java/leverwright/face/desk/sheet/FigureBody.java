package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import leverwright.face.desk.style.DeskStyle;
import leverwright.face.desk.style.Hint;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.FigureResult;
import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** A figure: dragged by its joints, stepped through its range of motion, played, and enlarged in a window of its own. */
final class FigureBody implements ResultBody {

    private static final String SWING =
            "Turn the dial through its whole range and back, 2.5 seconds each way; this is no tempo of the exercise";
    private static final double STEP = 0.1;
    private static final double TALLEST = 420;
    private static final double TALLEST_ENLARGED = 1000;

    private final ResultHost host;
    private final FigurePane figure;
    private final VBox all = new VBox();
    private final HBox steps = new HBox();
    private final Button play;
    private @Nullable FigureResult shown;
    private @Nullable Sketch ghost;
    private @Nullable Result held;
    private @Nullable FigureBody enlarged;
    private @Nullable Stage window;

    FigureBody(ResultHost host) {
        this(host, TALLEST, true);
    }

    FigureBody(ResultHost host, double tallest, boolean canEnlarge) {
        this.host = host;
        figure = new FigurePane(host.model(), tallest);
        all.getStyleClass().add("figure-result");
        steps.getStyleClass().add("figure-steps");
        play = button("Play", SWING);
        play.textProperty().bind(Bindings.when(figure.playing()).then("Pause").otherwise("Play"));
        play.setOnAction(event -> figure.playOrPause());
        Button back = button("‹", "One step back through the range of motion");
        back.setOnAction(event -> figure.step(-STEP));
        Button on = button("›", "One step on through the range of motion");
        on.setOnAction(event -> figure.step(STEP));
        steps.getChildren().addAll(back, play, on);
        if (canEnlarge) {
            Button larger = button("Enlarge", "Show the figure in a window of its own");
            larger.setOnAction(event -> enlarge());
            steps.getChildren().add(larger);
        }
        VBox.setVgrow(figure, Priority.ALWAYS);
        all.getChildren().addAll(figure, steps);
    }

    private static Button button(String words, String help) {
        Button button = new Button(words);
        button.getStyleClass().addAll("plain", "small");
        button.setAccessibleText(help);
        Hint.on(button, help);
        return button;
    }

    FigurePane pane() {
        return figure;
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof FigureResult;
    }

    @Override
    public String title(Result now) {
        return now.title().isEmpty() ? ((FigureResult) now).sketch().title() : now.title();
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        FigureResult now = (FigureResult) result;
        Sketch old = before instanceof FigureResult kept && !kept.sketch().equals(now.sketch()) ? kept.sketch() : null;
        boolean same = now.equals(shown) && Objects.equals(old, ghost);
        shown = now;
        ghost = old;
        held = before;
        figure.show(now, old);
        boolean moves = figure.dial().isPresent();
        for (Node step : steps.getChildren().subList(0, 3)) {
            step.setVisible(moves);
            step.setManaged(moves);
        }
        Sketch.Play tempo = figure.tempo();
        String how = tempo == null ? SWING : "Play repetitions at their tempo: " + tempo.words();
        if (!how.equals(play.getAccessibleText())) {
            play.setAccessibleText(how);
            Hint.on(play, how);
        }
        FigureBody large = enlarged;
        if (large != null && !same) {
            large.show(now, before);
        }
    }

    private void enlarge() {
        Stage open = window;
        FigureResult now = shown;
        if (open != null) {
            open.toFront();
            return;
        }
        if (now == null || all.getScene() == null) {
            return;
        }
        FigureBody large = new FigureBody(host, TALLEST_ENLARGED, false);
        VBox page = new VBox(large.node());
        page.getStyleClass().add("enlarged");
        VBox.setVgrow(large.node(), Priority.ALWAYS);
        Scene scene = new Scene(page, 900, 860);
        DeskStyle.dress(scene, host.model().looks());
        Stage stage = new Stage();
        stage.initOwner(all.getScene().getWindow());
        stage.setTitle(title(now));
        stage.setScene(scene);
        scene.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                stage.close();
            }
        });
        stage.setOnHidden(event -> {
            large.dispose();
            enlarged = null;
            window = null;
        });
        enlarged = large;
        window = stage;
        large.show(now, held);
        stage.show();
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        return new ArrayList<>(PictureTools.items(host, all, () -> shown, telling));
    }

    @Override
    public void dispose() {
        Stage open = window;
        if (open != null) {
            open.close();
        }
        figure.dispose();
    }
}

package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import leverwright.face.desk.model.CellShown;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Pin;
import leverwright.face.draw.ValueText;
import leverwright.face.publish.Notes;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.workbook.session.Span;
import org.jspecify.annotations.Nullable;

/** What a script comes to: what went wrong, the dials it declares, and its results one under the other. */
final class ResultsPane extends VBox {

    private final DeskModel model;
    private final CellView cell;
    private final SavePlace places;
    private final ProblemBox problem;
    private final Label dials = new Label();
    private final List<ResultCard> cards = new ArrayList<>();
    private final PauseTransition fade = new PauseTransition(Duration.millis(300));
    private boolean old;

    ResultsPane(DeskModel model, CellView cell, SavePlace places, Consumer<Span> go) {
        this.model = model;
        this.cell = cell;
        this.places = places;
        problem = new ProblemBox(go);
        getStyleClass().add("strip-results");
        dials.getStyleClass().addAll("declared", "quiet", "small");
        dials.setWrapText(true);
        dials.setMinHeight(Region.USE_PREF_SIZE);
        dials.managedProperty().bind(dials.visibleProperty());
        getChildren().addAll(problem, dials);
        fade.setOnFinished(event -> fade());
    }

    void show(CellShown shown, Optional<CellShown> held) {
        problem.show(shown);
        showDials(shown.dials());
        List<Result> results = shown.results();
        while (cards.size() > results.size()) {
            ResultCard last = cards.remove(cards.size() - 1);
            getChildren().remove(last);
            last.dispose();
        }
        while (cards.size() < results.size()) {
            ResultCard card = new ResultCard(new ResultHost(model, new Pin(cell.id(), cards.size()), places));
            cards.add(card);
            getChildren().add(card);
        }
        Set<String> said = results.isEmpty() ? Set.of() : saidAbove();
        for (int i = 0; i < results.size(); i++) {
            cards.get(i).show(results.get(i), before(held, i), said);
            said.addAll(Notes.of(results.get(i)));
        }
        old = shown.state() == CellState.STALE || shown.state() == CellState.NOT_RUN;
        if (!old) {
            getStyleClass().remove("outdated");
        } else if (!getStyleClass().contains("outdated")) {
            // What is fresh again at once, as while a dial turns, is not worth fading.
            fade.playFromStart();
        }
    }

    private void fade() {
        if (old && !getStyleClass().contains("outdated")) {
            getStyleClass().add("outdated");
        }
    }

    /** The notes of every result that stands above in the sheet. */
    private Set<String> saidAbove() {
        Set<String> said = new LinkedHashSet<>();
        for (CellView above : model.cells()) {
            if (above == cell) {
                break;
            }
            above.shown().get().results().forEach(result -> said.addAll(Notes.of(result)));
        }
        return said;
    }

    private static @Nullable Result before(Optional<CellShown> held, int index) {
        List<Result> results = held.map(CellShown::results).orElse(List.of());
        return index < results.size() ? results.get(index) : null;
    }

    private void showDials(List<DialDeclared> declared) {
        List<String> words = new ArrayList<>();
        for (DialDeclared dial : declared) {
            words.add(dial.name() + " " + ValueText.setting(dial.setting()) + ", from " + ValueText.range(dial));
        }
        String text = words.isEmpty() ? "" : (words.size() == 1 ? "dial: " : "dials: ") + String.join("; ", words);
        if (!text.equals(dials.getText())) {
            dials.setText(text);
        }
        dials.setVisible(!text.isEmpty());
    }

    void dispose() {
        fade.stop();
        cards.forEach(ResultCard::dispose);
    }
}

package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.StateSign;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.working.Working;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.Verdict;
import org.jspecify.annotations.Nullable;

/** A claim: its sentence, the verdict in words and by a sign, and what it rests on. */
final class ClaimBody implements ResultBody {

    private final ResultHost host;
    private final VBox all = new VBox();
    private final Label sentence = words("sentence");
    private final Label sign = new Label();
    private final Label verdict = words("verdict");
    private final VBox facts = new VBox();
    private final ToggleButton byHand = new ToggleButton("By hand");
    private final WorkingView working = new WorkingView();
    private @Nullable ClaimResult shown;
    private @Nullable Result held;

    ClaimBody(ResultHost host) {
        this.host = host;
        all.getStyleClass().add("claim");
        sign.getStyleClass().add("verdict-sign");
        sign.setMinWidth(Region.USE_PREF_SIZE);
        facts.getStyleClass().add("facts");
        byHand.getStyleClass().addAll("plain", "by-hand");
        byHand.setAccessibleText("By hand: shows the calculation behind this claim");
        byHand.setOnAction(event -> unfold());
        HBox judged = new HBox(sign, verdict);
        judged.getStyleClass().add("judged");
        all.getChildren().addAll(sentence, judged, facts, byHand, working);
        all.setAccessibleRole(AccessibleRole.TEXT);
        byHand.managedProperty().bind(byHand.visibleProperty());
        working.managedProperty().bind(working.visibleProperty());
    }

    private static Label words(String kind) {
        Label label = new Label();
        label.getStyleClass().add(kind);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof ClaimResult;
    }

    @Override
    public String title(Result now) {
        return "claim";
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        ClaimResult now = (ClaimResult) result;
        if (now.equals(shown) && java.util.Objects.equals(before, held)) {
            return;
        }
        shown = now;
        held = before;
        sentence.setText(now.title());
        sign.setText(StateSign.of(now.verdict()));
        verdict.setText(now.verdict().words() + (now.verdict() == Verdict.OUTSIDE_THIS_MODEL ? "" : " in this model"));
        if (!all.getStyleClass().contains(styleClass(now.verdict()))) {
            all.getStyleClass().setAll("claim", styleClass(now.verdict()));
        }
        List<String> lines = lines(now, before);
        while (facts.getChildren().size() > lines.size()) {
            facts.getChildren().remove(facts.getChildren().size() - 1);
        }
        while (facts.getChildren().size() < lines.size()) {
            facts.getChildren().add(words("fact"));
        }
        for (int i = 0; i < lines.size(); i++) {
            ((Label) facts.getChildren().get(i)).setText(lines.get(i));
        }
        all.setAccessibleText("Claim: " + now.title() + ". " + verdict.getText() + ". " + String.join(" ", lines));
        unfold();
    }

    private static String styleClass(Verdict verdict) {
        return "verdict-" + verdict.name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    private static List<String> lines(ClaimResult claim, @Nullable Result before) {
        List<String> lines = new ArrayList<>();
        Quantity computed = claim.computed();
        if (computed != null) {
            lines.add(claim.computedLabel() + ": " + ValueText.full(computed, claim.sides(), claim.working()));
        }
        String asked = claim.test().isBlank() ? "" : "asked: " + claim.test() + "; ";
        if (!(asked + claim.reason()).isBlank()) {
            lines.add(asked + claim.reason());
        }
        if (claim.forReader()) {
            lines.add("for the reader: change the line until the claim holds");
        }
        if (claim.doubted()) {
            lines.add("doubted by the author");
        }
        if (!claim.source().isEmpty()) {
            lines.add("claimed in: " + claim.source());
        }
        if (!claim.settings().isEmpty()) {
            lines.add("at its own settings: " + String.join("; ", claim.settings()));
        }
        if (before instanceof ClaimResult old && old.verdict() != claim.verdict()) {
            lines.add("before: " + StateSign.of(old.verdict()) + " "
                    + old.verdict().words());
        }
        return lines;
    }

    private void unfold() {
        ClaimResult now = shown;
        Working steps = now == null ? null : now.working();
        byHand.setVisible(steps != null);
        if (steps != null && byHand.isSelected()) {
            working.show(steps);
        }
        working.setVisible(steps != null && byHand.isSelected());
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        return List.of(ResultBody.item("Copy as text", () -> {
            ClaimResult now = shown;
            if (now != null) {
                host.copy(ResultFiles.text(now));
                telling.tell("Copied.");
            }
        }));
    }
}

package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Progress;
import leverwright.face.desk.model.Recheck;
import leverwright.face.desk.model.RecheckReport;
import leverwright.face.desk.model.StateSign;
import leverwright.face.desk.style.Words;
import leverwright.run.result.Verdict;
import org.jspecify.annotations.Nullable;

/** What a recheck came to: the whole in a sentence, every claim with both verdicts, every difference. */
final class RecheckPane {

    private RecheckPane() {}

    /** How far a recheck has come, and the way to stop it. */
    static ScrollPane running(Recheck recheck, DeskModel model) {
        ProgressBar bar = new ProgressBar();
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText("Progress of the recheck");
        bar.progressProperty()
                .bind(Bindings.createDoubleBinding(
                        () -> share(recheck.progress().get()), recheck.progress()));
        Label far = Words.paragraph("", "quiet");
        far.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> words(recheck.progress().get(), model), recheck.progress()));
        Button stop = new Button("Stop");
        stop.setAccessibleText("Stop the recheck");
        stop.setOnAction(event -> {
            stop.setDisable(true);
            recheck.stop();
        });
        return Words.pane(
                "Recheck", List.of(Words.paragraph("Computing everything anew in a clean worker."), bar, far, stop));
    }

    private static double share(Progress progress) {
        return progress.total() == 0 ? 0 : (double) progress.done() / progress.total();
    }

    private static String words(Progress progress, DeskModel model) {
        String cell = progress.cell().isEmpty()
                ? ""
                : model.cell(progress.cell())
                        .map(view -> "; now \"" + CellTitle.of(view) + "\"")
                        .orElse("");
        return progress.done() + " of " + progress.total() + " scripts done" + cell + ".";
    }

    static ScrollPane of(RecheckReport report, Consumer<String> reveal) {
        List<Node> parts = new ArrayList<>();
        parts.add(Words.paragraph((report.passes() ? "✓ Passes. " : "✕ Does not pass. ") + report.words(), "term"));
        parts.add(Words.paragraph(StatusBar.capital(report.seal()) + ".", "quiet"));
        if (!report.claims().isEmpty()) {
            parts.add(Words.paragraph("CLAIMS", "heading"));
            report.claims().forEach(claim -> parts.add(claim(claim, reveal)));
        }
        if (!report.differences().isEmpty()) {
            parts.add(Words.paragraph("DIFFERENCES", "heading"));
            report.differences().forEach(line -> parts.add(Words.paragraph(line)));
        }
        parts.add(Words.paragraph("Every verdict is one in this model only.", "quiet", "small"));
        return Words.pane("What the recheck came to", parts);
    }

    private static VBox claim(RecheckReport.Claim claim, Consumer<String> reveal) {
        Hyperlink sentence = new Hyperlink(claim.sentence());
        sentence.setWrapText(true);
        sentence.setOnAction(event -> reveal.accept(claim.cell()));
        String verdicts = "recorded: " + words(claim.recorded()) + "; now: " + words(claim.recomputed())
                + (claim.counts() ? "" : " (only the recorded verdict counts)");
        VBox entry = new VBox(sentence, Words.paragraph(verdicts), Words.paragraph(claim.reason(), "quiet", "small"));
        entry.getStyleClass().add("entry");
        return entry;
    }

    private static String words(@Nullable Verdict verdict) {
        return verdict == null ? "no such claim" : StateSign.of(verdict) + " " + verdict.words();
    }
}

package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.RecheckReport;
import leverwright.face.desk.model.StateSign;
import leverwright.run.result.Verdict;
import org.jspecify.annotations.Nullable;

/** What a recheck came to: the whole in a sentence, every claim with both verdicts, every difference. */
final class RecheckPane {

    private RecheckPane() {}

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

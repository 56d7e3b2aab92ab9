package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Label;
import leverwright.face.desk.model.DeskModel;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.Test;

/** What muscles use of their capacity stands beside the figure and moves with the dial. */
class SharesBesideTest extends AtTheWindow {
    private static final String SCRIPT = "var ines = lifter(\"Ines\").of(FEMALE, cm(178), kg(71));\n"
            + "var stack = dial(\"Stack\", kg(20)).from(kg(10)).to(kg(60));\n"
            + "var held = kneeExtension().stack(stack).kneeFlexion(deg(40)).by(ines).posture();\n"
            + "table(shares(held))";

    private static List<String> texts(DeskWindow window, String style) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(node -> node.getStyleClass().contains(style))
                .map(node -> ((Label) node).getText())
                .toList();
    }

    @Test
    void sharesBesideTheFigureMoveWithTheDialAndKeepTheirPlaces() throws Exception {
        Path file = folder.resolve("shares.leverwright.json");
        WorkbookFiles.onDisk().saveNew(file, Workbook.empty("Shares").withAdded(0, new ScriptCell("c1", SCRIPT)));
        DeskWindow window = bench.open(bench.onShelf(file));
        DeskModel model = window.model();
        bench.untilFresh(model);
        List<String> names = bench.at(() -> texts(window, "share-name"));
        List<String> light = bench.at(() -> texts(window, "share-number"));
        assertTrue(names.contains("vastus lateralis"), names.toString());
        assertEquals(names.size(), light.size());
        bench.doing(() -> model.turn("Stack", 40));
        bench.until("the bars have moved", () -> !texts(window, "share-number").equals(light));
        List<String> heavy = bench.at(() -> texts(window, "share-number"));
        assertEquals(names, bench.at(() -> texts(window, "share-name")));
        int at = names.indexOf("vastus lateralis");
        assertTrue(percent(heavy.get(at)) > 1.4 * percent(light.get(at)), light + " then " + heavy);
    }

    private static double percent(String text) {
        return Double.parseDouble(text.replace(" %", ""));
    }
}

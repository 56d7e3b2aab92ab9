package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.event.Event;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.Test;

/** The band of a dial's setting can be dragged wider and narrower, and a turn keeps it. */
class DialBandTest extends AtTheWindow {
    private static final String SCRIPT =
            "var lean = dial(\"Lean\", deg(45).plusOrMinus(deg(5))).from(deg(10)).to(deg(80));\n"
                    + "show(\"its sine\", lean)";

    @Test
    void anEdgeThatIsDraggedChangesTheErrorAndATurnKeepsIt() throws Exception {
        Path file = folder.resolve("band.leverwright.json");
        WorkbookFiles.onDisk().saveNew(file, Workbook.empty("A band").withAdded(0, new ScriptCell("c1", SCRIPT)));
        DeskWindow window = bench.open(bench.onShelf(file));
        DeskModel model = window.model();
        bench.untilFresh(model);
        DialView dial = bench.at(() -> model.dials().get(0));
        assertEquals(Math.toRadians(5), bench.at(() -> dial.halfWidth().get()), 1e-12);
        Node high = bench.nodes(window, node -> node.getStyleClass().contains("dial-edge"))
                .get(1);
        bench.doing(() -> {
            Point2D at = high.localToScene(high.getBoundsInLocal().getWidth() / 2, 4);
            Event.fireEvent(high, dragged(at.getX() + 20, at.getY()));
        });
        double wider = bench.at(() -> dial.halfWidth().get());
        assertTrue(wider > Math.toRadians(6), "half width " + wider);
        bench.untilFresh(model);
        bench.doing(() -> model.turn("Lean", Math.toRadians(60)));
        assertEquals(wider, bench.at(() -> dial.halfWidth().get()), 1e-12);
        bench.doing(() -> model.widen("Lean", 0));
        assertEquals("60 deg", bench.at(() -> dial.setting().get()));
        bench.untilFresh(model);
    }

    private static MouseEvent dragged(double x, double y) {
        return new MouseEvent(
                MouseEvent.MOUSE_DRAGGED,
                x,
                y,
                x,
                y,
                MouseButton.PRIMARY,
                1,
                false,
                false,
                false,
                false,
                true,
                false,
                false,
                true,
                false,
                false,
                null);
    }
}

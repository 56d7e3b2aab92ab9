package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import javafx.application.Platform;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;

/**
 * How the parts of a window stand: outline, sheet and side in three columns; without the outline in a narrow window, and the
 * side under the sheet in a very narrow one.
 */
final class Layout extends BorderPane {

    /** Widths in em of the text. */
    private static final double NARROW = 68;

    private static final double VERY_NARROW = 50;
    private static final double SIDE = 25;
    private static final double SIDE_HEIGHT = 0.42;

    private final Edge edge;
    private final Node sheet;
    private final Node side;
    private final SplitPane columns = new SplitPane();
    private final SplitPane rows = new SplitPane();
    private boolean edgeWanted = true;
    private boolean sideWanted = true;
    private double em = 13;
    private List<Node> shown = List.of();
    private double shownEdge;

    Layout(Edge edge, Node sheet, Node side) {
        this.edge = edge;
        this.sheet = sheet;
        this.side = side;
        rows.setOrientation(Orientation.VERTICAL);
        SplitPane.setResizableWithParent(edge, false);
        SplitPane.setResizableWithParent(side, false);
        setCenter(columns);
        edge.whenWidthChanges(this::arrange);
        widthProperty().addListener((property, before, now) -> arrange());
    }

    boolean isEdgeShown() {
        return columns.getItems().contains(edge);
    }

    boolean isSideShown() {
        return columns.getItems().contains(side) || rows.getItems().contains(side);
    }

    void showEdge(boolean wanted) {
        edgeWanted = wanted;
        if (!wanted && edge.isReading()) {
            edge.showOutline();
        }
        arrange();
    }

    void showSide(boolean wanted) {
        sideWanted = wanted;
        arrange();
    }

    /** Takes the size of text, by which all widths go. */
    void textSize(double pixels) {
        em = pixels;
        shown = List.of();
        arrange();
    }

    private void arrange() {
        double width = getWidth();
        if (width <= 0) {
            return;
        }
        boolean withEdge = edge.isReading() || (edgeWanted && width >= NARROW * em);
        boolean stacked = width < VERY_NARROW * em;
        List<Node> next = new ArrayList<>();
        if (withEdge) {
            next.add(edge);
        }
        if (sideWanted && stacked) {
            next.add(rows);
        } else {
            next.add(sheet);
            if (sideWanted) {
                next.add(side);
            }
        }
        double edgeWidth = Math.min(edge.wantedEm() * em, width / 2);
        if (next.equals(shown) && edgeWidth == shownEdge) {
            return;
        }
        place(next, width, edgeWidth);
    }

    private void place(List<Node> next, double width, double edgeWidth) {
        columns.getItems().clear();
        rows.getItems().clear();
        if (next.contains(rows)) {
            rows.getItems().setAll(sheet, side);
            rows.setDividerPositions(1 - SIDE_HEIGHT);
        }
        columns.getItems().setAll(next);
        divide(next, width, edgeWidth);
        // The split pane moves its dividers when it first lays out what it was given.
        Platform.runLater(() -> {
            if (next.equals(shown) && edgeWidth == shownEdge) {
                divide(next, getWidth(), edgeWidth);
            }
        });
        shown = next;
        shownEdge = edgeWidth;
    }

    private void divide(List<Node> next, double width, double edgeWidth) {
        double left = edgeWidth / width;
        double right = 1 - SIDE * em / width;
        if (next.contains(edge) && next.contains(side)) {
            columns.setDividerPositions(left, right);
        } else if (next.contains(edge)) {
            columns.setDividerPositions(left);
        } else if (next.contains(side)) {
            columns.setDividerPositions(right);
        }
    }
}

package leverwright.face.desk.dials;

import javafx.beans.InvalidationListener;
import javafx.scene.Cursor;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;
import leverwright.face.desk.style.Hint;
import leverwright.run.result.DialDeclared;

/** The band of a dial's setting on its track: an edge that is dragged makes the error of the input larger or smaller. */
final class DialBand extends Pane {
    private static final double THUMB = 11;
    private static final double EDGE = 8;

    private final DeskModel model;
    private final DialView dial;
    private final Region band = new Region();
    private final Region low = edge();
    private final Region high = edge();
    private final InvalidationListener follow = changed -> show();

    DialBand(DeskModel model, DialView dial) {
        this.model = model;
        this.dial = dial;
        setPickOnBounds(false);
        band.getStyleClass().add("dial-band");
        band.setManaged(false);
        band.setMouseTransparent(true);
        getChildren().addAll(band, low, high);
        dial.value().addListener(follow);
        dial.halfWidth().addListener(follow);
        dial.declared().addListener(follow);
        widthProperty().addListener(follow);
        show();
    }

    private Region edge() {
        Region edge = new Region();
        edge.getStyleClass().add("dial-edge");
        edge.setManaged(false);
        edge.setCursor(Cursor.H_RESIZE);
        edge.setOnMouseDragged(this::drag);
        Hint.on(edge, "Drag to change the error; Shift with arrow keys does it too");
        return edge;
    }

    private void drag(MouseEvent event) {
        double across = sceneToLocal(event.getSceneX(), event.getSceneY()).getX();
        model.widen(dial.name(), Math.abs(value(across) - dial.value().get()));
        event.consume();
    }

    private double run() {
        return getWidth() - THUMB;
    }

    private double value(double across) {
        DialDeclared declared = dial.declared().get();
        return declared.from() + (across - THUMB / 2) / run() * (declared.to() - declared.from());
    }

    private double across(double value) {
        DialDeclared declared = dial.declared().get();
        double share = (value - declared.from()) / (declared.to() - declared.from());
        return THUMB / 2 + Math.max(0, Math.min(1, share)) * run();
    }

    private void show() {
        double half = dial.halfWidth().get();
        boolean shown = half > 0 && run() > 0;
        band.setVisible(shown);
        low.setVisible(shown);
        high.setVisible(shown);
        if (shown) {
            double centre = dial.value().get();
            double from = across(centre - half);
            double to = across(centre + half);
            band.resizeRelocate(from, getHeight() / 2 - 3, Math.max(1, to - from), 6);
            low.resizeRelocate(from - EDGE / 2, 0, EDGE, getHeight());
            high.resizeRelocate(to - EDGE / 2, 0, EDGE, getHeight());
        }
    }

    @Override
    protected void layoutChildren() {
        show();
    }

    void dispose() {
        dial.value().removeListener(follow);
        dial.halfWidth().removeListener(follow);
        dial.declared().removeListener(follow);
    }
}

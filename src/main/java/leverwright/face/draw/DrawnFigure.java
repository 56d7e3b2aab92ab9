package leverwright.face.draw;

import java.awt.geom.Point2D;
import leverwright.mechanics.working.Sketch;

/** A figure as it was drawn, and where the points of the mechanics plane lie in it. */
public final class DrawnFigure {
    private final Picture picture;
    private final FigureView view;

    DrawnFigure(Picture picture, FigureView view) {
        this.picture = picture;
        this.view = view;
    }

    /** Returns the drawing. */
    public Picture picture() {
        return picture;
    }

    /**
     * Returns where a point lies in the picture, in picture units.
     *
     * @param point in metres, x forward and y up
     */
    public Point2D place(Sketch.Point point) {
        return view.place(point);
    }

    /**
     * Returns the point of the mechanics plane, in metres, that lies at a place of the picture.
     *
     * @param x to the right, in picture units
     * @param y downwards, in picture units
     */
    public Sketch.Point point(double x, double y) {
        return view.point(x, y);
    }
}

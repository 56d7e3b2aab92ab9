package leverwright.face.draw;

import java.util.List;
import leverwright.mechanics.working.Curves;

/**
 * A chart as it was drawn.
 *
 * @param picture the drawing
 * @param plots its plots from top to bottom, with the places of their values
 * @param curves the curves in the order in which the plots count them
 */
public record DrawnChart(Picture picture, List<PlotArea> plots, List<Curves.Curve> curves) {

    /** Copies the lists. */
    public DrawnChart {
        plots = List.copyOf(plots);
        curves = List.copyOf(curves);
    }
}

package leverwright.face.draw;

/**
 * A map as it was drawn.
 *
 * @param picture the drawing
 * @param area the places of its settings
 */
public record DrawnMap(Picture picture, PlotArea area) {}

package leverwright.face.draw;

import leverwright.mechanics.measure.Unit;

/** The plot of a map as it was drawn: which settings lie where. Places are in picture units, settings in SI units. */
public final class MapArea {
    private final Plot.Frame frame;
    private final Scale horizontal;
    private final Scale vertical;
    private final Unit across;
    private final Unit up;

    MapArea(Plot.Frame frame, Scale x, Scale y, Unit across, Unit up) {
        this.frame = frame;
        horizontal = x;
        vertical = y;
        this.across = across;
        this.up = up;
    }

    /** Returns the left edge of the plot. */
    public double left() {
        return frame.left();
    }

    /** Returns the right edge of the plot. */
    public double right() {
        return frame.right();
    }

    /** Returns the upper edge of the plot. */
    public double top() {
        return frame.top();
    }

    /** Returns the lower edge of the plot. */
    public double bottom() {
        return frame.bottom();
    }

    /** Returns the setting across at a place; beyond the plot its nearer end. */
    public double acrossAt(double x) {
        double share = Math.max(0, Math.min(1, (x - frame.left()) / frame.width()));
        return across.toSi(horizontal.from() + share * (horizontal.to() - horizontal.from()));
    }

    /** Returns the setting upwards at a place; beyond the plot its nearer end. */
    public double upAt(double y) {
        double share = Math.max(0, Math.min(1, (frame.bottom() - y) / frame.height()));
        return up.toSi(vertical.from() + share * (vertical.to() - vertical.from()));
    }

    /** Returns where a setting across lies. */
    public double across(double setting) {
        double share = (across.fromSi(setting) - horizontal.from()) / (horizontal.to() - horizontal.from());
        return frame.left() + share * frame.width();
    }

    /** Returns where a setting upwards lies. */
    public double down(double setting) {
        double share = (up.fromSi(setting) - vertical.from()) / (vertical.to() - vertical.from());
        return frame.bottom() - share * frame.height();
    }

    /** Returns whether a place lies within the plot, with some air at its edges. */
    public boolean reaches(double x, double y) {
        return x >= left() - 4 && x <= right() + 4 && y >= top() - 4 && y <= bottom() + 4;
    }
}

package leverwright.face.draw;

import leverwright.mechanics.measure.Unit;

/** One plot of a chart, or a map, as it was drawn: which value lies where; upwards on a map lies its second setting. Places are in picture units, values in SI units. */
public final class PlotArea {
    private final Plot.Frame frame;
    private final Scale horizontal;
    private final Scale vertical;
    private final Unit settingUnit;
    private final Unit unit;
    private final int firstCurve;
    private final int curves;

    PlotArea(Plot.Frame frame, Scale x, Scale y, Unit settingUnit, Unit unit, int firstCurve, int curves) {
        this.frame = frame;
        horizontal = x;
        vertical = y;
        this.settingUnit = settingUnit;
        this.unit = unit;
        this.firstCurve = firstCurve;
        this.curves = curves;
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

    /** Returns the unit in which the values of this plot are read. */
    public Unit unit() {
        return unit;
    }

    /** Returns which of the drawn curves, counted from 0, is the first of this plot. */
    public int firstCurve() {
        return firstCurve;
    }

    /** Returns how many curves this plot shows. */
    public int curves() {
        return curves;
    }

    /** Returns the setting, in SI units, at a place across the picture; beyond the plot its nearer end. */
    public double settingAt(double x) {
        double share = Math.max(0, Math.min(1, (x - frame.left()) / frame.width()));
        return settingUnit.toSi(horizontal.at(share));
    }

    /** Returns where a setting, in SI units, lies across the picture. */
    public double across(double setting) {
        return frame.left() + horizontal.share(settingUnit.fromSi(setting)) * frame.width();
    }

    /** Returns where a value, in SI units, lies down the picture. */
    public double down(double value) {
        double share = (unit.fromSi(value) - vertical.from()) / (vertical.to() - vertical.from());
        return frame.bottom() - share * frame.height();
    }

    /** Returns the value, in SI units, at a place down the picture; beyond the plot its nearer end. */
    public double valueAt(double y) {
        double share = Math.max(0, Math.min(1, (frame.bottom() - y) / frame.height()));
        return unit.toSi(vertical.from() + share * (vertical.to() - vertical.from()));
    }

    /** Returns whether a place lies within the plot, with some air at its edges. */
    public boolean reaches(double x, double y) {
        return reaches(x) && y >= frame.top() - 4 && y <= frame.bottom() + 4;
    }

    /** Returns whether a place across the picture lies within the plot, with some air at its edges. */
    public boolean reaches(double x) {
        return x >= frame.left() - 4 && x <= frame.right() + 4;
    }
}

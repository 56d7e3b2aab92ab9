package leverwright.face.desk.sheet;

import java.util.List;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Curves;

/** What a chart says about one of its computed points. Settings are in SI units; NaN is no limit. */
final class ChartReadout {

    private ChartReadout() {}

    /** Returns the place on the axis of the computed point nearest to a setting, within a stretch. */
    static int nearest(Curves curves, double setting, double from, double to) {
        List<Double> axis = curves.axis().values();
        int best = -1;
        for (int i = 0; i < axis.size(); i++) {
            boolean inside = !(axis.get(i) < from) && !(axis.get(i) > to);
            if (inside && (best < 0 || Math.abs(axis.get(i) - setting) < Math.abs(axis.get(best) - setting))) {
                best = i;
            }
        }
        return Math.max(0, best);
    }

    /** Returns a place on the axis, or the nearest one within a stretch. */
    static int within(Curves curves, int index, double from, double to) {
        return nearest(curves, curves.axis().values().get(index), from, to);
    }

    /** Returns the place on the axis of the present setting; its middle when there is none. */
    static int present(Curves curves) {
        Double current = curves.current();
        int size = curves.axis().values().size();
        return current == null ? size / 2 : nearest(curves, current, Double.NaN, Double.NaN);
    }

    /**
     * Returns the setting and the value of every curve there, one a line.
     *
     * @param curves the curves
     * @param order the curves in the order in which they are drawn
     * @param index the place on the axis
     */
    static String words(Curves curves, List<Curves.Curve> order, int index) {
        StringBuilder words = new StringBuilder();
        words.append(curves.axis().name())
                .append(' ')
                .append(curves.axis().unit().format(curves.axis().values().get(index), ValueText.DIGITS));
        for (Curves.Curve curve : order) {
            Double value = curve.values().get(index);
            words.append('\n').append(curve.name()).append(' ');
            words.append(value == null ? "no value" : curve.unit().format(value, ValueText.DIGITS));
            String side = curve.sides().words();
            if (curve.sides() != Sides.NOT_SIDED
                    && value != null
                    && !curve.name().contains(side)) {
                words.append(' ').append(side);
            }
            if (!curve.low().isEmpty()
                    && curve.low().get(index) != null
                    && curve.high().get(index) != null) {
                words.append(" (")
                        .append(curve.unit().format(curve.low().get(index), ValueText.DIGITS))
                        .append(" to ")
                        .append(curve.unit().format(curve.high().get(index), ValueText.DIGITS))
                        .append(')');
            }
        }
        return words.toString();
    }
}

package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * Several curves over one axis. All numbers are in the SI unit of their kind (radians for angles); the units say how to
 * show them.
 *
 * @param title what is drawn
 * @param axis the values along x
 * @param curves at least one, each with as many values as the axis
 * @param current where on the axis the present setting lies, in the SI unit; null if it lies on none
 * @param notes cautions and remarks that travel with the curves
 */
public record Curves(
        String title,
        Axis axis,
        List<Curve> curves,
        @Nullable Double current,
        List<String> notes) {

    /**
     * Copies the lists and checks their lengths.
     *
     * @throws IllegalArgumentException if there is no curve, or one whose length differs from the axis
     */
    public Curves {
        curves = List.copyOf(curves);
        notes = List.copyOf(notes);
        if (curves.isEmpty()) {
            throw new IllegalArgumentException("“" + title + "” needs at least one curve");
        }
        for (Curve curve : curves) {
            if (curve.values().size() != axis.values().size()) {
                throw new IllegalArgumentException("the curve “" + curve.name() + "” has "
                        + curve.values().size() + " values over an axis of "
                        + axis.values().size());
            }
        }
    }

    /**
     * The values along x, rising.
     *
     * @param name what varies, such as "Torso lean"
     * @param unit how it is shown
     * @param values in the SI unit, each larger than the one before
     */
    public record Axis(String name, Unit unit, List<Double> values) {
        /** Copies the values and checks that they rise. */
        public Axis {
            values = List.copyOf(values);
            for (int i = 0; i < values.size(); i++) {
                if (!Double.isFinite(values.get(i)) || (i > 0 && values.get(i) <= values.get(i - 1))) {
                    throw new IllegalArgumentException(
                            "the axis “" + name + "” needs finite values that rise; value " + (i + 1) + " does not");
                }
            }
        }

        /**
         * Returns which of the values stand in a table, counted from 0: all of a few; of more, both ends and others about evenly
         * between.
         *
         * @param most how many the table has room for, at least 2
         */
        public List<Integer> chosen(int most) {
            List<Integer> chosen = new ArrayList<>();
            int shown = Math.min(most, values.size());
            for (int i = 0; i < shown; i++) {
                chosen.add(shown == 1 ? 0 : (int) Math.round((double) i * (values.size() - 1) / (shown - 1)));
            }
            return chosen;
        }
    }

    /**
     * One curve. Where the model has no value (the lifter would fall, say) the entry is null and the curve has a gap.
     *
     * @param name what it shows, such as "hip extension moment"
     * @param unit how it is shown
     * @param sides per side, total or neither
     * @param values in the SI unit, one for each value of the axis; null is a gap
     * @param low lower ends of the band, with gaps where the values have them; empty if there is no band
     * @param high upper ends of the band, likewise
     */
    public record Curve(
            String name,
            Unit unit,
            Sides sides,
            List<@Nullable Double> values,
            List<@Nullable Double> low,
            List<@Nullable Double> high) {
        /** Copies the values and checks band and numbers. */
        public Curve {
            values = checked(name, values);
            low = checked(name, low);
            high = checked(name, high);
            boolean hasBand = !low.isEmpty() || !high.isEmpty();
            if (hasBand && (low.size() != values.size() || high.size() != values.size())) {
                throw new IllegalArgumentException("the band of the curve “" + name + "” needs as many values as it");
            }
        }

        /** Returns a curve without a band. */
        public static Curve of(String name, Unit unit, Sides sides, List<@Nullable Double> values) {
            return new Curve(name, unit, sides, values, List.of(), List.of());
        }

        private static List<@Nullable Double> checked(String name, List<@Nullable Double> values) {
            List<@Nullable Double> copy = new ArrayList<>(values.size());
            for (Double value : values) {
                if (value != null && !Double.isFinite(value)) {
                    throw new IllegalArgumentException(
                            "the curve “" + name + "” holds " + value + "; leave a gap where there is no value");
                }
                copy.add(value == null ? null : value + 0.0);
            }
            return Collections.unmodifiableList(copy);
        }
    }
}

package leverwright.face.draw;

import java.util.List;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/** One curve in words. */
final class CurveWords {
    private CurveWords() {}

    static String of(Curves curves, Curves.Curve curve) {
        List<@Nullable Double> values = curve.values();
        Unit axis = curves.axis().unit();
        int least = -1;
        int greatest = -1;
        int gaps = 0;
        for (int i = 0; i < values.size(); i++) {
            Double value = values.get(i);
            if (value == null) {
                gaps++;
            } else {
                least = least < 0 || value < orZero(values.get(least)) ? i : least;
                greatest = greatest < 0 || value > orZero(values.get(greatest)) ? i : greatest;
            }
        }
        String name = capital(ChartDrawing.name(curve));
        if (least < 0) {
            return name + ": no value anywhere on this range.";
        }
        if (gaps == values.size() - 1) {
            return name + ": " + place(curves, curve, least) + ".";
        }
        String words = name + ": least " + place(curves, curve, least) + ", greatest " + place(curves, curve, greatest);
        Double current = curves.current();
        Double now = current == null ? null : at(curves, curve, current);
        if (current != null && now != null) {
            words += ", at the present " + axis.format(current) + " "
                    + curve.unit().format(now, ValueText.DIGITS);
        }
        return words + (gaps == 0 ? "." : "; no value at " + gaps + " of " + values.size() + " settings.");
    }

    private static String capital(String name) {
        return name.isEmpty() ? "Curve" : Character.toUpperCase(name.charAt(0)) + name.substring(1);
    }

    private static String place(Curves curves, Curves.Curve curve, int index) {
        return curve.unit().format(orZero(curve.values().get(index)), ValueText.DIGITS) + " at "
                + curves.axis().unit().format(curves.axis().values().get(index));
    }

    /** The value at a setting, on the straight line between neighbours; null in a gap or outside. */
    static @Nullable Double at(Curves curves, Curves.Curve curve, double setting) {
        List<Double> axis = curves.axis().values();
        for (int i = 0; i + 1 < axis.size(); i++) {
            Double left = curve.values().get(i);
            Double right = curve.values().get(i + 1);
            if (axis.get(i) <= setting && setting <= axis.get(i + 1) && left != null && right != null) {
                double share = (setting - axis.get(i)) / (axis.get(i + 1) - axis.get(i));
                return left + share * (right - left);
            }
        }
        return null;
    }

    private static double orZero(@Nullable Double value) {
        return value == null ? 0 : value;
    }
}

package leverwright.face.desk.sheet;

import leverwright.face.draw.ValueText;
import leverwright.run.result.Quantity;

/** How a value and its band changed since a setting was held, in words. */
final class Change {

    private Change() {}

    /** Returns whether a value or its band is another than before. */
    static boolean isChange(Quantity before, Quantity now) {
        return before.value() != now.value() || before.low() != now.low() || before.high() != now.high();
    }

    /**
     * Returns the change with its sign, for example {@code "+4.6 N·m"}, and the band of before where that changed by itself;
     * "same" when every bit is.
     */
    static String words(Quantity before, Quantity now) {
        if (before.unit().dimension() != now.unit().dimension()) {
            return "";
        }
        double change = now.value() - before.value();
        if (!isChange(before, now)) {
            return "same";
        }
        if (change == 0) {
            return before.hasBand() ? "was " + ValueText.band(before) : "had no band";
        }
        String text = now.unit().format(change, ValueText.DIGITS - 1);
        return change > 0 ? "+" + text : text;
    }
}

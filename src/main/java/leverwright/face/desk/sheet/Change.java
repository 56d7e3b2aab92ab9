package leverwright.face.desk.sheet;

import leverwright.face.draw.ValueText;
import leverwright.run.result.Quantity;

/** How a value changed since a setting was held, in words. */
final class Change {

    private Change() {}

    /** Returns the change with its sign, for example {@code "+4.6 N·m"}; "same" when every bit is. */
    static String words(Quantity before, Quantity now) {
        if (before.unit().dimension() != now.unit().dimension()) {
            return "";
        }
        double change = now.value() - before.value();
        if (change == 0) {
            return "same";
        }
        String text = now.unit().format(change, ValueText.DIGITS - 1);
        return change > 0 ? "+" + text : text;
    }
}

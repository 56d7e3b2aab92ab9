package leverwright.face.desk.model;

import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import leverwright.mechanics.measure.MeasureText;
import leverwright.run.result.DialDeclared;
import org.jspecify.annotations.Nullable;

/** One dial as the window sees it; the same object as long as a script declares it. */
public final class DialView {

    private final String name;
    private final ReadOnlyObjectWrapper<DialDeclared> declared = new ReadOnlyObjectWrapper<>();
    private final ReadOnlyStringWrapper setting = new ReadOnlyStringWrapper("");
    private final ReadOnlyDoubleWrapper value = new ReadOnlyDoubleWrapper();
    private final ReadOnlyDoubleWrapper halfWidth = new ReadOnlyDoubleWrapper();
    private final ReadOnlyBooleanWrapper byHand = new ReadOnlyBooleanWrapper();
    private final ReadOnlyStringWrapper error = new ReadOnlyStringWrapper("");

    DialView(DialDeclared dial, @Nullable String chosen) {
        name = dial.name();
        take(dial, chosen);
    }

    /** Returns the dial's name as people read it. */
    public String name() {
        return name;
    }

    /** Returns the dial as its script declared it last: range, step, unit and the script's own value. */
    public ReadOnlyObjectProperty<DialDeclared> declared() {
        return declared.getReadOnlyProperty();
    }

    /** Returns the setting as people write it, for example {@code "45 deg"}; follows the hand at once. */
    public ReadOnlyStringProperty setting() {
        return setting.getReadOnlyProperty();
    }

    /** Returns the setting in SI units; follows the hand at once. */
    public ReadOnlyDoubleProperty value() {
        return value.getReadOnlyProperty();
    }

    /** Returns the half width of the band that the setting has, in SI units; 0 for none. Follows the hand at once. */
    public ReadOnlyDoubleProperty halfWidth() {
        return halfWidth.getReadOnlyProperty();
    }

    /** Returns whether the dial was set by hand; otherwise it stands where its script puts it. */
    public ReadOnlyBooleanProperty byHand() {
        return byHand.getReadOnlyProperty();
    }

    /** Returns why the text last typed was not taken, in words; empty when it was. */
    public ReadOnlyStringProperty error() {
        return error.getReadOnlyProperty();
    }

    void take(DialDeclared dial, @Nullable String chosen) {
        declared.set(dial);
        choose(chosen);
    }

    /** Follows the hand; null goes back to the script's own value. */
    void choose(@Nullable String chosen) {
        DialDeclared dial = declared.get();
        byHand.set(chosen != null);
        if (chosen == null) {
            setting.set(DialText.of(dial.standard()));
            value.set(dial.standard().value());
            halfWidth.set(DialText.halfWidth(dial, setting.get()));
            return;
        }
        setting.set(chosen);
        halfWidth.set(DialText.halfWidth(dial, chosen));
        try {
            value.set(MeasureText.parse(chosen, dial.standard().unit().dimension())
                    .si());
        } catch (IllegalArgumentException unreadable) {
            // The file holds a setting that is no longer one; the script that declares the dial says so itself.
            value.set(dial.setting().value());
        }
    }

    void complain(String words) {
        error.set(words);
    }
}

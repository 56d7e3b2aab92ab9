package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;

/**
 * A typed setting of an exercise: what it means, in which range it may be set, and where it stands when nobody sets it.
 *
 * <p>An exercise may use a knob with a default of its own; it stays the same knob.
 *
 * @param <Q> the kind of quantity that it sets
 */
public final class Knob<Q extends Measure<Q>> {
    /** The same for all defaults of one knob. */
    private final Object key;

    private final String name;
    private final Unit unit;
    private final Q least;
    private final Q most;
    private final Q standard;
    private final String meaning;
    private final String reason;

    /**
     * Makes a knob.
     *
     * @param name as a reader would say it, such as "Torso lean"
     * @param unit in which it is printed
     * @param least lower end of its range
     * @param most upper end of its range
     * @param standard its value when nobody sets it
     * @param meaning what is measured, from where, which way is positive
     * @param reason why it starts there
     * @throws IllegalArgumentException if the default lies outside the range
     */
    Knob(String name, Unit unit, Q least, Q most, Q standard, String meaning, String reason) {
        this(new Object(), name, unit, least, most, standard, meaning, reason);
    }

    private Knob(Object key, String name, Unit unit, Q least, Q most, Q standard, String meaning, String reason) {
        this.key = key;
        this.name = name;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.standard = standard;
        this.meaning = meaning;
        this.reason = reason;
        checked(standard);
    }

    /** Returns the same knob with another default, for one exercise. */
    Knob<Q> startingAt(Q other, String why) {
        return new Knob<>(key, name, unit, least, most, other, meaning, why);
    }

    /** Returns its name, such as "Torso lean". */
    public String name() {
        return name;
    }

    /** Returns the unit it is printed in. */
    public Unit unit() {
        return unit;
    }

    /** Returns the lower end of its range. */
    public Q least() {
        return least;
    }

    /** Returns the upper end of its range. */
    public Q most() {
        return most;
    }

    /** Returns where it stands when nobody sets it. */
    public Q standard() {
        return standard;
    }

    /** Returns what it means: from where it is measured and which way is positive. */
    public String meaning() {
        return meaning;
    }

    /** Returns why its default is what it is. */
    public String reason() {
        return reason;
    }

    /**
     * Returns a value that may be set, its band included.
     *
     * @throws IllegalArgumentException if the value or an end of its band lies outside the range
     */
    Q checked(Q value) {
        if (value.si() - value.error() < least.si() || value.si() + value.error() > most.si()) {
            throw new IllegalArgumentException(name + " is " + text(value) + "; allowed: " + range()
                    + ". Choose a value in that range. (" + name + " means: " + meaning + ")");
        }
        return value;
    }

    /**
     * Returns the value in SI units if it may be set.
     *
     * @throws IllegalArgumentException if it lies outside the range
     */
    double checked(double si) {
        return checked(standard.with(si, 0)).si();
    }

    /** Returns the range in words, such as "−10° to 90°". */
    public String range() {
        return text(least) + " to " + text(most);
    }

    /** Returns a value in this knob's unit. */
    public String text(Q value) {
        return MeasureText.exact(value, unit);
    }

    /** What makes a knob the same knob, whatever its range and default in one exercise: compared by identity. */
    Object key() {
        return key;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Knob<?> knob && knob.key == key;
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }

    @Override
    public String toString() {
        return name;
    }
}

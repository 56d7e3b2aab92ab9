package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.measure.Measure;

/** What is set on an exercise: a value for every knob, whether somebody gave it, and the choices made; immutable. */
final class Settings {
    private final List<Knob<?>> knobs;
    /** The knobs' keys: an exercise looks its knobs up often. */
    private final Object[] keys;

    private final double[] values;
    private final double[] errors;
    private final boolean[] given;
    private final List<Enum<?>> choices;
    /** Loads beside the exercise's own, in the order in which they were added. */
    private final List<LoadRule> added;

    /** Knobs that follow another one, and which of them do at the moment. */
    private final List<Follow> follows;

    private final boolean[] followed;

    /** A knob, by its index, that goes from one value to another while its driver does. */
    private record Follow(int driver, InStep way, int follower) {
        double at(double setting) {
            double part = (setting - way.driverFrom()) / (way.driverTo() - way.driverFrom());
            return way.from() + Math.max(0, Math.min(1, part)) * (way.to() - way.from());
        }
    }

    private Settings(
            List<Knob<?>> knobs,
            Object[] keys,
            double[] values,
            double[] errors,
            boolean[] given,
            List<Enum<?>> choices,
            List<LoadRule> added,
            List<Follow> follows,
            boolean[] followed) {
        this.knobs = knobs;
        this.keys = keys;
        this.values = values;
        this.errors = errors;
        this.given = given;
        this.choices = choices;
        this.added = added;
        this.follows = follows;
        this.followed = followed;
    }

    /** Returns the settings where every knob stands at its default and none is given. */
    static Settings of(List<Knob<?>> knobs) {
        double[] values = new double[knobs.size()];
        double[] errors = new double[knobs.size()];
        for (int k = 0; k < values.length; k++) {
            values[k] = knobs.get(k).standard().si();
            errors[k] = knobs.get(k).standard().error();
        }
        return new Settings(
                List.copyOf(knobs),
                knobs.stream().map(Knob::key).toArray(),
                values,
                errors,
                new boolean[values.length],
                List.of(),
                List.of(),
                List.of(),
                new boolean[values.length]);
    }

    /** Returns these settings with another knob; one that is there already takes the new one's default if nobody set it. */
    Settings withKnob(Knob<?> knob) {
        List<Knob<?>> more = new ArrayList<>(knobs);
        int at = find(knob);
        if (at < 0) {
            more.add(knob);
        } else {
            more.set(at, knob);
        }
        Settings wider = of(more);
        for (int k = 0; k < values.length; k++) {
            if (given[k]) {
                wider = wider.changed(k, values[k], errors[k], true);
            }
        }
        return new Settings(
                wider.knobs,
                wider.keys,
                wider.values,
                wider.errors,
                wider.given,
                choices,
                added,
                follows,
                Arrays.copyOf(followed, wider.values.length));
    }

    List<Knob<?>> knobs() {
        return knobs;
    }

    /**
     * Returns the index of a knob.
     *
     * @throws IllegalArgumentException if the exercise has no such knob; the message lists those it has
     */
    int indexOf(Knob<?> knob) {
        int index = find(knob);
        if (index >= 0) {
            return index;
        }
        List<String> names = new ArrayList<>();
        knobs.forEach(each -> names.add(each.name()));
        throw new IllegalArgumentException(
                "this exercise has no knob \"" + knob.name() + "\"; it has: " + String.join(", ", names));
    }

    private int find(Knob<?> knob) {
        Object wanted = knob.key();
        for (int k = 0; k < keys.length; k++) {
            if (keys[k] == wanted) {
                return k;
            }
        }
        return -1;
    }

    <Q extends Measure<Q>> Settings with(Knob<Q> knob, Q value) {
        int index = indexOf(knob);
        this.<Q>own(index).checked(value);
        return changed(index, value.si(), value.error(), true);
    }

    @SuppressWarnings("unchecked") // knobs with equal names set the same kind of quantity
    private <Q extends Measure<Q>> Knob<Q> own(int index) {
        return (Knob<Q>) knobs.get(index);
    }

    /** Returns these settings with a bare SI value, without error, in the knob's place. */
    Settings withSi(int index, double si) {
        return changed(index, knobs.get(index).checked(si), 0, true);
    }

    /** Returns these settings with a value moved within its own band; whether it was given stays. */
    Settings moved(int index, double si) {
        return changed(index, si, 0, given[index]);
    }

    Settings without(Knob<?> knob) {
        int index = indexOf(knob);
        Measure<?> standard = knobs.get(index).standard();
        return changed(index, standard.si(), standard.error(), false);
    }

    private Settings changed(int index, double si, double error, boolean byHand) {
        double[] newValues = values.clone();
        double[] newErrors = errors.clone();
        boolean[] newGiven = given.clone();
        newValues[index] = si;
        newErrors[index] = error;
        newGiven[index] = byHand;
        if (follows.isEmpty()) {
            return new Settings(knobs, keys, newValues, newErrors, newGiven, choices, added, follows, followed);
        }
        boolean[] newFollowed = followed.clone();
        newFollowed[index] = false;
        Settings next = new Settings(knobs, keys, newValues, newErrors, newGiven, choices, added, follows, newFollowed);
        next.release(index);
        next.follow();
        return next;
    }

    /**
     * Returns these settings with a knob that goes from one value to another while another one does; where somebody set it, or
     * another angle that balance could decide, it stays.
     */
    Settings following(InStep way) {
        List<Follow> more = new ArrayList<>(follows);
        int follower = indexOf(way.knob());
        more.removeIf(each -> each.follower() == follower);
        more.add(new Follow(indexOf(way.driver()), way, follower));
        knobs.get(follower).checked(way.from());
        knobs.get(follower).checked(way.to());
        Settings next = new Settings(
                knobs,
                keys,
                values.clone(),
                errors.clone(),
                given.clone(),
                choices,
                added,
                List.copyOf(more),
                followed.clone());
        next.follow();
        return next;
    }

    /** Lets an angle go that follows, where another one was set by hand and balance needs its freedom; used while building. */
    private void release(int index) {
        if (!Stance.ANGLES.contains(knobs.get(index)) || follows.stream().anyMatch(each -> each.driver() == index)) {
            return;
        }
        for (Follow each : follows) {
            int follower = each.follower();
            if (followed[follower] && Stance.ANGLES.contains(knobs.get(follower))) {
                followed[follower] = false;
                given[follower] = false;
                values[follower] = knobs.get(follower).standard().si();
            }
        }
    }

    /** Puts the knobs that follow where they belong; used while building. */
    private void follow() {
        for (Follow each : follows) {
            int k = each.follower();
            if ((!given[k] || followed[k]) && !standsInTheWay(each)) {
                values[k] = each.at(values[each.driver()]);
                errors[k] = 0;
                given[k] = true;
                followed[k] = true;
            }
        }
    }

    /** Tells whether somebody set an angle beside the driver, so that balance has no more than one to find. */
    private boolean standsInTheWay(Follow follow) {
        if (!Stance.ANGLES.contains(knobs.get(follow.follower()))) {
            return false;
        }
        for (int k = 0; k < given.length; k++) {
            boolean other = k != follow.driver() && k != follow.follower();
            if (other && given[k] && !followed[k] && Stance.ANGLES.contains(knobs.get(k))) {
                return true;
            }
        }
        return false;
    }

    double si(Knob<?> knob) {
        return values[indexOf(knob)];
    }

    double si(int index) {
        return values[index];
    }

    double error(int index) {
        return errors[index];
    }

    boolean given(Knob<?> knob) {
        return given[indexOf(knob)];
    }

    boolean given(int index) {
        return given[index];
    }

    boolean has(Knob<?> knob) {
        return find(knob) >= 0;
    }

    <Q extends Measure<Q>> Q get(Knob<Q> knob) {
        int index = indexOf(knob);
        return knob.standard().with(values[index], errors[index]);
    }

    /** Returns the indices of the knobs whose value carries an error. */
    List<Integer> uncertain() {
        List<Integer> indices = new ArrayList<>();
        for (int k = 0; k < errors.length; k++) {
            if (errors[k] > 0) {
                indices.add(k);
            }
        }
        return indices;
    }

    /** Returns these settings with a choice made; a former choice of the same kind is replaced. */
    Settings choose(Enum<?> choice) {
        List<Enum<?>> others = new ArrayList<>(choices);
        others.removeIf(other -> other.getDeclaringClass() == choice.getDeclaringClass());
        others.add(choice);
        return new Settings(knobs, keys, values, errors, given, List.copyOf(others), added, follows, followed);
    }

    /** Returns these settings with one more load beside the exercise's own. */
    Settings adding(LoadRule load) {
        List<LoadRule> more = new ArrayList<>(added);
        more.add(load);
        return new Settings(knobs, keys, values, errors, given, choices, List.copyOf(more), follows, followed);
    }

    List<LoadRule> added() {
        return added;
    }

    /** Returns the choice made, or the given one if none of its kind was made. */
    <C extends Enum<C>> C choice(C standard) {
        for (Enum<?> choice : choices) {
            if (choice.getDeclaringClass() == standard.getDeclaringClass()) {
                return standard.getDeclaringClass().cast(choice);
            }
        }
        return standard;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Settings that
                && knobs.equals(that.knobs)
                && Arrays.equals(values, that.values)
                && Arrays.equals(errors, that.errors)
                && Arrays.equals(given, that.given)
                && choices.equals(that.choices)
                && added.equals(that.added)
                && follows.equals(that.follows);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(values) * 31 + choices.hashCode();
    }
}

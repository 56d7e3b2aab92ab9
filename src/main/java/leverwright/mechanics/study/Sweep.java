package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.Measure;

/**
 * One knob, or another variable, turned through a range, everything else set the same; immutable.
 *
 * <pre>{@code
 * sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(hinge.by(ines)).curves(moment(HIP), tiltRule(HIP))
 * sweep(lengthOf(THIGH)).from(cm(36)).to(cm(48)).step(cm(1)).of(squat.by(ines)).family(THIGH_ABOVE_LEVEL, deg(0), deg(30))
 * }</pre>
 *
 * @param <Q> the kind of quantity that is turned
 */
public final class Sweep<Q extends Measure<Q>> {
    /** How many settings a sweep has unless it says otherwise, both ends counted. */
    public static final int POINTS = 200;
    /** Greatest number of settings of a sweep. */
    public static final int MOST_POINTS = StudySize.MOST;

    private final Variable<Q> turned;
    private final Q from;
    private final Q to;
    private final Places.Spacing spacing;
    private final List<Double> listed;

    private Sweep(Variable<Q> turned, Q from, Q to, Places.Spacing spacing, List<Double> listed) {
        this.turned = turned;
        this.from = from;
        this.to = to;
        this.spacing = spacing;
        this.listed = listed;
    }

    /** Begins a sweep of a knob over its whole range. */
    public static <Q extends Measure<Q>> Sweep<Q> sweep(Knob<Q> knob) {
        return sweep(Variable.of(knob));
    }

    /** Begins a sweep of a variable, such as a length of the lifter, over its whole range. */
    public static <Q extends Measure<Q>> Sweep<Q> sweep(Variable<Q> variable) {
        return new Sweep<>(variable, variable.least(), variable.most(), new Places.Spacing(0, 0, false), List.of());
    }

    /** Returns this sweep from another lower end; it is checked when the sweep is made. */
    public Sweep<Q> from(Q least) {
        return new Sweep<>(turned, least, to, spacing, List.of());
    }

    /** Returns this sweep to another upper end; it is checked when the sweep is made. */
    public Sweep<Q> to(Q most) {
        return new Sweep<>(turned, from, most, spacing, List.of());
    }

    /**
     * Returns this sweep with another number of settings, both ends counted.
     *
     * @throws IllegalArgumentException if there are fewer than 2 or more than {@link #MOST_POINTS}
     */
    public Sweep<Q> points(double count) {
        StudySize.check(count, 2, "a sweep");
        return spaced(new Places.Spacing(count, 0, spacing.logarithmic()));
    }

    /**
     * Returns this sweep by a step: from the lower end as far as whole steps reach.
     *
     * @throws IllegalArgumentException if the step is not above zero
     */
    public Sweep<Q> step(Q step) {
        if (!(step.si() > 0)) {
            throw new IllegalArgumentException(
                    "the step of a sweep is " + turned.text(step.si()) + "; allowed: more than zero");
        }
        return spaced(new Places.Spacing(0, step.si(), false));
    }

    /** Returns this sweep with neighbours in equal ratios, as on a logarithmic scale; both ends lie above zero. */
    public Sweep<Q> logarithmic() {
        return spaced(new Places.Spacing(spacing.points(), 0, true));
    }

    private Sweep<Q> spaced(Places.Spacing other) {
        return new Sweep<>(turned, from, to, other, List.of());
    }

    /**
     * Returns this sweep at listed settings.
     *
     * @param settings at least 2, rising
     * @throws IllegalArgumentException if there are fewer, or they do not rise or leave the variable's range
     */
    @SafeVarargs
    public final Sweep<Q> at(Q... settings) {
        List<Double> values = new ArrayList<>();
        for (Q setting : settings) {
            boolean rises = values.isEmpty() || setting.si() > values.get(values.size() - 1);
            if (!rises
                    || setting.si() < turned.least().si()
                    || setting.si() > turned.most().si()) {
                throw new IllegalArgumentException("a sweep of " + turned + " has the setting "
                        + turned.text(setting.si()) + "; allowed: settings that rise within "
                        + turned.text(turned.least().si()) + " to "
                        + turned.text(turned.most().si()));
            }
            values.add(setting.si());
        }
        if (values.size() < 2) {
            throw new IllegalArgumentException(
                    "a sweep of " + turned + " has " + values.size() + " listed settings; allowed: 2 or more, rising");
        }
        return new Sweep<>(turned, from, to, spacing, List.copyOf(values));
    }

    /**
     * Returns the sweep of a performance, ready to be read.
     *
     * @throws IllegalArgumentException if the ends do not rise or leave the range, or if the exercise does not have the knob
     */
    public Swept of(Performance performance) {
        return Swept.of(performance, turned, places(performance, POINTS));
    }

    /** Returns what is turned. */
    Variable<Q> turned() {
        return turned;
    }

    /**
     * Returns the settings.
     *
     * @param performance what is swept
     * @param unsaid how many there are where the sweep says neither number, step nor list
     * @throws IllegalArgumentException as {@link #of(Performance)} does
     */
    Places places(Performance performance, int unsaid) {
        Places places = listed.isEmpty() ? spacing.between(turned, from, to, unsaid) : Places.listed(listed);
        if (!turned.isOf(performance)) {
            turned.set(performance, places.from());
        }
        return places;
    }
}

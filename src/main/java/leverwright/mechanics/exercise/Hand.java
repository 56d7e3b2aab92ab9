package leverwright.mechanics.exercise;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Supplier;
import leverwright.mechanics.body.Body;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;
import org.jspecify.annotations.Nullable;

/**
 * Writes a hand calculation of a posture: each quantity is asked for by name and adds, once, the steps that lead to it.
 *
 * <p>Names: {@code x_hip}, {@code y_hip} places of joints; {@code x_thigh} places of mass centres; {@code θ_thigh} leans;
 * {@code L_thigh} lengths; {@code c_thigh} mass centres; {@code m_thigh} masses, both sides; {@code p}, {@code h} knobs.
 */
final class Hand {
    private final Layout layout;
    private final Skeleton skeleton;
    private final Map<String, Expression.Symbol> known = new LinkedHashMap<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();

    Hand(Layout layout) {
        this.layout = layout;
        this.skeleton = layout.body();
    }

    /** Returns the steps so far, in the order in which they were added. */
    List<Step> steps() {
        return List.copyOf(steps.values());
    }

    /**
     * Returns the steps that lead to some results, each after those that it needs. What else was calculated, and when, plays
     * no part in their order.
     */
    List<Step> leadingTo(List<Expression.Symbol> results) {
        Map<String, Step> needed = new LinkedHashMap<>();
        for (Expression.Symbol result : results) {
            collect(result.name(), needed);
        }
        return List.copyOf(needed.values());
    }

    private void collect(String name, Map<String, Step> needed) {
        Step step = steps.get(name);
        if (step == null || needed.containsKey(name)) {
            return;
        }
        Expression formula = step.expression();
        if (formula != null) {
            HandNames.in(formula, used -> collect(used, needed));
        }
        needed.put(name, step);
    }

    /** Standard gravity. */
    Expression gravity() {
        return Expression.exact("g", Measures.STANDARD_GRAVITY, "standard gravity, 3rd CGPM 1901");
    }

    /** Returns an input with its source; it needs no step of its own. */
    Expression.Symbol input(String name, Measure<?> value, String source) {
        return input(name, value, () -> source);
    }

    /** Returns an input whose source is put into words only the first time. */
    Expression.Symbol input(String name, Measure<?> value, Supplier<String> source) {
        Expression.Symbol before = known.get(name);
        if (before != null) {
            return before;
        }
        Expression.Symbol input = Expression.symbol(name, value, source.get());
        known.put(name, input);
        return input;
    }

    /** Returns the result of a step, which is added the first time. */
    Expression.Symbol step(String name, Expression formula, Measure<?> value, String source) {
        Expression.Symbol before = known.get(name);
        if (before != null) {
            return before;
        }
        Step step = Step.of(name, formula, value, source);
        steps.put(name, step);
        Expression.Symbol result = step.result();
        known.put(name, result);
        return result;
    }

    /** Returns what a name stands for, if it was calculated or put in. */
    Expression.@Nullable Symbol known(String name) {
        return known.get(name);
    }

    private static Length metres(double value) {
        return Length.of(value);
    }

    static String name(Joint joint) {
        return joint.name().toLowerCase(Locale.ROOT);
    }

    static String name(Segment segment) {
        return segment.name().toLowerCase(Locale.ROOT);
    }

    /** The lean of a segment, as set, found or following. */
    Expression.Symbol lean(Segment segment) {
        return input("θ_" + name(segment), Angle.of(layout.lean(segment)), () -> {
            String what = segment == Segment.FOOT ? "pitch of the foot, toes down" : "lean of the " + segment.words();
            return what + "; " + Sources.clean(layout.origin(segment));
        });
    }

    /** The length of a segment. */
    Expression.Symbol length(Segment segment) {
        return input(
                "L_" + name(segment),
                metres(skeleton.length(segment)),
                () -> "length of the " + segment.words() + "; "
                        + Sources.of(skeleton.body().number(segment, Body.Property.LENGTH)));
    }

    private Expression.Symbol place(String name, Landmark landmark, double value) {
        return input(
                name,
                metres(value),
                () -> landmark.words() + "; " + Sources.of(skeleton.body().number(landmark)));
    }

    /** x of a joint. */
    Expression.Symbol x(Joint joint) {
        return joint(joint, true);
    }

    /** y of a joint. */
    Expression.Symbol y(Joint joint) {
        return joint(joint, false);
    }

    private Expression.Symbol joint(Joint joint, boolean isX) {
        String name = (isX ? "x_" : "y_") + name(joint);
        Expression.Symbol before = known.get(name);
        if (before != null) {
            return before;
        }
        double value = isX ? layout.jointX(joint) : layout.jointY(joint);
        if (isSeated() && joint == Joint.KNEE) {
            return input(name, metres(value), isX ? "the knee, from which x counts" : "height of the knee on the seat");
        }
        return step(name, jointFormula(joint, isX), metres(value), "");
    }

    private Expression jointFormula(Joint joint, boolean isX) {
        return switch (joint) {
            case ANKLE ->
                isSeated()
                        ? belowKnee(length(Segment.SHANK), isX)
                        : onFoot(
                                place("a_ankle", Landmark.ANKLE_FROM_HEEL, skeleton.ankleAlong()),
                                place("b_ankle", Landmark.ANKLE_HEIGHT, skeleton.ankleAcross()),
                                isX);
            case KNEE -> along(Segment.SHANK, Joint.ANKLE, length(Segment.SHANK), isX);
            case HIP -> along(Segment.THIGH, Joint.KNEE, length(Segment.THIGH), isX);
            case LOW_BACK ->
                along(
                        Segment.TRUNK,
                        Joint.HIP,
                        place("L_low_back", Landmark.LOW_BACK_ABOVE_HIP, skeleton.lowBackAlong()),
                        isX);
            case NECK ->
                along(
                        Segment.TRUNK,
                        Joint.HIP,
                        input("L_neck", metres(skeleton.neckAlong()), "neck above the hip; segment table"),
                        isX);
            case SHOULDER -> along(Segment.TRUNK, Joint.HIP, length(Segment.TRUNK), isX);
            case ELBOW -> along(Segment.UPPER_ARM, Joint.SHOULDER, length(Segment.UPPER_ARM), isX);
            case WRIST -> along(Segment.FOREARM, Joint.ELBOW, length(Segment.FOREARM), isX);
        };
    }

    /** Whether a seat holds the knee, from which the leg then hangs. */
    private boolean isSeated() {
        return layout.support() == Layout.Support.SEAT;
    }

    private Expression belowKnee(Expression distance, boolean isX) {
        Expression lean = lean(Segment.SHANK);
        Expression part = isX ? Expression.sine(lean) : Expression.cosine(lean);
        return joint(Joint.KNEE, isX).minus(distance.times(part));
    }

    /** The foot's mass centre from the ankle, for a leg that hangs. */
    private Expression footFromAnkle(Expression along, Expression above) {
        Expression ahead = along.minus(place("a_ankle", Landmark.ANKLE_FROM_HEEL, skeleton.ankleAlong()));
        Expression higher = above.minus(place("b_ankle", Landmark.ANKLE_HEIGHT, skeleton.ankleAcross()));
        return x(Joint.ANKLE)
                .plus(ahead.times(Expression.cosine(lean(Segment.FOOT))))
                .plus(higher.times(Expression.sine(lean(Segment.FOOT))));
    }

    /** A place on the foot, along the sole and above it: the foot pitches about its toes when the heel stands on a wedge. */
    private Expression onFoot(Expression along, Expression above, boolean isX) {
        if (layout.lean(Segment.FOOT) == 0) {
            return isX ? along : above;
        }
        Expression sine = Expression.sine(lean(Segment.FOOT));
        Expression cosine = Expression.cosine(lean(Segment.FOOT));
        if (isX) {
            return along.times(cosine).plus(above.times(sine));
        }
        Expression heel = input("h_heel", metres(layout.startY(Segment.FOOT)), "height of the heel above the floor");
        return heel.minus(along.times(sine)).plus(above.times(cosine));
    }

    /** A place on a segment at a distance from the joint where it starts. */
    Expression along(Segment segment, Joint from, Expression distance, boolean isX) {
        if (isX) {
            return x(from).plus(distance.times(Expression.sine(lean(segment))));
        }
        Expression height = distance.times(Expression.cosine(lean(segment)));
        return Layout.isArm(segment) ? y(from).minus(height) : y(from).plus(height);
    }

    /** The joint at a segment's start, going up from the feet and out along the arms. */
    static Joint startOf(Segment segment) {
        return switch (segment) {
            case FOOT, SHANK -> Joint.ANKLE;
            case THIGH -> Joint.KNEE;
            case TRUNK -> Joint.HIP;
            case UPPER_ARM -> Joint.SHOULDER;
            case FOREARM -> Joint.ELBOW;
            case HAND -> Joint.WRIST;
        };
    }

    /** How the middle of the hands' grip follows from the wrist. */
    Expression gripFormula(boolean isX) {
        Expression.Symbol grip = place("L_grip", Landmark.GRIP_FROM_WRIST, skeleton.gripAlong());
        return along(Segment.HAND, Joint.WRIST, grip, isX);
    }

    /** x of the middle of the hands' grip. */
    Expression.Symbol gripX() {
        return step("x_grip", gripFormula(true), metres(layout.gripX()), "the hands");
    }

    /** y of the middle of the hands' grip. */
    Expression.Symbol gripY() {
        return step("y_grip", gripFormula(false), metres(layout.gripY()), "the hands");
    }

    /** The chosen centre of pressure. */
    Expression.Symbol pressure() {
        Expression.Symbol part = input(
                "p",
                Ratio.of(layout.pressureX() / skeleton.length(Segment.FOOT)),
                "chosen centre of pressure, of the foot's length from the heel");
        return step("x_pressure", part.times(length(Segment.FOOT)), metres(layout.pressureX()), "");
    }

    /** The mass of a piece of the body, both sides. */
    Expression.Symbol mass(Part part) {
        return input("m_" + part.symbol(), Mass.of(part.mass()), part.massSource());
    }

    /** x of the mass centre of a piece of the body. */
    Expression.Symbol x(Part part) {
        String name = "x_" + part.symbol();
        Expression.Symbol before = known.get(name);
        if (before != null) {
            return before;
        }
        Segment on = part.on();
        double value = part.whole() ? layout.centreX(on) : layout.alongX(on, part.centre());
        return step(name, centreFormula(part), metres(value), "");
    }

    private Expression centreFormula(Part part) {
        Segment on = part.on();
        boolean turned = part.whole() && Skeleton.isTurned(on);
        double stated = turned ? skeleton.length(on) - part.centre() : part.centre();
        Expression.Symbol centre = input(
                "c_" + part.symbol(),
                metres(stated),
                () -> "mass centre " + part.centreSource().get());
        if (on == Segment.FOOT) {
            Expression above = place("b_foot", Landmark.FOOT_CENTRE_HEIGHT, skeleton.footCentreAcross());
            return isSeated() ? footFromAnkle(centre, above) : onFoot(centre, above, true);
        }
        if (turned) {
            Joint end = on == Segment.SHANK ? Joint.KNEE : Joint.HIP;
            return x(end).minus(centre.times(Expression.sine(lean(on))));
        }
        return along(on, startOf(on), centre, true);
    }

    /** The mass of something that hangs or rests on the body. */
    Expression.Symbol mass(Load load) {
        return input("m_" + load.symbol(), Mass.of(load.mass()), load.name() + "; " + load.source());
    }

    /** x of a load. */
    Expression.Symbol x(Load load) {
        return step("x_" + load.symbol(), load.formulaX().in(this), metres(load.x()), "");
    }

    /** y of a load. */
    Expression.Symbol y(Load load) {
        return step("y_" + load.symbol(), load.formulaY().in(this), metres(load.y()), "");
    }

    /** Forward part of a load, both sides. */
    Expression.Symbol forceX(Load load) {
        return step(
                "Fx_" + load.symbol(),
                load.formulaForceX().in(this),
                Force.of(load.forceX()),
                load.name() + ", forward");
    }

    /** Upward part of a load, both sides. */
    Expression.Symbol forceY(Load load) {
        return step(
                "Fy_" + load.symbol(), load.formulaForceY().in(this), Force.of(load.forceY()), load.name() + ", up");
    }
}

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
import leverwright.mechanics.measure.Acceleration;
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
    private final HandPlaces places;
    private final Map<String, Expression.Symbol> known = new LinkedHashMap<>();
    private final Map<String, Step> steps = new LinkedHashMap<>();

    Hand(Layout layout) {
        this.layout = layout;
        this.skeleton = layout.body();
        this.places = new HandPlaces(this, layout);
    }

    HandPlaces places() {
        return places;
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
    Expression wholeGravity() {
        return Expression.exact("g", Measures.STANDARD_GRAVITY, "standard gravity, 3rd CGPM 1901");
    }

    /** Gravity as it acts in the plane. */
    Expression gravity() {
        Expression whole = wholeGravity();
        if (layout.gravityShare() == 1) {
            return whole;
        }
        if (layout.gravityShare() == 0) {
            return input(
                    "g_plane",
                    Acceleration.of(0),
                    "gravity acts square to the plane of movement, none of it in the plane");
        }
        Expression tilt = input("α_plane", Angle.of(layout.gravityTilt()), "tilt of the plane from the vertical; set");
        return step(
                "g_plane",
                whole.times(Expression.cosine(tilt)),
                Acceleration.of(layout.gravity()),
                "gravity's part in the plane of movement");
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
        return lean(Member.of(segment));
    }

    /** The lean of a member, as set, found or following. */
    Expression.Symbol lean(Member member) {
        return input("θ_" + member.symbol(), Angle.of(layout.lean(member)), () -> {
            String what =
                    member.segment() == Segment.FOOT ? "pitch of the foot, toes down" : "lean of the " + member.words();
            return what + "; " + Sources.clean(layout.origin(member));
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
        return joint(joint, false, true);
    }

    /** y of a joint. */
    Expression.Symbol y(Joint joint) {
        return joint(joint, false, false);
    }

    /** x or y of a joint of the reported or the other side. */
    Expression.Symbol joint(Joint joint, boolean other, boolean isX) {
        boolean itsOwn = other && places.hasOwn(joint);
        String name = (isX ? "x_" : "y_") + (itsOwn ? "other_" : "") + name(joint);
        Expression.Symbol before = known.get(name);
        if (before != null) {
            return before;
        }
        double value = isX ? layout.jointX(joint, itsOwn) : layout.jointY(joint, itsOwn);
        if (places.isGiven(joint, itsOwn)) {
            return input(name, metres(value), places.givenWords(joint, isX));
        }
        return step(name, places.formula(joint, itsOwn, isX), metres(value), "");
    }

    /** The place of the anchor that is no joint: heel or grip, or of what lies in the middle between two joints. */
    Expression.Symbol place(String what, double value, String words) {
        return input(what, metres(value), words);
    }

    /** The middle of the trunk's lower end, from which hips lie apart. */
    Expression.Symbol middle(String what, Expression formula, double value) {
        return step(what, formula, metres(value), "");
    }

    Expression.Symbol ankleAlong() {
        return place("a_ankle", Landmark.ANKLE_FROM_HEEL, layout.ankleAlong());
    }

    Expression.Symbol ankleAcross() {
        return place("b_ankle", Landmark.ANKLE_HEIGHT, skeleton.ankleAcross());
    }

    Expression.Symbol lowBackAlong() {
        return place("L_low_back", Landmark.LOW_BACK_ABOVE_HIP, skeleton.lowBackAlong());
    }

    Expression.Symbol neckAlong() {
        return input("L_neck", metres(skeleton.neckAlong()), "neck above the hip; segment table");
    }

    Expression.Symbol gripAlong() {
        return place("L_grip", Landmark.GRIP_FROM_WRIST, skeleton.gripAlong());
    }

    /** The foot's mass centre from the ankle, for a leg that hangs. */
    private Expression footFromAnkle(Member foot, Expression along, Expression above) {
        Expression ahead = along.minus(ankleAlong());
        Expression higher = above.minus(ankleAcross());
        return joint(Joint.ANKLE, foot.isOther(), true)
                .plus(ahead.times(Expression.cosine(lean(foot))))
                .plus(higher.times(Expression.sine(lean(foot))));
    }

    /** A place on the foot, along the sole and above it: the foot pitches about its toes when the heel stands on a wedge. */
    Expression onFoot(Member foot, Expression along, Expression above, boolean isX) {
        if (layout.lean(foot) == 0) {
            return fromHeel(isX ? along : above, foot, isX);
        }
        Expression sine = Expression.sine(lean(foot));
        Expression cosine = Expression.cosine(lean(foot));
        if (isX) {
            return fromHeel(along.times(cosine).plus(above.times(sine)), foot, true);
        }
        Expression heel = input("h_heel", metres(layout.startY(foot)), "height of the heel above the floor");
        return heel.minus(along.times(sine)).plus(above.times(cosine));
    }

    private Expression fromHeel(Expression distance, Member foot, boolean isX) {
        double heel = isX ? layout.startX(foot) : layout.startY(foot);
        return heel == 0
                ? distance
                : input(isX ? "x_heel" : "h_heel", metres(heel), "the heel; set")
                        .plus(distance);
    }

    /** A place on a segment at a distance from the joint where it starts. */
    Expression along(Segment segment, Joint from, Expression distance, boolean isX) {
        return along(Member.of(segment), from, distance, isX);
    }

    /** A place on a member at a distance from the joint where it starts. */
    Expression along(Member member, Joint from, Expression distance, boolean isX) {
        Expression start = joint(from, member.isOther(), isX);
        if (isX) {
            return start.plus(distance.times(Expression.sine(lean(member))));
        }
        Expression height = distance.times(Expression.cosine(lean(member)));
        return member.isArm() ? start.minus(height) : start.plus(height);
    }

    /** A place on a member at a distance before the joint where it ends. */
    Expression back(Member member, Joint from, Expression distance, boolean isX) {
        Expression end = joint(from, member.isOther(), isX);
        if (isX) {
            return end.minus(distance.times(Expression.sine(lean(member))));
        }
        Expression height = distance.times(Expression.cosine(lean(member)));
        return member.isArm() ? end.plus(height) : end.minus(height);
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
        return along(Segment.HAND, Joint.WRIST, gripAlong(), isX);
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
        Member on = part.on();
        double value = part.whole() ? layout.centreX(on) : layout.alongX(on, part.centre());
        return step(name, centreFormula(part), metres(value), "");
    }

    private Expression centreFormula(Part part) {
        Member on = part.on();
        Segment segment = on.segment();
        boolean turned = part.whole() && Skeleton.isTurned(segment);
        double stated = turned ? skeleton.length(segment) - part.centre() : part.centre();
        if (segment == Segment.FOOT) {
            stated = layout.footCentreAlong();
        }
        Expression.Symbol centre = input(
                "c_" + part.symbol(),
                metres(stated),
                () -> "mass centre " + part.centreSource().get());
        if (segment == Segment.FOOT) {
            Expression above = place("b_foot", Landmark.FOOT_CENTRE_HEIGHT, skeleton.footCentreAcross());
            return places.standsOnHeel(on) ? onFoot(on, centre, above, true) : footFromAnkle(on, centre, above);
        }
        if (turned) {
            return back(on, segment == Segment.SHANK ? Joint.KNEE : Joint.HIP, centre, true);
        }
        return on == Member.TRUNK ? places.onTrunk(centre, true) : along(on, startOf(segment), centre, true);
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

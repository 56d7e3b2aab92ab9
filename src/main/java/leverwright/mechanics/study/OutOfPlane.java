package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;
import org.jspecify.annotations.Nullable;

/**
 * Is the plane enough? Legs turned out about the vertical, arms turned out about the trunk's line: the plane sees them
 * foreshortened. The posture is found anew with the projected segments, L' = L/√(cos² + sin²/cos²ψ) of the projected lean; what
 * acts out of the plane is estimated beside it, and where that moment is the larger one the model refuses.
 *
 * <pre>{@code
 * turnedOut(backSquat().barbell(kg(60)).by(ines)).legs(deg(25)).posture()
 * }</pre>
 *
 * <p>Moments out of the plane: the force at foot or hand times the sideways distance of where it acts from the joint, the
 * limb's own weight left out. Half distance of the hip joints 0.05 of stature, from memory; of the shoulders 0.118, half of
 * ANSUR II's biacromial breadth.
 */
public final class OutOfPlane {
    private static final double HALF_HIPS = 0.05;
    private static final double HALF_SHOULDERS = 0.118;
    private static final double GREATEST = Measures.deg(75).si();
    private static final double SMALL_MOMENT = 5;
    private static final int MOST_ROUNDS = 60;
    private static final double SETTLED = 1e-12;

    private final Performance performance;
    private final double legs;
    private final double arms;
    private final @Nullable Length stance;

    private OutOfPlane(Performance performance, double legs, double arms, @Nullable Length stance) {
        this.performance = performance;
        this.legs = legs;
        this.arms = arms;
        this.stance = stance;
    }

    static OutOfPlane of(Performance performance) {
        return new OutOfPlane(performance, 0, 0, null);
    }

    /** Returns this with legs turned out: toes and knees point so far outward, 0 to 75°. */
    public OutOfPlane legs(Angle outward) {
        return new OutOfPlane(performance, turned(outward, "legs"), arms, stance);
    }

    /** Returns this with a distance between the ankles instead of the one that follows from the turned legs. */
    public OutOfPlane stance(Length betweenAnkles) {
        if (!(betweenAnkles.si() >= 0 && betweenAnkles.si() <= 2)) {
            throw new IllegalArgumentException("a stance is " + betweenAnkles + " wide; allowed: 0 m to 2 m");
        }
        return new OutOfPlane(performance, legs, arms, betweenAnkles);
    }

    /** Returns this with elbows turned out from the trunk's line, 0 to 75°. */
    public OutOfPlane arms(Angle outward) {
        return new OutOfPlane(performance, legs, turned(outward, "arms"), stance);
    }

    private static double turned(Angle outward, String what) {
        if (!(outward.si() >= 0 && outward.si() <= GREATEST)) {
            throw new IllegalArgumentException(what + " are turned out by " + outward + "; allowed: 0° to "
                    + Angle.of(GREATEST) + "; beyond that the plane sees too little of them");
        }
        return outward.si();
    }

    /**
     * Returns the posture of the projected body. Lengths and leans are those that the plane sees.
     *
     * @throws IllegalArgumentException where the moment out of the plane is larger than the one in it
     */
    public HeldPosture posture() {
        HeldPosture held = projected();
        for (Row row : rows(held)) {
            if (row.dominates()) {
                throw new IllegalArgumentException(String.format(
                        Locale.ROOT,
                        "at the %s about %.0f N·m act out of the plane and %.0f N·m in it, per side: a planar model does"
                                + " not answer here; turn the limbs out less, or bring feet or hands under the joint",
                        row.joint().words(),
                        row.across(),
                        row.within()));
            }
        }
        return held;
    }

    private HeldPosture projected() {
        Lifter whole = performance.lifter();
        Exercise<?> exercise = performance.exercise();
        Lifter seen = whole;
        HeldPosture held = performance.posture();
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Lifter next = project(whole, held);
            double change = change(seen, next);
            seen = next;
            held = exercise.by(seen).posture();
            if (change < SETTLED) {
                return held;
            }
        }
        throw new IllegalArgumentException(
                "the projected posture does not settle: lengths and leans change each other; turn the limbs out less");
    }

    private static double change(Lifter one, Lifter other) {
        double change = 0;
        for (Segment segment : Segment.values()) {
            change = Math.max(
                    change,
                    Math.abs(one.body().segment(segment).length()
                            - other.body().segment(segment).length()));
        }
        return change;
    }

    private Lifter project(Lifter whole, HeldPosture held) {
        Lifter seen = whole;
        if (legs > 0) {
            double cosine = Trigonometry.cosine(legs);
            seen = seen.foot(Length.of(whole.body().segment(Segment.FOOT).length() * cosine))
                    .place(
                            Landmark.ANKLE_FROM_HEEL,
                            Length.of(
                                    whole.body().place(Landmark.ANKLE_FROM_HEEL).si() * cosine));
            for (Segment segment : List.of(Segment.SHANK, Segment.THIGH)) {
                seen = seen.length(segment, shortened(whole, segment, lean(held, segment), legs));
            }
        }
        if (arms > 0) {
            double trunk = lean(held, Segment.TRUNK);
            for (Segment segment : List.of(Segment.UPPER_ARM, Segment.FOREARM)) {
                seen = seen.length(segment, shortened(whole, segment, lean(held, segment) + trunk, arms));
            }
        }
        return seen;
    }

    private static double lean(HeldPosture held, Segment segment) {
        return Readings.lean(segment).si(held);
    }

    private static Length shortened(Lifter whole, Segment segment, double lean, double turn) {
        double sine = Trigonometry.sine(lean);
        double cosine = Trigonometry.cosine(lean);
        double out = sine / Trigonometry.cosine(turn);
        return Length.of(whole.body().segment(segment).length() / Math.sqrt(cosine * cosine + out * out));
    }

    /** A joint with its moments in and out of the plane, N·m per side. */
    private record Row(Joint joint, double within, double across, double force, double distance) {
        boolean dominates() {
            return across > Math.max(Math.abs(within), SMALL_MOMENT);
        }
    }

    private List<Row> rows(HeldPosture held) {
        List<Row> rows = new ArrayList<>();
        double stature = performance.lifter().stature().si();
        if (legs > 0 || stance != null) {
            double force = held.groundReaction().value().si() / 2;
            double hip = HALF_HIPS * stature;
            double knee = hip + sideways(held, Segment.THIGH, legs, 0);
            double ankle = stance == null ? knee - sideways(held, Segment.SHANK, legs, 0) : stance.si() / 2;
            double pressure = ankle + pressureAheadOfAnkle(held) * Trigonometry.tangent(legs);
            rows.add(row(Joint.KNEE, held, force, pressure - knee));
            rows.add(row(Joint.HIP, held, force, pressure - hip));
        }
        if (arms > 0) {
            Mechanism mechanism = held.mechanism();
            LinkageSolver solved = mechanism.solved();
            int hand = mechanism.linkage().indexOf(mechanism.joint(Joint.WRIST).link());
            double x = solved.forceX(hand);
            double y = solved.forceY(hand);
            double force = Math.sqrt(x * x + y * y) / 2;
            double trunk = lean(held, Segment.TRUNK);
            double upper = sideways(held, Segment.UPPER_ARM, arms, trunk);
            double fore = sideways(held, Segment.FOREARM, arms, trunk);
            rows.add(row(Joint.ELBOW, held, force, fore));
            rows.add(row(Joint.SHOULDER, held, force, upper + fore));
        }
        return rows;
    }

    private static double pressureAheadOfAnkle(HeldPosture held) {
        return Readings.pressure().si(held)
                - held.performance()
                        .lifter()
                        .body()
                        .place(Landmark.ANKLE_FROM_HEEL)
                        .si();
    }

    /** How far a segment reaches sideways, from what the plane sees of it, m. */
    private static double sideways(HeldPosture held, Segment segment, double turn, double axis) {
        double length = held.performance().lifter().body().segment(segment).length();
        double lean = lean(held, segment) + axis;
        double outward = segment == Segment.THIGH ? -1 : 1;
        return outward * length * Trigonometry.sine(lean) * Trigonometry.tangent(turn);
    }

    private static Row row(Joint joint, HeldPosture held, double force, double distance) {
        double within = Readings.moment(joint).si(held);
        return new Row(joint, within, Math.abs(force * distance), force, Math.abs(distance));
    }

    /** Returns for each joint the moment in the plane and the estimate out of it, without refusing. */
    public Listing check() {
        HeldPosture held = projected();
        List<List<Object>> rows = new ArrayList<>();
        for (Row row : rows(held)) {
            rows.add(List.of(
                    row.joint().words(),
                    held.moment(row.joint()),
                    across(row),
                    row.dominates() ? "no: out of the plane it is larger" : "yes"));
        }
        return new Listing(
                "Is the plane enough? " + performance,
                List.of("joint", "in the plane", "out of the plane", "is the plane enough"),
                rows,
                notes());
    }

    private static Answer<Moment> across(Row row) {
        String label = row.joint().words() + " moment out of the plane";
        return Answer.of(
                label,
                Moment.of(row.across()),
                Sides.PER_SIDE,
                () -> Working.of(
                        label + ", per side",
                        List.of(Step.of(
                                "M_across",
                                Expression.symbol(
                                                "F",
                                                leverwright.mechanics.measure.Force.of(row.force()),
                                                "force at the foot or hand, per side")
                                        .times(Expression.symbol("d", Length.of(row.distance()), "sideways distance")),
                                Moment.of(row.across()),
                                "estimate, the limb's weight left out"))));
    }

    /** Returns what must be said beside results of the projected posture. */
    public List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        if (legs > 0) {
            notes.add("Legs turned out by " + Angle.of(legs)
                    + ": the plane sees thigh, shank and foot foreshortened; leans are those of the projection.");
        }
        if (arms > 0) {
            notes.add(
                    "Arms turned out by " + Angle.of(arms) + ": the plane sees them foreshortened; half distance of the"
                            + " shoulders " + HALF_SHOULDERS + " of stature.");
        }
        notes.add("Moments out of the plane are an estimate: force at foot or hand times its sideways distance; half"
                + " distance of the hip joints 0.05 of stature, from memory.");
        notes.addAll(performance.exercise().cautions());
        return List.copyOf(notes);
    }
}

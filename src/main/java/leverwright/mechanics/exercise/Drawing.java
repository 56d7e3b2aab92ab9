package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.Recent;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Sketch.Point;

/** Draws a held posture: segments, joints, loads, lines of action, load arms, the ground and its reaction. */
final class Drawing {
    private static final double UP = Measures.deg(90).si();
    private static final double PLATE = 0.225;
    private static final double SLEEVE = 0.025;
    private static final double HEAD_ALONG = 0.12;
    private static final double HEAD_ACROSS = 0.09;
    private static final double HALF_FOOT = 0.05;
    private static final double ARC = 0.3;
    private static final int STOPS = 13;
    /** A knob that turns changes no stop of its own: those found last are kept. */
    private static final Recent<Asked, List<Sketch.Stop>> RECENT = new Recent<>(16);

    private record Asked(Performance start, Knob<?> knob, Moved what) {}

    private static final int DIGITS = 3;

    private final HeldPosture held;
    private final Layout layout;

    Drawing(HeldPosture held) {
        this.held = held;
        this.layout = held.layout();
    }

    Sketch sketch(List<Joint> loadArms) {
        List<Sketch.Shape> shapes = new ArrayList<>();
        ground(shapes);
        shapes.addAll(layout.scenery());
        bones(shapes);
        joints(shapes);
        lean(shapes);
        for (Joint joint : loadArms) {
            loadArm(shapes, joint);
        }
        loads(shapes);
        reaction(shapes);
        return new Sketch(title(), shapes, handles(), held.notes());
    }

    private String title() {
        if (layout.plane() == Plane.TRANSVERSE) {
            return held.performance() + ", " + held.standing().words() + ", seen from the head: upper arm "
                    + degrees(layout.lean(Segment.UPPER_ARM)) + ", forearm " + degrees(layout.lean(Segment.FOREARM))
                    + " from straight down";
        }
        return held.performance() + ", " + held.standing().words() + ": torso leans "
                + degrees(layout.lean(Segment.TRUNK)) + ", thigh " + degrees(layout.lean(Segment.THIGH)) + ", shank "
                + degrees(layout.lean(Segment.SHANK));
    }

    private static String degrees(double radians) {
        return MeasureText.print(Angle.of(radians), Unit.DEGREE, DIGITS);
    }

    private static String newtons(double force) {
        return MeasureText.print(Force.of(force), Unit.NEWTON, DIGITS);
    }

    private Point at(Joint joint) {
        return new Point(layout.jointX(joint), layout.jointY(joint));
    }

    private Point end(Segment segment) {
        double length = layout.body().length(segment);
        return new Point(layout.alongX(segment, length), layout.alongY(segment, length));
    }

    private void ground(List<Sketch.Shape> shapes) {
        if (layout.endsAtFeet()) {
            double end = Math.max(
                    0.9, Math.max(end(Segment.HAND).x(), at(Joint.SHOULDER).x()) + 0.3);
            shapes.add(new Sketch.GroundLine(new Point(-0.5, 0), new Point(end, 0)));
        }
    }

    private void bones(List<Sketch.Shape> shapes) {
        if (layout.parting().isSplit(Segment.UPPER_ARM)) {
            arm(shapes, true);
        }
        if (layout.plane() == Plane.TRANSVERSE) {
            shapes.add(new Sketch.Bone("trunk", joint(Joint.SHOULDER, true), at(Joint.SHOULDER)));
            Point middle = new Point(layout.startX(Member.TRUNK), layout.startY(Member.TRUNK));
            shapes.add(new Sketch.HeadOutline(middle, HEAD_ALONG, HEAD_ACROSS, UP));
            arm(shapes, false);
            return;
        }
        if (layout.parting().isSplit(Segment.THIGH)) {
            leg(shapes, true);
        }
        leg(shapes, false);
        if (layout.plane() == Plane.FRONTAL) {
            shapes.add(new Sketch.Bone("pelvis", joint(Joint.HIP, true), at(Joint.HIP)));
            shapes.add(new Sketch.Bone("shoulders", joint(Joint.SHOULDER, true), at(Joint.SHOULDER)));
        }
        Point hips = new Point(layout.startX(Member.TRUNK), layout.startY(Member.TRUNK));
        shapes.add(new Sketch.Bone("trunk", hips, end(Segment.TRUNK)));
        double head = layout.body().body().headCentreAboveHip();
        shapes.add(new Sketch.HeadOutline(
                new Point(layout.alongX(Segment.TRUNK, head), layout.alongY(Segment.TRUNK, head)),
                HEAD_ALONG,
                HEAD_ACROSS,
                UP - layout.lean(Segment.TRUNK)));
        arm(shapes, false);
    }

    private void leg(List<Sketch.Shape> shapes, boolean other) {
        Member foot = Member.of(Segment.FOOT, other);
        String side = other ? "other " : "";
        boolean frontal = layout.plane() == Plane.FRONTAL;
        double before = frontal ? HALF_FOOT : 0;
        double after = frontal ? HALF_FOOT : layout.body().length(Segment.FOOT);
        Point heel = onSole(foot, -before);
        Point toe = onSole(foot, after);
        Point ankle = joint(Joint.ANKLE, other);
        Settings set = held.performance().exercise().settings();
        double ball = set.has(Knobs.BALL_OF_FOOT) ? set.si(Knobs.BALL_OF_FOOT) * after : after;
        boolean onToes = ball < after && layout.lean(foot) > 0;
        Point front = onToes ? onSole(foot, ball) : toe;
        shapes.add(new Sketch.Bone(side + "sole", heel, front));
        shapes.add(new Sketch.Bone(side + "heel", ankle, heel));
        shapes.add(new Sketch.Bone(side + "foot", ankle, front));
        if (onToes) {
            shapes.add(new Sketch.Bone(side + "toes", front, new Point(front.x() + after - ball, front.y())));
        }
        shapes.add(new Sketch.Bone(side + "shank", joint(Joint.KNEE, other), ankle));
        shapes.add(new Sketch.Bone(side + "thigh", joint(Joint.HIP, other), joint(Joint.KNEE, other)));
    }

    private Point onSole(Member foot, double along) {
        return new Point(
                layout.startX(foot) + along * layout.cosine(foot), layout.startY(foot) - along * layout.sine(foot));
    }

    private void arm(List<Sketch.Shape> shapes, boolean other) {
        String side = other ? "other " : "";
        Member hand = Member.of(Segment.HAND, other);
        double length = layout.body().length(Segment.HAND);
        shapes.add(new Sketch.Bone(side + "upper arm", joint(Joint.SHOULDER, other), joint(Joint.ELBOW, other)));
        shapes.add(new Sketch.Bone(side + "forearm", joint(Joint.ELBOW, other), joint(Joint.WRIST, other)));
        Point tip = new Point(layout.alongX(hand, length), layout.alongY(hand, length));
        shapes.add(new Sketch.Bone(side + "hand", joint(Joint.WRIST, other), tip));
    }

    private Point joint(Joint joint, boolean other) {
        return new Point(layout.jointX(joint, other), layout.jointY(joint, other));
    }

    private void joints(List<Sketch.Shape> shapes) {
        for (Joint joint : Joint.values()) {
            boolean drawn = layout.plane() != Plane.TRANSVERSE || Parting.isArm(joint);
            if (joint != Joint.NECK && drawn) {
                if (layout.parting().isSplit(joint)) {
                    shapes.add(new Sketch.JointMark("other " + joint.words(), joint(joint, true)));
                }
                shapes.add(new Sketch.JointMark(joint.words(), at(joint)));
            }
        }
    }

    private void lean(List<Sketch.Shape> shapes) {
        if (layout.plane() == Plane.TRANSVERSE) {
            return;
        }
        double lean = layout.lean(Segment.TRUNK);
        Point hips = new Point(layout.startX(Member.TRUNK), layout.startY(Member.TRUNK));
        shapes.add(new Sketch.AngleArc(hips, ARC, UP, UP - lean, degrees(lean)));
    }

    /** The line on which all forces beyond the joint act together, and its distance from the joint. */
    private void loadArm(List<Sketch.Shape> shapes, Joint joint) {
        Cut cut = held.cut(joint);
        double arm = cut.loadArm();
        double forceX = cut.otherX();
        double forceY = cut.otherY() - cut.weight();
        double size = Math.sqrt(forceX * forceX + forceY * forceY);
        if (size == 0) {
            return;
        }
        // r = s·(Fy, −Fx)/|F| is square to F, and its moment r × F is s·|F|.
        double side = -cut.direction() * arm / size;
        Point from = at(joint);
        Point to = new Point(from.x() + side * forceY, from.y() - side * forceX);
        shapes.add(new Sketch.LineOfAction(to, new Point(forceX, forceY)));
        // a drawn arm shows its side, so its words tell its length only
        String text = MeasureText.print(Length.of(Math.abs(arm)), Unit.CENTIMETRE, DIGITS);
        shapes.add(new Sketch.LoadArm(from, to, joint.words() + " " + text));
    }

    private void loads(List<Sketch.Shape> shapes) {
        for (Load load : layout.loads()) {
            Point at = new Point(load.x(), load.y());
            if (load.isWeight()) {
                shapes.add(new Sketch.Disc(load.name(), at, SLEEVE));
                if (load.name().equals("bar") && layout.plane() == Plane.SAGITTAL) {
                    shapes.add(new Sketch.Disc("plate", at, PLATE));
                }
            }
            double size = Math.sqrt(load.forceX() * load.forceX() + load.forceY() * load.forceY());
            shapes.add(new Sketch.Arrow(
                    at,
                    new Point(load.forceX(), load.forceY()),
                    load.name() + " " + newtons(size),
                    load.reaction() ? Sketch.ForceKind.REACTION : Sketch.ForceKind.LOAD));
        }
    }

    private void reaction(List<Sketch.Shape> shapes) {
        if (layout.endsAtFeet() || standsOnFeetApart()) {
            double up = HandGround.reactionSi(layout);
            shapes.add(new Sketch.Arrow(
                    new Point(held.pressureSi(), 0),
                    new Point(HandGround.forwardSi(layout), up),
                    (layout.endsAtFeet() ? "ground " : "sole ") + newtons(up),
                    Sketch.ForceKind.REACTION));
        }
    }

    /** Tells whether one foot on the floor holds what the other one's known share leaves. */
    private boolean standsOnFeetApart() {
        return layout.held() == Member.FOOT.bit()
                && layout.loads().stream().anyMatch(load -> load.reaction() && load.on() == Member.OTHER_FOOT);
    }

    /** A point of the figure that a knob moves. */
    enum Moved {
        SHOULDER,
        ELBOW,
        WRIST,
        ANKLE,
        KNEE,
        HIP,
        BAR
    }

    /** A point for each knob that somebody set: what nobody set, no dial turns. */
    private List<Sketch.Handle> handles() {
        List<Sketch.Handle> handles = new ArrayList<>();
        Exercise<?> exercise = held.performance().exercise();
        Set<Knob<?>> knobs = new LinkedHashSet<>(FIRST);
        knobs.addAll(exercise.knobs());
        for (Knob<?> knob : knobs) {
            if (exercise.settings().has(knob)) {
                exercise.moves(knob).ifPresent(what -> handle(handles, knob, what));
            }
        }
        return handles;
    }

    private static final List<Knob<?>> FIRST = List.of(
            Knobs.TORSO_LEAN,
            Knobs.SHANK_LEAN,
            Knobs.THIGH_ABOVE_LEVEL,
            Knobs.ELBOW_FLEXION,
            Knobs.UPPER_ARM_LEAN,
            Knobs.KNEE_FLEXION,
            Knobs.BAR_AHEAD);

    /** What a knob moves in most exercises. */
    static Optional<Moved> usuallyMoved(Exercise<?> exercise, Knob<?> knob) {
        boolean pushUp = exercise instanceof PushUp;
        boolean seated = exercise instanceof KneeExtension;
        Moved moved = null;
        if (knob.equals(Knobs.TORSO_LEAN)) {
            moved = Moved.SHOULDER;
        } else if (knob.equals(Knobs.SHANK_LEAN)) {
            moved = Moved.KNEE;
        } else if (knob.equals(Knobs.THIGH_ABOVE_LEVEL)) {
            moved = Moved.HIP;
        } else if (knob.equals(Knobs.ELBOW_FLEXION)) {
            moved = pushUp ? Moved.SHOULDER : Moved.WRIST;
        } else if (knob.equals(Knobs.UPPER_ARM_LEAN)) {
            moved = Moved.ELBOW;
        } else if (knob.equals(Knobs.KNEE_FLEXION) && seated) {
            moved = Moved.ANKLE;
        } else if (knob.equals(Knobs.BAR_AHEAD)) {
            moved = Moved.BAR;
        }
        return Optional.ofNullable(moved);
    }

    private static Point where(Layout layout, Moved what) {
        return switch (what) {
            case SHOULDER -> new Point(layout.jointX(Joint.SHOULDER), layout.jointY(Joint.SHOULDER));
            case ELBOW -> new Point(layout.jointX(Joint.ELBOW), layout.jointY(Joint.ELBOW));
            case WRIST -> new Point(layout.jointX(Joint.WRIST), layout.jointY(Joint.WRIST));
            case ANKLE -> new Point(layout.jointX(Joint.ANKLE), layout.jointY(Joint.ANKLE));
            case KNEE -> new Point(layout.jointX(Joint.KNEE), layout.jointY(Joint.KNEE));
            case HIP -> new Point(layout.jointX(Joint.HIP), layout.jointY(Joint.HIP));
            case BAR -> new Point(layout.gripX(), layout.gripY());
        };
    }

    private void handle(List<Sketch.Handle> handles, Knob<?> knob, Moved what) {
        Performance performance = held.performance();
        if (!performance.exercise().isSet(knob) || !performance.exercise().decides(knob)) {
            return;
        }
        Asked asked = new Asked(performance.withSi(knob, knob.least().si()), knob, what);
        List<Sketch.Stop> stops = RECENT.get(asked, () -> stops(performance, knob, what));
        handles.add(new Sketch.Handle(knob.name(), where(layout, what), stops));
    }

    private static List<Sketch.Stop> stops(Performance performance, Knob<?> knob, Moved what) {
        double least = knob.least().si();
        double most = knob.most().si();
        List<Sketch.Stop> stops = new ArrayList<>();
        for (int k = 0; k < STOPS; k++) {
            double setting = least + (most - least) * k / (STOPS - 1);
            try {
                HeldPosture there =
                        performance.withSi(knob, Math.min(most, setting)).posture();
                if (!there.standing().wouldFall()) {
                    stops.add(new Sketch.Stop(setting, where(there.layout(), what)));
                }
            } catch (IllegalArgumentException impossible) {
                continue;
            }
        }
        return List.copyOf(stops);
    }
}

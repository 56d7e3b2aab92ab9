package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
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
        if (layout.support() != Layout.Support.SEAT) {
            double end = Math.max(
                    0.9, Math.max(end(Segment.HAND).x(), at(Joint.SHOULDER).x()) + 0.3);
            shapes.add(new Sketch.GroundLine(new Point(-0.5, 0), new Point(end, 0)));
        }
    }

    private void bones(List<Sketch.Shape> shapes) {
        double foot = layout.body().length(Segment.FOOT);
        Point heel = new Point(layout.startX(Segment.FOOT), layout.startY(Segment.FOOT));
        Point toe =
                new Point(heel.x() + foot * layout.cosine(Segment.FOOT), heel.y() - foot * layout.sine(Segment.FOOT));
        shapes.add(new Sketch.Bone("sole", heel, toe));
        shapes.add(new Sketch.Bone("heel", at(Joint.ANKLE), heel));
        shapes.add(new Sketch.Bone("foot", at(Joint.ANKLE), toe));
        shapes.add(new Sketch.Bone("shank", at(Joint.KNEE), at(Joint.ANKLE)));
        shapes.add(new Sketch.Bone("thigh", at(Joint.HIP), at(Joint.KNEE)));
        shapes.add(new Sketch.Bone("trunk", at(Joint.HIP), at(Joint.SHOULDER)));
        double head = layout.body().body().headCentreAboveHip();
        shapes.add(new Sketch.HeadOutline(
                new Point(layout.alongX(Segment.TRUNK, head), layout.alongY(Segment.TRUNK, head)),
                HEAD_ALONG,
                HEAD_ACROSS,
                UP - layout.lean(Segment.TRUNK)));
        shapes.add(new Sketch.Bone("upper arm", at(Joint.SHOULDER), at(Joint.ELBOW)));
        shapes.add(new Sketch.Bone("forearm", at(Joint.ELBOW), at(Joint.WRIST)));
        shapes.add(new Sketch.Bone("hand", at(Joint.WRIST), end(Segment.HAND)));
    }

    private void joints(List<Sketch.Shape> shapes) {
        for (Joint joint : Joint.values()) {
            if (joint != Joint.NECK) {
                shapes.add(new Sketch.JointMark(joint.words(), at(joint)));
            }
        }
    }

    private void lean(List<Sketch.Shape> shapes) {
        double lean = layout.lean(Segment.TRUNK);
        shapes.add(new Sketch.AngleArc(at(Joint.HIP), ARC, UP, UP - lean, degrees(lean)));
    }

    /** The line on which all forces beyond the joint act together, and its distance from the joint. */
    private void loadArm(List<Sketch.Shape> shapes, Joint joint) {
        Cut cut = held.cut(joint);
        double arm = cut.loadArm();
        double forceX = cut.otherX();
        double forceY = cut.otherY() - cut.weight();
        double size = Math.sqrt(forceX * forceX + forceY * forceY);
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
                if (load.name().equals("bar")) {
                    shapes.add(new Sketch.Disc("plate", at, PLATE));
                }
            }
            double size = Math.sqrt(load.forceX() * load.forceX() + load.forceY() * load.forceY());
            shapes.add(new Sketch.Arrow(
                    at,
                    new Point(load.forceX(), load.forceY()),
                    load.name() + " " + newtons(size),
                    isFromTheFloor(load) ? Sketch.ForceKind.REACTION : Sketch.ForceKind.LOAD));
        }
    }

    /** The floor pushes on hands that stand on it as it does on feet. */
    private boolean isFromTheFloor(Load load) {
        return layout.support() == Layout.Support.HANDS_AND_FEET && !load.isWeight() && load.on() == Segment.HAND;
    }

    private void reaction(List<Sketch.Shape> shapes) {
        if (layout.support() != Layout.Support.SEAT) {
            double up = HandGround.reactionSi(layout);
            shapes.add(new Sketch.Arrow(
                    new Point(held.pressureSi(), 0),
                    new Point(HandGround.forwardSi(layout), up),
                    "ground " + newtons(up),
                    Sketch.ForceKind.REACTION));
        }
    }

    /** A point of the figure that a knob moves. */
    private enum Moved {
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
        handle(handles, Knobs.TORSO_LEAN, Moved.SHOULDER);
        handle(handles, Knobs.SHANK_LEAN, Moved.KNEE);
        handle(handles, Knobs.THIGH_ABOVE_LEVEL, Moved.HIP);
        handle(handles, Knobs.ELBOW_FLEXION, layout.support() == Layout.Support.FEET ? Moved.WRIST : Moved.SHOULDER);
        handle(handles, Knobs.UPPER_ARM_LEAN, Moved.ELBOW);
        if (layout.support() == Layout.Support.SEAT) {
            handle(handles, Knobs.KNEE_FLEXION, Moved.ANKLE);
        }
        handle(handles, Knobs.BAR_AHEAD, Moved.BAR);
        return handles;
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
        if (!performance.exercise().settings().has(knob)
                || !performance.exercise().isSet(knob)
                || !performance.exercise().decides(knob)) {
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

package leverwright.mechanics.working;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What a figure of a posture is made of: places in metres in the mechanics frame (x forward, y up; the viewer sees the
 * lifter face right), forces in newtons, directions in radians counter-clockwise from x. Nothing here says how it looks.
 *
 * @param title what is shown, for readers who cannot see it
 * @param shapes from back to front
 * @param handles points that a reader may drag
 * @param notes cautions and remarks that travel with the figure
 * @param play how one repetition passes through the settings of a handle, or null when the figure stands for no motion
 */
public record Sketch(
        String title,
        List<Shape> shapes,
        List<Handle> handles,
        List<String> notes,
        @Nullable Play play) {

    /** Copies the lists. */
    public Sketch {
        shapes = List.copyOf(shapes);
        handles = List.copyOf(handles);
        notes = List.copyOf(notes);
    }

    /** Makes a figure that stands for no motion. */
    public Sketch(String title, List<Shape> shapes, List<Handle> handles, List<String> notes) {
        this(title, shapes, handles, notes, null);
    }

    /** Returns this figure with the times of a repetition. */
    public Sketch playing(Play times) {
        return new Sketch(title, shapes, handles, notes, times);
    }

    /**
     * A place or a vector.
     *
     * @param x forward
     * @param y up
     */
    public record Point(double x, double y) {
        /** Checks both numbers; minus zero becomes zero. */
        public Point {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("a point of a figure needs finite numbers, not " + x + ", " + y);
            }
            x += 0.0;
            y += 0.0;
        }
    }

    /** One thing in the figure. */
    public sealed interface Shape {}

    /**
     * A segment of the body.
     *
     * @param name such as "thigh"
     * @param from its end nearer the trunk or, for the trunk, the pelvis
     * @param to its other end
     */
    public record Bone(String name, Point from, Point to) implements Shape {}

    /**
     * A joint.
     *
     * @param name such as "hip"
     * @param at where
     */
    public record JointMark(String name, Point at) implements Shape {}

    /**
     * A force that acts at a point.
     *
     * @param at where it acts
     * @param newtons the force, each component in newtons
     * @param label such as "bar 490 N"
     * @param kind what sort of force
     */
    public record Arrow(Point at, Point newtons, String label, ForceKind kind) implements Shape {}

    /** Sorts of force. */
    public enum ForceKind {
        /** Weight of a body part or of something held, or another load. */
        LOAD,
        /** What ground, bench or pad gives back. */
        REACTION,
        /** The pull of a muscle. */
        MUSCLE,
        /** What one side of a joint does to the other. */
        JOINT
    }

    /**
     * The unbounded line along which a force acts.
     *
     * @param through a point of it
     * @param direction along it, of any length but zero
     */
    public record LineOfAction(Point through, Point direction) implements Shape {}

    /**
     * A load arm: the shortest way from a joint to a line of action.
     *
     * @param from the joint
     * @param to the foot of the perpendicular on the line
     * @param label such as "hip 25 cm"
     */
    public record LoadArm(Point from, Point to, String label) implements Shape {}

    /**
     * An angle, drawn from one direction to the other.
     *
     * @param centre where the legs of the angle meet
     * @param radius in metres
     * @param fromDirection radians counter-clockwise from x
     * @param toDirection radians counter-clockwise from x; the arc runs straight from the one number to the other
     * @param label such as "45°"
     */
    public record AngleArc(Point centre, double radius, double fromDirection, double toDirection, String label)
            implements Shape {}

    /**
     * The ground, or another surface that carries.
     *
     * @param from one end
     * @param to the other
     */
    public record GroundLine(Point from, Point to) implements Shape {}

    /**
     * A plate on the bar, or another disc.
     *
     * @param name such as "plate"
     * @param centre where
     * @param radius in metres
     */
    public record Disc(String name, Point centre, double radius) implements Shape {}

    /**
     * The outline of the head.
     *
     * @param centre where
     * @param along half axis along the direction, in metres
     * @param across half axis across it, in metres
     * @param direction of the long axis, radians counter-clockwise from x
     */
    public record HeadOutline(Point centre, double along, double across, double direction) implements Shape {}

    /**
     * A chain, cable or other thin line that is part of no body.
     *
     * @param name such as "cable"
     * @param from one end
     * @param to the other
     */
    public record Line(String name, Point from, Point to) implements Shape {}

    /**
     * Words at a place.
     *
     * @param at where
     * @param words what
     */
    public record Label(Point at, String words) implements Shape {}

    /**
     * A point that a reader drags to turn a dial or knob.
     *
     * @param name of the dial or knob
     * @param at where it is now
     * @param stops where it would be at other settings, in rising order of setting
     */
    public record Handle(String name, Point at, List<Stop> stops) {
        /** Copies the stops. */
        public Handle {
            stops = List.copyOf(stops);
        }
    }

    /**
     * Where a handle lies at one setting.
     *
     * @param setting in the SI unit of the dial
     * @param at where
     */
    public record Stop(double setting, Point at) {}

    /**
     * One repetition in time.
     *
     * @param name of the dial or knob that moves
     * @param words the tempo, such as "2 s out, 1 s back"
     * @param beats at least two, in order of their times, from the start to the end of the repetition; between two the setting
     *     goes straight
     */
    public record Play(String name, String words, List<Beat> beats) {
        /** Copies the beats and checks their order. */
        public Play {
            beats = List.copyOf(beats);
            for (int k = 1; k < beats.size(); k++) {
                if (beats.get(k).time() < beats.get(k - 1).time()) {
                    throw new IllegalArgumentException("the times of a played figure go back at "
                            + beats.get(k).time() + " s; give them in rising order");
                }
            }
            if (beats.size() < 2) {
                throw new IllegalArgumentException(
                        "a played figure has " + beats.size() + " times; allowed: two or more");
            }
        }

        /** Returns how long one repetition takes, s. */
        public double seconds() {
            return beats.get(beats.size() - 1).time() - beats.get(0).time();
        }

        /**
         * Returns the setting at a time, in the SI unit of the dial.
         *
         * @param time s from the start of the repetition; beyond its end that of the end
         */
        public double setting(double time) {
            double at = beats.get(0).time() + time;
            for (int k = 1; k < beats.size(); k++) {
                Beat before = beats.get(k - 1);
                Beat next = beats.get(k);
                if (at < next.time()) {
                    double share = Math.max(0, at - before.time()) / (next.time() - before.time());
                    return before.setting() + share * (next.setting() - before.setting());
                }
            }
            return beats.get(beats.size() - 1).setting();
        }
    }

    /**
     * Where a repetition is at one time.
     *
     * @param time s
     * @param setting in the SI unit of the dial
     */
    public record Beat(double time, double setting) {}
}

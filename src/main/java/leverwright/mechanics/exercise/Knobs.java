package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.measure.Measures.ratio;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Unit;

/**
 * The knobs of all exercises. Ranges are what the model can draw, not what a body can do; an exercise may start a knob
 * elsewhere. Defaults that were not read in a source say so.
 */
public final class Knobs {
    /** Mass of the bar with its plates. */
    public static final Knob<Mass> BAR = new Knob<>(
            "Bar",
            Unit.KILOGRAM,
            kg(0),
            kg(1000),
            kg(20),
            "mass of the bar with its plates, held by both sides together",
            "an empty bar of 20 kg (common practice, no source)");

    /** Lean of the line from hip to shoulder. */
    public static final Knob<Angle> TORSO_LEAN = new Knob<>(
            "Torso lean",
            Unit.DEGREE,
            deg(-10),
            deg(95),
            deg(45),
            "lean of the line from hip to shoulder from the vertical, forward positive",
            "half way between upright and level");

    /** Lean of the line from ankle to knee. */
    public static final Knob<Angle> SHANK_LEAN = new Knob<>(
            "Shank lean",
            Unit.DEGREE,
            deg(-20),
            deg(50),
            deg(4),
            "lean of the line from ankle to knee from the vertical, knee ahead positive",
            "shanks nearly upright, as hinges are taught (from memory)");

    /** How far the thigh stands above level. */
    public static final Knob<Angle> THIGH_ABOVE_LEVEL = new Knob<>(
            "Thigh above level",
            Unit.DEGREE,
            deg(-40),
            deg(100),
            deg(0),
            "angle of the line from knee to hip above level, 90° is upright, negative below level (hip lower than knee)",
            "thighs level, a depth that both eye and video can judge");

    /** Flexion of the knee. */
    public static final Knob<Angle> KNEE_FLEXION = new Knob<>(
            "Knee flexion",
            Unit.DEGREE,
            deg(0),
            deg(150),
            deg(20),
            "angle between the lines of shank and thigh, 0 when straight",
            "soft knees (from memory)");

    /** How far ahead of the centre of pressure the bar hangs. */
    public static final Knob<Length> BAR_AHEAD = new Knob<>(
            "Bar ahead",
            Unit.CENTIMETRE,
            cm(-15),
            cm(60),
            cm(3),
            "distance of the bar's middle ahead of the chosen centre of pressure",
            "a bar just clear of the shins (from memory)");

    /** The gap between bar and leg. */
    public static final Knob<Length> BAR_CLEARANCE = new Knob<>(
            "Bar clearance",
            Unit.CENTIMETRE,
            cm(0),
            cm(40),
            cm(0),
            "gap between the bar's sleeve and the front of the leg, measured square to shank or thigh",
            "0: the bar slides along the leg");

    /** How far the front of the leg lies ahead of its axis. */
    public static final Knob<Length> LEG_DEPTH = new Knob<>(
            "Leg depth",
            Unit.CENTIMETRE,
            cm(0),
            cm(15),
            cm(6),
            "distance of the front of the leg, near the knee, from the line of its joints",
            "6 cm, from memory: measure it where you can");

    /** Where the ground pushes up. */
    public static final Knob<Ratio> PRESSURE = new Knob<>(
            "Pressure",
            Unit.PERCENT,
            percent(0),
            percent(100),
            percent(50),
            "centre of pressure of the feet as a part of the foot's length, 0 at the heel, 100 at the toes",
            "mid-foot, the usual cue (common practice, no source)");

    /** Height of a wedge under the heel. */
    public static final Knob<Length> HEEL_HEIGHT = new Knob<>(
            "Heel height",
            Unit.CENTIMETRE,
            cm(0),
            cm(8),
            cm(0),
            "height of a wedge or a shoe's heel under the heel, toes on the floor",
            "flat shoes");

    /** Where on the trunk the bar lies, along it. */
    public static final Knob<Length> BAR_HEIGHT_ON_TRUNK = new Knob<>(
            "Bar height on trunk",
            Unit.CENTIMETRE,
            cm(-25),
            cm(20),
            cm(2),
            "distance of the bar's middle from the shoulder joint along the trunk, towards the head positive",
            "high bar, on the upper back: 2 cm above the shoulder joint (from memory); low bar: 5 cm below it");

    /** Where on the trunk the bar lies, behind it. */
    public static final Knob<Length> BAR_BEHIND_TRUNK = new Knob<>(
            "Bar behind trunk",
            Unit.CENTIMETRE,
            cm(-25),
            cm(25),
            cm(6),
            "distance of the bar's middle behind the line from hip to shoulder, square to it",
            "6 cm for the high bar, 9 cm for the low bar (from memory)");

    /** Mass of a machine's stack. */
    public static final Knob<Mass> STACK = new Knob<>(
            "Stack",
            Unit.KILOGRAM,
            kg(0),
            kg(1000),
            kg(20),
            "mass of the plates that a machine's cable lifts, for both sides together",
            "a light stack (from memory)");

    /** Distance of a machine's pad from the knee. */
    public static final Knob<Length> PAD = new Knob<>(
            "Pad",
            Unit.CENTIMETRE,
            cm(5),
            cm(60),
            cm(34),
            "distance of the pad's middle from the knee joint along the shank",
            "just above the ankle of a middle-sized lifter (from memory): measure it");

    /** Arm at which a machine's cable pulls. */
    public static final Knob<Length> WHEEL_ARM = new Knob<>(
            "Wheel arm",
            Unit.CENTIMETRE,
            cm(2),
            cm(50),
            cm(15),
            "distance of the cable from the machine's axis, the same all the way round",
            "15 cm, from memory: measure it on the machine, or set a measured pad force");

    /** Measured force of a machine's pad. */
    public static final Knob<Force> PAD_FORCE = new Knob<>(
            "Pad force",
            Unit.NEWTON,
            newtons(0),
            newtons(5000),
            newtons(0),
            "force of the pad on both shanks together, square to them, as measured; set instead of a stack",
            "0: the stack decides unless a force is set");

    /** Mass of one dumbbell. */
    public static final Knob<Mass> DUMBBELL = new Knob<>(
            "Dumbbell",
            Unit.KILOGRAM,
            kg(0),
            kg(500),
            kg(8),
            "mass of one dumbbell; there is one in each hand",
            "a light dumbbell (from memory)");

    /** Flexion of the elbow. */
    public static final Knob<Angle> ELBOW_FLEXION = new Knob<>(
            "Elbow flexion",
            Unit.DEGREE,
            deg(0),
            deg(150),
            deg(90),
            "angle between the lines of upper arm and forearm, 0 when straight",
            "a right angle");

    /** Lean of the upper arm from hanging. */
    public static final Knob<Angle> UPPER_ARM_LEAN = new Knob<>(
            "Upper arm lean",
            Unit.DEGREE,
            deg(-60),
            deg(90),
            deg(0),
            "lean of the line from shoulder to elbow from the plumb line, elbow ahead positive",
            "0: the upper arm hangs");

    /** How far ahead of the shoulders the hands stand. */
    public static final Knob<Length> HANDS_AHEAD = new Knob<>(
            "Hands ahead",
            Unit.CENTIMETRE,
            cm(-40),
            cm(40),
            cm(0),
            "distance of the wrists ahead of the shoulders, towards the head positive, when the arms are straight",
            "0: hands under the shoulders, the usual instruction (common practice, no source)");

    /** Horizontal force of the floor on the hands. */
    public static final Knob<Force> HAND_FORCE = new Knob<>(
            "Hand force",
            Unit.NEWTON,
            newtons(-2000),
            newtons(2000),
            newtons(0),
            "horizontal force of the floor on both hands together, towards the head positive; balance leaves it free",
            "0: hands that press straight down; no measurement was read that says otherwise");

    /** Friction of hands and feet on the floor. */
    public static final Knob<Ratio> FRICTION = new Knob<>(
            "Friction",
            Unit.ONE,
            ratio(0),
            ratio(2),
            ratio(0.5),
            "coefficient of friction between floor and hands, and floor and feet",
            "0.5, from memory: rubber and skin on a dry floor often hold more");

    /** Where under the palm the floor pushes. */
    public static final Knob<Ratio> PALM_PRESSURE = new Knob<>(
            "Palm pressure",
            Unit.PERCENT,
            percent(0),
            percent(100),
            percent(42),
            "centre of pressure under the hand as a part of the hand's length, 0 at the wrist, 100 at the finger tip",
            "the middle of the grip: 42 % (ANSUR II 2012, grip centre less wrist over hand length)");

    /** Height of the wrist over a flat hand. */
    public static final Knob<Length> WRIST_HEIGHT = new Knob<>(
            "Wrist height",
            Unit.CENTIMETRE,
            cm(0),
            cm(15),
            cm(3),
            "height of the wrist joint above the floor with the hand flat on it, or on handles",
            "3 cm, from memory");

    /** Where the feet push when they stand on their balls. */
    public static final Knob<Ratio> BALL_OF_FOOT = new Knob<>(
            "Ball of foot",
            Unit.PERCENT,
            percent(50),
            percent(100),
            percent(74),
            "place where the feet push as a part of the foot's length, 0 at the heel, 100 at the toes",
            "the ball of the foot: 74 % (ANSUR II 2012, ball of foot length over foot length)");

    private Knobs() {}
}

package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.percent;

import leverwright.mechanics.measure.Angle;
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
            kg(500),
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

    private Knobs() {}
}

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
 * The knobs of benches, cables, machines and contacts, and of joints that only some exercises set. Ranges and defaults as in
 * {@link Knobs}.
 */
public final class SetupKnobs {
    /** Size of a given force. */
    public static final Knob<Force> PULL = new Knob<>(
            "Pull",
            Unit.NEWTON,
            newtons(0),
            newtons(10000),
            newtons(100),
            "given force, such as that of a partner, both sides together",
            "100 N, a light pull; set the one you measured");

    /** Direction of a pull, all the way round. */
    public static final Knob<Angle> PULL_DIRECTION = new Knob<>(
            "Pull direction",
            Unit.DEGREE,
            deg(0),
            deg(360),
            deg(0),
            "direction of the pull on the body, counter-clockwise from forward: 90° up, 180° back, 270° down",
            "forward; where a pulley is there, the cable points to it until a direction is set");

    /** Place of a pulley, forward. */
    public static final Knob<Length> PULLEY_AHEAD = new Knob<>(
            "Pulley ahead",
            Unit.CENTIMETRE,
            cm(-400),
            cm(400),
            cm(100),
            "how far the pulley lies ahead of the heel (of the hips on a seat or bench, of the shoulders seen from the head)",
            "one metre ahead (from memory): measure it");

    /** Height of a pulley. */
    public static final Knob<Length> PULLEY_HEIGHT = new Knob<>(
            "Pulley height",
            Unit.CENTIMETRE,
            cm(-50),
            cm(400),
            cm(100),
            "height of the pulley above the floor, where the cable leaves it",
            "one metre up (from memory): measure it");

    /** Flexion of the shoulder. */
    public static final Knob<Angle> SHOULDER_FLEXION = new Knob<>(
            "Shoulder flexion",
            Unit.DEGREE,
            deg(-90),
            deg(200),
            deg(0),
            "angle between trunk and upper arm, forward positive, 0 when the arm lies along the trunk",
            "0: the arm lies along the trunk");

    /** Abduction of the shoulder, seen from the front. */
    public static final Knob<Angle> SHOULDER_ABDUCTION = new Knob<>(
            "Shoulder abduction",
            Unit.DEGREE,
            deg(-30),
            deg(180),
            deg(90),
            "angle between trunk and upper arm seen from the front, outwards positive",
            "level arms, where a weight has its longest arm");

    /** Direction of the upper arm, seen from the head. */
    public static final Knob<Angle> UPPER_ARM_OUT = new Knob<>(
            "Upper arm out",
            Unit.DEGREE,
            deg(0),
            deg(180),
            deg(90),
            "angle of the upper arm seen from the head, 0 straight back, 90 out to the side, 180 forward",
            "out to the side");

    /** Flexion of the hip. */
    public static final Knob<Angle> HIP_FLEXION = new Knob<>(
            "Hip flexion",
            Unit.DEGREE,
            deg(-60),
            deg(150),
            deg(90),
            "angle between trunk and thigh, thigh forward positive, 0 when they are in line",
            "a right angle");

    /** Abduction of the hip, seen from the front. */
    public static final Knob<Angle> HIP_ABDUCTION = new Knob<>(
            "Hip abduction",
            Unit.DEGREE,
            deg(-40),
            deg(80),
            deg(30),
            "angle between trunk and thigh seen from the front, outwards positive",
            "30°, near the end of what many reach (from memory)");

    /** Flexion of the wrist. */
    public static final Knob<Angle> WRIST_FLEXION = new Knob<>(
            "Wrist flexion",
            Unit.DEGREE,
            deg(-80),
            deg(90),
            deg(0),
            "angle between forearm and hand, palm side positive, 0 when in line",
            "0: the hand in line with the forearm");

    /** Dorsiflexion of the ankle. */
    public static final Knob<Angle> ANKLE_FLEXION = new Knob<>(
            "Ankle dorsiflexion",
            Unit.DEGREE,
            deg(-60),
            deg(45),
            deg(0),
            "angle of shank and foot away from the right angle, toes towards the shank positive",
            "0: a right angle");

    /** Distance between the hands on a bar. */
    public static final Knob<Length> GRIP_WIDTH = new Knob<>(
            "Grip width",
            Unit.CENTIMETRE,
            cm(10),
            cm(160),
            cm(70),
            "distance between the middles of both grips",
            "70 cm, a little wider than the shoulders (from memory)");

    /** Height of a bar over the shoulders. */
    public static final Knob<Length> BAR_HEIGHT = new Knob<>(
            "Bar height",
            Unit.CENTIMETRE,
            cm(-60),
            cm(120),
            cm(20),
            "height of the bar above the shoulders (in front of them, for a lifter who lies)",
            "20 cm (from memory)");

    /** Force along the bar that balance leaves free. */
    public static final Knob<Force> OUTWARD_FORCE = new Knob<>(
            "Outward force",
            Unit.NEWTON,
            newtons(-2000),
            newtons(2000),
            newtons(0),
            "force of each hand along the bar, outwards on the hand positive; balance leaves it free",
            "0: hands that press straight against the load; measured values were not read");

    /** Distance between the shoulder joints. */
    public static final Knob<Ratio> SHOULDER_SPACING = new Knob<>(
            "Shoulder spacing",
            Unit.PERCENT,
            percent(5),
            percent(35),
            percent(21),
            "distance between both shoulder joints, of stature",
            "21 %: shoulder breadth over the acromia 23 % (ANSUR II 2012, mean of both sexes), less 2 % for joints that lie inside them (from memory)");

    /** Distance between the hip joints. */
    public static final Knob<Ratio> HIP_SPACING = new Knob<>(
            "Hip spacing",
            Unit.PERCENT,
            percent(2),
            percent(25),
            percent(10),
            "distance between both hip joints, of stature",
            "10 % (from memory)");

    /** Height of the hips on a seat. */
    public static final Knob<Length> SEAT_HEIGHT = new Knob<>(
            "Seat height",
            Unit.CENTIMETRE,
            cm(10),
            cm(120),
            cm(50),
            "height of the hip joints over the floor on seat or bench",
            "50 cm (from memory); it moves the figure, and cables");

    /** Height of a bench under the back. */
    public static final Knob<Length> BENCH_HEIGHT = new Knob<>(
            "Bench height",
            Unit.CENTIMETRE,
            cm(20),
            cm(70),
            cm(40),
            "height of the bench that the back leans on",
            "40 cm (common practice, no source)");

    /** Incline of a bench. */
    public static final Knob<Angle> BENCH_INCLINE = new Knob<>(
            "Bench incline",
            Unit.DEGREE,
            deg(0),
            deg(90),
            deg(30),
            "angle of the bench above level, 0 flat, 90 upright",
            "30° (common practice, no source)");

    /** Length of a step. */
    public static final Knob<Length> STEP_LENGTH = new Knob<>(
            "Step length",
            Unit.CENTIMETRE,
            cm(20),
            cm(150),
            cm(80),
            "distance between the front heel and the ball of the rear foot",
            "80 cm (from memory)");

    /** Height of a box or step. */
    public static final Knob<Length> STEP_HEIGHT = new Knob<>(
            "Step height", Unit.CENTIMETRE, cm(0), cm(80), cm(40), "height of box or step", "40 cm (from memory)");

    /** Height of the rear foot. */
    public static final Knob<Length> REAR_HEIGHT = new Knob<>(
            "Rear foot height",
            Unit.CENTIMETRE,
            cm(0),
            cm(60),
            cm(0),
            "height of what the rear foot stands on",
            "0: the floor");

    /** Pitch of the rear foot. */
    public static final Knob<Angle> REAR_FOOT_PITCH = new Knob<>(
            "Rear foot pitch",
            Unit.DEGREE,
            deg(0),
            deg(90),
            deg(50),
            "pitch of the rear foot, heel up",
            "50° (from memory)");

    /** Horizontal force on the rear foot. */
    public static final Knob<Force> REAR_FORCE = new Knob<>(
            "Rear foot force",
            Unit.NEWTON,
            newtons(-2000),
            newtons(2000),
            newtons(0),
            "horizontal force of the floor on the rear foot, forward positive; balance leaves it free",
            "0: the rear foot presses straight down; no measurement was read that says otherwise");

    /** Force along a bench. */
    public static final Knob<Force> BENCH_FORCE = new Knob<>(
            "Bench force",
            Unit.NEWTON,
            newtons(-2000),
            newtons(2000),
            newtons(0),
            "force of bench or pad along its surface on the body; balance leaves it free",
            "0: the back neither pushes nor is held along the bench; no measurement was read that says otherwise");

    /** Force along a wall. */
    public static final Knob<Force> WALL_FORCE = new Knob<>(
            "Wall friction",
            Unit.NEWTON,
            newtons(-2000),
            newtons(2000),
            newtons(0),
            "force of the wall along itself on the back, down positive; balance leaves it free",
            "0: a ball or a smooth wall; a rough one may carry a part of the weight");

    /** Horizontal force of an upright guide on a bar. */
    public static final Knob<Force> GUIDE_FORCE = new Knob<>(
            "Guide force",
            Unit.NEWTON,
            newtons(-3000),
            newtons(3000),
            newtons(0),
            "horizontal force of the guide on the bar, forward positive; balance leaves it free",
            "0: a lifter who balances the bar; where three angles are set, what keeps the pressure at its place");

    /** Horizontal force on one of two feet. */
    public static final Knob<Force> FLOOR_FORCE = new Knob<>(
            "Floor force",
            Unit.NEWTON,
            newtons(-2000),
            newtons(2000),
            newtons(0),
            "horizontal force of the floor on the other foot; balance leaves it free",
            "0: feet that press straight down; no measurement was read that says otherwise");

    /** Force of a leg press plate along itself. */
    public static final Knob<Force> ACROSS_RAIL = new Knob<>(
            "Force across the rail",
            Unit.NEWTON,
            newtons(-3000),
            newtons(3000),
            newtons(0),
            "force of the plate on the feet square to the rail, towards the toes positive; balance leaves it free",
            "0: feet that press along the rail; no measurement was read that says otherwise");

    /** Angle of a rail. */
    public static final Knob<Angle> RAIL = new Knob<>(
            "Rail",
            Unit.DEGREE,
            deg(0),
            deg(90),
            deg(45),
            "angle of the rail above level",
            "45° (common practice, no source)");

    /** Mass of an empty sled. */
    public static final Knob<Mass> SLED = new Knob<>(
            "Sled",
            Unit.KILOGRAM,
            kg(0),
            kg(200),
            kg(45),
            "mass of the empty sled",
            "45 kg (from memory): ask the maker or weigh it");

    /** Mass of plates. */
    public static final Knob<Mass> PLATES = new Knob<>(
            "Plates",
            Unit.KILOGRAM,
            kg(0),
            kg(1000),
            kg(60),
            "mass of the plates on the sled or on the machine",
            "a light load (from memory)");

    /** Friction of a rail. */
    public static final Knob<Ratio> RAIL_FRICTION = new Knob<>(
            "Rail friction",
            Unit.ONE,
            ratio(0),
            ratio(1),
            ratio(0),
            "coefficient of friction of the rail, held or moving up: it adds to what the feet bear",
            "0: a rail on good rollers");

    /** Where a foot presses a plate. */
    public static final Knob<Ratio> PLATE_PRESSURE = new Knob<>(
            "Pressure on plate",
            Unit.PERCENT,
            percent(0),
            percent(100),
            percent(40),
            "place where the foot presses the plate, of the length of the foot from the heel",
            "40 %, near the arch (from memory)");

    /** Angle of a plate. */
    public static final Knob<Angle> PLATE_ANGLE = new Knob<>(
            "Plate angle",
            Unit.DEGREE,
            deg(-45),
            deg(45),
            deg(0),
            "angle of the plate away from square to the rail, toes towards the lifter positive",
            "0: square to the rail");

    /** Mass of a vest. */
    public static final Knob<Mass> VEST = new Knob<>(
            "Vest",
            Unit.KILOGRAM,
            kg(0),
            kg(100),
            kg(0),
            "mass of a vest or belt worn near the middle of the trunk",
            "none");

    /** Height of what the hands stand on. */
    public static final Knob<Length> HANDS_HEIGHT = new Knob<>(
            "Hands height",
            Unit.CENTIMETRE,
            cm(0),
            cm(100),
            cm(0),
            "height of what the hands stand on",
            "0: the floor");

    /** Height of what the feet stand on. */
    public static final Knob<Length> FEET_HEIGHT = new Knob<>(
            "Feet height",
            Unit.CENTIMETRE,
            cm(0),
            cm(100),
            cm(0),
            "height of what feet or knees stand on",
            "0: the floor");

    /** Distance of a bar from the hips. */
    public static final Knob<Length> BAR_ON_HIPS = new Knob<>(
            "Bar on hips",
            Unit.CENTIMETRE,
            cm(0),
            cm(25),
            cm(11),
            "distance of the bar in front of the hip joints, square to the trunk",
            "11 cm: half the depth of the pelvis and the bar (from memory)");

    /** Place of a pulley to the side. */
    public static final Knob<Length> PULLEY_ASIDE = new Knob<>(
            "Pulley aside",
            Unit.CENTIMETRE,
            cm(-400),
            cm(400),
            cm(100),
            "how far the pulley lies to the side of the body's middle, on the side of the hand or foot that holds the cable positive",
            "one metre (from memory): measure it");

    /** Angle of a trunk that leans on a bench. */
    public static final Knob<Angle> HIPS_BELOW_LEVEL = new Knob<>(
            "Trunk below level",
            Unit.DEGREE,
            deg(-20),
            deg(60),
            deg(0),
            "angle of the trunk below level on a bench, hips lower than shoulders positive",
            "0: the trunk is level, the end of the lift");

    /** How far a lying trunk is lifted. */
    public static final Knob<Angle> TRUNK_LIFT = new Knob<>(
            "Trunk lift",
            Unit.DEGREE,
            deg(0),
            deg(90),
            deg(30),
            "angle of the trunk above the floor it lay on",
            "30°, shoulder blades off the floor (from memory)");

    /** Lean of the trunk to the side. */
    public static final Knob<Angle> SIDE_LEAN = new Knob<>(
            "Side lean",
            Unit.DEGREE,
            deg(-45),
            deg(45),
            deg(0),
            "lean of the trunk to the left from the vertical",
            "upright");

    /** Height of the elbows over the floor. */
    public static final Knob<Length> ELBOW_HEIGHT = new Knob<>(
            "Elbow height",
            Unit.CENTIMETRE,
            cm(2),
            cm(60),
            cm(4),
            "height of the elbow joint over the floor, on forearms",
            "4 cm, from memory");

    /** Distance between the feet, seen from the front. */
    public static final Knob<Length> STANCE_WIDTH = new Knob<>(
            "Stance width",
            Unit.CENTIMETRE,
            cm(5),
            cm(120),
            cm(34),
            "distance between the middles of both feet",
            "34 cm, a little less than the shoulders' breadth (from memory)");

    private SetupKnobs() {}
}

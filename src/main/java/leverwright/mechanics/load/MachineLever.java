package leverwright.mechanics.load;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Inertia;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * A machine's lever about a fixed axis: a stack on a cable that runs over a cam, masses on the lever (its own, plates, a
 * counterweight), and inertia. What the limb must give about the axis is
 * I·φ̈ + Σ m·g·ρ·cos(φ + offset) + sense·T·r, T the cable's tension at the stack's own acceleration, r the cam's arm (Euler's
 * equation about a fixed axis, derived here).
 *
 * @param startAngle direction of the lever from its axis to the pad where its travel is 0, rad from forward
 * @param sense +1 if lifting turns it counter-clockwise, −1 if clockwise
 * @param cable the stack; its ratio counts between cam and stack
 * @param cam where the cable pulls
 * @param masses on the lever
 * @param inertia about the axis besides the masses taken as points, kg·m²
 */
public record MachineLever(double startAngle, int sense, Cable cable, Cam cam, List<LeverMass> masses, double inertia) {
    private static final double TURN = 2 * Math.PI;

    /**
     * A mass on the lever.
     *
     * @param name in print, such as "counterweight"
     * @param mass kg, 0 to {@link Resistance#GREATEST_MASS}
     * @param radius from the axis, m
     * @param offset ahead of the lever, counter-clockwise, rad; π for a counterweight
     */
    public record LeverMass(String name, double mass, double radius, double offset) {
        /**
         * Makes the mass.
         *
         * @throws IllegalArgumentException if a number is outside its range or not a number
         */
        public LeverMass {
            Require.within(mass, 0, Resistance.GREATEST_MASS, "mass of the " + name, "kg");
            Require.within(radius, 0, 5, "distance of the " + name + " from the axis", "m");
            Require.within(offset, -TURN, TURN, "offset of the " + name, "rad");
        }
    }

    /**
     * Makes the lever.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public MachineLever {
        masses = List.copyOf(masses);
        Require.within(startAngle, -TURN, TURN, "start of a machine's lever", "rad");
        Require.within(inertia, 0, 10_000, "inertia of a machine's lever", "kg m^2");
        if (sense != 1 && sense != -1) {
            throw new IllegalArgumentException(
                    "sense of a machine's lever is " + sense + "; allowed: 1, counter-clockwise, or -1, clockwise");
        }
    }

    /** Begins a lever with a stack on a round wheel; lifting turns it counter-clockwise from level forward. */
    public static MachineLever stack(Mass stack, Length wheel) {
        Cable cable = new Cable(stack.si(), 1, 1, 0, Direction.HELD);
        return new MachineLever(0, 1, cable, Cam.round(wheel), List.of(), 0);
    }

    /** Returns this lever starting at a direction from the axis to the pad, counter-clockwise from forward. */
    public MachineLever startsAt(Angle direction) {
        return new MachineLever(direction.si(), sense, cable, cam, masses, inertia);
    }

    /** Returns this lever with lifting turning clockwise. */
    public MachineLever clockwise() {
        return new MachineLever(startAngle, -1, cable, cam, masses, inertia);
    }

    /** Returns this lever with another cable behind its cam. */
    public MachineLever cable(Cable other) {
        return new MachineLever(startAngle, sense, other, cam, masses, inertia);
    }

    /** Returns this lever with another cam. */
    public MachineLever cam(Cam other) {
        return new MachineLever(startAngle, sense, cable, other, masses, inertia);
    }

    /** Returns this lever with a mass on it, in line with the lever, on the pad's side of the axis. */
    public MachineLever weight(String name, Mass mass, Length fromAxis) {
        return with(new LeverMass(name, mass.si(), fromAxis.si(), 0));
    }

    /** Returns this lever with a counterweight opposite the pad. */
    public MachineLever counterweight(Mass mass, Length fromAxis) {
        return with(new LeverMass("counterweight", mass.si(), fromAxis.si(), Math.PI));
    }

    /** Returns this lever with inertia about the axis besides its masses. */
    public MachineLever inertia(Inertia aboutAxis) {
        return new MachineLever(startAngle, sense, cable, cam, masses, aboutAxis.si());
    }

    /** Returns this lever with a mass on it. */
    public MachineLever with(LeverMass mass) {
        List<LeverMass> more = new ArrayList<>(masses);
        more.add(mass);
        return new MachineLever(startAngle, sense, cable, cam, more, inertia);
    }

    /** Returns the travel of the lever at an angle: how far it was lifted from its start, rad, within half a turn. */
    double travel(double angle) {
        double travel = sense * (angle - startAngle);
        return travel - TURN * Math.rint(travel / TURN);
    }

    private double totalInertia() {
        double sum = inertia;
        for (LeverMass mass : masses) {
            sum += mass.mass() * mass.radius() * mass.radius();
        }
        return sum;
    }

    private Travel cableTravel(double angle, double velocity, double acceleration, double gravity) {
        double travel = travel(angle);
        double radius = cam.radius(travel);
        double speed = sense * velocity;
        return Travel.moving(
                cam.cable(travel),
                radius * speed,
                radius * sense * acceleration + cam.slope(travel) * speed * speed,
                gravity);
    }

    private double tension(Travel travel) {
        return cable.stack() == 0 ? 0 : cable.force(travel);
    }

    /** Returns the counter-clockwise moment that the limb must give the lever about its axis, N·m. */
    double moment(double angle, double velocity, double acceleration, double gravity) {
        double moment = totalInertia() * acceleration;
        for (LeverMass mass : masses) {
            moment += mass.mass() * gravity * mass.radius() * Trigonometry.cosine(angle + mass.offset());
        }
        Travel travel = cableTravel(angle, velocity, acceleration, gravity);
        return moment + sense * tension(travel) * cam.radius(travel(angle));
    }

    /** Returns the energy of stack, masses and motion, J. */
    double stored(double angle, double velocity, double gravity) {
        double stored = 0.5 * totalInertia() * velocity * velocity;
        for (LeverMass mass : masses) {
            stored += mass.mass() * gravity * mass.radius() * Trigonometry.sine(angle + mass.offset());
        }
        return stored + cable.stored(cableTravel(angle, velocity, 0, gravity));
    }

    /** Returns the heat of the cable's friction, W. */
    double heat(double angle, double velocity, double acceleration, double gravity) {
        Travel travel = cableTravel(angle, velocity, acceleration, gravity);
        return cable.stack() == 0 ? 0 : cable.heat(travel);
    }

    /** Returns what must be said beside its results. */
    public List<String> notes() {
        Set<String> notes = new LinkedHashSet<>();
        notes.add("Stack, cam, lever weight and counterweight are the machine's as given; a stack is not a force.");
        notes.addAll(cable.notes());
        return List.copyOf(notes);
    }

    /**
     * Returns the force of a pad square to the lever, moved slowly, with its working.
     *
     * @param travel how far the lever was lifted from its start
     * @param padFromAxis distance of the pad from the axis
     */
    public Answer<Force> padForce(Angle travel, Length padFromAxis, Direction direction) {
        Require.positive(padFromAxis.si(), 5, "distance of a pad from its axis", "m");
        double angle = startAngle + sense * travel.si();
        List<Step> steps = new ArrayList<>();
        Step moment = momentStep(steps, angle, direction);
        Expression pad = Expression.symbol("R_pad", padFromAxis, "pad from the axis; set");
        double force = moment.value() / padFromAxis.si();
        String label = "pad force, " + direction.words();
        steps.add(Step.of("F_pad", moment.result().dividedBy(pad), Force.of(force), "square to the lever"));
        return Answer.of(label, Force.of(force), Sides.TOTAL, Working.of(label + ", in total", steps))
                .noted(notes());
    }

    private Step momentStep(List<Step> steps, double angle, Direction direction) {
        double travel = travel(angle);
        Travel slow = Travel.slowly(cam.cable(travel), direction);
        List<Step> cableSteps = cable.steps(slow);
        steps.addAll(cableSteps);
        Step tension = cableSteps.get(cableSteps.size() - 1);
        double radius = cam.radius(travel);
        Expression arm = Expression.symbol("r_cam", Length.of(radius), "arm of the cam here");
        double sum = tension.value() * radius;
        Expression total = tension.result().times(arm);
        Expression phi = Expression.symbol("phi", Angle.of(angle), "direction of the lever");
        int number = 0;
        for (LeverMass mass : masses) {
            number++;
            Expression at = mass.offset() == 0
                    ? phi
                    : phi.plus(Expression.symbol("delta_" + number, Angle.of(mass.offset()), mass.name() + "; set"));
            Expression weight = Expression.symbol("m_" + number, Mass.of(mass.mass()), mass.name() + "; set")
                    .times(Gravity.symbol(Gravity.STANDARD))
                    .times(Expression.symbol("rho_" + number, Length.of(mass.radius()), mass.name() + "; set"))
                    .times(Expression.cosine(at));
            total = sense > 0 ? total.plus(weight) : total.minus(weight);
            sum += sense
                    * (mass.mass() * Gravity.STANDARD * mass.radius())
                    * Trigonometry.cosine(angle + mass.offset());
        }
        Step moment = Step.of("M_lever", total, Moment.of(sum), "about the machine's axis, against lifting");
        steps.add(moment);
        return moment;
    }
}

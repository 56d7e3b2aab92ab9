package leverwright.mechanics.study;

import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.deadlift;
import static leverwright.mechanics.exercise.Exercises.frontSquat;
import static leverwright.mechanics.exercise.Exercises.hipThrust;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.PublishedTable;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.TwoContacts;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knobs;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.SetupKnobs;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;

/** Printed examples with muscle and joint force, and orderings that were measured. */
class PublishedExamplesTest {
    /** Gravity of the books, m/s². */
    private static final double BOOK_G = 9.8;

    private final PublishedTable problems = PublishedTable.read("textbook_problems.csv");
    /** Wilke 1999: one man of 70 kg; his stature, 1.74 m, is from memory. */
    private final Lifter oneMan = Lifter.lifter("One man").of(Sex.MALE, cm(174), kg(70));

    private static Linkage rod(double mass, double length, double centre) {
        return Linkage.chain(List.of(new Link("rod", 1, mass, length, Place.along(centre), Place.along(length), 0)));
    }

    /** A level rod on a joint: the pull at a place and angle that leaves the joint no couple, and the joint's force then. */
    private static double[] pullAndJoint(Linkage rod, List<Load> loads, double at, double degrees) {
        double back = -Math.cos(Math.toRadians(degrees));
        double up = Math.sin(Math.toRadians(degrees));
        FixedSupport joint = new FixedSupport("rod", Place.START);
        LinkageSolver without = LinkageSolver.of(rod, loads, joint)
                .gravity(BOOK_G)
                .direction(0, 0)
                .solve();
        double pull = without.reactionCouple() / (at * up);
        List<Load> all = new ArrayList<>(loads);
        all.add(new ForceLoad("rod", Place.along(at), pull * back, pull * up));
        LinkageSolver with = LinkageSolver.of(rod, all, joint)
                .gravity(BOOK_G)
                .direction(0, 0)
                .solve();
        assertEquals(0, with.reactionCouple(), 1e-9);
        return new double[] {pull, with.reactionX(0), with.reactionY(0)};
    }

    /** Giancoli, Physics, 7th edition, chapter 9, problem 34: an arm held level by the deltoid; printed to two digits. */
    @Test
    void theDeltoidHoldsAnArmLevel() {
        String row = "Giancoli Physics 7e ch9 P34";
        double mass = problems.number(row, "inputs", "arm # kg");
        double centre = problems.number(row, "inputs", "CG # cm") / 100;
        double at = problems.number(row, "inputs", "deltoid at # cm") / 100;
        double degrees = problems.number(row, "inputs", "cm, # deg");
        double[] found = pullAndJoint(rod(mass, 0.6, centre), List.of(), at, degrees);
        assertEquals(problems.number(row, "printed_answer", "F_M=# N"), found[0], 5);
        assertEquals(problems.number(row, "printed_answer", "F_J=# N"), Math.hypot(found[1], found[2]), 5);
        double below = Math.toDegrees(Math.atan2(-found[2], found[1]));
        assertEquals(problems.number(row, "printed_answer", "at # deg"), below, 0.05);
    }

    /** A worked problem of bending forward: spine as a level rod of 350 N, 200 N at its end, muscle at two thirds and 12°. */
    @Test
    void theBackHoldsALevelSpine() {
        String row = "bending forward";
        double weight = problems.number(row, "inputs", "rod # N");
        double load = problems.number(row, "inputs", "load # N");
        double degrees = problems.number(row, "inputs", "L, # deg");
        MassLoad end = new MassLoad("rod", Place.along(0.6), load / BOOK_G);
        double[] found = pullAndJoint(rod(weight / BOOK_G, 0.6, 0.3), List.of(end), 0.4, degrees);
        assertEquals(problems.number(row, "printed_answer", "T=# kN"), found[0] / 1000, 0.005);
        assertEquals(problems.number(row, "printed_answer", "Rx=# kN"), found[1] / 1000, 0.005);
    }

    /** OpenStax University Physics 12.2, problem 35: a scaffold on two ropes, with the mass of the equipment as printed. */
    @Test
    void twoRopesShareAScaffold() {
        PublishedTable book = PublishedTable.read("openstax_up_12_2.csv");
        double length = book.number("P35", "inputs", "kg, # m");
        Linkage board = rod(book.number("P35", "inputs", "# kg, 6"), length, length / 2);
        MassLoad painter = new MassLoad(
                "rod",
                Place.along(book.number("P35", "inputs", "kg # m from left")),
                book.number("P35", "inputs", "painter # kg"));
        MassLoad equipment = new MassLoad(
                "rod",
                Place.along(length - book.number("P35", "inputs", "equipment # m")),
                book.number("P35", "printed_answer", "; # kg"));
        TwoContacts ropes = TwoContacts.onFloor(
                new TwoContacts.Contact("rod", Place.START), new TwoContacts.Contact("rod", Place.along(length)), 0);
        LinkageSolver solver = LinkageSolver.of(board, List.of(painter, equipment), ropes)
                .gravity(BOOK_G)
                .direction(0, 0)
                .solve();
        assertEquals(book.number("P35", "printed_answer", "left # N"), solver.reactionY(0), 0.5);
        assertEquals(book.number("P35", "printed_answer", "right # N"), solver.reactionY(1), 0.5);
    }

    private double compression(HeldPosture held) {
        return Studies.compression(Joint.LOW_BACK).si(held);
    }

    /**
     * Wilke 1999, pressure in a lumbar disc of one man: standing 0.5 MPa, bent forward 1.1, with 20 kg close to the body 1.1,
     * lifting 20 kg with bent knees 1.7, with a round back 2.3. The ordering only; angles are not stated there.
     */
    @Test
    void theLowBackIsPressedInTheOrderThatWasMeasured() {
        double standing = compression(romanianDeadlift()
                .barbell(kg(0))
                .plumbArms()
                .torsoLean(deg(0))
                .by(oneMan)
                .posture());
        double bent = compression(romanianDeadlift()
                .barbell(kg(0))
                .plumbArms()
                .torsoLean(deg(60))
                .by(oneMan)
                .posture());
        double close = compression(
                romanianDeadlift().barbell(kg(20)).torsoLean(deg(10)).by(oneMan).posture());
        double bentKnees = compression(deadlift()
                .barbell(kg(20))
                .thighAboveLevel(deg(20))
                .torsoLean(deg(45))
                .by(oneMan)
                .posture());
        double roundBack = compression(romanianDeadlift()
                .barbell(kg(20))
                .plumbArms()
                .torsoLean(deg(80))
                .by(oneMan)
                .posture());
        assertTrue(standing < bent && standing < close);
        assertTrue(close < bentKnees && bentKnees < roundBack);
        assertTrue(bent < roundBack);
    }

    /**
     * Krzyszkowski and Kipp 2020: with the same bar the hip's moment is larger in the back squat, the knee's in the front squat;
     * the direction only, at level thighs, held still.
     */
    @Test
    void theFrontSquatAsksMoreOfTheKneeAndLessOfTheHip() {
        HeldPosture back = backSquat().barbell(kg(60)).by(oneMan).posture();
        HeldPosture front = frontSquat().with(Knobs.BAR, kg(60)).by(oneMan).posture();
        assertTrue(back.moment(Joint.HIP).value().si()
                > front.moment(Joint.HIP).value().si());
        assertTrue(back.moment(Joint.KNEE).value().si()
                < front.moment(Joint.KNEE).value().si());
    }

    /** Brazil 2021: the hip's extension moment of the hip thrust falls through the lift: the direction only. */
    @Test
    void theHipThrustAsksLessOfTheHipTheHigherItIs() {
        Performance thrust = hipThrust().by(oneMan);
        double before = Double.MAX_VALUE;
        for (int below = 45; below >= 0; below -= 5) {
            HeldPosture held =
                    thrust.with(SetupKnobs.HIPS_BELOW_LEVEL, deg(below)).posture();
            double hip = held.moment(Joint.HIP).value().si();
            assertTrue(hip < before, below + "°");
            before = hip;
        }
    }
}

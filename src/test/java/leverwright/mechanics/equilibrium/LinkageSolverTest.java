package leverwright.mechanics.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.PublishedTable;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.RootFinder;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;

/** Closed forms and printed examples. */
class LinkageSolverTest {
    private static Link rod(String name, double mass, double length, double centre) {
        return new Link(name, 1, mass, length, Place.along(centre), Place.along(length), mass * length * length / 12);
    }

    /** A rod held level: moment at its root m·g·L/2, moment at a joint halfway the weight beyond times a quarter. */
    @Test
    void holdsALevelRodInTwoHalves() {
        Linkage halves = Linkage.chain(List.of(rod("inner", 2, 0.5, 0.25), rod("outer", 2, 0.5, 0.25)));
        Solution held = LinkageSolver.solve(
                halves, Configuration.at(halves, Vector.ZERO, 0, 0), List.of(), new FixedSupport("inner", Place.START));
        assertEquals(4 * 9.80665 * 0.5, held.reaction().couple(), 1e-12);
        assertEquals(2 * 9.80665 * 0.25, held.joint("outer").moment(), 1e-12);
        assertEquals(2 * 9.80665, held.joint("outer").force().y(), 1e-12);
        assertTrue(held.balanced());
    }

    /** A rod let go from level about a pin falls with α = 3g/(2L) and the pin carries a quarter of its weight. */
    @Test
    void needsNoMomentForARodThatFalls() {
        Linkage rod = Linkage.chain(List.of(rod("rod", 3, 0.8, 0.4)));
        double alpha = -1.5 * 9.80665 / 0.8;
        Configuration falling = Configuration.at(rod, Vector.ZERO, 0.0).moving(List.of(0.0), List.of(alpha));
        Solution held = LinkageSolver.solve(rod, falling, List.of(), new FixedSupport("rod", Place.START));
        assertEquals(0, held.reaction().couple(), 1e-13);
        assertEquals(3 * 9.80665 / 4, held.reaction().force().y(), 1e-13);
    }

    /** A rod that spins without gravity is pulled inwards with m·ω²·r. */
    @Test
    void pullsASpinningRodInwards() {
        Linkage rod = Linkage.chain(List.of(rod("rod", 3, 0.8, 0.4)));
        Configuration spinning = Configuration.at(rod, Vector.ZERO, 0.3).moving(List.of(2.0), List.of(0.0));
        LinkageSolver solver = LinkageSolver.of(rod, List.of(), new FixedSupport("rod", Place.START))
                .gravity(0)
                .configuration(spinning)
                .solve();
        assertEquals(-3 * 4 * 0.4 * Math.cos(0.3), solver.reactionX(0), 1e-13);
        assertEquals(-3 * 4 * 0.4 * Math.sin(0.3), solver.reactionY(0), 1e-13);
    }

    /**
     * OpenStax University Physics 12.2, problem 37: a person on a ladder that leans on a frictionless wall; g = 9.8 m/s² there.
     */
    @Test
    void leansALadderOnASmoothWall() {
        PublishedTable book = PublishedTable.read("openstax_up_12_2.csv");
        double length = book.number("P37", "inputs", "ladder # m");
        double mass = book.number("P37", "inputs", " m # kg CM");
        Linkage ladder = Linkage.chain(List.of(rod("ladder", mass, length, book.number("P37", "inputs", "CM # m"))));
        TwoContacts wallAndFloor = new TwoContacts(
                new TwoContacts.Contact("ladder", Place.along(length)),
                new TwoContacts.Contact("ladder", Place.START),
                Math.PI / 2,
                0);
        MassLoad person = new MassLoad(
                "ladder",
                Place.along(book.number("P37", "inputs", "kg at # m")),
                book.number("P37", "inputs", "person # kg"));
        LinkageSolver solver = LinkageSolver.of(ladder, List.of(person), wallAndFloor)
                .gravity(9.8)
                .direction(0, Math.acos(-book.number("P37", "inputs", "base # m") / length))
                .solve();
        assertEquals(book.number("P37", "printed_answer", "N=# N"), solver.reactionY(1), 0.5);
        assertEquals(book.number("P37", "printed_answer", "f=# N"), Math.abs(solver.reactionX(1)), 0.3);
        assertEquals(0, solver.reactionY(0), 1e-10);
    }

    /** OpenStax College Physics 9.6, push-up, part a; the weight is the one its answer implies. */
    @Test
    void sharesAPushUpBetweenHandsAndFeet() {
        PublishedTable book = PublishedTable.read("openstax_cp_9_6.csv");
        double weight = book.number("P-pushup-a", "recomputed", "weight # N");
        double mass = book.number("P-pushup-a", "recomputed", "(# kg)");
        double hand = book.number("P-pushup-a", "printed_answer", "# N on the floor with each hand");
        double hands = book.number("P-pushup-a", "inputs", "feet-hands # m");
        Linkage body =
                Linkage.chain(List.of(rod("body", mass, hands, book.number("P-pushup-a", "inputs", "feet-CG # m"))));
        LinkageSolver solver =
                LinkageSolver.of(body, List.of(), pushUp(hands, 0)).gravity(9.8).solve();
        assertEquals(hand, solver.reactionY(0) / 2, 0.5);
        assertEquals(weight, solver.reactionY(0) + solver.reactionY(1), 1e-10);
        assertTrue(solver.balanced());
        solver.freeForce(40).solve();
        assertEquals(40, solver.reactionX(0), 1e-12);
        assertEquals(-40, solver.reactionX(1), 1e-12);
        assertEquals(hand, solver.reactionY(0) / 2, 0.5);
    }

    private static TwoContacts pushUp(double hands, double forwardForce) {
        return TwoContacts.onFloor(
                new TwoContacts.Contact("body", Place.along(hands)),
                new TwoContacts.Contact("body", Place.START),
                forwardForce);
    }

    /** Level body: hands carry 0.6, feet 0.4 of the weight; with friction 0.5 the feet slide first, at 0.2 of the weight. */
    @Test
    void boundsTheFreeForceByFriction() {
        Linkage body = Linkage.chain(List.of(rod("body", 50, 1.5, 0.9)));
        LinkageSolver solver =
                LinkageSolver.of(body, List.of(), pushUp(1.5, 10)).gravity(9.8).solve();
        FrictionRange range = solver.frictionRange(0.5, 0.5).orElseThrow();
        assertEquals(-0.2 * 490, range.least(), 1e-10);
        assertEquals(0.2 * 490, range.greatest(), 1e-10);
        assertEquals(10, solver.reactionX(0), 1e-12, "the free force is put back");
        LinkageSolver pulled = LinkageSolver.of(
                        body, List.of(new ForceLoad("body", Place.along(1.5), 0, 600)), pushUp(1.5, 0))
                .solve();
        assertTrue(pulled.frictionRange(0.5, 0.5).isEmpty());
        assertFalse(pulled.balanced());
    }

    @Test
    void findsTheBalancedLeanOfAnInvertedPendulum() {
        Linkage person = Linkage.chain(List.of(
                new Link("foot", 2, 2, 0.26, new Place(0.1, 0.03), new Place(0.05, 0.08), 0.01),
                rod("body", 70, 1.7, 0.9)));
        LinkageSolver solver = LinkageSolver.of(person, List.of(), new GroundSupport("foot"));
        RootFinder.Root lean = RootFinder.between(
                "balanced posture", "rad", d -> solver.direction(1, d).solve().centreOfPressure() - 0.13, 1, 2, 1e-14);
        double expected = Math.acos(((72 * 0.13 - 2 * 0.1) / 70 - 0.05) / 0.9);
        assertEquals(expected, lean.at(), 1e-12);
        IllegalArgumentException none = assertThrows(
                IllegalArgumentException.class,
                () -> RootFinder.between(
                        "balanced posture",
                        "rad",
                        d -> solver.direction(1, d).solve().centreOfPressure() - 0.13,
                        2,
                        2.5,
                        1e-14));
        assertTrue(none.getMessage().startsWith("no balanced posture between 2.0 rad and 2.5 rad"), none.getMessage());
    }

    @Test
    void changesALoadsNumbersAsAWholeNewLoadWould() {
        Linkage rod = Linkage.chain(List.of(rod("rod", 3, 0.8, 0.4), rod("tip", 1, 0.3, 0.1)));
        Place at = new Place(0.2, 0.05);
        List<Load> loads = List.of(new MassLoad("tip", at, 5, 2), new ForceLoad("tip", at, 1, 2));
        LinkageSolver numbers = LinkageSolver.of(rod, loads, new FixedSupport("rod", Place.START));
        LinkageSolver whole = LinkageSolver.of(rod, loads, new FixedSupport("rod", Place.START));
        numbers.turning(1, 2, 3).loadMass(0, 7).loadForce(1, -30, 40).solve();
        whole.turning(1, 2, 3)
                .load(0, new MassLoad("tip", at, 7, 2))
                .load(1, new ForceLoad("tip", at, -30, 40))
                .solve();
        assertEquals(whole.moment(1), numbers.moment(1));
        assertEquals(whole.solution().systemMassCentre(), numbers.solution().systemMassCentre());
        assertMessage(() -> numbers.loadMass(1, 7), "load 1 is of kind \"force\"; allowed: \"mass\"");
        assertMessage(() -> numbers.loadMass(0, -7), "attached mass is -7 kg");
        assertMessage(() -> numbers.loadForce(1, Double.NaN, 0), "forward part of a force is NaN");
    }

    @Test
    void refusesWhatCannotBe() {
        Linkage rod = Linkage.chain(List.of(rod("rod", 3, 0.8, 0.4)));
        LinkageSolver solver = LinkageSolver.of(rod, List.of(), new GroundSupport("rod"));
        assertMessage(() -> solver.direction(0, Double.NaN), "direction of link 0 is NaN rad; allowed: -1000 to");
        assertMessage(() -> solver.mass(0, -1), "mass of link 0 is -1 kg");
        assertMessage(() -> solver.gravity(-1), "gravity is -1");
        assertMessage(() -> solver.freeForce(1), "not two contacts");
        assertMessage(() -> rod("rod", 3, 0, 0), "length of link \"rod\" is 0 m; allowed: greater than 0");
        assertMessage(
                () -> LinkageSolver.of(rod, List.of(new MassLoad("leg", Place.START, 1)), new GroundSupport("rod")),
                "there is no link \"leg\"; allowed: rod");
    }

    private static void assertMessage(org.junit.jupiter.api.function.Executable action, String part) {
        String message = assertThrows(IllegalArgumentException.class, action).getMessage();
        assertTrue(message.contains(part), message);
    }
}

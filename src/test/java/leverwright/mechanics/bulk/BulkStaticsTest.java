package leverwright.mechanics.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.equilibrium.TwoContacts;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.load.CableLoad;
import leverwright.mechanics.load.CoupleLoad;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every number of a bulk solve against the solver for one point, bit for bit; that solver has its own checks. */
class BulkStaticsTest {
    private static final long SEED = 20261126L;

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 127, 128, 129, 511, 512, 513})
    void givesEveryPointTheBitsOfTheSingleSolveAtAllLengthsOfABlock(int count) {
        RandomStream random = new RandomStream(SEED + count);
        Linkage chain = linkage(random, 7, true);
        List<Load> loads = loads(random, chain);
        same(random, chain, loads, new GroundSupport("link 0"), count, true);
    }

    @Test
    void givesTheSameBitsForRandomChainsAndTrees() {
        for (int trial = 0; trial < 60; trial++) {
            RandomStream random = new RandomStream(SEED + 100 + trial);
            Linkage linkage = linkage(random, 1 + random.nextIndex(9), trial % 2 == 0);
            Support support = trial % 3 == 0
                    ? new FixedSupport("link 0", new Place(0.02, random.nextBetween(-0.1, 0.1)))
                    : new GroundSupport("link 0");
            same(random, linkage, loads(random, linkage), support, 40, true);
        }
    }

    @Test
    void leavesWhatBlocksCannotDoToTheSingleSolve() {
        RandomStream random = new RandomStream(SEED + 300);
        Linkage chain = linkage(random, 5, true);
        List<Load> masses = List.of(new MassLoad("link 2", Place.along(0.1), 12));
        List<Load> cable = List.of(new CableLoad("link 4", Place.along(0.1), new Vector(2, 3), 40, 2));
        same(random, chain, masses, new GroundSupport("link 3"), 50, false);
        same(random, chain, masses, new FixedSupport("link 4", Place.START), 50, false);
        same(random, chain, cable, new GroundSupport("link 0"), 50, false);
        same(
                random,
                chain,
                masses,
                TwoContacts.onFloor(
                        new TwoContacts.Contact("link 0", Place.START),
                        new TwoContacts.Contact("link 4", Place.along(0.2)),
                        15),
                50,
                false);
    }

    @Test
    void givesTheSameBitsForTheCatalogueAsLinkages() {
        Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, Measures.cm(178), Measures.kg(71));
        int byBlocks = 0;
        for (var exercise : Catalogue.exercises()) {
            Mechanism mechanism = exercise.by(ines).posture().mechanism();
            BulkStatics bulk = BulkStatics.of(mechanism.linkage(), mechanism.loads(), mechanism.support());
            byBlocks += bulk.goesByBlocks() ? 1 : 0;
            same(
                    new RandomStream(SEED + 400),
                    mechanism.linkage(),
                    mechanism.loads(),
                    mechanism.support(),
                    20,
                    bulk.goesByBlocks());
        }
        assertTrue(byBlocks > 20, byBlocks + " exercises went by blocks");
    }

    @Test
    void takesSpecialAngles() {
        Linkage one = Linkage.chain(List.of(new Link("link 0", 1, 3, 0.4, Place.along(0.2), Place.along(0.4), 0)));
        Linkage two = Linkage.builder()
                .then(one.link(0))
                .then(new Link("link 1", 1, 2, 0.3, Place.along(0.1), Place.along(0.3), 0))
                .build();
        List<Double> angles = new ArrayList<>();
        for (int k = -300; k <= 300; k++) {
            double multiple = k * Math.PI / 64;
            angles.addAll(List.of(multiple, Math.nextUp(multiple), multiple + 1e-5, multiple + 0.0245, 3.3 * k));
        }
        angles.addAll(List.of(-0.0, 1e-300, 48.0, Math.nextUp(48.0), -48.0, 999.0, -1000.0));
        double[] directions = angles.stream().mapToDouble(angle -> angle).toArray();
        BulkStatics bulk = BulkStatics.of(two, List.of(), new FixedSupport("link 0", Place.START))
                .direction(1, Column.of(directions));
        BulkSolution found = BulkSolution.moments(two, directions.length);
        bulk.solve(Crew.alone(), found);
        LinkageSolver solver = LinkageSolver.of(two, List.of(), new FixedSupport("link 0", Place.START));
        for (int i = 0; i < directions.length; i++) {
            solver.direction(1, directions[i]).solve();
            assertSame(solver.moment(1), found.moment(1)[i], "direction " + directions[i]);
        }
    }

    @Test
    void givesTheSameBitsWithTwoThreads() {
        RandomStream random = new RandomStream(SEED + 500);
        Linkage chain = linkage(random, 7, true);
        int count = 2 * BulkStatics.CHUNK + 77;
        BulkStatics bulk = BulkStatics.of(chain, loads(random, chain), new GroundSupport("link 0"));
        for (int k = 0; k < 7; k++) {
            bulk.direction(k, Column.of(uniform(random, count, -2, 2)));
        }
        BulkSolution alone = BulkSolution.momentsAndForces(chain, count);
        BulkSolution together = BulkSolution.momentsAndForces(chain, count);
        assertEquals(count, bulk.solve(Crew.alone(), alone));
        ExecutorService threads = Executors.newFixedThreadPool(2);
        try {
            assertEquals(count, bulk.solve(new Crew(threads, 2, () -> false, (done, all) -> {}), together));
        } finally {
            threads.shutdown();
        }
        for (int k = 1; k < 7; k++) {
            for (int i = 0; i < count; i++) {
                assertSame(alone.moment(k)[i], together.moment(k)[i], "moment " + k);
                assertSame(alone.forceY(k)[i], together.forceY(k)[i], "force " + k);
            }
        }
    }

    @Test
    void stopsBetweenChunks() {
        RandomStream random = new RandomStream(SEED + 600);
        Linkage chain = linkage(random, 3, true);
        int count = 4 * BulkStatics.CHUNK;
        long[] told = {0};
        Crew crew = new Crew(Runnable::run, 1, () -> told[0] >= BulkStatics.CHUNK, (done, all) -> told[0] = done);
        int done = BulkStatics.of(chain, List.of(), new GroundSupport("link 0"))
                .solve(crew, BulkSolution.moments(chain, count));
        assertEquals(BulkStatics.CHUNK, done);
    }

    @Test
    void refusesBadInputInWords() {
        Linkage chain = linkage(new RandomStream(SEED), 3, true);
        List<Load> loads = List.of(new MassLoad("link 2", Place.along(0.1), 12));
        BulkStatics bulk = BulkStatics.of(chain, loads, new GroundSupport("link 0"));
        refused("direction of link 1", () -> bulk.direction(1, Column.of(0, 1001)));
        refused("mass of link 1", () -> bulk.mass(1, Column.of(5).times(-1)));
        refused("column", () -> Column.of(1, Double.NaN));
        refused("kind", () -> bulk.loadForce(0, Column.of(1), Column.of(1)));
        refused("two contacts", () -> bulk.freeForce(Column.of(1)));
        refused("points", () -> BulkSolution.moments(chain, -1));
        refused("points", () -> BulkSolution.moments(chain, Integer.MAX_VALUE));
        BulkSolution room = BulkSolution.moments(chain, 3);
        bulk.direction(1, Column.of(0.1, 0.2));
        refused("column has 2", () -> bulk.solve(Crew.alone(), room));
    }

    private static void refused(String words, Runnable what) {
        String message = String.valueOf(
                assertThrows(IllegalArgumentException.class, what::run).getMessage());
        assertTrue(message.contains(words), message);
    }

    private static Linkage linkage(RandomStream random, int size, boolean chain) {
        Linkage.Builder builder = Linkage.builder();
        for (int k = 0; k < size; k++) {
            boolean bent = random.nextIndex(3) == 0;
            Place centre = new Place(random.nextBetween(0, 0.4), bent ? random.nextBetween(-0.1, 0.1) : 0);
            Place next = new Place(random.nextBetween(0.1, 0.5), bent ? random.nextBetween(-0.1, 0.1) : 0);
            Link link = new Link("link " + k, 1, random.nextBetween(0, 30), 0.5, centre, next, 0.1);
            if (k == 0 || chain) {
                builder.then(link);
            } else {
                builder.attach(link, "link " + random.nextIndex(k), next);
            }
        }
        return builder.build();
    }

    private static List<Load> loads(RandomStream random, Linkage linkage) {
        List<Load> loads = new ArrayList<>();
        for (int l = random.nextIndex(5); l > 0; l--) {
            String on = "link " + random.nextIndex(linkage.size());
            Place at = new Place(random.nextBetween(0, 0.5), random.nextBetween(-0.1, 0.1));
            loads.add(
                    switch (random.nextIndex(3)) {
                        case 0 -> new MassLoad(on, at, random.nextBetween(0, 100), random.nextBetween(-5, 5));
                        case 1 -> new ForceLoad(on, at, random.nextBetween(-90, 90), random.nextBetween(-90, 90), 2);
                        default -> new CoupleLoad(on, random.nextBetween(-50, 50));
                    });
        }
        return loads;
    }

    private static double[] uniform(RandomStream random, int count, double from, double to) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = random.nextBetween(from, to);
        }
        return values;
    }

    /** Turns everything that may change, by columns of all kinds, and compares every number that comes back. */
    private static void same(
            RandomStream random, Linkage linkage, List<Load> loads, Support support, int count, boolean blocks) {
        BulkStatics bulk = BulkStatics.of(linkage, loads, support).origin(0.3, 0.1);
        LinkageSolver solver = LinkageSolver.of(linkage, loads, support).origin(0.3, 0.1);
        assertEquals(blocks, bulk.goesByBlocks());
        if (random.nextIndex(3) == 0) {
            bulk.gravity(3, -9);
            solver.gravity(3, -9);
        }
        Column[] directions = new Column[linkage.size()];
        Column[] masses = new Column[linkage.size()];
        for (int k = 0; k < linkage.size(); k++) {
            directions[k] = random.nextIndex(4) == 0
                    ? Column.constant(random.nextBetween(-3, 3))
                    : Column.of(uniform(random, count, -180, 180))
                            .times(Math.PI / 180)
                            .plus(0.2);
            masses[k] = Column.of(uniform(random, count, 40, 90)).times(0.1);
            bulk.direction(k, directions[k]).mass(k, masses[k]);
        }
        Column[] more = new Column[loads.size()];
        for (int l = 0; l < loads.size(); l++) {
            more[l] = Column.of(uniform(random, count, 0, 50));
            if (loads.get(l) instanceof MassLoad) {
                bulk.loadMass(l, more[l]);
            } else if (loads.get(l) instanceof ForceLoad) {
                bulk.loadForce(l, more[l].times(-1).plus(7), more[l]);
            }
        }
        BulkSolution found = BulkSolution.momentsAndForces(linkage, count);
        assertEquals(count, bulk.solve(Crew.alone(), found));
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < linkage.size(); k++) {
                solver.direction(k, directions[k].at(i)).mass(k, masses[k].at(i));
            }
            for (int l = 0; l < loads.size(); l++) {
                if (loads.get(l) instanceof MassLoad) {
                    solver.loadMass(l, more[l].at(i));
                } else if (loads.get(l) instanceof ForceLoad) {
                    solver.loadForce(l, more[l].times(-1).plus(7).at(i), more[l].at(i));
                }
            }
            try {
                solver.solve();
            } catch (IllegalArgumentException doesNotReach) {
                assertTrue(Double.isNaN(found.centreOfPressure()[i]), doesNotReach.getMessage());
                continue;
            }
            compare(solver, found, i);
        }
    }

    private static void compare(LinkageSolver solver, BulkSolution found, int i) {
        for (int k = 1; k < solver.linkage().size(); k++) {
            assertSame(solver.moment(k), found.moment(k)[i], "moment at joint " + k + ", point " + i);
            assertSame(solver.forceX(k), found.forceX(k)[i], "forward force at joint " + k + ", point " + i);
            assertSame(solver.forceY(k), found.forceY(k)[i], "upward force at joint " + k + ", point " + i);
            assertFalse(Double.isNaN(found.moment(k)[i]));
        }
        assertSame(solver.centreOfPressure(), found.centreOfPressure()[i], "pressure, point " + i);
    }

    private static void assertSame(double one, double other, String what) {
        assertEquals(
                Double.doubleToRawLongBits(one),
                Double.doubleToRawLongBits(other),
                () -> what + ": " + one + " and " + other + ", seed " + SEED);
    }
}

package leverwright.mechanics.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.load.CableLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;

/** In other units of length and mass the same linkage gives the same forces and moments, in those units. */
class UnitScalingTest {
    private static final long SEED = 4711L;
    private static final int CASES = 200;

    @Test
    void forcesScaleWithMassAndMomentsWithMassTimesLength() {
        RandomStream random = new RandomStream(SEED);
        for (int i = 0; i < CASES; i++) {
            double length = random.nextBetween(0.1, 10);
            double mass = random.nextBetween(0.1, 10);
            long seed = SEED + i;
            LinkageSolver plain = solved(seed, 1, 1);
            LinkageSolver scaled = solved(seed, length, mass);
            double forces = plain.scale() * mass * 1e-11 + 1e-9;
            double moments = plain.scale() * mass * length * 1e-11 + 1e-9;
            for (int joint = 1; joint < plain.linkage().size(); joint++) {
                String where = "seed " + seed + ", joint " + joint;
                assertEquals(mass * plain.forceX(joint), scaled.forceX(joint), forces, where);
                assertEquals(mass * plain.forceY(joint), scaled.forceY(joint), forces, where);
                assertEquals(mass * length * plain.moment(joint), scaled.moment(joint), moments, where);
                assertEquals(
                        mass * length * plain.supportSideMoment(joint),
                        scaled.supportSideMoment(joint),
                        moments,
                        where);
            }
            assertEquals(mass * length * plain.scale(), scaled.scale(), moments, "seed " + seed);
        }
    }

    private static LinkageSolver solved(long seed, double length, double mass) {
        RandomStream random = new RandomStream(seed);
        List<Link> links = new ArrayList<>();
        double[] directions = new double[5];
        for (int k = 0; k < 5; k++) {
            double own = random.nextBetween(0.2, 0.5);
            directions[k] = random.nextBetween(-3, 3);
            links.add(new Link(
                    "link " + k,
                    1,
                    mass * random.nextBetween(1, 20),
                    length * own,
                    new Place(length * own * 0.4, length * random.nextBetween(-0.05, 0.05)),
                    Place.along(length * own),
                    mass * length * length * 0.1));
        }
        Place hand = Place.along(length * 0.1);
        List<Load> loads = List.of(
                new MassLoad("link 3", hand, mass * random.nextBetween(1, 50)),
                new CableLoad(
                        "link 4",
                        hand,
                        new Vector(length * random.nextBetween(3, 5), length * random.nextBetween(-2, 2)),
                        mass * random.nextBetween(5, 40),
                        2));
        return LinkageSolver.of(Linkage.chain(links), loads, new FixedSupport("link 0", Place.START))
                .directions(directions)
                .solve();
    }
}

package leverwright.mechanics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;

/**
 * Energy theorem for rigid bodies: what the joints and the weights do in a moment is the change of kinetic energy, which is found
 * here apart, by differencing the energies shortly before and after.
 */
class PowerBalanceTest {
    private static final long SEED = 20261125L;
    private static final int CASES = 60;
    private static final double STEP = 1e-4;
    private static final double G = 9.80665;

    private final RandomStream random = new RandomStream(SEED);

    @Test
    void jointsAndWeightsTogetherChangeTheKineticEnergy() {
        double largest = 0;
        for (int i = 0; i < CASES; i++) {
            Linkage chain = chain(2 + random.nextIndex(5));
            double[] angle = new double[chain.size()];
            double[] velocity = new double[chain.size()];
            double[] acceleration = new double[chain.size()];
            for (int k = 1; k < chain.size(); k++) {
                angle[k] = random.nextBetween(-3, 3);
                velocity[k] = random.nextBetween(-4, 4);
                acceleration[k] = random.nextBetween(-20, 20);
            }
            Configuration now = at(chain, angle, velocity, acceleration, 0);
            Kinematics kinematics = Kinematics.of(chain, now);
            LinkageSolver solver = LinkageSolver.of(chain, List.of(), new FixedSupport("link 0", Place.START))
                    .gravity(G)
                    .configuration(now)
                    .solve();
            double power = 0;
            for (int k = 1; k < chain.size(); k++) {
                Link link = chain.link(k);
                power += kinematics.jointPower(solver, k);
                power -= link.mass()
                        * G
                        * kinematics.velocity(link.name(), link.centre()).y();
            }
            double before = Kinematics.of(chain, at(chain, angle, velocity, acceleration, -STEP))
                    .kineticEnergy();
            double after = Kinematics.of(chain, at(chain, angle, velocity, acceleration, STEP))
                    .kineticEnergy();
            double change = (after - before) / (2 * STEP);
            assertEquals(change, power, 1e-5 * (1 + Math.abs(change)), "case " + i + ", seed " + SEED);
            largest = Math.max(largest, Math.abs(change));
        }
        assertTrue(largest > 100, "the chains hardly moved: " + largest);
    }

    private Linkage chain(int links) {
        List<Link> made = new ArrayList<>();
        for (int k = 0; k < links; k++) {
            double length = random.nextBetween(0.2, 0.5);
            made.add(new Link(
                    "link " + k,
                    1,
                    random.nextBetween(0.5, 20),
                    length,
                    new Place(length * random.nextBetween(0.2, 0.8), random.nextBetween(-0.05, 0.05)),
                    Place.along(length),
                    random.nextBetween(0, 0.5)));
        }
        return Linkage.chain(made);
    }

    private static Configuration at(Linkage chain, double[] angle, double[] velocity, double[] acceleration, double t) {
        double[] angles = new double[angle.length];
        double[] velocities = new double[angle.length];
        for (int k = 0; k < angle.length; k++) {
            angles[k] = angle[k] + velocity[k] * t + acceleration[k] * t * t / 2;
            velocities[k] = velocity[k] + acceleration[k] * t;
        }
        return Configuration.at(chain, Vector.ZERO, angles)
                .moving(
                        Arrays.stream(velocities).boxed().toList(),
                        Arrays.stream(acceleration).boxed().toList());
    }
}

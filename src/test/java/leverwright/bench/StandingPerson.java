package leverwright.bench;

import java.util.List;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;

/**
 * The linkage and the inputs of {@code src/test/peers/model.h}: a standing person of 1.75 m with a bar at the shoulder and a
 * force in the hand, whose six angles, body mass, bar mass and hand force change from scenario to scenario.
 */
final class StandingPerson {
    static final int COUNT = 4096;
    static final double HEIGHT = 1.75;
    static final double[] FRACTIONS = {0.029, 0.093, 0.200, 0.578, 0.056, 0.032, 0.012};
    static final double[] LENGTHS = {
        0.266, 0.246 * HEIGHT, 0.245 * HEIGHT, 0.288 * HEIGHT, 0.186 * HEIGHT, 0.146 * HEIGHT, 0.108 * HEIGHT
    };
    static final double[] CENTRES = {
        0.11,
        0.567 * LENGTHS[1],
        0.567 * LENGTHS[2],
        0.66 * LENGTHS[3],
        0.436 * LENGTHS[4],
        0.430 * LENGTHS[5],
        0.506 * LENGTHS[6]
    };
    static final double ANKLE_X = 0.055;
    static final double ANKLE_Y = 0.080;
    private static final double UP = 1.5707963267948966;
    private static final String[] NAMES = {"foot", "shank", "thigh", "trunk", "upper arm", "forearm", "hand"};

    private StandingPerson() {}

    /** Returns the solver, built at run time from links with names. */
    static LinkageSolver solver() {
        Linkage.Builder builder = Linkage.builder();
        for (int k = 0; k < NAMES.length; k++) {
            Place next = k == 0 ? new Place(ANKLE_X, ANKLE_Y) : Place.along(LENGTHS[k]);
            int sides = k == 3 ? 1 : 2;
            builder.then(new Link(NAMES[k], sides, FRACTIONS[k] * 75, LENGTHS[k], new Place(CENTRES[k], 0), next, 0));
        }
        return LinkageSolver.of(
                builder.build(),
                List.of(
                        new MassLoad("trunk", Place.along(LENGTHS[3]), 20),
                        new ForceLoad("hand", Place.along(CENTRES[6]), 0, 0)),
                new GroundSupport("foot"));
    }

    /** Returns the inputs, spread as the peer's: row k holds the k-th input of every scenario. */
    static double[][] inputs(long seed) {
        RandomStream random = new RandomStream(seed);
        double[][] rows = new double[10][COUNT];
        for (int k = 0; k < 10; k++) {
            for (int i = 0; i < COUNT; i++) {
                rows[k][i] = input(k, random.nextUnit());
            }
        }
        return rows;
    }

    private static double input(int k, double u) {
        return switch (k) {
            case 0 -> 0.6 * u;
            case 1 -> -1.6 * u;
            case 2 -> u;
            case 3, 4, 5 -> -0.5 + 3.5 * u;
            case 6 -> 45 + 75 * u;
            case 7 -> 200 * u;
            default -> -200 + 400 * u;
        };
    }

    /**
     * Sets one scenario's ten inputs: leans from upright forward, hanging angles from straight down forward.
     */
    static void set(LinkageSolver solver, double[] in) {
        for (int k = 0; k < 3; k++) {
            solver.direction(k + 1, UP - in[k]);
        }
        for (int k = 3; k < 6; k++) {
            solver.direction(k + 1, in[k] - UP);
        }
        for (int k = 0; k < 7; k++) {
            solver.mass(k, FRACTIONS[k] * in[6]);
        }
        solver.loadMass(0, in[7]);
        solver.loadForce(1, in[8], in[9]);
    }
}

package leverwright.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leverwright.mechanics.equilibrium.LinkageSolver;
import org.junit.jupiter.api.Test;

/** The solver against the recursion of {@code src/test/peers/static_eigen.cpp}, written out again with the JDK's sine. */
class StandingPersonTest {
    private static final double GRAVITY = 9.80665;

    @Test
    void solvesWhatThePeerSolves() {
        LinkageSolver solver = StandingPerson.solver();
        double[][] rows = StandingPerson.inputs(7);
        double[] in = new double[10];
        for (int i = 0; i < StandingPerson.COUNT; i++) {
            for (int k = 0; k < 10; k++) {
                in[k] = rows[k][i];
            }
            StandingPerson.set(solver, in);
            solver.solve();
            double[] expected = peer(in);
            double scale = solver.scale();
            for (int joint = 1; joint < 7; joint++) {
                assertEquals(expected[joint - 1], solver.moment(joint), 1e-12 * scale, "joint " + joint);
                assertEquals(expected[joint - 1], solver.supportSideMoment(joint), 1e-12 * scale, "joint " + joint);
            }
            assertEquals(expected[6], solver.centreOfPressure(), 1e-12 * (1 + Math.abs(expected[6])));
        }
    }

    private static double[] peer(double[] in) {
        double[] out = new double[7];
        double forceX = in[8];
        double forceY = in[9];
        double moment = 0;
        for (int k = 5; k >= 0; k--) {
            double x = Math.sin(in[k]);
            double y = k < 3 ? Math.cos(in[k]) : -Math.cos(in[k]);
            double length = StandingPerson.LENGTHS[k + 1];
            double centre = StandingPerson.CENTRES[k + 1];
            double weight = -StandingPerson.FRACTIONS[k + 1] * in[6] * GRAVITY;
            if (k == 2) {
                forceY -= GRAVITY * in[7];
            }
            double arm = k == 5 ? centre : length;
            moment += arm * x * forceY - arm * y * forceX + centre * x * weight;
            forceY += weight;
            out[k] = -moment;
        }
        double foot = -StandingPerson.FRACTIONS[0] * in[6] * GRAVITY;
        moment += StandingPerson.ANKLE_X * forceY - StandingPerson.ANKLE_Y * forceX + 0.11 * foot;
        out[6] = moment / (forceY + foot);
        return out;
    }
}

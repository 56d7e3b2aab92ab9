package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.function.DoubleBinaryOperator;
import org.junit.jupiter.api.Test;

/** Contours of fields whose contours are known in closed form (plane geometry). */
class ContourLinesTest {
    private static final int NODES = 81;

    private static NodeGrid grid(DoubleBinaryOperator field) {
        double[] x = new double[NODES];
        double[] y = new double[NODES];
        for (int i = 0; i < NODES; i++) {
            x[i] = -2 + 4.0 * i / (NODES - 1);
            y[i] = -1 + 3.0 * i / (NODES - 1);
        }
        double[] values = new double[NODES * NODES];
        for (int row = 0; row < NODES; row++) {
            for (int column = 0; column < NODES; column++) {
                values[row * NODES + column] = field.applyAsDouble(x[column], y[row]);
            }
        }
        return new NodeGrid(x, y, values);
    }

    private static double area(ContourLines.Line line) {
        double twice = 0;
        for (int i = 0; i + 1 < line.x().length; i++) {
            twice += line.x()[i] * line.y()[i + 1] - line.x()[i + 1] * line.y()[i];
        }
        return Math.abs(twice) / 2;
    }

    @Test
    void aPlaneHasOneStraightContourFromEdgeToEdge() {
        List<ContourLines.Line> lines = ContourLines.at(grid((x, y) -> 3 * x + 2 * y), 1.3);
        assertEquals(1, lines.size());
        ContourLines.Line line = lines.get(0);
        assertFalse(line.isClosed());
        for (int i = 0; i < line.x().length; i++) {
            assertEquals(1.3, 3 * line.x()[i] + 2 * line.y()[i], 1e-12);
        }
        assertEquals(3.0, Math.abs(line.y()[0] - line.y()[line.y().length - 1]), 1e-12);
    }

    @Test
    void aConeHasACircle() {
        List<ContourLines.Line> lines = ContourLines.at(grid((x, y) -> x * x + y * y), 0.64);
        assertEquals(1, lines.size());
        assertTrue(lines.get(0).isClosed());
        for (int i = 0; i < lines.get(0).x().length; i++) {
            assertEquals(0.8, Math.hypot(lines.get(0).x()[i], lines.get(0).y()[i]), 1e-3);
        }
        assertEquals(Math.PI * 0.64, area(lines.get(0)), 0.005);
    }

    /** A moment of a mass on a rod, m·g·sin(lean): its contour is m = M/(g·sin(lean)). */
    @Test
    void aMomentOverLeanAndMassHasItsContourWhereTheFormulaSays() {
        double[] lean = new double[NODES];
        double[] mass = new double[NODES];
        double[] values = new double[NODES * NODES];
        for (int i = 0; i < NODES; i++) {
            lean[i] = 10 + i;
            mass[i] = 1.25 * i;
        }
        for (int node = 0; node < values.length; node++) {
            values[node] = mass[node / NODES] * 9.80665 * Math.sin(Math.toRadians(lean[node % NODES]));
        }
        ContourLines.Line line =
                ContourLines.at(new NodeGrid(lean, mass, values), 300).get(0);
        for (int i = 0; i < line.x().length; i++) {
            assertEquals(300 / (9.80665 * Math.sin(Math.toRadians(line.x()[i]))), line.y()[i], 0.02);
        }
    }

    @Test
    void aSaddleIsCutIntoTwoBranchesThatDoNotCross() {
        List<ContourLines.Line> above = ContourLines.at(grid((x, y) -> x * y), 0.01);
        assertEquals(2, above.size());
        for (ContourLines.Line line : above) {
            double sign = Math.signum(line.x()[0]);
            for (double x : line.x()) {
                assertEquals(sign, Math.signum(x), "one branch stays on one side");
            }
        }
    }

    @Test
    void aCellWithoutAValueEndsTheLine() {
        List<ContourLines.Line> lines = ContourLines.at(grid((x, y) -> Math.abs(x) < 0.2 ? Double.NaN : y), 0.5);
        assertEquals(2, lines.size());
        for (ContourLines.Line line : lines) {
            for (double x : line.x()) {
                assertTrue(Math.abs(x) >= 0.2, "no line at " + x);
            }
        }
    }

    @Test
    void bordersEncloseWhatReachesALevel() {
        NodeGrid grid = grid((x, y) -> y);
        List<ContourLines.Line> half = ContourLines.borders(grid, 0.5);
        assertEquals(1, half.size());
        assertTrue(half.get(0).isClosed());
        assertEquals(4 * 1.5, area(half.get(0)), 1e-9);
        assertEquals(12, area(ContourLines.borders(grid, -Double.MAX_VALUE).get(0)), 1e-9);
        assertEquals(List.of(), ContourLines.borders(grid, 2.5));
    }

    /** Every piece of a random field's contours lies on the value, as linear interpolation along a cell's edge gives it. */
    @Test
    void randomFieldsHaveContoursOnTheValueAndClosedBorders() {
        long seed = 20261125;
        Random random = new Random(seed);
        for (int round = 0; round < 40; round++) {
            NodeGrid grid = grid((x, y) -> random.nextInt(12) == 0 ? Double.NaN : random.nextGaussian());
            double level = random.nextGaussian() / 2;
            for (ContourLines.Line line : ContourLines.borders(grid, level)) {
                assertTrue(line.isClosed(), "seed " + seed + " round " + round);
            }
            double length = 0;
            for (ContourLines.Line line : ContourLines.at(grid, level)) {
                length += line.x().length - 1;
            }
            assertEquals(pieces(grid, level), length, "seed " + seed + " round " + round);
        }
    }

    private static int pieces(NodeGrid grid, double level) {
        int pieces = 0;
        for (int row = 0; row + 1 < NODES; row++) {
            for (int column = 0; column + 1 < NODES; column++) {
                double[] corner = {
                    grid.at(column, row),
                    grid.at(column + 1, row),
                    grid.at(column + 1, row + 1),
                    grid.at(column, row + 1)
                };
                int changes = 0;
                boolean whole = true;
                for (int i = 0; i < 4; i++) {
                    whole &= !Double.isNaN(corner[i]);
                    changes += corner[i] >= level != corner[(i + 1) % 4] >= level ? 1 : 0;
                }
                pieces += whole ? changes / 2 : 0;
            }
        }
        return pieces;
    }
}

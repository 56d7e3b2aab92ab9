package leverwright.mechanics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import leverwright.mechanics.numeric.CubicSpline;
import org.junit.jupiter.api.Test;

class MinimumJerkTest {
    @Test
    void startsAndEndsAtRestAndIsFastestHalfWay() {
        assertEquals(0, MinimumJerk.way(0));
        assertEquals(1, MinimumJerk.way(1), 1e-15);
        assertEquals(0, MinimumJerk.speed(0));
        assertEquals(0, MinimumJerk.speed(1), 1e-15);
        assertEquals(1.875, MinimumJerk.speed(0.5), 1e-15);
        assertEquals(0.5, MinimumJerk.way(0.5), 1e-15);
        assertEquals(10 / Math.sqrt(3), MinimumJerk.acceleration(0.5 - Math.sqrt(3) / 6), 1e-12);
    }

    @Test
    void speedAndAccelerationAreTheDerivativesOfTheWay() {
        double h = 1e-5;
        for (double t = 0.01; t < 0.995; t += 0.03) {
            assertEquals((MinimumJerk.way(t + h) - MinimumJerk.way(t - h)) / (2 * h), MinimumJerk.speed(t), 1e-7);
            assertEquals(
                    (MinimumJerk.speed(t + h) - MinimumJerk.speed(t - h)) / (2 * h), MinimumJerk.acceleration(t), 1e-7);
            assertEquals(t, MinimumJerk.timeOf(MinimumJerk.way(t)), 1e-9);
        }
    }

    @Test
    void smoothCurvesMeetTheirValuesAndTheSineWithItsDerivatives() {
        int n = 41;
        double[] y = new double[n];
        for (int k = 0; k < n; k++) {
            y[k] = Math.sin(3.0 * k / (n - 1));
        }
        CubicSpline spline = new CubicSpline(0, 3, y);
        for (int k = 0; k < n; k++) {
            assertEquals(y[k], spline.value(3.0 * k / (n - 1)), 1e-12);
        }
        for (double x = 0; x <= 3; x += 0.013) {
            assertEquals(Math.sin(x), spline.value(x), 2e-7);
            assertEquals(Math.cos(x), spline.slope(x), 1e-5);
            assertEquals(-Math.sin(x), spline.curvature(x), 2e-3);
        }
    }
}

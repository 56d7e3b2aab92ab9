package leverwright.mechanics.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;

/** Sine and cosine against Taylor series in decimal arithmetic of 90 digits. */
class TrigonometryTest {
    private static final MathContext DIGITS = new MathContext(90, RoundingMode.HALF_EVEN);
    private static final BigDecimal HALF_PI = halfPi();
    private static final long SEED = 20261125L;

    @Test
    void staysWithinOneUlpOverManyAngles() {
        RandomStream random = new RandomStream(SEED);
        double worst = 0;
        for (int i = 0; i < 6000; i++) {
            double reach = i % 3 == 0 ? 3.2 : i % 3 == 1 ? 60 : Trigonometry.OWN_RANGE;
            worst = Math.max(worst, ulps(random.nextBetween(-reach, reach)));
        }
        System.getLogger("test").log(System.Logger.Level.DEBUG, "seed {0}, worst {1} ulp", SEED, worst);
        assertTrue(worst <= 1, "worst error " + worst + " ulp, seed " + SEED);
        assertTrue(worst > 0.4, "the measure itself must see rounding, saw " + worst + " ulp");
    }

    @Test
    void staysWithinOneUlpNextToMultiplesOfARightAngle() {
        RandomStream random = new RandomStream(SEED + 1);
        double worst = 0;
        for (int i = 0; i < 3000; i++) {
            int q = i < 200 ? i - 100 : random.nextIndex(636_000);
            double x = HALF_PI.multiply(BigDecimal.valueOf(q)).doubleValue();
            for (double near : new double[] {x, Math.nextUp(x), Math.nextDown(x)}) {
                worst = Math.max(worst, ulps(near));
            }
        }
        assertTrue(worst <= 1, "worst error " + worst + " ulp, seed " + SEED);
    }

    @Test
    void staysWithinOneUlpNextToEveryStepOfItsTableAndBetweenThem() {
        RandomStream random = new RandomStream(SEED + 2);
        double worst = 0;
        for (int half = -400; half <= 400; half++) {
            double step = half * Math.PI / 128;
            for (double near : new double[] {1e-13, 1e-6, 1.5e-5, 1.6e-5, 1e-3, 0.02454, 0.02455}) {
                worst = Math.max(worst, ulps(step + near * random.nextBetween(0.99, 1.01)));
                worst = Math.max(worst, ulps(step - near * random.nextBetween(0.99, 1.01)));
            }
        }
        assertTrue(worst <= 1, "worst error " + worst + " ulp, seed " + (SEED + 2));
    }

    @Test
    void answersBeyondItsOwnRangeAndForNoNumber() {
        assertTrue(ulps(1.0e9) <= 1);
        assertTrue(ulps(-1.0e6 - 1) <= 1);
        assertTrue(Double.isNaN(Trigonometry.sine(Double.NaN)));
        assertTrue(Double.isNaN(Trigonometry.cosine(Double.POSITIVE_INFINITY)));
        assertEquals(1.0, Trigonometry.cosine(0));
        assertEquals(0.0, Trigonometry.sine(0));
    }

    private static double ulps(double angle) {
        BigDecimal[] exact = sineAndCosine(new BigDecimal(angle));
        return Math.max(ulps(exact[0], Trigonometry.sine(angle)), ulps(exact[1], Trigonometry.cosine(angle)));
    }

    private static double ulps(BigDecimal exact, double computed) {
        double ulp = Math.ulp(exact.doubleValue());
        return exact.subtract(new BigDecimal(computed))
                .abs()
                .divide(new BigDecimal(ulp), DIGITS)
                .doubleValue();
    }

    private static BigDecimal[] sineAndCosine(BigDecimal angle) {
        BigDecimal q = angle.divide(HALF_PI, DIGITS).setScale(0, RoundingMode.HALF_EVEN);
        BigDecimal r = angle.subtract(q.multiply(HALF_PI));
        BigDecimal sine = series(r, 1, r);
        BigDecimal cosine = series(BigDecimal.ONE, 0, r);
        return switch (q.toBigInteger().and(java.math.BigInteger.valueOf(3)).intValue()) {
            case 0 -> new BigDecimal[] {sine, cosine};
            case 1 -> new BigDecimal[] {cosine, sine.negate()};
            case 2 -> new BigDecimal[] {sine.negate(), cosine.negate()};
            default -> new BigDecimal[] {cosine.negate(), sine};
        };
    }

    private static BigDecimal series(BigDecimal first, int power, BigDecimal r) {
        BigDecimal square = r.multiply(r, DIGITS);
        BigDecimal term = first;
        BigDecimal sum = first;
        int n = power;
        while (term.signum() != 0 && term.abs().compareTo(new BigDecimal("1e-80")) > 0) {
            term = term.multiply(square, DIGITS)
                    .divide(BigDecimal.valueOf((long) (n + 1) * (n + 2)), DIGITS)
                    .negate();
            n += 2;
            sum = sum.add(term, DIGITS);
        }
        return sum;
    }

    /** π/2 by Machin's formula π/4 = 4·atan(1/5) − atan(1/239). */
    private static BigDecimal halfPi() {
        MathContext more = new MathContext(110);
        return arcTangentOfInverse(5, more)
                .multiply(BigDecimal.valueOf(4))
                .subtract(arcTangentOfInverse(239, more))
                .multiply(BigDecimal.valueOf(2))
                .round(new MathContext(105));
    }

    private static BigDecimal arcTangentOfInverse(int n, MathContext digits) {
        BigDecimal power = BigDecimal.ONE.divide(BigDecimal.valueOf(n), digits);
        BigDecimal sum = power;
        for (int k = 3; power.compareTo(new BigDecimal("1e-108")) > 0; k += 2) {
            power = power.divide(BigDecimal.valueOf((long) n * n), digits);
            BigDecimal term = power.divide(BigDecimal.valueOf(k), digits);
            sum = k % 4 == 3 ? sum.subtract(term) : sum.add(term);
        }
        return sum;
    }
}

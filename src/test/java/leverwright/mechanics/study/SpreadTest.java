package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Segment.THIGH;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.BAR;
import static leverwright.mechanics.exercise.Knobs.ELBOW_FLEXION;
import static leverwright.mechanics.exercise.Knobs.PAD;
import static leverwright.mechanics.exercise.Knobs.STACK;
import static leverwright.mechanics.exercise.Knobs.THIGH_ABOVE_LEVEL;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.flexionMoment;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.muscle.MuscleGroup.VASTI;
import static leverwright.mechanics.study.MuscleWords.capacityUsed;
import static leverwright.mechanics.study.Studies.population;
import static leverwright.mechanics.study.Uncertainty.normal;
import static leverwright.mechanics.study.Uncertainty.triangular;
import static leverwright.mechanics.study.Uncertainty.withinLimits;
import static leverwright.mechanics.study.Variable.lengthOf;
import static leverwright.mechanics.study.Variable.setting;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.muscle.MuscleInput;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Sampling;
import leverwright.mechanics.working.Curves;
import org.junit.jupiter.api.Test;

class SpreadTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final Performance HINGE =
            romanianDeadlift().barbell(kg(50)).torsoLean(deg(45)).by(INES);
    private static final Performance CHAIR = kneeExtension().stack(kg(40)).by(INES);
    private static final Crew ALONE = Crew.alone();

    /**
     * T. Ishigami and T. Homma 1990, f = sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1 over ±π: shares alone 0.3139, 0.4424, 0, in all
     * 0.5576, 0.4424, 0.2437 (analytic: V1 = ½(1 + b·π⁴/5)², V2 = a²/8, V13 = b²·π⁸·(1/18 − 1/50); worked out here).
     */
    @Test
    void sharesOfTheIshigamiFunctionAreThePublishedOnes() {
        double b = 0.1;
        double pi4 = Math.pow(Math.PI, 4);
        double one = 0.5 * Math.pow(1 + b * pi4 / 5, 2);
        double two = 49.0 / 8;
        double together = b * b * pi4 * pi4 * (1 / 18.0 - 1 / 50.0);
        double all = one + two + together;
        assertEquals(0.3139, one / all, 5e-5);
        assertEquals(0.2437, together / all, 5e-5);
        VarianceShares shares = VarianceShares.of(
                points -> {
                    double[][] values = new double[points.length][1];
                    for (int k = 0; k < points.length; k++) {
                        double x1 = Math.PI * (2 * points[k][0] - 1);
                        double x2 = Math.PI * (2 * points[k][1] - 1);
                        double x3 = Math.PI * (2 * points[k][2] - 1);
                        values[k][0] =
                                Math.sin(x1) + 7 * Math.sin(x2) * Math.sin(x2) + b * Math.pow(x3, 4) * Math.sin(x1);
                    }
                    return values;
                },
                new int[] {1, 1, 1},
                Sampling.SOBOL,
                1 << 14,
                1,
                ALONE);
        double[] alone = {one / all, two / all, 0};
        double[] inAll = {(one + together) / all, two / all, together / all};
        for (int i = 0; i < 3; i++) {
            assertEquals(alone[i], shares.alone(0, i), 0.005, "share alone of input " + (i + 1));
            assertEquals(inAll[i], shares.total(0, i), 0.005, "share in all of input " + (i + 1));
        }
    }

    /**
     * The g-function of I. M. Sobol', Π (|4x − 2| + a)/(1 + a): V_i = 1/(3(1 + a_i)²), V = Π(1 + V_i) − 1, in all
     * V_i·Π_{j≠i}(1 + V_j) (analytic); the last two inputs count as one.
     */
    @Test
    void sharesOfTheGFunctionAreTheAnalyticOnesAlsoOfInputsDrawnTogether() {
        double[] a = {0, 1, 4.5, 9};
        double[] v = new double[4];
        double product = 1;
        for (int i = 0; i < 4; i++) {
            v[i] = 1 / (3 * (1 + a[i]) * (1 + a[i]));
            product *= 1 + v[i];
        }
        double all = product - 1;
        double pair = (1 + v[2]) * (1 + v[3]) - 1;
        VarianceShares shares = VarianceShares.of(
                points -> {
                    double[][] values = new double[points.length][1];
                    for (int k = 0; k < points.length; k++) {
                        double g = 1;
                        for (int i = 0; i < 4; i++) {
                            g *= (Math.abs(4 * points[k][i] - 2) + a[i]) / (1 + a[i]);
                        }
                        values[k][0] = g;
                    }
                    return values;
                },
                new int[] {1, 1, 2},
                Sampling.SOBOL,
                1 << 14,
                1,
                ALONE);
        assertEquals(v[0] / all, shares.alone(0, 0), 0.005);
        assertEquals(v[1] / all, shares.alone(0, 1), 0.005);
        assertEquals(pair / all, shares.alone(0, 2), 0.005);
        assertEquals(v[0] * product / (1 + v[0]) / all, shares.total(0, 0), 0.005);
        assertEquals(v[1] * product / (1 + v[1]) / all, shares.total(0, 1), 0.005);
        assertEquals(pair * product / (1 + pair) / all, shares.total(0, 2), 0.005);
    }

    /** Seated, the moment at the knee grows in step with the stack: quantiles of the one are those of the other (analytic). */
    @Test
    void quantilesOfALinearResultAreThoseOfItsInput() {
        Reading<Moment> knee = moment(KNEE);
        for (Sampling sampling : Sampling.values()) {
            Spread spread = Spread.of(CHAIR)
                    .vary(STACK, withinLimits(kg(30), kg(50)))
                    .drawnBy(sampling)
                    .draws(4000);
            SpreadResult drawn = spread.of(ALONE, knee);
            for (double part : new double[] {0.05, 0.25, 0.5, 0.95}) {
                double exact = knee.si(CHAIR.with(STACK, kg(30 + 20 * part)).posture());
                double loose = sampling == Sampling.RANDOM ? 0.03 : 0.001;
                assertEquals(exact, drawn.quantile(0, part), loose * exact, sampling + " at " + part);
            }
        }
    }

    /** Standard deviations: half width/√3 of limits, the deviation of a normal one, √((a²+b²+c²−ab−ac−bc)/18) of a triangle. */
    @Test
    void deviationsAreThoseOfTheDistributions() {
        Reading<Moment> knee = moment(KNEE);
        double perKilogram = knee.si(CHAIR.with(STACK, kg(41)).posture())
                - knee.si(CHAIR.with(STACK, kg(40)).posture());
        double limits = deviation(withinLimits(kg(6)));
        double bell = deviation(normal(kg(2)));
        double triangle = deviation(triangular(kg(30), kg(40), kg(60)));
        assertEquals(6 / Math.sqrt(3) * perKilogram, limits, 1e-3 * limits);
        assertEquals(2 * perKilogram, bell, 3e-3 * bell);
        double a = 30;
        double c = 40;
        double b = 60;
        double exact = Math.sqrt((a * a + b * b + c * c - a * b - a * c - b * c) / 18);
        assertEquals(exact * perKilogram, triangle, 2e-3 * triangle);
    }

    private static double deviation(Uncertainty<leverwright.mechanics.measure.Mass> uncertainty) {
        return Spread.of(CHAIR)
                .vary(STACK, uncertainty)
                .draws(8192)
                .of(ALONE, moment(KNEE))
                .deviation(0);
    }

    @Test
    void anErrorTypedWithAValueIsDrawnBetweenItsLimits() {
        Performance typed = kneeExtension().stack(kg(40).plusOrMinus(kg(10))).by(INES);
        SpreadResult drawn = Spread.of(typed).draws(1024).of(ALONE, moment(KNEE));
        double low = moment(KNEE).si(CHAIR.with(STACK, kg(30)).posture());
        double high = moment(KNEE).si(CHAIR.with(STACK, kg(50)).posture());
        assertEquals(low + 0.05 * (high - low), drawn.quantile(0, 0.05), 0.003 * high);
        assertEquals(low + 0.95 * (high - low), drawn.quantile(0, 0.95), 0.003 * high);
        assertTrue(drawn.notes().get(0).contains("Stack evenly within the error typed"), drawn.notes()::toString);
    }

    @Test
    void aLifterMeasuredWithAnErrorIsAnInputToo() {
        Performance measured = dumbbellCurl().dumbbells(kg(10)).by(INES.forearm(cm(26).plusOrMinus(cm(1))));
        SpreadResult drawn = Spread.of(measured).of(ALONE, flexionMoment(Joint.ELBOW));
        assertTrue(drawn.deviation(0) > 0);
    }

    /** A cut at the middle of an even spread: half of the draws lie above (analytic). */
    @Test
    void aClaimHoldsInTheShareOfDrawsThatAnalysisGives() {
        double limit = moment(KNEE).si(CHAIR.with(STACK, kg(44)).posture());
        Order over = Order.between("over", moment(KNEE), limit, Double.POSITIVE_INFINITY, true);
        SpreadResult drawn =
                Spread.of(CHAIR).vary(STACK, withinLimits(kg(10))).draws(4096).orders(ALONE, List.of(over));
        assertEquals(0.3, drawn.probability(0), 1e-3);
        assertEquals(4096, drawn.judged(0));
    }

    @Test
    void oneReadingAgainstAnotherIsJudgedInTheSameDraw() {
        Order order = Order.above("hip over knee", moment(HIP), moment(KNEE));
        SpreadResult drawn = Spread.of(HINGE)
                .vary(TORSO_LEAN, withinLimits(deg(5)))
                .draws(256)
                .orders(ALONE, List.of(order));
        assertEquals(1, drawn.probability(0));
        assertThrows(IllegalArgumentException.class, () -> Order.above("", moment(HIP), moment(LOW_BACK)));
    }

    @Test
    void sameBitsWithOneThreadAndThree() {
        ExecutorService pool = Executors.newFixedThreadPool(3);
        try {
            Crew three = new Crew(pool, 3, () -> false, (done, all) -> {});
            Spread spread = Spread.of(HINGE)
                    .people(population(FEMALE))
                    .vary(TORSO_LEAN, normal(deg(4)))
                    .vary(MuscleInput.MUSCLE_AREAS)
                    .draws(1500);
            SpreadResult one = spread.of(ALONE, moment(HIP), moment(LOW_BACK));
            SpreadResult other = spread.of(three, moment(HIP), moment(LOW_BACK));
            assertEquals(one.mean(0), other.mean(0), 0);
            assertEquals(one.deviation(1), other.deviation(1), 0);
            assertEquals(one.quantile(1, 0.05), other.quantile(1, 0.05), 0);
            assertEquals(
                    spread.draws(100).shares(ALONE, moment(HIP)).alone(0, 1),
                    spread.draws(100).shares(three, moment(HIP)).alone(0, 1),
                    0);
        } finally {
            pool.shutdownNow();
        }
    }

    /** Two normal inputs of deviation 1 with correlation r: their sum has the variance 2 + 2r, their difference 2 − 2r. */
    @Test
    void inputsGoTogetherAsTold() {
        for (double r : new double[] {-0.8, 0.3, 0.9}) {
            SpreadResult drawn = Spread.of(HINGE)
                    .vary(Variable.statureOfLifter(), normal(cm(1)))
                    .vary(BAR, withinLimits(kg(1)))
                    .vary(Variable.massOfLifter(), normal(kg(1)))
                    .together(Variable.statureOfLifter(), Variable.massOfLifter(), ratio(r))
                    .draws(8192)
                    .of(
                            ALONE,
                            lifterReading(
                                    "sum",
                                    each -> each.stature().si() * 100
                                            + each.bodyMass().si()),
                            lifterReading(
                                    "difference",
                                    each -> each.stature().si() * 100
                                            - each.bodyMass().si()));
            assertEquals(Math.sqrt(2 + 2 * r), drawn.deviation(0), 0.01);
            assertEquals(Math.sqrt(2 - 2 * r), drawn.deviation(1), 0.01);
            assertTrue(drawn.notes().get(0).contains("Stature and Body mass go together, correlation " + r));
        }
    }

    @Test
    void inputsThatGoTogetherCountAsOneInTheSharesAndMustBeInputs() {
        Spread two = Spread.of(HINGE)
                .vary(TORSO_LEAN, withinLimits(deg(5)))
                .vary(lengthOf(THIGH), withinLimits(cm(1)))
                .vary(BAR, withinLimits(kg(2)))
                .draws(256);
        VarianceShares shares = two.together(TORSO_LEAN, BAR, ratio(0.5)).shares(ALONE, moment(HIP));
        assertEquals(2, shares.listing().rows().size());
        assertTrue(shares.listing().rows().get(0).get(0).toString().contains(", with Bar"));
        refuses("greater than -1", () -> two.together(TORSO_LEAN, BAR, ratio(1)));
        refuses("two inputs, once", () -> two.together(BAR, BAR, ratio(0.1)));
        refuses(
                "is not an input of this spread",
                () -> two.together(STACK, BAR, ratio(0.1)).of(ALONE, moment(HIP)));
        refuses(
                "no inputs go together in all these ways",
                () -> two.together(TORSO_LEAN, BAR, ratio(0.9))
                        .together(TORSO_LEAN, lengthOf(THIGH), ratio(0.9))
                        .together(BAR, lengthOf(THIGH), ratio(-0.9))
                        .of(ALONE, moment(HIP)));
        refuses(
                "stands for many numbers",
                () -> Spread.of(HINGE)
                        .people(population(FEMALE))
                        .vary(BAR, withinLimits(kg(2)))
                        .together(BAR, lengthOf(THIGH), ratio(0.1))
                        .together(BAR, setting("the lifter's body", kg(1), kg(2), each -> HINGE), ratio(0.1))
                        .vary(lengthOf(THIGH), withinLimits(cm(1)))
                        .of(ALONE, moment(HIP)));
    }

    private static void refuses(String part, org.junit.jupiter.api.function.Executable what) {
        String said = String.valueOf(
                assertThrows(IllegalArgumentException.class, what).getMessage());
        assertTrue(said.contains(part), said);
    }

    /** Draws of bodies go together as in the survey: stature and body mass correlate by 0.4 to 0.6 (ANSUR II 2012). */
    @Test
    void bodiesAreDrawnWithTheSurveysCorrelations() {
        SpreadResult drawn = Spread.of(HINGE)
                .people(population(FEMALE))
                .draws(2048)
                .of(
                        ALONE,
                        lifterReading("stature", lifter -> lifter.stature().si()),
                        lifterReading("mass", lifter -> lifter.bodyMass().si()));
        assertEquals(1.6285, drawn.mean(0), 0.002);
        assertEquals(67.76, drawn.mean(1), 0.3);
    }

    private static Reading<leverwright.mechanics.measure.Ratio> lifterReading(
            String label, java.util.function.ToDoubleFunction<Lifter> value) {
        return Reading.of(
                label,
                leverwright.mechanics.measure.Unit.ONE,
                leverwright.mechanics.measure.Sides.NOT_SIDED,
                held -> value.applyAsDouble(held.performance().lifter()),
                held -> {
                    throw new IllegalArgumentException("only drawn");
                });
    }

    @Test
    void drawnMusclesMoveSharesOfCapacityAndLeaveMomentsAlone() {
        Spread spread = Spread.of(CHAIR).vary(MuscleInput.MUSCLE_AREAS).draws(64);
        SpreadResult drawn = spread.of(ALONE, capacityUsed(VASTI), moment(KNEE));
        assertTrue(drawn.deviation(0) > 0.01, () -> "" + drawn.deviation(0));
        assertEquals(0, drawn.deviation(1), 1e-12);
    }

    /** Beyond the values that are kept, quantiles by bins differ from exact ones by no more than two bins. */
    @Test
    void manyDrawsAreCountedInBinsWithoutLosingQuantiles() {
        Tally tally = new Tally();
        int count = Tally.KEPT * 3;
        for (int k = 0; k < count; k++) {
            tally.add((k * 7919L % count) / (double) count);
        }
        assertEquals(count, tally.count());
        for (double part : new double[] {0.005, 0.05, 0.5, 0.95, 0.995}) {
            assertEquals(part, tally.quantile(part), 2 * tally.grain());
        }
        assertEquals(0.5, tally.mean(), 1e-5);
        assertEquals(1 / Math.sqrt(12), tally.deviation(), 1e-5);
        assertTrue(tally.grain() > 0 && tally.grain() < 1e-4);
    }

    /** Identity of a static two-legged squat: knee and hip together depend on the thigh's angle, and not on the torso's. */
    @Test
    void theSharesFindThatKneeAndHipTogetherDependOnTheThighAlone() {
        Reading<Moment> both = Measured.sum(moment(KNEE), moment(HIP));
        Performance squat = backSquat()
                .barbell(kg(60))
                .thighAboveLevel(deg(10))
                .torsoLean(deg(35))
                .by(INES);
        VarianceShares shares = Spread.of(squat)
                .vary(THIGH_ABOVE_LEVEL, withinLimits(deg(5)))
                .vary(TORSO_LEAN, withinLimits(deg(10)))
                .draws(256)
                .shares(ALONE, both, moment(KNEE));
        assertEquals(1, shares.total(0, 0), 0.03);
        assertEquals(0, shares.total(0, 1), 1e-9);
        assertTrue(shares.total(1, 1) > 0.05, "the knee alone does depend on the torso");
    }

    @Test
    void bandsOfACurveHoldTheCurve() {
        Curves curves = Spread.of(HINGE)
                .vary(BAR, withinLimits(kg(5)))
                .draws(200)
                .curves(ALONE, TORSO_LEAN, deg(20), deg(70), moment(HIP));
        Curves.Curve curve = curves.curves().get(0);
        for (int k = 0; k < curve.values().size(); k++) {
            assertTrue(curve.low().get(k) < curve.values().get(k)
                    && curve.values().get(k) < curve.high().get(k));
        }
        assertEquals(deg(45).si(), curves.current(), 0);
    }

    @Test
    void oneAtATimePutsTheInputFirstThatMovesMost() {
        OneAtATime one = Spread.of(HINGE)
                .vary(BAR, withinLimits(kg(1)))
                .vary(TORSO_LEAN, withinLimits(deg(10)))
                .oneAtATime(moment(HIP));
        assertTrue(one.listing().rows().get(0).get(0).toString().startsWith("Torso lean"));
        assertEquals(2, one.curves().curves().size());
    }

    @Test
    void aSettingOfOnesOwnCanBeDrawn() {
        Variable<leverwright.mechanics.measure.Mass> both = setting(
                "Stack of both machines",
                kg(20),
                kg(60),
                stack -> kneeExtension().stack(stack).by(INES));
        SpreadResult drawn = Spread.of(CHAIR)
                .vary(both, withinLimits(kg(30), kg(50)))
                .draws(1024)
                .of(ALONE, moment(KNEE));
        assertEquals(moment(KNEE).si(CHAIR.posture()), drawn.quantile(0, 0.5), 0.1);
        assertThrows(IllegalArgumentException.class, () -> Spread.of(CHAIR).vary(both, withinLimits(kg(3))));
    }

    @Test
    void aLimbsLengthCanBeUnsure() {
        SpreadResult drawn = Spread.of(HINGE)
                .vary(lengthOf(THIGH), withinLimits(cm(2)))
                .draws(64)
                .of(ALONE, moment(HIP));
        assertTrue(drawn.deviation(0) > 0);
    }

    @Test
    void badInputIsToldPlainly() {
        message("half width is -5°", () -> withinLimits(deg(-5)));
        message("standard deviation", () -> normal(deg(0)));
        message("from a smaller to a larger", () -> withinLimits(deg(50), deg(40)));
        message("likeliest", () -> triangular(kg(1), kg(9), kg(5)));
        message("nothing in this spread is unsure", () -> Spread.of(HINGE).of(ALONE, moment(HIP)));
        message(
                "varied twice",
                () -> Spread.of(HINGE).vary(BAR, withinLimits(kg(1))).vary(BAR, withinLimits(kg(2))));
        message("no knob", () -> Spread.of(HINGE).vary(ELBOW_FLEXION, withinLimits(deg(5))));
        message("draws", () -> Spread.of(HINGE).draws(1_000_000_000_000L));
        message("draws", () -> Spread.of(HINGE).draws(0));
        message(
                "Pad",
                () -> Spread.of(CHAIR)
                        .vary(PAD, withinLimits(cm(90), cm(99)))
                        .draws(20)
                        .of(ALONE, moment(KNEE))
                        .answer(0));
    }

    private static void message(String part, org.junit.jupiter.api.function.Executable doing) {
        String said = assertThrows(IllegalArgumentException.class, doing).getMessage();
        assertTrue(said.replace("−", "-").contains(part), said);
    }
}

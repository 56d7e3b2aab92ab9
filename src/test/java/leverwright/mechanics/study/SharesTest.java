package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.exercise.Exercises.LEVEL;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.KNEE_FLEXION;
import static leverwright.mechanics.exercise.Knobs.STACK;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.muscle.Muscle.ERECTOR_SPINAE;
import static leverwright.mechanics.muscle.Muscle.GLUTEUS_MAXIMUS;
import static leverwright.mechanics.muscle.Muscle.RECTUS_FEMORIS;
import static leverwright.mechanics.muscle.MuscleGroup.HAMSTRINGS;
import static leverwright.mechanics.muscle.MuscleGroup.QUADRICEPS;
import static leverwright.mechanics.muscle.MuscleGroup.VASTI;
import static leverwright.mechanics.study.MuscleWords.capacityUsed;
import static leverwright.mechanics.study.MuscleWords.forTarget;
import static leverwright.mechanics.study.MuscleWords.force;
import static leverwright.mechanics.study.MuscleWords.greatestLoad;
import static leverwright.mechanics.study.MuscleWords.handEstimate;
import static leverwright.mechanics.study.MuscleWords.muscles;
import static leverwright.mechanics.study.MuscleWords.shares;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Objects;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.MuscleGroup;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.WorkingText;
import org.junit.jupiter.api.Test;

/** Muscles in held postures: shares, limits, greatest loads, comparisons and hand estimates. */
class SharesTest {
    private static final Lifter INES = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
    private static final MuscleModel TESTED = muscles()
            .tested(Axis.HIP, newtonMetres(260), deg(80))
            .tested(Axis.KNEE, newtonMetres(210), deg(60))
            .tested(Axis.LOW_BACK, newtonMetres(330), deg(0));

    private static HeldPosture squat(double bar) {
        return backSquat().barbell(kg(bar)).thighs(LEVEL).by(INES).posture();
    }

    private static HeldPosture chair(double flexion) {
        return kneeExtension().stack(kg(40)).kneeFlexion(deg(flexion)).by(INES).posture();
    }

    @Test
    void quadricepsForceTimesItsArmIsTheKneesMoment() {
        HeldPosture held = chair(40);
        double moment = Readings.moment(KNEE).si(held);
        double arm = (0.0455 + (0.0329 - 0.0455) * 0.75) * 1.78 / 1.75;
        assertEquals(moment / arm, shares(held).force(QUADRICEPS).value().si(), 1e-6 * moment / arm);
    }

    @Test
    void everyWorkingEndsInItsValueAndPrintsItsChecks() {
        HeldPosture held = squat(60);
        for (Answer<Ratio> answer : List.of(
                shares(held, TESTED).capacityUsed(VASTI),
                shares(held, TESTED).capacityUsed(GLUTEUS_MAXIMUS),
                shares(held, TESTED).capacityUsed(ERECTOR_SPINAE))) {
            List<String> lines = WorkingText.plain(answer.working());
            assertTrue(lines.stream().anyMatch(line -> line.contains("optimality")), lines.toString());
            assertTrue(lines.stream().anyMatch(line -> line.contains("made_less_needed")), lines.toString());
            assertTrue(answer.low().si() < answer.high().si() || answer.value().si() > 1 - 1e-9);
        }
    }

    @Test
    void withoutATestItIsAPopulationEstimateAndWithOneItSaysWhich() {
        assertTrue(shares(chair(60)).capacityUsed(VASTI).notes().contains(MuscleModel.POPULATION));
        List<String> notes = shares(chair(60), TESTED).capacityUsed(VASTI).notes();
        assertTrue(notes.stream().anyMatch(note -> note.contains("Calibrated by dynamometer: knee extension")));
    }

    /** Ten repetitions with 40 kg: 4/3 of that moment for one (Epley's rule, common practice, from memory). */
    @Test
    void aTestedLiftCalibratesTheJointThatStoppedIt() {
        MuscleModel tested = MuscleWords.testedLift(
                kneeExtension().stack(kg(40)).kneeFlexion(deg(40)).by(INES), KNEE, 10);
        double moment = Readings.moment(KNEE).si(chair(40));
        assertEquals(moment * 4 / 3, tested.greatestMoment(INES, Axis.KNEE, true, deg(40).si()), 1e-9 * moment);
        assertEquals(0.75, 1 / scaleOf(tested), 1e-9);
        Lifter strong = MuscleWords.testedBy(
                kneeExtension().stack(kg(40)).kneeFlexion(deg(40)).by(INES), KNEE, 10);
        assertEquals(moment * 4 / 3, muscles().greatestMoment(strong, Axis.KNEE, true, deg(40).si()), 1e-9 * moment);
        assertThrows(
                IllegalArgumentException.class,
                () -> MuscleWords.testedLift(kneeExtension().by(INES), KNEE, 40));
    }

    private static double scaleOf(MuscleModel model) {
        return ((Ratio) shares(chair(40), model).limits().rows().get(0).get(1)).si();
    }

    @Test
    void extrapolatedArmsAreMarkedOnTheHeadline() {
        List<String> notes = shares(chair(80)).force(VASTI).notes();
        assertTrue(notes.contains("vastus lateralis: arm about the knee extrapolated"), notes.toString());
    }

    /** A part of the body that lacks strength is shown with what it is asked for, and leaves the others as they are. */
    @Test
    void whatTheHipCannotHoldIsShownAsAskedAndLeavesTheBacksAnswerStanding() {
        HeldPosture held = squat(90);
        MuscleModel strongBack = muscles().tested(Axis.LOW_BACK, newtonMetres(600), deg(0));
        Answer<Ratio> hip = shares(held, strongBack).capacityUsed(GLUTEUS_MAXIMUS);
        assertTrue(hip.value().si() > 1.2, "asked of the gluteus: " + hip.value());
        assertTrue(
                hip.notes().get(0).startsWith("Beyond this model: "),
                hip.notes().toString());
        assertTrue(
                hip.notes().get(0).contains("hip extension lacks"), hip.notes().toString());
        assertTrue(
                hip.notes().get(0).contains("Greatest bar that this model holds here"),
                hip.notes().toString());
        Answer<Ratio> back = shares(held, strongBack).capacityUsed(ERECTOR_SPINAE);
        assertTrue(
                back.value().si() < 1 && !back.notes().get(0).startsWith("Beyond"),
                back.notes().toString());
        assertTrue(shares(held, strongBack).listing().rows().stream()
                .anyMatch(row -> row.get(0).equals("gluteus maximus")));
    }

    /** What is asked goes on from what can just be made: no jump where the muscles begin to lack. */
    @Test
    void whatIsAskedJoinsWhatIsMade() {
        double bar = greatestLoad(
                        backSquat().barbell(kg(20)).thighs(LEVEL).by(INES), leverwright.mechanics.exercise.Knobs.BAR)
                .with(TESTED)
                .load()
                .value()
                .si();
        for (MuscleGroup group : List.of(QUADRICEPS, HAMSTRINGS)) {
            double below = capacityUsed(group, TESTED).si(squat(bar * (1 - 1e-6)));
            double above = capacityUsed(group, TESTED).si(squat(bar * (1 + 1e-6)));
            assertEquals(below, above, 1e-3, group.words());
        }
    }

    @Test
    void aCommonLiftIsShownAtOnce() {
        Lifter man = Lifter.lifter("Rudi").of(Sex.MALE, cm(178), kg(78));
        HeldPosture held = backSquat().barbell(kg(60)).thighs(LEVEL).by(man).posture();
        Answer<Ratio> used = shares(held).capacityUsed(QUADRICEPS);
        assertTrue(
                used.value().si() > 0.2 && used.value().si() < 1, used.value().toString());
        assertTrue(
                used.notes().stream().anyMatch(note -> note.contains("Sarabon 2021")),
                used.notes().toString());
        assertEquals(MuscleModel.POPULATION, used.notes().get(0));
    }

    @Test
    void greatestStackIsThatOfTheClosedForm() {
        double si = greatestLoad(kneeExtension().kneeFlexion(deg(40)).by(INES), STACK)
                .load()
                .value()
                .si();
        HeldPosture held = kneeExtension()
                .stack(Measures.kg(si))
                .kneeFlexion(deg(40))
                .by(INES)
                .posture();
        double most = muscles().greatestMoment(INES, Axis.KNEE, true, deg(40).si());
        assertEquals(most, Readings.moment(KNEE).si(held), 1e-6 * most);
    }

    @Test
    void throughARangeTheGreatestStackIsTheLeastOfItsPostures() {
        double whole = greatestLoad(kneeExtension().by(INES), STACK)
                .through(KNEE_FLEXION, deg(20), deg(80))
                .load()
                .value()
                .si();
        for (double flexion : new double[] {20, 50, 80}) {
            double here = greatestLoad(kneeExtension().kneeFlexion(deg(flexion)).by(INES), STACK)
                    .load()
                    .value()
                    .si();
            assertTrue(whole <= here * (1 + 1e-9), flexion + ": " + whole + " > " + here);
        }
    }

    @Test
    void theSameForceIsTheSameForce() {
        Answer<?> stack = forTarget(VASTI)
                .with(TESTED)
                .of(backSquat().barbell(kg(40)).thighs(LEVEL).by(INES))
                .of(kneeExtension().by(INES), KNEE_FLEXION, deg(20), deg(80))
                .loadForSame(STACK);
        double wanted = force(VASTI, TESTED).si(squat(40));
        double most = 0;
        for (int k = 0; k <= 24; k++) {
            HeldPosture held = kneeExtension()
                    .stack(kg(stack.value().si()))
                    .kneeFlexion(deg(20 + 60.0 * k / 24))
                    .by(INES)
                    .posture();
            most = Math.max(most, force(VASTI, TESTED).si(held));
        }
        assertEquals(wanted, most, 1e-5 * wanted);
        assertTrue(stack.notes().get(0).contains("per side"), stack.notes().toString());
    }

    @Test
    void theOrderOfTwoExercisesSaysInHowManyDrawsItHolds() {
        String order = forTarget(HAMSTRINGS)
                .with(TESTED)
                .of(romanianDeadlift().barbell(kg(40)).torsoLean(deg(45)).by(INES))
                .of(backSquat().barbell(kg(20)).thighs(LEVEL).by(INES))
                .order();
        assertTrue(
                order.matches(
                        ".*This order holds in \\d+ of \\d+ draws of muscles' numbers and exponent.*is not moved.*"),
                order);
    }

    /** Far apart, no draw turns the order; the same exercise twice has a draw's posture to part it. */
    @Test
    void anOrderFarApartHoldsInAllDrawsAndTheTableShowsIt() {
        TargetComparison far = forTarget(VASTI)
                .with(TESTED)
                .of(chairOf(40), KNEE_FLEXION, deg(20), deg(60))
                .of(chairOf(10), KNEE_FLEXION, deg(20), deg(60));
        assertTrue(far.order().contains("holds in 100 of 100"), far.order());
        assertTrue(
                far.listing().notes().contains(far.order()),
                far.listing().notes().toString());
        String near = forTarget(VASTI)
                .with(TESTED)
                .of(chairOf(40), KNEE_FLEXION, deg(20), deg(60))
                .of(chairOf(40), KNEE_FLEXION, deg(20), deg(60))
                .order();
        assertFalse(near.contains("holds in 100 of 100"), near);
        assertThrows(
                IllegalArgumentException.class,
                () -> forTarget(VASTI).of(chairOf(10)).order());
    }

    private static Performance chairOf(double stack) {
        return kneeExtension().stack(kg(stack)).by(INES);
    }

    /** One weight that goes up and down by the knee: what is lifted is lowered, and twice the stack is more. */
    @Test
    void liftingAndLoweringWorkAreOppositeAndGrowWithTheLoad() {
        List<List<Object>> rows = forTarget(VASTI)
                .with(TESTED)
                .of(chairOf(20), KNEE_FLEXION, deg(80), deg(20))
                .of(chairOf(40), KNEE_FLEXION, deg(80), deg(20))
                .listing()
                .rows();
        double light = work(rows.get(0).get(8));
        double heavy = work(rows.get(1).get(8));
        assertEquals(-light, work(rows.get(0).get(9)), 1e-6 * light);
        assertTrue(heavy > light && heavy < 2 * light, light + " and " + heavy);
    }

    private static double work(Object cell) {
        return ((Answer<?>) cell).value().si();
    }

    @Test
    void theSameMeanIsTheMeanOfTheForcesOverTheRange() {
        Answer<?> stack = forTarget(VASTI)
                .with(TESTED)
                .of(chairOf(30), KNEE_FLEXION, deg(20), deg(60))
                .of(chairOf(10), KNEE_FLEXION, deg(30), deg(50))
                .loadForSameMean(STACK);
        double found = stack.value().si();
        assertEquals(mean(30, 20, 60), mean(found, 30, 50), 1e-5 * mean(30, 20, 60));
        assertTrue(
                stack.notes().get(0).contains("mean force over the range per side"),
                stack.notes().get(0));
    }

    /** As slow as can be, a set is the static forces over the time that the tempo spends at each posture. */
    @Test
    void aSetIsForceOverTime() {
        TargetComparison both = forTarget(VASTI)
                .with(TESTED)
                .of(chairOf(20), KNEE_FLEXION, deg(70), deg(30))
                .of(chairOf(10), KNEE_FLEXION, deg(60), deg(40));
        leverwright.mechanics.motion.Tempo slow =
                leverwright.mechanics.motion.Tempo.of(Measures.seconds(60), Measures.seconds(60));
        List<List<Object>> rows = both.overSet(slow, 10).rows();
        double sum = 0;
        int steps = 120;
        for (int k = 0; k <= steps; k++) {
            // minimum jerk: 10 s³ − 15 s⁴ + 6 s⁵ (T. Flash and N. Hogan 1985, from memory)
            double s = k / (double) steps;
            double part = s * s * s * (10 - 15 * s + 6 * s * s);
            HeldPosture held = kneeExtension()
                    .stack(kg(20))
                    .kneeFlexion(deg(70 - 40 * part))
                    .by(INES)
                    .posture();
            sum += force(VASTI, TESTED).si(held) * (k == 0 || k == steps ? 0.5 : 1);
        }
        double mean = ((Force) rows.get(0).get(2)).si();
        assertEquals(sum / steps, mean, 1e-3 * mean);
        assertEquals(
                String.format(java.util.Locale.ROOT, "%.0f N·s", mean * 1200),
                rows.get(0).get(6));
        Answer<?> stack = both.loadForSameSet(STACK, slow);
        TargetComparison again =
                forTarget(VASTI).with(TESTED).of(chairOf(stack.value().si()), KNEE_FLEXION, deg(60), deg(40));
        assertEquals(mean, ((Force) again.overSet(slow, 1).rows().get(0).get(2)).si(), 1e-5 * mean);
        assertTrue(
                stack.notes().get(0).contains("mean force over time per side"),
                stack.notes().toString());
    }

    @Test
    void equalWhatSaysWhatIsEqual() {
        List<List<Object>> rows = forTarget(VASTI)
                .with(TESTED)
                .of(backSquat().barbell(kg(40)).thighs(LEVEL).by(INES))
                .of(chairOf(30), KNEE_FLEXION, deg(20), deg(80))
                .equalWhat(leverwright.mechanics.exercise.Knobs.BAR, STACK)
                .rows();
        assertEquals(6, rows.size());
        assertEquals(40, ((leverwright.mechanics.measure.Mass) rows.get(1).get(2)).si(), 1e-9);
        double squatForce = ((Force) rows.get(2).get(3)).si();
        assertEquals(squatForce, ((Force) rows.get(3).get(3)).si(), 2e-4 * squatForce);
        assertEquals("100 %", rows.get(5).get(4));
        assertThrows(
                IllegalArgumentException.class,
                () -> forTarget(VASTI).of(chairOf(30)).equalWhat());
    }

    @Test
    void chosenMeasuresAreThoseOfTheirOwnWords() {
        TargetComparison both = forTarget(VASTI)
                .with(TESTED)
                .of(backSquat().barbell(kg(40)).thighs(LEVEL).by(INES))
                .of(chairOf(40), KNEE_FLEXION, deg(20), deg(80));
        Curves back = both.curves(TargetMeasure.BACK);
        assertEquals(
                Studies.compression(Joint.LOW_BACK).si(squat(40)),
                back.curves().get(0).values().get(3),
                1e-9);
        assertEquals(
                4,
                both.curves(TargetMeasure.FORCE, TargetMeasure.OTHERS).curves().size());
        List<List<Object>> bars = both.bars().rows();
        assertEquals(12, bars.size());
        assertTrue(bars.stream().anyMatch(row -> row.get(2).equals("█".repeat(10))), bars.toString());
    }

    /** The shared extensors' pull instead of one equivalent muscle's: with the same arm and inclination the same compression. */
    @Test
    void theBackIsCompressedByItsSharedMuscles() {
        HeldPosture held = squat(40);
        double pull = force(ERECTOR_SPINAE, TESTED).si(held)
                + force(leverwright.mechanics.muscle.Muscle.QUADRATUS_LUMBORUM, TESTED)
                        .si(held);
        double moment = Readings.moment(Joint.LOW_BACK).si(held);
        double byOne = Studies.compression(Joint.LOW_BACK).si(held);
        double wanted = byOne + (pull - moment / 0.06) * Math.cos(Math.toRadians(5));
        assertEquals(
                wanted, shares(held, TESTED).compression(Joint.LOW_BACK).value().si(), 1e-6 * wanted);
    }

    /** Simpson's rule, apart from the program's sum. */
    private static double mean(double stack, double from, double to) {
        double sum = 0;
        for (int k = 0; k <= 24; k++) {
            HeldPosture held = kneeExtension()
                    .stack(kg(stack))
                    .kneeFlexion(deg(from + (to - from) * k / 24))
                    .by(INES)
                    .posture();
            sum += force(VASTI, TESTED).si(held) * (k == 0 || k == 24 ? 1 : k % 2 == 1 ? 4 : 2);
        }
        return sum / 72;
    }

    @Test
    void aChartShowsTheTargetThroughEachRange() {
        Curves curves = forTarget(VASTI)
                .with(TESTED)
                .of(backSquat().barbell(kg(40)).thighs(LEVEL).by(INES))
                .of(chairOf(40), KNEE_FLEXION, deg(20), deg(80))
                .curves();
        assertEquals(
                capacityUsed(VASTI, TESTED).si(squat(40)),
                curves.curves().get(0).values().get(7),
                1e-9);
        assertEquals(
                capacityUsed(VASTI, TESTED).si(chair(20)),
                curves.curves().get(1).values().get(0),
                1e-9);
        assertEquals(
                capacityUsed(VASTI, TESTED).si(chair(80)),
                curves.curves().get(1).values().get(24),
                1e-9);
    }

    /** Level forearm, plumb upper arm: the muscles pull the elbow together, forearm, hand and dumbbell pull it apart. */
    @Test
    void elbowCompressionIsMusclePullLessWhatHangsOnIt() {
        HeldPosture held =
                dumbbellCurl().dumbbells(kg(4)).elbowFlexion(deg(90)).by(INES).posture();
        double pull = force(MuscleGroup.ELBOW_FLEXORS).si(held);
        double forearm = INES.body().segment(Segment.FOREARM).mass() / 2
                + INES.body().segment(Segment.HAND).mass() / 2;
        double hangs = (forearm + 4) * 9.80665;
        double lean = Math.cos(Readings.lean(Segment.UPPER_ARM).si(held));
        assertEquals(
                pull - hangs * Math.abs(lean),
                shares(held).compression(Joint.ELBOW).value().si(),
                1e-6 * pull);
    }

    @Test
    void aBarIsAsWideAsTheShareAndItsPatternTellsWhatItRestsOn() {
        assertEquals("█████·····", Shares.bar(0.51, true));
        assertEquals("▒▒▒▒▒▒▒▒▒▒▶", Shares.bar(1.2, false));
        assertEquals("▒▒▒▒▒▒▒▒▒▒", Shares.bar(1, false));
        assertEquals("·".repeat(10), Shares.bar(0, true));
    }

    /** Lifting shortens the vasti and lowering lengthens them: they use more of their capacity up than down; slowly neither. */
    @Test
    void theTempoSetsWhatMusclesCanGive() {
        Repetition quick = Studies.repetition(chairOf(30))
                .through(KNEE_FLEXION, deg(80), deg(20))
                .tempo(Measures.seconds(1.5), Measures.seconds(1.5));
        List<Curves.Curve> curves = quick.capacityUsed(TESTED, VASTI).curves();
        double up = at(curves.get(0), 30);
        double upStill = at(curves.get(1), 30);
        double down = at(curves.get(0), 90);
        double downStill = at(curves.get(1), 90);
        assertEquals(upStill, downStill, 1e-6);
        assertTrue(up > 1.1 * upStill, up + " against " + upStill);
        assertTrue(down < 0.97 * downStill, down + " against " + downStill);
        List<Curves.Curve> slow = quick.tempo(Measures.seconds(60), Measures.seconds(60))
                .capacityUsed(TESTED, VASTI)
                .curves();
        for (int k = 0; k <= 120; k += 10) {
            assertEquals(at(slow.get(1), k), at(slow.get(0), k), 0.01 * at(slow.get(1), k), "instant " + k);
        }
    }

    private static double at(Curves.Curve curve, int instant) {
        return Objects.requireNonNull(curve.values().get(instant));
    }

    @Test
    void aMoreBentHipShortensTheRectusFemoris() {
        double stands = MuscleWords.lengthOverOptimum(RECTUS_FEMORIS).si(squat(20));
        assertTrue(stands > 0.5 && stands < 1.5, "length " + stands);
    }

    @Test
    void kneeCompressionWithSharedMusclesIsMoreThanTheirTendonPull() {
        HeldPosture held = chair(40);
        Answer<Force> contact = shares(held).compression(KNEE);
        double tendon = Readings.moment(KNEE).si(held) / (0.03773 * 1.78 / 1.75);
        assertTrue(contact.value().si() > 0.5 * tendon, contact.value() + " against " + tendon);
        assertTrue(WorkingText.plain(contact.working()).size() > 1);
    }

    /** The drawn pull must turn the moved part as the working says: force × arm, counter-clockwise where the action is. */
    @Test
    void linesOfPullTurnTheirJointsTheRightWay() {
        HeldPosture held = squat(40);
        Sketch bare = held.sketch();
        Sketch drawn = shares(held, TESTED).onto(bare);
        int seen = 0;
        for (Sketch.Shape shape : drawn.shapes()) {
            if (shape instanceof Sketch.Arrow arrow && arrow.kind() == Sketch.ForceKind.MUSCLE) {
                seen++;
                String name = arrow.label();
                String jointName = name.startsWith("quadriceps")
                        ? "knee"
                        : name.startsWith("gluteus") ? "hip" : name.startsWith("erector") ? "low back" : "";
                if (jointName.isEmpty()) {
                    continue;
                }
                Sketch.Point joint = drawn.shapes().stream()
                        .filter(other -> other instanceof Sketch.JointMark mark
                                && mark.name().equals(jointName))
                        .map(other -> ((Sketch.JointMark) other).at())
                        .findFirst()
                        .orElseThrow();
                double turn = (arrow.at().x() - joint.x()) * arrow.newtons().y()
                        - (arrow.at().y() - joint.y()) * arrow.newtons().x();
                // extension turns shank counter-clockwise, thigh clockwise, trunk counter-clockwise
                boolean up = !jointName.equals("hip");
                assertTrue(up ? turn > 0 : turn < 0, name + " turns " + turn);
            }
        }
        assertTrue(seen >= 3, "arrows: " + seen);
    }

    /** (0.878 · 71 kg + 60 kg) · 9.80665 · tilt · 10 / 2, computed here apart. */
    @Test
    void theHandEstimateIsTheProductOfTheTrade() {
        HeldPosture held = squat(60);
        double tilt = Math.abs(Readings.lean(Segment.SHANK).si(held)) / (Math.PI / 2);
        double wanted = (0.878 * 71 + 60) * 9.80665 * tilt * 10 / 2;
        assertEquals(wanted, handEstimate(KNEE).bar(kg(60)).force(held).value().si(), 1e-9 * wanted);
        double side =
                handEstimate(KNEE).bar(kg(60)).sides(1).force(held).value().si();
        assertEquals(2 * wanted, side, 1e-9 * wanted);
    }

    @Test
    void theTraceEndsInTheStaticsAndItsTermsAddUp() {
        HeldPosture held = squat(60);
        List<List<Object>> rows = handEstimate(KNEE).bar(kg(60)).trace(held).rows();
        double sum = ((Moment) rows.get(0).get(1)).si();
        double product = sum;
        for (List<Object> row : rows) {
            sum += ((Moment) row.get(2)).si();
            product *= ((Ratio) row.get(3)).si();
        }
        double statics = Math.abs(Readings.moment(KNEE).si(held));
        assertEquals(statics, sum, 1e-9 * statics);
        assertEquals(statics, product, 1e-9 * statics);
    }

    /** Statics' moment over the equivalent muscle's arm; changes add, factors multiply, logarithms add. */
    @Test
    void theTraceOfTheForcePutsTheMusclesArmForTheLeverRatio() {
        HeldPosture held = squat(60);
        List<List<Object>> rows =
                handEstimate(KNEE).bar(kg(60)).traceForce(held).rows();
        double sum = ((Force) rows.get(0).get(1)).si();
        double product = sum;
        double logarithms = 0;
        for (List<Object> row : rows) {
            sum += ((Force) row.get(2)).si();
            product *= ((Ratio) row.get(3)).si();
            logarithms += ((Ratio) row.get(4)).si();
        }
        double first = ((Force) rows.get(0).get(1)).si();
        double arm = held.leverView(KNEE).muscle().orElseThrow().arm().value().si();
        double wanted = Math.abs(Readings.moment(KNEE).si(held)) / arm;
        assertEquals(wanted, sum, 1e-9 * wanted);
        assertEquals(wanted, product, 1e-9 * wanted);
        assertEquals(Math.log(wanted / first), logarithms, 1e-9);
        assertTrue(rows.stream().anyMatch(row -> row.get(0).toString().contains("muscle arm")), rows.toString());
    }

    @Test
    void aClaimThatNoAssumptionMakesAloneIsSaidToBeSo() {
        HeldPosture held = squat(60);
        List<String> far =
                handEstimate(KNEE).bar(kg(60)).explain(newtons(60000), held).notes();
        assertTrue(
                far.stream().anyMatch(note -> note.startsWith("No assumption makes the claim alone")), far.toString());
        List<String> near =
                handEstimate(KNEE).bar(kg(60)).explain(newtons(3000), held).notes();
        assertTrue(near.stream().anyMatch(note -> note.startsWith("Alone, each of these could")), near.toString());
        assertTrue(near.stream().anyMatch(note -> note.startsWith("Statics of this posture")), near.toString());
    }

    @Test
    void aClaimIsTracedToTheAssumptionThatMakesIt() {
        HeldPosture held = squat(60);
        Force claim = newtons(handEstimate(KNEE)
                .bar(kg(60))
                .leverRatio(14)
                .force(held)
                .value()
                .si());
        Object needed = handEstimate(KNEE)
                .bar(kg(60))
                .explain(claim, held)
                .rows()
                .get(0)
                .get(2);
        assertEquals(14, ((Ratio) needed).si(), 1e-9);
    }

    @Test
    void coContractionIsAKnobBesideEveryKneeResult() {
        HeldPosture held = chair(40);
        double plain = capacityUsed(QUADRICEPS).si(held);
        double against =
                capacityUsed(QUADRICEPS, muscles().coContraction(percent(30))).si(held);
        assertTrue(against > 1.25 * plain, against + " against " + plain);
    }
}

package leverwright.mechanics.study;

import static leverwright.mechanics.body.Joint.ELBOW;
import static leverwright.mechanics.body.Joint.HIP;
import static leverwright.mechanics.body.Joint.KNEE;
import static leverwright.mechanics.body.Joint.LOW_BACK;
import static leverwright.mechanics.body.Joint.SHOULDER;
import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.body.Segment.FOREARM;
import static leverwright.mechanics.body.Sex.FEMALE;
import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.cableLateralRaise;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.lateralRaise;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.exercise.Knobs.BAR;
import static leverwright.mechanics.exercise.Knobs.DUMBBELL;
import static leverwright.mechanics.exercise.Knobs.ELBOW_FLEXION;
import static leverwright.mechanics.exercise.Knobs.PAD;
import static leverwright.mechanics.exercise.Knobs.STACK;
import static leverwright.mechanics.exercise.Knobs.THIGH_ABOVE_LEVEL;
import static leverwright.mechanics.exercise.Knobs.TORSO_LEAN;
import static leverwright.mechanics.exercise.Readings.flexionMoment;
import static leverwright.mechanics.exercise.Readings.moment;
import static leverwright.mechanics.exercise.SetupKnobs.PULLEY_ASIDE;
import static leverwright.mechanics.exercise.SetupKnobs.PULLEY_HEIGHT;
import static leverwright.mechanics.exercise.SetupKnobs.PULL_DIRECTION;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.muscle.MuscleGroup.VASTI;
import static leverwright.mechanics.study.MuscleWords.force;
import static leverwright.mechanics.study.Studies.breakEven;
import static leverwright.mechanics.study.Studies.compression;
import static leverwright.mechanics.study.Studies.match;
import static leverwright.mechanics.study.Studies.peak;
import static leverwright.mechanics.study.Studies.search;
import static leverwright.mechanics.study.Studies.solveFor;
import static leverwright.mechanics.study.Variable.lengthOf;
import static leverwright.mechanics.study.Variable.setting;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Listing;
import org.junit.jupiter.api.Test;

class SolveAndSearchTest {
    private static final Lifter INES = lifter("Ines").of(FEMALE, cm(178), kg(71));
    private static final Performance HINGE =
            romanianDeadlift().barbell(kg(50)).torsoLean(deg(45)).by(INES);
    private static final Performance CHAIR = kneeExtension().stack(kg(40)).by(INES);
    private static final Performance CURL = dumbbellCurl().dumbbells(kg(10)).by(INES);

    /** The moment grows in step with the stack (statics of a machine): the answer follows from two values. */
    @Test
    void theStackForAMomentIsThatOfTheStraightLine() {
        Reading<Moment> knee = moment(KNEE);
        double empty = knee.si(CHAIR.with(STACK, kg(0)).posture());
        double full = knee.si(CHAIR.with(STACK, kg(100)).posture());
        double exact = 100 * (80 - empty) / (full - empty);
        assertEquals(
                exact,
                solveFor(STACK)
                        .in(CHAIR)
                        .gives(knee, newtonMetres(80))
                        .only()
                        .value()
                        .si(),
                1e-7);
    }

    /** A hanging upper arm: the moment goes with the sine of the elbow's angle, so two angles give it, alike about 90°. */
    @Test
    void allAnglesThatGiveAMomentAreFound() {
        Reading<Moment> elbow = flexionMoment(ELBOW);
        Moment wanted = Moment.of(elbow.si(CURL.with(ELBOW_FLEXION, deg(50)).posture()));
        List<Angle> all = solveFor(ELBOW_FLEXION).in(CURL).gives(elbow, wanted).all();
        assertEquals(2, all.size());
        assertEquals(deg(50).si(), all.get(0).si(), 1e-9);
        assertEquals(deg(130).si(), all.get(1).si(), 1e-9);
        Listing listing = solveFor(ELBOW_FLEXION).in(CURL).gives(elbow, wanted).listing();
        assertEquals(2, listing.rows().size());
        IllegalArgumentException several = assertThrows(
                IllegalArgumentException.class,
                () -> solveFor(ELBOW_FLEXION).in(CURL).gives(elbow, wanted).only());
        assertTrue(several.getMessage().startsWith("2 settings give"), several::getMessage);
    }

    @Test
    void theHighestPointIsOneAngleAndBeyondItNone() {
        Reading<Moment> elbow = flexionMoment(ELBOW);
        double most = elbow.si(CURL.with(ELBOW_FLEXION, deg(90)).posture());
        SolveFor.Solved<Angle> beyond = solveFor(ELBOW_FLEXION).in(CURL).gives(elbow, Moment.of(most * 1.2));
        assertEquals(List.of(), beyond.all());
        String said = assertThrows(IllegalArgumentException.class, beyond::only).getMessage();
        assertTrue(said.contains("nearest that can be reached") && said.contains("90.00°"), said);
        assertEquals(
                "nearest that can be reached", beyond.listing().rows().get(0).get(0));
        assertEquals(2, beyond.curves().curves().size());
    }

    @Test
    void lengthsPlacesAndDirectionsCanBeSolvedFor() {
        Reading<Moment> knee = moment(KNEE);
        assertFalse(solveFor(PAD)
                .in(CHAIR)
                .gives(knee, Moment.of(knee.si(CHAIR.posture())))
                .all()
                .isEmpty());
        Reading<Moment> elbow = flexionMoment(ELBOW);
        double there = elbow.si(CURL.by(INES.forearm(cm(27))).posture());
        assertEquals(
                0.27,
                solveFor(lengthOf(FOREARM))
                        .between(cm(20), cm(30))
                        .in(CURL)
                        .gives(elbow, Moment.of(there))
                        .only()
                        .value()
                        .si(),
                1e-7);
        Performance raise = cableLateralRaise().by(INES);
        Reading<Moment> shoulder = moment(SHOULDER);
        double wanted = shoulder.si(raise.with(PULL_DIRECTION, deg(300)).posture());
        assertTrue(solveFor(PULL_DIRECTION).in(raise).gives(shoulder, Moment.of(wanted)).all().stream()
                .anyMatch(angle -> Math.abs(angle.si() - deg(300).si()) < 1e-6));
        double height = shoulder.si(raise.with(PULLEY_HEIGHT, cm(50)).posture());
        assertTrue(solveFor(PULLEY_HEIGHT).in(raise).gives(shoulder, Moment.of(height)).all().stream()
                .anyMatch(place -> Math.abs(place.si() - 0.5) < 1e-6));
    }

    @Test
    void aSettingOfOnesOwnAndAnotherExercisesValueCanBeSolvedFor() {
        Variable<leverwright.mechanics.measure.Mass> pair = setting(
                "Stack", kg(0), kg(100), stack -> kneeExtension().stack(stack).by(INES));
        assertEquals(
                40,
                solveFor(pair)
                        .in(CHAIR)
                        .gives(moment(KNEE), CHAIR)
                        .only()
                        .value()
                        .si(),
                1e-7);
    }

    @Test
    void exercisesBreakEvenWhereTheirCurvesCross() {
        Performance near = kneeExtension().stack(kg(40)).pad(cm(30)).by(INES);
        Performance far = CHAIR.with(PAD, cm(30)).with(STACK, kg(40));
        assertEquals(
                moment(KNEE).si(near.posture()), moment(KNEE).si(far.posture()), 1e-12, "the same machine set twice");
        Performance squat = backSquat()
                .barbell(kg(40))
                .thighAboveLevel(deg(20))
                .torsoLean(deg(30))
                .by(INES);
        BreakEven.Even<Angle> even = breakEven(TORSO_LEAN)
                .within(deg(10), deg(60))
                .between(squat, squat.with(BAR, kg(40)))
                .on(moment(HIP));
        assertTrue(even.listing().notes().size() > 1);
        BreakEven.Even<Angle> crossing = breakEven(TORSO_LEAN)
                .within(deg(15), deg(60))
                .between(squat, squat.with(THIGH_ABOVE_LEVEL, deg(45)))
                .on(moment(KNEE));
        for (Angle at : crossing.all()) {
            assertEquals(
                    moment(KNEE).si(squat.with(TORSO_LEAN, at).posture()),
                    moment(KNEE)
                            .si(squat.with(TORSO_LEAN, at)
                                    .with(THIGH_ABOVE_LEVEL, deg(45))
                                    .posture()),
                    1e-6);
        }
        assertTrue(crossing.curves().curves().size() >= 2);
    }

    /** One knob: the heaviest bar under the line, which by the straight line of compression over bar is known. */
    @Test
    void theBestSettingUnderALimitStandsAtTheLimit() {
        BestSetting.Best best = search(HINGE)
                .turn(BAR, kg(0), kg(100))
                .keepBelow(compression(LOW_BACK), newtons(3400))
                .most(moment(HIP));
        double bar = best.performance().exercise().get(BAR).si();
        double exact = solveFor(BAR)
                .in(HINGE)
                .gives(compression(LOW_BACK), newtons(3400))
                .only()
                .value()
                .si();
        assertEquals(exact, bar, 1e-3);
        assertTrue(best.listing().rows().stream().anyMatch(row -> row.contains("binds")));
    }

    @Test
    void twoKnobsKeepTheLimitAndBeatEveryPointOfAGrid() {
        Performance squat = backSquat()
                .barbell(kg(20))
                .thighAboveLevel(deg(30))
                .torsoLean(deg(30))
                .by(INES);
        BestSetting.Best best = search(squat)
                .turn(TORSO_LEAN, deg(20), deg(60))
                .turn(BAR, kg(0), kg(40))
                .keepBelow(compression(LOW_BACK), newtons(2500))
                .most(force(VASTI));
        assertTrue(best.isFeasible());
        double most = 0;
        for (int i = 0; i <= 20; i++) {
            for (int j = 0; j <= 20; j++) {
                var held = squat.with(TORSO_LEAN, deg(20 + 2 * i))
                        .with(BAR, kg(2 * j))
                        .posture();
                if (!held.standing().wouldFall() && compression(LOW_BACK).si(held) <= 2500) {
                    most = Math.max(most, force(VASTI).si(held));
                }
            }
        }
        assertTrue(best.value() >= most * 0.999, best.value() + " against " + most + " on the grid");
    }

    @Test
    void whereNoSettingKeepsTheLimitsItIsSaidWhichBinds() {
        BestSetting.Best none = search(HINGE)
                .turn(BAR, kg(40), kg(100))
                .keepBelow(compression(LOW_BACK), newtons(500))
                .most(moment(HIP));
        assertFalse(none.isFeasible());
        String said =
                assertThrows(IllegalArgumentException.class, none::performance).getMessage();
        assertTrue(said.contains("low back compression at most 500.0 N") && said.contains("binds"), said);
        assertTrue(none.listing().notes().get(0).startsWith("No setting keeps all limits"));
    }

    @Test
    void theLineOfPullThatMatchesBestBeatsTheOnesSetByHand() {
        Reading<?> shoulder = match(SHOULDER);
        Performance raise = cableLateralRaise().by(INES);
        BestSetting.Best best = search(raise)
                .turn(PULLEY_HEIGHT, cm(0), cm(200))
                .turn(PULLEY_ASIDE, cm(-100), cm(-20))
                .most(shoulder);
        assertTrue(best.value() >= shoulder.si(raise.posture()));
        assertTrue(best.value() > shoulder.si(lateralRaise().by(INES).posture()));
        assertTrue(best.value() <= 1);
    }

    @Test
    void peaksAreThoseOfTheWay() {
        Performance raise = lateralRaise().with(DUMBBELL, kg(5)).by(INES);
        double peak = peak(moment(SHOULDER)).si(raise.posture());
        double level = moment(SHOULDER)
                .si(raise.with(leverwright.mechanics.exercise.SetupKnobs.SHOULDER_ABDUCTION, deg(90))
                        .posture());
        assertEquals(level, peak, 1e-9);
    }

    /** Two settings of a cell's own: the search reaches what the two knobs that they stand for reach. */
    @Test
    void severalSettingsOfOnesOwnAreSearchedTogether() {
        Reading<Moment> hip = moment(HIP);
        BestSetting own = search(HINGE)
                .turn(
                        "Bar",
                        kg(0),
                        kg(100),
                        "Lean",
                        deg(20),
                        deg(60),
                        (bar, lean) ->
                                romanianDeadlift().barbell(bar).torsoLean(lean).by(INES));
        BestSetting knobs = search(HINGE).turn(BAR, kg(0), kg(100)).turn(TORSO_LEAN, deg(20), deg(60));
        double most =
                knobs.keepBelow(compression(LOW_BACK), newtons(2000)).most(hip).value();
        assertEquals(
                most,
                own.keepBelow(compression(LOW_BACK), newtons(2000)).most(hip).value(),
                2e-3 * most);
        assertEquals(
                3,
                search(HINGE)
                        .turn(
                                "Bar",
                                kg(20),
                                kg(30),
                                "Lean",
                                deg(20),
                                deg(60),
                                "Ahead",
                                cm(0),
                                cm(5),
                                (bar, lean, ahead) -> romanianDeadlift()
                                        .barbell(bar)
                                        .torsoLean(lean)
                                        .barAhead(ahead)
                                        .by(INES))
                        .most(hip)
                        .listing()
                        .rows()
                        .stream()
                        .filter(row -> row.get(2).toString().startsWith("at the upper end"))
                        .count());
        message("give all of them together", () -> own.turn("A", kg(0), kg(1), "B", kg(0), kg(1), (a, b) -> HINGE));
        message("together", () -> own.turn(setting("C", kg(0), kg(1), c -> HINGE)));
    }

    /** Twice the arm balances half the load (the law of the lever): the machine at pads of 20 cm and 40 cm. */
    @Test
    void breakEvenTakesAFunctionForEachExercise() {
        Performance near = CHAIR.with(PAD, cm(20));
        BreakEven.Even<leverwright.mechanics.measure.Mass> even = breakEven("Load", kg(5), kg(60))
                .between(load -> CHAIR.with(STACK, load), load -> near.with(STACK, kg(30)))
                .on(moment(KNEE));
        double there = even.all().get(0).si();
        assertEquals(
                moment(KNEE).si(near.with(STACK, kg(30)).posture()),
                moment(KNEE).si(CHAIR.with(STACK, kg(there)).posture()),
                1e-7);
        message(
                "a function for each",
                () -> breakEven(setting("L", kg(1), kg(2), load -> CHAIR)).between(CHAIR, near));
    }

    @Test
    void aStopKeepsWhatIsFoundAndTheCrewIsTold() {
        long[] told = {0};
        Thread here = Thread.currentThread();
        Crew stopping = new Crew(Runnable::run, 1, () -> told[0] >= 120, (done, all) -> told[0] = done);
        Crew.appoint(() -> Thread.currentThread() == here ? stopping : Crew.alone());
        try {
            SolveFor.Solved<Angle> part = solveFor(ELBOW_FLEXION).in(CURL).gives(flexionMoment(ELBOW), newtonMetres(5));
            assertTrue(part.listing().notes().stream().anyMatch(note -> note.startsWith("Stopped: looked for from")));
            told[0] = 0;
            BestSetting.Best best = search(HINGE)
                    .turn(BAR, kg(0), kg(100))
                    .turn(TORSO_LEAN, deg(20), deg(60))
                    .most(moment(HIP));
            assertTrue(best.isPartial());
            assertTrue(best.listing().notes().get(0).startsWith("Stopped after"));
            told[0] = 500;
            message("stopped before", () -> solveFor(BAR).in(HINGE).gives(moment(HIP), newtonMetres(100)));
            message("stopped before", () -> search(HINGE).turn(BAR).most(moment(HIP)));
        } finally {
            Crew.appoint(Crew::alone);
        }
    }

    @Test
    void badInputIsToldPlainly() {
        message("turns nothing", () -> search(HINGE).most(moment(HIP)));
        message("turned twice", () -> search(HINGE).turn(BAR).turn(BAR));
        message("no knob", () -> search(HINGE).turn(STACK));
        message("no knob", () -> solveFor(STACK).in(HINGE));
        message("from a smaller to a larger", () -> solveFor(BAR).between(kg(50), kg(20)));
        message("no knob", () -> breakEven(BAR).between(HINGE, CHAIR));
    }

    private static void message(String part, org.junit.jupiter.api.function.Executable doing) {
        String said = assertThrows(IllegalArgumentException.class, doing).getMessage();
        assertTrue(said.contains(part), said);
    }
}

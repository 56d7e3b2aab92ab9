package leverwright.mechanics.exercise;

import static leverwright.mechanics.exercise.Exercises.backSquat;
import static leverwright.mechanics.exercise.Exercises.benchPress;
import static leverwright.mechanics.exercise.Exercises.dumbbellCurl;
import static leverwright.mechanics.exercise.Exercises.frontSquat;
import static leverwright.mechanics.exercise.Exercises.kneeExtension;
import static leverwright.mechanics.exercise.Exercises.overheadPress;
import static leverwright.mechanics.exercise.Exercises.pullUp;
import static leverwright.mechanics.exercise.Exercises.pushUp;
import static leverwright.mechanics.exercise.Exercises.romanianDeadlift;
import static leverwright.mechanics.load.Resistances.band;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.ratio;
import static leverwright.mechanics.measure.Measures.seconds;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.load.Band;
import leverwright.mechanics.load.Direction;
import leverwright.mechanics.load.LeverLoad;
import leverwright.mechanics.load.LineLoad;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.load.PadLoad;
import leverwright.mechanics.load.Resistances;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.study.Studies;
import leverwright.mechanics.working.PrintedWorkings;
import org.junit.jupiter.api.Test;

/** Vest, chains, band, machine and guide on any exercise, those with bars and pads of their own too. */
class AddedLoadsTest {
    private static final double G = 9.80665;
    private final Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
    private final Band tube = band(cm(60))
            .stretched(cm(30), newtons(70))
            .stretched(cm(200), newtons(250))
            .returned(cm(200), newtons(230));

    private final Band strap = band(cm(15)).stretched(cm(10), newtons(60)).stretched(cm(90), newtons(200));

    private static double si(HeldPosture held, Joint joint) {
        return held.cut(joint).reported();
    }

    private void assertSame(HeldPosture one, HeldPosture other, Joint... joints) {
        for (Joint joint : joints) {
            assertEquals(si(one, joint), si(other, joint), 1e-8 * (1 + Math.abs(si(one, joint))), one + ", " + joint);
        }
        assertTrue(one.bothCuts().agree() && other.bothCuts().agree(), one.toString());
    }

    /** A vest of 10 kg, 20 cm above the hips on a trunk that leans 40°, turns each hip by 10 kg · g · 20 cm · sin 40° / 2. */
    @Test
    void aVestPullsAtItsPlaceOnTheTrunk() {
        double more = 10 * G * 0.2 * Math.sin(Math.toRadians(40)) / 2;
        for (Exercise<?> squat :
                List.of(backSquat().torsoLean(deg(40)), frontSquat().torsoLean(deg(40)))) {
            double with = si(squat.vest(kg(10)).by(ines).posture(), Joint.HIP);
            assertEquals(more, with - si(squat.by(ines).posture(), Joint.HIP), 1e-9, squat.name());
        }
        HeldPosture curl =
                dumbbellCurl().torsoLean(deg(30)).vest(kg(20)).by(ines).posture();
        assertEquals(Standing.BALANCED, curl.standing());
        assertEquals(
                si(dumbbellCurl().torsoLean(deg(30)).by(ines).posture(), Joint.ELBOW), si(curl, Joint.ELBOW), 1e-9);
        assertEquals(kg(20), dumbbellCurl().vest(kg(20)).get(SetupKnobs.VEST));
        assertTrue(backSquat().vest(kg(5)).vest(kg(10)).loads().toString().indexOf("vest")
                == backSquat().vest(kg(10)).loads().toString().lastIndexOf("vest"));
    }

    /** What hangs is carried: a bar heavier by the chains' lifted part gives the same posture and moments. */
    @Test
    void chainsWeighWhatIsLiftedOfThem() {
        HeldPosture chained =
                backSquat().barbell(kg(60)).chains(kg(16), cm(160)).by(ines).posture();
        double height = chained.layout().loads().get(0).y();
        assertTrue(height > 0.5 && height < 1.6);
        HeldPosture heavier =
                backSquat().barbell(Mass.of(60 + 16 * height / 1.6)).by(ines).posture();
        assertSame(chained, heavier, Joint.KNEE, Joint.HIP, Joint.ANKLE, Joint.LOW_BACK);
        HeldPosture hinge = romanianDeadlift()
                .barbell(kg(50))
                .chains(kg(10), cm(40))
                .by(ines)
                .posture();
        assertSame(hinge, romanianDeadlift().barbell(kg(60)).by(ines).posture(), Joint.HIP, Joint.SHOULDER);
        assertTrue(hinge.layout().loads().get(1).y() > 0.4, "all of the chains hang");
        HeldPosture press =
                overheadPress().barbell(kg(20)).chains(kg(8), cm(300)).by(ines).posture();
        double over = press.layout().loads().get(0).y();
        assertSame(
                press,
                overheadPress().barbell(Mass.of(20 + 8 * over / 3)).by(ines).posture(),
                Joint.SHOULDER,
                Joint.ELBOW);
    }

    /** A band whose anchor lies plumb under the bar is weight, too; one that lies ahead moves the pressure's balance. */
    @Test
    void aBandPullsToItsAnchor() {
        HeldPosture plain = dumbbellCurl().dumbbells(kg(8)).by(ines).posture();
        double x = plain.layout().loads().get(0).x();
        HeldPosture banded = dumbbellCurl()
                .dumbbells(kg(8))
                .band(tube, cm(40), cm(5))
                .by(ines)
                .posture();
        assertTrue(Math.abs(banded.layout().loads().get(0).x() - x) > 1e-4, "balance is found anew");
        assertEquals(Standing.BALANCED, banded.standing());
        Load pull = banded.layout().loads().get(1);
        double away = Math.hypot(0.4 - pull.x(), 0.05 - pull.y());
        double force = 70 + (away - 0.9) * (250 - 70) / 1.7;
        assertEquals(force, Math.hypot(pull.forceX(), pull.forceY()), 1e-9, "on the measured line");
        assertEquals(
                (pull.x() - banded.layout().jointX(Joint.ELBOW)) * pull.forceY()
                        - (pull.y() - banded.layout().jointY(Joint.ELBOW)) * pull.forceX(),
                pull.momentAbout(
                        banded.layout().jointX(Joint.ELBOW), banded.layout().jointY(Joint.ELBOW)),
                1e-12);
        assertTrue(banded.bothCuts().agree());
    }

    /** Moments about the balls of the feet by hand: vest and band add to what the hands must push. */
    @Test
    void aPushUpCarriesVestAndBand() {
        HeldPosture plain = pushUp().elbowFlexion(deg(60)).by(ines).posture();
        HeldPosture vest = pushUp().elbowFlexion(deg(60)).vest(kg(10)).by(ines).posture();
        Load worn = vest.layout().loads().get(0);
        double toes = vest.layout().pressureX();
        double lever = vest.layout().hands().x() - toes;
        assertEquals(
                10 * G * (worn.x() - toes) / lever,
                vest.layout().hands().forceY() - plain.layout().hands().forceY(),
                1e-9);
        assertTrue(vest.bothCuts().agree());
        HeldPosture strapped = pushUp().elbowFlexion(deg(60))
                .load(new LineLoad("trunk", Place.along(0.45), new Vector(1.35, 0), strap))
                .by(ines)
                .posture();
        assertTrue(strapped.bothCuts().agree());
        assertTrue(strapped.layout().hands().forceY() > plain.layout().hands().forceY());
    }

    @Test
    void anAnkleWeightAndALeverOfOnesOwnLoadTheKneeMachine() {
        HeldPosture plain =
                kneeExtension().stack(kg(0)).kneeFlexion(deg(30)).by(ines).posture();
        HeldPosture weight = kneeExtension()
                .stack(kg(0))
                .kneeFlexion(deg(30))
                .load(new MassLoad("foot", new Place(0, 0), 4))
                .by(ines)
                .posture();
        Layout layout = weight.layout();
        double arm = layout.loads().get(1).x() - layout.jointX(Joint.KNEE);
        assertEquals(4 * G * arm / 2, si(weight, Joint.KNEE) - si(plain, Joint.KNEE), 1e-9);
        var machine = Resistances.lever(kg(30), cm(12)).startsAt(deg(-90));
        HeldPosture lever = kneeExtension()
                .stack(kg(0))
                .kneeFlexion(deg(30))
                .load(new LeverLoad(
                        "shank",
                        new LeverLoad.Pad(0.3, PadLoad.Side.LEFT, true),
                        new Vector(layout.jointX(Joint.KNEE), layout.jointY(Joint.KNEE)),
                        machine))
                .by(ines)
                .posture();
        double pad = machine.padForce(deg(60), cm(30), Direction.HELD).value().si();
        assertEquals(pad * 0.3 / 2, si(lever, Joint.KNEE) - si(plain, Joint.KNEE), 1e-8);
    }

    @Test
    void everyLineOfTheWorkingHolds() {
        List<HeldPosture> all = List.of(
                backSquat()
                        .barbell(kg(60))
                        .chains(kg(16), cm(160))
                        .vest(kg(7))
                        .by(ines)
                        .posture(),
                backSquat().band(tube, cm(-20), cm(0)).guidedBar().by(ines).posture(),
                romanianDeadlift().band(tube, cm(30), cm(2)).by(ines).posture(),
                dumbbellCurl().band(tube, cm(10), cm(5)).vest(kg(3)).by(ines).posture(),
                pushUp().vest(kg(10))
                        .load(new LineLoad("trunk", Place.along(0.45), new Vector(1.35, 0), strap))
                        .by(ines)
                        .posture(),
                kneeExtension()
                        .load(new MassLoad("shank", Place.along(0.05), 2))
                        .by(ines)
                        .posture(),
                guided(35),
                benchPress().by(ines).posture());
        for (HeldPosture held : all) {
            assertTrue(held.bothCuts().agree(), held.toString());
            for (Joint joint : Joint.values()) {
                if (Cut.isKnown(held.layout(), joint)) {
                    var answer = held.moment(joint);
                    PrintedWorkings.check(answer.working(), answer.value().si());
                }
            }
        }
    }

    private HeldPosture guided(int lean) {
        return backSquat()
                .barbell(kg(80))
                .guidedBar()
                .thighs(deg(0))
                .torsoLean(deg(10))
                .shankLean(deg(lean - 35))
                .by(ines)
                .posture();
    }

    /**
     * A guided bar with the feet ahead: the guide's push at the bar's height times that height balances the weights about the
     * chosen pressure, Σ W·(x − x_pressure) = H·y_bar by hand; the feet push as much along the floor.
     */
    @Test
    void aGuideKeepsThePressureAtItsPlace() {
        HeldPosture held = guided(35);
        Layout layout = held.layout();
        double moment = 0;
        for (Segment segment : Segment.values()) {
            moment += layout.body().mass(segment) * G * (layout.centreX(segment) - layout.pressureX());
        }
        Load bar = layout.loads().get(0);
        moment += 80 * G * (bar.x() - layout.pressureX());
        double guide = -moment / bar.y();
        assertEquals(guide, layout.loads().get(1).forceX(), 1e-9);
        assertTrue(Math.abs(guide) > 50, "the guide works: " + guide);
        assertEquals(layout.pressureX(), held.pressure().value().si(), 1e-12);
        assertEquals(Standing.BALANCED, held.standing());
        assertTrue(held.bothCuts().agree());
        assertTrue(held.notes().toString().contains("Guide force"), held.notes().toString());
        HeldPosture free = backSquat().barbell(kg(80)).by(ines).posture();
        assertSame(free, backSquat().barbell(kg(80)).guidedBar().by(ines).posture(), Joint.KNEE, Joint.HIP);
        HeldPosture pushed = overheadPress()
                .guidedBar()
                .with(SetupKnobs.GUIDE_FORCE, newtons(40))
                .by(ines)
                .posture();
        assertEquals(Standing.BALANCED, pushed.standing());
        assertEquals(40, pushed.layout().loads().get(1).forceX(), 0);
    }

    @Test
    void feetThatWouldSlipAreTold() {
        HeldPosture held = guided(15);
        assertTrue(
                held.notes().stream().anyMatch(note -> note.startsWith("The feet would slip")),
                held.notes().toString());
        HeldPosture rough = backSquat()
                .barbell(kg(80))
                .guidedBar()
                .thighs(deg(0))
                .torsoLean(deg(10))
                .shankLean(deg(-20))
                .with(Knobs.FRICTION, ratio(2))
                .by(ines)
                .posture();
        assertTrue(rough.notes().stream().noneMatch(note -> note.startsWith("The feet would slip")));
        Movement cable =
                Exercises.exercise("Belt pulled back").standing().cableOn(Segment.TRUNK, cm(10), cm(-300), cm(100));
        assertTrue(cable.stack(kg(45)).by(ines).posture().remarks().toString().contains("The feet would slip"));
        assertEquals(List.of(), cable.stack(kg(5)).by(ines).posture().remarks());
    }

    @Test
    void addedLoadsMoveWithTheRepetition() {
        var banded = Studies.repetition(
                        backSquat().barbell(kg(40)).band(tube, cm(10), cm(0)).by(ines))
                .through(Knobs.THIGH_ABOVE_LEVEL, deg(70), deg(0))
                .tempo(seconds(1), seconds(1));
        assertTrue(banded.energies().residual() < 1e-6, banded.energies().toString());
        var chained = Studies.repetition(
                        backSquat().barbell(kg(40)).chains(kg(20), cm(200)).by(ines))
                .through(Knobs.THIGH_ABOVE_LEVEL, deg(70), deg(0))
                .tempo(seconds(1), seconds(1));
        assertTrue(chained.energies().residual() < 1e-6, chained.energies().toString());
        assertTrue(chained.energies().heat() > 0, "links set down turn to heat");
        var vest = Studies.repetition(pushUp().vest(kg(10)).by(ines))
                .through(Knobs.ELBOW_FLEXION, deg(5), deg(80))
                .tempo(seconds(1), seconds(1));
        assertTrue(vest.energies().residual() < 1e-6, vest.energies().toString());
    }

    @Test
    void whatCannotBeIsToldInWords() {
        refused(
                "no one bar or weight",
                () -> pullUp().chains(kg(10), cm(100)).by(ines).posture());
        refused("a guided bar belongs to", () -> kneeExtension().guidedBar());
        refused("a guided bar belongs to", () -> benchPress().guidedBar());
        refused("mass of the chains", () -> backSquat().chains(kg(20000), cm(100)));
        refused("Vest is 150 kg; allowed: 0 kg to 100 kg", () -> pushUp().vest(kg(150)));
        refused("Bar is 1001 kg; allowed: 0 kg to 1000 kg", () -> backSquat().barbell(kg(1001)));
    }

    private static void refused(String words, org.junit.jupiter.api.function.Executable asked) {
        String message = assertThrows(IllegalArgumentException.class, asked).getMessage();
        assertTrue(
                String.valueOf(message)
                        .replace('\u202f', ' ')
                        .replace('\u2009', ' ')
                        .contains(words),
                message);
    }

    /** Up to one tonne everything answers, zero too. */
    @Test
    void loadsFromZeroToATonneAreCarried() {
        for (int mass : List.of(0, 1000)) {
            for (HeldPosture held : List.of(
                    backSquat().barbell(kg(mass)).by(ines).posture(),
                    frontSquat().barbell(kg(mass)).by(ines).posture(),
                    kneeExtension().stack(kg(mass)).by(ines).posture(),
                    Exercises.legPress().plates(kg(mass)).by(ines).posture(),
                    Exercises.cableCurl().stack(kg(mass)).by(ines).posture())) {
                for (Joint joint : Joint.values()) {
                    if (Cut.isKnown(held.layout(), joint)) {
                        assertTrue(Double.isFinite(si(held, joint)), held + ", " + joint);
                    }
                }
                assertTrue(held.bothCuts().agree(), held.toString());
            }
        }
    }
}

package leverwright.mechanics.load;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static leverwright.mechanics.measure.Measures.metresPerSecond;
import static leverwright.mechanics.measure.Measures.metresPerSecondSquared;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.measure.Measures.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.working.Answer;
import org.junit.jupiter.api.Test;

class ResistanceTest {
    private static final double G = 9.80665;

    @Test
    void stackPullsWithItsOwnAcceleration() {
        Cable cable = Resistances.cable(kg(40)).ratio(2);
        // by hand: 40·(9.80665 + 3/2)/2
        assertEquals(
                226.133,
                cable.moving(m(1), metresPerSecond(0.4), metresPerSecondSquared(3))
                        .value()
                        .si(),
                1e-9);
        assertEquals(40 * G / 2, cable.holding(m(1)).value().si(), 1e-12);
    }

    @Test
    void frictionOfPulleysAddsGoingUpAndHelpsGoingDown() {
        Cable cable = Resistances.cable(kg(40)).efficiency(percent(80));
        assertEquals(40 * G / 0.8, cable.lifting(m(1)).value().si(), 1e-9);
        assertEquals(40 * G * 0.8, cable.lowering(m(1)).value().si(), 1e-9);
    }

    @Test
    void slackCablesAreToldInWords() {
        Cable cable = Resistances.cable(kg(10)).ratio(2);
        String falling = refused(() -> cable.moving(m(1), metresPerSecond(-1), metresPerSecondSquared(-25)));
        assertTrue(falling.contains("slack") && falling.contains("19.6133"), falling);
        String onItsStop = refused(() -> cable.liftsFrom(cm(80)).holding(cm(60)));
        assertTrue(onItsStop.contains("slack") && onItsStop.contains("0.8"), onItsStop);
    }

    @Test
    void bandReturnsBelowItsStretchOrSaysThatTheReturnIsOverstated() {
        Band band = Resistances.band(cm(100)).stretched(cm(20), newtons(50)).stretched(cm(60), newtons(110));
        assertEquals(80, band.lifting(cm(140)).value().si(), 1e-12);
        assertEquals(0, band.lifting(cm(90)).value().si());
        assertTrue(band.lowering(cm(140)).notes().toString().contains("overstated"));
        Band both = band.returned(cm(30), newtons(50)).returned(cm(60), newtons(104));
        assertEquals(68, both.lowering(cm(140)).value().si(), 1e-12);
        assertFalse(both.lowering(cm(140)).notes().toString().contains("overstated"));
        assertTrue(refused(() -> band.lifting(cm(170))).contains("0.6 m"));
        assertTrue(refused(() -> band.returned(cm(60), newtons(120))).contains("at most as much"));
        assertTrue(refused(() -> band.stretched(cm(10), newtons(5))).contains("rise"));
    }

    @Test
    void onlyTheLiftedPartOfAChainIsCarried() {
        Chain chain = Resistances.chains(kg(16), cm(160));
        assertEquals(16 * 0.5 * G, chain.holding(cm(80)).value().si(), 1e-9);
        assertEquals(16 * G, chain.holding(cm(190)).value().si(), 1e-9);
        // a link of 10 kg/m picked up from rest at 0.5 m/s takes 10·0.5² N besides: rate of momentum
        double moving = chain.moving(cm(80), metresPerSecond(0.5), metresPerSecondSquared(0))
                .value()
                .si();
        assertEquals(16 * 0.5 * G + 2.5, moving, 1e-9);
        double lowered = chain.moving(cm(80), metresPerSecond(-0.5), metresPerSecondSquared(0))
                .value()
                .si();
        assertEquals(16 * 0.5 * G, lowered, 1e-9);
        assertEquals(0.5 * 10 * 0.125, chain.heat(Travel.moving(0.8, -0.5, 0, G)), 1e-12);
    }

    @Test
    void sledTakesMoreUpThanDownAndMayHoldItself() {
        Sled sled = Resistances.sled(kg(100), deg(45)).friction(ratio(0.1));
        double along = 100 * G * Math.sin(Math.PI / 4);
        assertEquals(along * 1.1, sled.lifting(m(0)).value().si(), 1e-9);
        assertEquals(along * 0.9, sled.lowering(m(0)).value().si(), 1e-9);
        assertEquals(along, sled.holding(m(0)).value().si(), 1e-9);
        assertEquals(
                along * 1.1, sled.heldAs(Direction.LIFTED).holding(m(0)).value().si(), 1e-9);
        assertFalse(sled.holdsItself());
        Sled pushed = Resistances.sled(kg(60), deg(0)).friction(ratio(0.4));
        assertTrue(pushed.holdsItself());
        assertEquals(0.4 * 60 * G, pushed.lifting(m(0)).value().si(), 1e-9);
        assertTrue(refused(() -> pushed.lowering(m(0))).contains("no lowering phase"));
        assertEquals(0, pushed.heldAs(Direction.LOWERED).holding(m(0)).value().si());
        // tan(30°) = 0.5774: just held, just not
        assertTrue(Resistances.sled(kg(60), deg(30)).friction(ratio(0.5774)).holdsItself());
        assertFalse(Resistances.sled(kg(60), deg(30)).friction(ratio(0.5773)).holdsItself());
    }

    @Test
    void measuredForcesStandInPlaceOfAMachine() {
        MeasuredForce measured = Resistances.measured()
                .lifted(cm(0), newtons(180))
                .lifted(cm(20), newtons(230))
                .lifted(cm(40), newtons(210));
        assertEquals(205, measured.lifting(cm(10)).value().si(), 1e-12);
        assertEquals(220, measured.lifting(cm(30)).value().si(), 1e-12);
        assertTrue(refused(() -> measured.lifting(cm(41))).contains("Measure further"));
        assertTrue(
                refused(() -> Resistances.measured().lifted(cm(0), newtons(1)).lifting(cm(0)))
                        .contains("at least 2"));
    }

    @Test
    void leverWithItsAxisAtTheJointPushesAsStackTimesWheelOverPad() {
        MachineLever lever = Resistances.lever(kg(40), cm(15)).startsAt(deg(-90));
        assertEquals(
                40 * G * 15 / 34,
                lever.padForce(deg(30), cm(34), Direction.LIFTED).value().si(),
                1e-9);
        LeverLoad load = new LeverLoad("shank", new LeverLoad.Pad(0.34, PadLoad.Side.RIGHT), Vector.ZERO, lever);
        LoadPoint knee = LoadPoint.atRest(0, 0, deg(-60).si());
        PadLoad pad = new PadLoad("shank", Place.along(0.34), 40 * G * 15 / 34, PadLoad.Side.RIGHT);
        assertEquals(pad.forceX(knee), load.forceX(knee), 1e-9);
        assertEquals(pad.forceY(knee), load.forceY(knee), 1e-9);
        assertEquals(0.34, load.along(knee), 1e-12);
    }

    @Test
    void counterweightAndLeverWeightShowInThePadForce() {
        MachineLever lever =
                Resistances.lever(kg(0), cm(15)).weight("lever", kg(5), cm(20)).counterweight(kg(2), cm(30));
        // level: 5·g·0.20 − 2·g·0.30 = 0.4·g about the axis
        assertEquals(
                0.4 * G / 0.4,
                lever.padForce(deg(0), cm(40), Direction.HELD).value().si(),
                1e-9);
    }

    /** The joint's moment by virtual work, from nothing but where the pad's lever stands at neighbouring angles. */
    @Test
    void anAxisOffTheJointChangesTheMomentAsVirtualWorkSays() {
        MachineLever lever = Resistances.lever(kg(40), cm(15))
                .startsAt(deg(-120))
                .cam(Cam.round(cm(10)).point(deg(170), cm(16)));
        Vector axis = new Vector(0.04, 0.025);
        LeverLoad load = new LeverLoad("shank", new LeverLoad.Pad(0.34, PadLoad.Side.RIGHT), axis, lever);
        Linkage leg = Linkage.builder()
                .start(new Link("thigh", 2, 0, 0.42, Place.along(0.2), Place.along(0.42), 0))
                .then(new Link("shank", 2, 0, 0.43, Place.along(0.2), Place.along(0.43), 0))
                .build();
        for (double direction : new double[] {-1.2, -0.8, -0.3, 0.1}) {
            Configuration now = Configuration.at(leg, new Vector(-0.42, 0), 0, direction);
            double moment = LinkageSolver.solve(leg, now, List.of(load), new FixedSupport("thigh", Place.START))
                    .joint("shank")
                    .moment();
            double turn = (leverAngle(axis, direction + 1e-5) - leverAngle(axis, direction - 1e-5)) / 2e-5;
            double travel = leverAngle(axis, direction) + deg(120).si();
            double arm = 0.10 + 0.06 * travel / deg(170).si();
            assertEquals(40 * G * arm * turn, moment, 1e-6 * moment, "shank at " + direction);
        }
    }

    /** Direction of the machine's lever when its pad, 0.34 m from the axis, lies on the shank, which starts at the origin. */
    private static double leverAngle(Vector axis, double shank) {
        double ux = Math.cos(shank);
        double uy = Math.sin(shank);
        double along = axis.x() * ux + axis.y() * uy;
        double off = axis.y() * ux - axis.x() * uy;
        double s = along + Math.sqrt(0.34 * 0.34 - off * off);
        return Math.atan2(s * uy - axis.y(), s * ux - axis.x());
    }

    @Test
    void padThatCannotReachOrWouldPullIsToldInWords() {
        MachineLever lever = Resistances.lever(kg(40), cm(15)).startsAt(deg(-90));
        LoadPoint knee = LoadPoint.atRest(0, 0, deg(-60).si());
        LeverLoad far = new LeverLoad("shank", new LeverLoad.Pad(0.3, PadLoad.Side.RIGHT), new Vector(1, 1), lever);
        assertTrue(refused(() -> far.forceX(knee)).contains("does not reach"));
        LeverLoad pulled = new LeverLoad("shank", new LeverLoad.Pad(0.3, PadLoad.Side.LEFT), new Vector(0, 0), lever);
        assertTrue(refused(() -> pulled.forceX(knee)).contains("would have to pull"));
    }

    @Test
    void massesBeyondATonneAreRefusedWithTheLimit() {
        assertTrue(refused(() -> Resistances.cable(kg(1001))).contains("to 1000 kg"));
        assertTrue(refused(() -> Resistances.sled(kg(2000), deg(45))).contains("to 1000 kg"));
        assertEquals(0, Resistances.sled(kg(0), deg(45)).lowering(m(0)).value().si());
        assertEquals(0, Resistances.cable(kg(0)).lifting(m(1)).value().si());
    }

    @Test
    void workingsOfEveryResistanceEndInItsForce() {
        List<Resistance> all = List.of(
                Resistances.cable(kg(30)).ratio(2).efficiency(percent(90)),
                Resistances.band(cm(40)).stretched(cm(200), newtons(200)),
                Resistances.chains(kg(16), cm(160)),
                Resistances.sled(kg(80), deg(35)).friction(ratio(0.05)).across(newtons(40)),
                Resistances.partner(newtons(120)),
                Resistances.measured()
                        .lifted(cm(0), newtons(90))
                        .lifted(cm(200), newtons(120))
                        .movingMass(kg(8)));
        for (Resistance resistance : all) {
            for (double speed : new double[] {0.4, 0, -0.4}) {
                Answer<?> answer = resistance.at(Travel.moving(0.9, speed, speed == 0 ? 0 : 0.7, G));
                double printed = answer.working().last().expression() == null
                        ? answer.working().last().value()
                        : answer.working().last().expression().evaluate();
                assertEquals(answer.value().si(), printed, 1e-9 * (1 + printed), resistance.name());
            }
            assertEquals(2, resistance.curves(cm(50), cm(150)).curves().size());
        }
        Answer<?> pad = Resistances.lever(kg(40), cm(15))
                .weight("lever", kg(5), cm(20))
                .clockwise()
                .padForce(deg(20), cm(34), Direction.LIFTED);
        assertEquals(pad.value().si(), pad.working().last().expression().evaluate(), 1e-9);
    }

    private static String refused(org.junit.jupiter.api.function.Executable what) {
        return String.valueOf(assertThrows(IllegalArgumentException.class, what).getMessage());
    }
}

package leverwright.mechanics.load;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.kilogramSquareMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.percent;
import static leverwright.mechanics.measure.Measures.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;

/**
 * Power into a load = growth of what it stores + its heat, at every instant of random motions: the law of energy, which none of
 * the loads uses to find its force.
 */
class LoadEnergyTest {
    private static final Place AT = new Place(0.3, 0.05);
    private static final Band BAND = Resistances.band(cm(40))
            .stretched(cm(30), newtons(60))
            .stretched(cm(90), newtons(140))
            .stretched(cm(400), newtons(500))
            .returned(cm(50), newtons(70))
            .returned(cm(400), newtons(480));
    private static final MachineLever LEVER = Resistances.lever(kg(40), cm(12))
            .cable(Resistances.cable(kg(40)).ratio(2).efficiency(percent(88)))
            .weight("lever", kg(6), cm(20))
            .counterweight(kg(3), cm(25))
            .inertia(kilogramSquareMetres(0.3))
            .startsAt(deg(-80));

    private static final List<Load> LOADS = List.of(
            new MassLoad("l", AT, 20),
            new CableLoad("l", AT, new Vector(2, 1.8), 30, 2),
            new BandLoad("l", AT, new Vector(1.7, 0.2), 300, 0.4),
            new LineLoad(
                    "l",
                    AT,
                    new Vector(2, 1.8),
                    Resistances.cable(kg(30)).ratio(2).efficiency(percent(90))),
            new LineLoad("l", AT, new Vector(1.7, -0.2), BAND),
            new LineLoad("l", AT, new Vector(1.7, -0.2), Resistances.partner(newtons(90))),
            new LineLoad(
                    "l",
                    AT,
                    new Vector(2, 1.8),
                    Resistances.measured()
                            .lifted(cm(0), newtons(100))
                            .lifted(cm(150), newtons(220))
                            .lifted(cm(500), newtons(300))
                            .lowered(cm(0), newtons(90))
                            .lowered(cm(500), newtons(200))
                            .movingMass(kg(12))),
            new RailLoad("l", AT, new Vector(0, -2), RailLoad.UP, Resistances.chains(kg(24), cm(600))),
            new RailLoad("l", AT, new Vector(0, -2), RailLoad.UP, Resistances.chains(kg(24), cm(100))),
            new RailLoad(
                    "l",
                    AT,
                    new Vector(-1, -1),
                    deg(40).si(),
                    Resistances.sled(kg(90), deg(40)).friction(ratio(0.2)).across(newtons(50))),
            new LeverLoad("l", new LeverLoad.Handle(AT), new Vector(0.1, -0.5), LEVER),
            new LeverLoad(
                    "l",
                    new LeverLoad.Pad(0.34, PadLoad.Side.RIGHT),
                    new Vector(0.02, 0.03),
                    LEVER.cam(Cam.round(cm(10)).point(deg(90), cm(16)).point(deg(179), cm(11)))),
            new LeverLoad(
                    "l",
                    new LeverLoad.Pad(0.34, PadLoad.Side.LEFT),
                    new Vector(0.02, -0.03),
                    LEVER.clockwise().startsAt(deg(100))));

    /** A motion of the link whose velocities and accelerations are written down by hand. */
    private record Motion(double swing, double rate, double phase, double drift) {
        LoadPoint at(double t, Place place) {
            double s = Math.sin(rate * t + phase);
            double c = Math.cos(rate * t + phase);
            double direction = swing * s;
            double omega = swing * rate * c;
            double alpha = -swing * rate * rate * s;
            double cos = Math.cos(direction);
            double sin = Math.sin(direction);
            double armX = place.along() * cos - place.across() * sin;
            double armY = place.along() * sin + place.across() * cos;
            return new LoadPoint(
                    drift * t * t + armX,
                    0.5 * drift * t + armY,
                    cos,
                    sin,
                    2 * drift - alpha * armY - omega * omega * armX,
                    alpha * armX - omega * omega * armY,
                    2 * drift * t - omega * armY,
                    0.5 * drift + omega * armX,
                    omega,
                    alpha,
                    0,
                    -9.80665,
                    9.80665);
        }
    }

    @Test
    void powerIntoEveryLoadIsStoredOrTurnsToHeat() {
        long seed = 20261125;
        RandomStream random = new RandomStream(seed);
        for (Load load : LOADS) {
            int counted = 0;
            for (int k = 0; k < 200; k++) {
                Motion motion = new Motion(
                        random.nextBetween(0.2, 0.7),
                        random.nextBetween(0.5, 1.5),
                        random.nextBetween(0, 6),
                        random.nextBetween(-0.01, 0.01));
                double t = random.nextBetween(0, 2);
                counted += balances(load, motion, t, "seed " + seed + ", " + load.kind() + " " + k) ? 1 : 0;
            }
            assertTrue(counted > 60, load + " was counted " + counted + " times only");
        }
    }

    private static boolean balances(Load load, Motion motion, double t, String which) {
        LoadPoint now = motion.at(t, load.at());
        double step = 1e-5;
        double power;
        double heat;
        double growth;
        try {
            power = -now.power(load.forceX(now), load.forceY(now), load.couple(now));
            heat = load.dissipation(now);
            growth = (load.storedEnergy(motion.at(t + step, load.at()))
                            - load.storedEnergy(motion.at(t - step, load.at())))
                    / (2 * step);
        } catch (IllegalArgumentException outside) {
            // slack, out of reach or a pad that would have to pull: refused in words
            assertTrue(String.valueOf(outside.getMessage()).contains("; "), outside.getMessage());
            return false;
        }
        assertTrue(heat >= -1e-12, which);
        if (!load.isGiven()) {
            assertEquals(power, growth + heat, 1e-6 * (1 + Math.abs(power)), which);
        }
        return true;
    }
}

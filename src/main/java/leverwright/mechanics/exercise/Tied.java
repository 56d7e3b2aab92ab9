package leverwright.mechanics.exercise;

import java.util.Optional;
import leverwright.mechanics.load.Band;
import leverwright.mechanics.load.Chain;
import leverwright.mechanics.load.Direction;
import leverwright.mechanics.load.LineLoad;
import leverwright.mechanics.load.RailLoad;
import leverwright.mechanics.load.Resistance;
import leverwright.mechanics.load.Travel;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * A resistance tied to the weight that an exercise holds: chains that hang to the floor, a band to an anchor.
 *
 * @param resistance chains or a band, both sides together
 * @param anchor where a band is fastened, m; null for chains, which hang straight down
 */
record Tied(Resistance resistance, @Nullable Vector anchor) implements LoadRule {
    /** Height of the shoulders over the floor on a bench, m: 42 cm of bench and half of the trunk's depth, from memory. */
    private static final double BENCH = 0.54;

    static Tied chains(Mass all, Length each) {
        return new Tied(new Chain(all.si(), each.si()), null);
    }

    static Tied band(Band band, Length ahead, Length height) {
        return new Tied(band, new Vector(ahead.si(), height.si()));
    }

    @Override
    public String words() {
        return resistance.name() + " on the same";
    }

    @Override
    public boolean pushes() {
        return anchor != null;
    }

    /** The weight that it is tied to: the first one that is held. */
    private Load held(Work work) {
        for (Load load : work.layout().loads()) {
            boolean one = !work.layout().parting().isSplit(load.on().segment());
            boolean gear = load.isWeight() && !load.isNothing() && !load.name().equals("vest");
            if (gear && (one || work.layout().plane() == Plane.SAGITTAL)) {
                return load;
            }
        }
        throw new ImpossibleSetting("here is no one bar or weight from which " + resistance.name()
                + " could go; put the force on a segment with load(...)");
    }

    private double floor(Work work) {
        return work.layout().plane() == Plane.TRANSVERSE ? -BENCH : 0;
    }

    private Travel travel(Work work, Load held) {
        return Travel.slowly(length(work, held), Direction.HELD);
    }

    private double length(Work work, Load held) {
        Vector to = anchor;
        if (to == null) {
            return held.y() - floor(work);
        }
        double x = to.x() - held.x();
        double y = to.y() - held.y();
        double length = Math.sqrt(x * x + y * y);
        if (length == 0) {
            throw new ImpossibleSetting(
                    "the anchor of the " + resistance.name() + " lies where it is tied; set the anchor elsewhere");
        }
        return length;
    }

    @Override
    public void add(Work work) {
        Load held = held(work);
        double length = length(work, held);
        double force = resistance.force(travel(work, held));
        String symbol = Load.symbolOf(resistance.name());
        Vector to = anchor;
        double x = to == null ? 0 : force * (to.x() - held.x()) / length;
        double y = to == null ? -force : force * (to.y() - held.y()) / length;
        Load still = Load.force(
                resistance.name(),
                held.on(),
                held.x(),
                held.y(),
                x,
                y,
                held.formulaX(),
                held.formulaY(),
                hand -> part(hand, work, held, symbol, true),
                hand -> part(hand, work, held, symbol, false));
        work.layout().addMoving(still, () -> law(work));
    }

    private Optional<Law> law(Work work) {
        if (work.layout().gravityShare() != 1) {
            return Optional.empty();
        }
        Vector to = anchor;
        Vector floor = new Vector(0, floor(work));
        return Optional.of((link, at) -> to == null
                ? new RailLoad(link, at, floor, RailLoad.UP, resistance)
                : new LineLoad(link, at, to, resistance));
    }

    private Expression part(Hand hand, Work work, Load held, String symbol, boolean isX) {
        Vector to = anchor;
        if (to == null) {
            return isX ? Expression.exact("0") : chainForce(hand, work, held).negated();
        }
        Expression toX = hand.input("x_anchor", Length.of(to.x()), "anchor of the band; set")
                .minus(hand.x(held));
        Expression toY = hand.input("y_anchor", Length.of(to.y()), "anchor of the band; set")
                .minus(hand.y(held));
        Expression length = hand.step(
                "l_" + symbol,
                Expression.squareRoot(toX.squared().plus(toY.squared())),
                Length.of(length(work, held)),
                "length of the band");
        Expression force = hand.input(
                "F_" + symbol,
                Force.of(resistance.force(travel(work, held))),
                "pull of the band at that length, held still, as measured");
        return force.times(isX ? toX : toY).dividedBy(length);
    }

    private Expression chainForce(Hand hand, Work work, Load held) {
        Chain chain = (Chain) resistance;
        double lifted = Math.max(0, Math.min(chain.length(), length(work, held)));
        Expression mass = hand.input("m_chains", Mass.of(chain.mass()), "all chains; set");
        Expression length = hand.input("L_chains", Length.of(chain.length()), "length of each chain; set");
        Expression height = floor(work) == 0
                ? hand.y(held)
                : hand.y(held).minus(hand.input("y_floor", Length.of(floor(work)), "floor; from memory"));
        boolean partly = lifted > 0 && lifted < chain.length();
        Expression part = partly
                ? height
                : hand.input(
                        "s_chains", Length.of(lifted), "lifted part of each chain: " + (lifted == 0 ? "none" : "all"));
        return hand.step(
                "F_chains",
                mass.times(hand.gravity()).times(part).dividedBy(length),
                Force.of(resistance.force(travel(work, held))),
                "the lifted part of the chains");
    }

    @Override
    public void show(Work work) {
        Load held = held(work);
        Vector to = anchor;
        Sketch.Point from = new Sketch.Point(held.x(), held.y());
        Sketch.Point end = to == null ? new Sketch.Point(held.x(), floor(work)) : new Sketch.Point(to.x(), to.y());
        work.layout().show(new Sketch.Line(resistance.name(), from, end));
    }
}

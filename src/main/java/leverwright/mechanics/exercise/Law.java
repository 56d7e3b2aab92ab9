package leverwright.mechanics.exercise;

import java.util.Optional;
import leverwright.mechanics.load.Cable;
import leverwright.mechanics.load.Direction;
import leverwright.mechanics.load.LeverLoad;
import leverwright.mechanics.load.LineLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MachineLever;
import leverwright.mechanics.load.PadLoad;
import leverwright.mechanics.load.RailLoad;
import leverwright.mechanics.load.Resistance;
import leverwright.mechanics.load.Sled;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Place;

/** What a load is in motion: held still it has the same force as the load beside which it stands. */
interface Law {
    /** Makes the load on a link, at a place measured from where that link starts. */
    Load on(String link, Place at);

    /**
     * Returns what a pull is in motion; empty where its force is given, or where gravity does not lie in the plane.
     *
     * @param x place, forward, m
     * @param y place, up, m
     * @param direction of the force, rad counter-clockwise from forward
     */
    static Optional<Law> of(Pull pull, Work work, double x, double y, double direction) {
        if (work.layout().gravityShare() != 1) {
            return Optional.empty();
        }
        if (pull.size() instanceof Sizes.Wheel) {
            return wheel(pull, work);
        }
        return resistance(pull.size(), work).flatMap(what -> along(pull, work, what, x, y, direction));
    }

    private static Optional<Resistance> resistance(Pull.Size size, Work work) {
        if (size instanceof Sizes.Stack stack) {
            return stack(work.si(stack.stack()) / stack.parts(), 1);
        }
        if (size instanceof Sizes.Weight weight) {
            double times = weight.times() == null ? 1 : work.si(weight.times());
            return times > 0 ? stack(work.si(weight.mass()) / weight.parts(), 1 / times) : Optional.empty();
        }
        if (size instanceof Sizes.OnRail) {
            double mass = work.si(SetupKnobs.SLED) + work.si(SetupKnobs.PLATES);
            return Optional.of(
                    new Sled(mass, work.si(SetupKnobs.RAIL), work.si(SetupKnobs.RAIL_FRICTION), 0, Direction.LIFTED));
        }
        return Optional.empty();
    }

    private static Optional<Resistance> stack(double mass, double ratio) {
        return Optional.of(new Cable(mass, ratio, 1, 0, Direction.HELD));
    }

    /** Towards a pulley, or against a fixed direction. */
    private static Optional<Law> along(Pull pull, Work work, Resistance what, double x, double y, double direction) {
        if (pull.aim() instanceof Pull.Pulley pulley && !pulley.given(work)) {
            Vector anchor = new Vector(x + pulley.awayX(work, x), y + pulley.awayY(work, y));
            return Optional.of((link, at) -> new LineLoad(link, at, anchor, what));
        }
        if (pull.aim() instanceof Pull.Square) {
            return Optional.empty();
        }
        double away = direction > 0 ? direction - Math.PI : direction + Math.PI;
        return Optional.of((link, at) -> new RailLoad(link, at, new Vector(x, y), away, what));
    }

    /** A pad that turns with the limb about the limb's joint, where the machine's axis stands. */
    private static Optional<Law> wheel(Pull pull, Work work) {
        Member member = work.on(pull.at().on());
        boolean plain = !member.isOther()
                && pull.at().from() == Spot.From.NEAR
                && member.segment().sides() == 2;
        if (!plain
                || member.segment() == leverwright.mechanics.body.Segment.FOOT
                || work.settings().given(Knobs.PAD_FORCE)
                || !(pull.aim() instanceof Pull.Square square)) {
            return Optional.empty();
        }
        Layout layout = work.layout();
        boolean leg = member.isLeg();
        double length = leg ? layout.body().length(member.segment()) : 0;
        double lean = layout.lean(member);
        Vector axis = new Vector(
                layout.startX(member) + length * layout.sine(member),
                layout.startY(member) + length * layout.cosine(member));
        boolean ahead = square.sense() > 0;
        PadLoad.Side side = ahead == leg ? PadLoad.Side.RIGHT : PadLoad.Side.LEFT;
        double hanging = (leg ? -lean : lean) - Math.PI / 2;
        MachineLever made = MachineLever.stack(Mass.of(work.si(Knobs.STACK)), Length.of(work.si(Knobs.WHEEL_ARM)));
        MachineLever lever = new MachineLever(
                hanging - 2 * Math.PI * Math.rint(hanging / (2 * Math.PI)),
                ahead ? -1 : 1,
                made.cable(),
                made.cam(),
                made.masses(),
                0);
        LeverLoad.Pad pad = new LeverLoad.Pad(work.si(Knobs.PAD), side, leg);
        return Optional.of((link, at) -> new LeverLoad(link, pad, axis, lever));
    }
}

package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Place;

/**
 * A machine's lever on a link. Its axis may lie off the joint's: then a pad slides along the limb as both turn, and a handle
 * pushes square to the line from axis to grip.
 *
 * <p>A {@link Pad} of fixed distance from the axis rolls on the line of the link without friction, so that its force is square
 * to the link; where it lies on the link follows. A {@link Handle} is gripped at a place of the link; what it takes along the
 * lever cannot be known from statics and is left out.
 *
 * @param on name of the link
 * @param contact how the lever touches the link
 * @param axis of the machine, world, m
 * @param lever what resists
 * @param ownCouple N·m besides
 */
public record LeverLoad(String on, Contact contact, Vector axis, MachineLever lever, double ownCouple) implements Load {
    /** How a lever touches a link. */
    public sealed interface Contact permits Pad, Handle {}

    /**
     * A pad on the line of the link.
     *
     * @param fromAxis distance of the pad from the machine's axis, m
     * @param side to which side of the link's axis it pushes
     * @param towardsStart whether it lies from the machine's axis towards the link's start, as on a shank that is measured from
     *     the ankle, and not towards its end
     */
    public record Pad(double fromAxis, PadLoad.Side side, boolean towardsStart) implements Contact {
        /**
         * Makes the pad.
         *
         * @throws IllegalArgumentException if the distance is outside its range
         */
        public Pad {
            Require.positive(fromAxis, 5, "distance of a pad from its axis", "m");
        }

        /** Makes a pad that lies from the machine's axis towards the link's end. */
        public Pad(double fromAxis, PadLoad.Side side) {
            this(fromAxis, side, false);
        }
    }

    /**
     * A handle gripped at a place of the link.
     *
     * @param at where on the link
     */
    public record Handle(Place at) implements Contact {}

    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public LeverLoad {
        Configuration.coordinate(axis.x(), "x of a machine's axis");
        Configuration.coordinate(axis.y(), "y of a machine's axis");
        Load.couple(ownCouple, on);
    }

    /** Makes the load without a couple besides. */
    public LeverLoad(String on, Contact contact, Vector axis, MachineLever lever) {
        this(on, contact, axis, lever, 0);
    }

    @Override
    public LeverLoad withCouple(double newCouple) {
        return new LeverLoad(on, contact, axis, lever, newCouple);
    }

    @Override
    public double couple() {
        return ownCouple;
    }

    @Override
    public Place at() {
        return contact instanceof Handle handle ? handle.at() : Place.START;
    }

    /**
     * What the lever does when the link is in a state.
     *
     * @param angle of the lever, rad
     * @param velocity of it, rad/s
     * @param acceleration of it, rad/s²
     * @param x force on the link forward, N
     * @param y force on the link upward, N
     * @param along where the pad lies on the link from its start, m; 0 for a handle
     */
    private record State(double angle, double velocity, double acceleration, double x, double y, double along) {}

    private State state(LoadPoint point) {
        return contact instanceof Pad pad ? padState(pad, point) : handleState(point);
    }

    private State handleState(LoadPoint point) {
        double x = point.x() - axis.x();
        double y = point.y() - axis.y();
        double square = x * x + y * y;
        if (square == 0) {
            throw new IllegalArgumentException(
                    "the handle on link \"" + on + "\" lies on the machine's axis; move the axis");
        }
        double turn = (x * point.velocityY() - y * point.velocityX()) / square;
        double out = (x * point.velocityX() + y * point.velocityY()) / square;
        double acceleration = (x * point.accelerationY() - y * point.accelerationX()) / square - 2 * out * turn;
        double angle = Trigonometry.arcTangent(y, x);
        double moment = lever.moment(angle, turn, acceleration, point.gravity());
        return new State(angle, turn, acceleration, moment * y / square, -moment * x / square, 0);
    }

    /** The pad lies at s along the link, where |start + s·u − axis| is its distance from the axis; derivatives follow from that. */
    private State padState(Pad pad, LoadPoint point) {
        double ux = point.cosine();
        double uy = point.sine();
        double wx = point.x() - axis.x();
        double wy = point.y() - axis.y();
        double middle = wx * ux + wy * uy;
        double spare = middle * middle - (wx * wx + wy * wy) + pad.fromAxis() * pad.fromAxis();
        int sense = pad.towardsStart() ? -1 : 1;
        double s = -middle + sense * Math.sqrt(Math.max(0, spare));
        double cx = wx + s * ux;
        double cy = wy + s * uy;
        double along = cx * ux + cy * uy;
        if (!(spare > 0) || !(s > 0) || !(sense * along > 1e-9)) {
            throw new IllegalArgumentException("the pad on link \"" + on + "\", " + pad.fromAxis()
                    + " m from the machine's axis, does not reach the limb; move the axis nearer to the joint or the pad"
                    + " further from the axis");
        }
        double omega = point.angularVelocity();
        double materialX = point.velocityX() - s * omega * uy;
        double materialY = point.velocityY() + s * omega * ux;
        double slide = -(cx * materialX + cy * materialY) / along;
        double vx = materialX + slide * ux;
        double vy = materialY + slide * uy;
        double across = 2 * slide * omega + s * point.angularAcceleration();
        double restX = point.accelerationX() - across * uy - s * omega * omega * ux;
        double restY = point.accelerationY() + across * ux - s * omega * omega * uy;
        double slideRate = -(vx * vx + vy * vy + cx * restX + cy * restY) / along;
        double square = pad.fromAxis() * pad.fromAxis();
        double turn = (cx * vy - cy * vx) / square;
        double acceleration = (cx * (restY + slideRate * uy) - cy * (restX + slideRate * ux)) / square;
        double angle = Trigonometry.arcTangent(cy, cx);
        double push = -lever.moment(angle, turn, acceleration, point.gravity()) / along;
        if (push * pad.side().sense() < 0) {
            throw new IllegalArgumentException(
                    "the pad on link \"" + on + "\" would have to pull with " + Math.abs(push)
                            + " N to stay on the limb; allowed: a push. Lift more slowly, or take a lighter lever or a smaller"
                            + " counterweight");
        }
        return new State(angle, turn, acceleration, -push * uy, push * ux, s);
    }

    @Override
    public double forceX(LoadPoint point) {
        return state(point).x();
    }

    @Override
    public double forceY(LoadPoint point) {
        return state(point).y();
    }

    @Override
    public double couple(LoadPoint point) {
        State state = state(point);
        return ownCouple + state.along() * (point.cosine() * state.y() - point.sine() * state.x());
    }

    /** Returns where the pad lies on the link from its start in a state, m; 0 for a handle. */
    public double along(LoadPoint point) {
        return state(point).along();
    }

    @Override
    public double storedEnergy(LoadPoint point) {
        State state = state(point);
        return lever.stored(state.angle(), state.velocity(), point.gravity());
    }

    @Override
    public double dissipation(LoadPoint point) {
        State state = state(point);
        return lever.heat(state.angle(), state.velocity(), state.acceleration(), point.gravity());
    }

    @Override
    public boolean isGiven() {
        return false;
    }

    @Override
    public List<String> notes() {
        return lever.notes();
    }

    @Override
    public String kind() {
        return "lever";
    }
}

package leverwright.mechanics.equilibrium;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;

/**
 * Solves one linkage again and again for changing inputs: set what changes, call {@link #solve}, read.
 *
 * <p>Links and joints go by the linkage's index; joint k ≥ 1 is where link k starts. Signs and units as in the package's
 * description. Values read before the first {@link #solve}, or after an input was changed and not yet solved, are those of
 * no state in particular. Not for use by several threads at once: give each its own solver.
 */
public final class LinkageSolver {
    /** Greatest size of gravity's pull, m/s². */
    public static final double GREATEST_GRAVITY = 1000;
    /** Standard gravity, m/s² (exact: 3rd General Conference on Weights and Measures, 1901). */
    public static final double STANDARD_GRAVITY = 9.80665;

    final Linkage linkage;
    final Body[] bodies;
    final LoadCell[] loads;
    final Reactions reactions;
    private final int size;
    private final boolean chain;
    double originX;
    double originY;
    double gravityX;
    double gravityY = -STANDARD_GRAVITY;
    private double gravity = STANDARD_GRAVITY;
    /** How many bodies turn, and whether any did at the last solve. */
    private int turning;

    private boolean turned;
    /** Whether a solve itself needs to know where the bodies start. */
    private boolean placesNeeded;
    /** Whether the starts of the bodies are those of the last solve. */
    private boolean placed;

    private LinkageSolver(Linkage linkage, List<Load> loads, Support support) {
        this.linkage = linkage;
        size = linkage.size();
        bodies = new Body[size];
        reactions = Reactions.of(support, linkage);
        boolean allLast = true;
        for (int k = 0; k < size; k++) {
            bodies[k] = new Body(linkage, k, k == 0 ? null : bodies[linkage.parent(k)], reactions);
            allLast &= bodies[k].last == size - 1;
        }
        chain = allLast;
        this.loads = new LoadCell[loads.size()];
        for (int l = 0; l < this.loads.length; l++) {
            this.loads[l] = new LoadCell(
                    loads.get(l), bodies[linkage.indexOf(loads.get(l).on())]);
        }
        hang();
        placesNeeded = !chain || !reactions.groundOnFirst() || anyPosed();
    }

    /**
     * Returns a solver for a linkage with loads and a support: at rest, origin at (0, 0), all directions 0, standard gravity.
     *
     * @throws IllegalArgumentException if a load or the support names a link that does not exist
     */
    public static LinkageSolver of(Linkage linkage, List<? extends Load> loads, Support support) {
        return new LinkageSolver(linkage, List.copyOf(loads), support);
    }

    /**
     * Returns the solution for one configuration under standard gravity.
     *
     * @throws IllegalArgumentException if a name does not exist, the configuration does not fit the linkage, or the support
     *     cannot hold the linkage
     */
    public static Solution solve(
            Linkage linkage, Configuration configuration, List<? extends Load> loads, Support support) {
        return of(linkage, loads, support).configuration(configuration).solve().solution();
    }

    /** Sets gravity's pull along −y, m/s², 0 to {@link #GREATEST_GRAVITY}. */
    public LinkageSolver gravity(double pull) {
        gravity = Require.within(pull, 0, GREATEST_GRAVITY, "gravity", "m/s^2");
        gravityX = 0;
        gravityY = -pull;
        return this;
    }

    /** Sets gravity's pull as a vector, m/s²; each part within ±{@link #GREATEST_GRAVITY}. */
    public LinkageSolver gravity(double x, double y) {
        gravityX = Require.within(x, -GREATEST_GRAVITY, GREATEST_GRAVITY, "forward part of gravity", "m/s^2");
        gravityY = Require.within(y, -GREATEST_GRAVITY, GREATEST_GRAVITY, "upward part of gravity", "m/s^2");
        gravity = Math.sqrt(x * x + y * y);
        return this;
    }

    /** Sets where the first link starts, m. */
    public LinkageSolver origin(double x, double y) {
        originX = Configuration.coordinate(x, "x of the origin");
        originY = Configuration.coordinate(y, "y of the origin");
        return this;
    }

    /**
     * Sets how the first link's start moves, m/s and m/s², for a body that is held elsewhere; it stands still unless told.
     * Counts together with {@link #turning} and stays set until it is set anew.
     */
    public LinkageSolver originMoving(double velocityX, double velocityY, double accelerationX, double accelerationY) {
        Body first = bodies[0];
        turning -= first.startMoves() ? 1 : 0;
        first.startVelocityX = Require.finite(velocityX, "forward velocity of the origin", "m/s");
        first.startVelocityY = Require.finite(velocityY, "upward velocity of the origin", "m/s");
        first.startAccelerationX = Require.finite(accelerationX, "forward acceleration of the origin", "m/s^2");
        first.startAccelerationY = Require.finite(accelerationY, "upward acceleration of the origin", "m/s^2");
        turning += first.startMoves() ? 1 : 0;
        return this;
    }

    /** Sets the direction of a link, rad from forward, counter-clockwise positive. */
    public LinkageSolver direction(int link, double direction) {
        bodies[link].turnTo(Configuration.direction(direction, link));
        return this;
    }

    /**
     * Sets the directions of all links.
     *
     * @param directions by link index, rad from forward, counter-clockwise positive
     * @throws IllegalArgumentException if there is not one per link or one is outside its range
     */
    public LinkageSolver directions(double[] directions) {
        countLinks(directions.length, "directions");
        for (int k = 0; k < size; k++) {
            bodies[k].turnTo(Configuration.direction(directions[k], k));
        }
        return this;
    }

    /**
     * Sets the masses of all links.
     *
     * @param masses by link index, kg, both sides together
     * @throws IllegalArgumentException if there is not one per link or one is outside its range
     */
    public LinkageSolver masses(double[] masses) {
        countLinks(masses.length, "masses");
        for (int k = 0; k < size; k++) {
            mass(k, masses[k]);
        }
        return this;
    }

    private void countLinks(int given, String what) {
        if (given != size) {
            throw new IllegalArgumentException("the linkage has " + size + " links, but " + given + " " + what
                    + " were given; allowed: one per link");
        }
    }

    /** Sets how a link turns: angular velocity, rad/s, and angular acceleration, rad/s². */
    public LinkageSolver turning(int link, double velocity, double acceleration) {
        Body body = bodies[link];
        turning -= body.velocity != 0 || body.acceleration != 0 ? 1 : 0;
        body.velocity = Configuration.angularVelocity(velocity, link);
        body.acceleration = Configuration.angularAcceleration(acceleration, link);
        turning += velocity != 0 || acceleration != 0 ? 1 : 0;
        return this;
    }

    /** Sets origin, directions and turning of all links. */
    public LinkageSolver configuration(Configuration configuration) {
        if (configuration.directions().size() != size) {
            throw new IllegalArgumentException("the linkage has " + size + " links, but the configuration "
                    + configuration.directions().size() + " directions; allowed: one per link");
        }
        origin(configuration.origin().x(), configuration.origin().y());
        for (int k = 0; k < size; k++) {
            direction(k, configuration.directions().get(k));
            turning(
                    k,
                    configuration.angularVelocities().get(k),
                    configuration.angularAccelerations().get(k));
        }
        return this;
    }

    /** Sets the mass of a link, kg, both sides together. */
    public LinkageSolver mass(int link, double mass) {
        bodies[link].mass = mass >= 0 && mass <= Link.GREATEST_MASS
                ? mass
                : Require.within(mass, 0, Link.GREATEST_MASS, "mass of link " + link, "kg");
        return this;
    }

    /** Sets the moment of inertia of a link about its mass centre, kg·m². */
    public LinkageSolver inertia(int link, double inertia) {
        bodies[link].inertia = Require.within(inertia, 0, Link.GREATEST_INERTIA, "inertia of a link", "kg m^2");
        return this;
    }

    /**
     * Replaces a load.
     *
     * @param index its place in the list of loads
     * @throws IllegalArgumentException if it acts on a link that does not exist
     */
    public LinkageSolver load(int index, Load load) {
        LoadCell cell = loads[index];
        Body on = load.on().equals(cell.load.on()) ? cell.body : bodies[linkage.indexOf(load.on())];
        cell.take(load);
        placesNeeded |= !cell.plain;
        if (on != cell.body) {
            cell.body = on;
            hang();
        }
        return this;
    }

    private boolean anyPosed() {
        for (LoadCell cell : loads) {
            if (!cell.plain) {
                return true;
            }
        }
        return false;
    }

    /** Gives every body the loads on it, in their order. */
    private void hang() {
        for (Body body : bodies) {
            body.loads = null;
        }
        for (int l = loads.length - 1; l >= 0; l--) {
            loads[l].next = loads[l].body.loads;
            loads[l].body.loads = loads[l];
        }
    }

    /**
     * Sets the mass of a load of kind "mass", kg, 0 to {@link MassLoad#GREATEST_MASS}; makes no object.
     *
     * @param index its place in the list of loads
     * @throws IllegalArgumentException if the load is of another kind or the mass outside its range
     */
    public LinkageSolver loadMass(int index, double mass) {
        LoadCell cell = loads[index];
        if (!(cell.load instanceof MassLoad)) {
            throw otherKind(index, cell, "mass");
        }
        cell.mass = Require.within(mass, 0, MassLoad.GREATEST_MASS, "attached mass", "kg");
        return this;
    }

    /**
     * Sets the force of a load of kind "force", N, each part within ±{@link Load#GREATEST_FORCE}; makes no object.
     *
     * @param index its place in the list of loads
     * @throws IllegalArgumentException if the load is of another kind or the force outside its range
     */
    public LinkageSolver loadForce(int index, double x, double y) {
        LoadCell cell = loads[index];
        if (!(cell.load instanceof ForceLoad)) {
            throw otherKind(index, cell, "force");
        }
        cell.fixedX = Require.within(x, -Load.GREATEST_FORCE, Load.GREATEST_FORCE, "forward part of a force", "N");
        cell.fixedY = Require.within(y, -Load.GREATEST_FORCE, Load.GREATEST_FORCE, "upward part of a force", "N");
        return this;
    }

    private static IllegalArgumentException otherKind(int index, LoadCell cell, String wanted) {
        return new IllegalArgumentException("load " + index + " is of kind \"" + cell.load.kind() + "\"; allowed: \""
                + wanted + "\"; replace other loads by load(index, load)");
    }

    /**
     * Sets the free force of two contacts, N.
     *
     * @throws IllegalArgumentException if the support is another one or the force outside its range
     */
    public LinkageSolver freeForce(double force) {
        reactions.freeForce(Require.within(
                force, -Load.GREATEST_FORCE, Load.GREATEST_FORCE, "free force of the first contact", "N"));
        return this;
    }

    /**
     * Solves for the inputs as they stand.
     *
     * @throws IllegalArgumentException if a cable has no direction, or two contacts cannot hold the linkage
     */
    public LinkageSolver solve() {
        boolean moving = turning > 0;
        placed = false;
        if (placesNeeded || moving || turned) {
            place();
        }
        if (moving || turned) {
            accelerate();
        }
        if (chain && !moving && gravityX == 0) {
            sumBeyondInHangingChain();
        } else {
            sumBeyond(moving);
        }
        Body first = bodies[0];
        reactions.solve(bodies, originY, first.beyondX, first.beyondY, first.beyondMoment);
        hold(reactions.first);
        Hold second = reactions.second;
        if (second != null) {
            hold(second);
        }
        if (chain) {
            sumOthersInChain();
        } else {
            sumAfter();
            sumOthers();
        }
        return this;
    }

    /** From the first body to the last: where each starts. Done when a solve or a reader needs it, once a solve. */
    void place() {
        if (placed) {
            return;
        }
        for (int k = 1; k < size; k++) {
            bodies[k].place();
        }
        placed = true;
    }

    /** From the first body to the last: how each start accelerates; all 0 again once nothing turns any more. */
    private void accelerate() {
        for (Body body : bodies) {
            body.accelerate();
        }
        turned = turning > 0;
    }

    /** What a load may depend on, at (armX, armY) from its body's start. */
    LoadPoint pointAt(LoadCell cell, double armX, double armY, double pullX, double pullY, boolean moving) {
        Body on = cell.body;
        return new LoadPoint(
                originX + (on.startX + armX),
                originY + (on.startY + armY),
                on.cosine(),
                on.sine(),
                gravityX - pullX,
                gravityY - pullY,
                moving ? on.startVelocityX - on.velocity * armY : 0,
                moving ? on.startVelocityY + on.velocity * armX : 0,
                moving ? on.velocity : 0,
                moving ? on.acceleration : 0,
                gravityX,
                gravityY,
                gravity);
    }

    /**
     * The same as {@link #sumBeyond}, to the last bit, with half the work, for the usual case: a chain at rest under gravity
     * straight down.
     */
    private void sumBeyondInHangingChain() {
        Body[] all = bodies;
        double down = gravityY;
        double x = 0;
        double y = 0;
        double moment = 0;
        double carried = 0;
        for (int k = all.length - 1; k > 0; k--) {
            Body body = all[k];
            body.hang(down);
            if (body.loads != null) {
                applyLoads(body, false);
            }
            x += body.ownX;
            y += body.ownY;
            moment += body.ownMoment + carried;
            body.beyondX = x;
            body.beyondY = y;
            body.beyondMoment = moment;
            body.reach(all[k - 1]);
            carried = body.jointX * y - body.jointY * x;
        }
        Body first = all[0]; // has no joint: outside the loop, which then needs no test
        first.hang(down);
        if (first.loads != null) {
            applyLoads(first, false);
        }
        first.beyondX = x + first.ownX;
        first.beyondY = y + first.ownY;
        first.beyondMoment = moment + (first.ownMoment + carried);
    }

    private void applyLoads(Body body, boolean moving) {
        for (LoadCell cell = body.loads; cell != null; cell = cell.next) {
            cell.apply(this, moving);
        }
    }

    /** From the last body to the first: what acts on it, and beyond each joint, moments carried from joint to joint. */
    private void sumBeyond(boolean moving) {
        double x = 0;
        double y = 0;
        double moment = 0;
        double carried = 0;
        for (int k = size - 1; k >= 0; k--) {
            Body body = bodies[k];
            if (moving) {
                body.weighMoving(gravityX, gravityY);
            } else {
                body.weigh(gravityX, gravityY);
            }
            applyLoads(body, moving);
            x += body.ownX;
            y += body.ownY;
            moment += body.ownMoment + carried;
            if (!chain) {
                x += body.branchX;
                y += body.branchY;
                moment += body.branchMoment;
                body.branchX = 0;
                body.branchY = 0;
                body.branchMoment = 0;
            }
            body.beyondX = x;
            body.beyondY = y;
            body.beyondMoment = moment;
            Body on = body.parent;
            if (on != null) {
                body.reach(on);
                carried = body.jointX * y - body.jointY * x;
                if (on.index != k - 1) {
                    on.branchX += x;
                    on.branchY += y;
                    on.branchMoment += moment + carried;
                    x = 0;
                    y = 0;
                    moment = 0;
                    carried = 0;
                }
            }
        }
    }

    /** In a chain: what acts on all others, from the first joint to the last, moments carried from joint to joint. */
    private void sumOthersInChain() {
        Body on = bodies[0];
        double x = 0;
        double y = 0;
        double moment = 0;
        for (int k = 1; k < size; k++) {
            Body body = bodies[k];
            x += on.ownX;
            y += on.ownY;
            moment += on.ownMoment - (body.jointX * y - body.jointY * x);
            body.otherX = x;
            body.otherY = y;
            body.otherMoment = moment;
            on = body;
        }
    }

    /** Adds a force of the support to its body, and to what acts beyond each joint from the first body to that one. */
    private void hold(Hold held) {
        bodies[held.link].hold(held);
        for (Body body = bodies[held.link]; body != null; body = body.parent) {
            body.holdBeyond(held);
        }
    }

    /** In a tree: sums over each body and all after it in order, moments about the first body's start. */
    private void sumAfter() {
        double x = 0;
        double y = 0;
        double moment = 0;
        for (int k = size - 1; k >= 0; k--) {
            Body body = bodies[k];
            x += body.ownX;
            y += body.ownY;
            moment += body.ownMoment + (body.startX * body.ownY - body.startY * body.ownX);
            body.afterX = x;
            body.afterY = y;
            body.afterMoment = moment;
        }
    }

    /** In a tree, from the first body to the last: what acts on all others, summed about the first body's start and moved to the joint. */
    private void sumOthers() {
        double x = 0;
        double y = 0;
        double moment = 0;
        for (int k = 0; k < size; k++) {
            Body body = bodies[k];
            double otherX = x;
            double otherY = y;
            double otherMoment = moment;
            if (body.last < size - 1) {
                Body after = bodies[body.last + 1];
                otherX += after.afterX;
                otherY += after.afterY;
                otherMoment += after.afterMoment;
            }
            body.otherX = otherX;
            body.otherY = otherY;
            body.otherMoment = otherMoment - (body.startX * otherY - body.startY * otherX);
            x += body.ownX;
            y += body.ownY;
            moment += body.ownMoment + (body.startX * body.ownY - body.startY * body.ownX);
        }
    }

    /** Returns the linkage. */
    public Linkage linkage() {
        return linkage;
    }

    /** Returns the forward force that the parent of link {@code joint} exerts on it, N, from the load's side. */
    public double forceX(int joint) {
        Body body = bodies[joint];
        return body.loadedBefore ? body.otherX : -body.beyondX;
    }

    /** Returns the upward force that the parent of link {@code joint} exerts on it, N, from the load's side. */
    public double forceY(int joint) {
        Body body = bodies[joint];
        return body.loadedBefore ? body.otherY : -body.beyondY;
    }

    /** Returns the moment that the parent of link {@code joint} exerts on it, N·m, from the load's side. */
    public double moment(int joint) {
        Body body = bodies[joint];
        return body.loadedBefore ? body.otherMoment : -body.beyondMoment;
    }

    /** Returns the same forward force found from the other side of the cut, where the support is, N. */
    public double supportSideForceX(int joint) {
        Body body = bodies[joint];
        return body.loadedBefore ? -body.beyondX : body.otherX;
    }

    /** Returns the same upward force found from the other side of the cut, where the support is, N. */
    public double supportSideForceY(int joint) {
        Body body = bodies[joint];
        return body.loadedBefore ? -body.beyondY : body.otherY;
    }

    /** Returns the same moment found from the other side of the cut, where the support is, N·m. */
    public double supportSideMoment(int joint) {
        Body body = bodies[joint];
        return body.loadedBefore ? -body.beyondMoment : body.otherMoment;
    }

    /** Returns where a link starts, forward, world, m. */
    public double startX(int link) {
        place();
        return originX + bodies[link].startX;
    }

    /** Returns where a link starts, upward, world, m. */
    public double startY(int link) {
        place();
        return originY + bodies[link].startY;
    }

    /** Returns where the mass centre of a link lies, forward, world, m. */
    public double centreX(int link) {
        place();
        return originX + bodies[link].centreX();
    }

    /** Returns where the mass centre of a link lies, upward, world, m. */
    public double centreY(int link) {
        place();
        return originY + bodies[link].centreY();
    }

    /** Returns how many points hold the linkage: 2 for two contacts, else 1. */
    public int reactionCount() {
        return reactions.all().size();
    }

    /** Returns the forward force of the support (0, or 1 for the second contact), N. */
    public double reactionX(int support) {
        return reactions.all().get(support).forceX;
    }

    /** Returns the upward force of the support (0, or 1 for the second contact), N. */
    public double reactionY(int support) {
        return reactions.all().get(support).forceY;
    }

    /** Returns the couple of a fixed support, N·m; for a ground that would have to pull, the couple that would close. */
    public double reactionCouple() {
        return reactions.first.couple;
    }

    /** Tells whether ground pushes; false when it would have to pull, and for other supports. */
    public boolean groundPushes() {
        return reactions.pushes;
    }

    /** Returns where the ground's force acts, x in the world, m; NaN when {@link #groundPushes} is false. */
    public double centreOfPressure() {
        return reactions.pushes ? originX + reactions.first.atX : Double.NaN;
    }

    /**
     * Tells whether the ground pushes at a point between the start of the supporting link and the end of its axis, in x.
     * Always true for a fixed support; for two contacts, whether both push along the surfaces' normal.
     */
    public boolean balanced() {
        place();
        return reactions.balanced(this);
    }

    /** Returns the largest sum over all forces of |r × F| + |couple| about any one joint, N·m; 0 without joints. */
    public double scale() {
        place();
        return Rounding.scale(this);
    }

    /** Returns the largest difference between the moments of the two cuts of any joint, over {@link #scale}. */
    public double closure() {
        return Rounding.closure(this, scale());
    }

    /**
     * Returns the free forces of two contacts for which both push and neither slides; empty if there are none.
     *
     * @param frictionOfFirst greatest share of the first contact's normal force that friction can give, 0 to 10
     * @param frictionOfSecond the same of the second contact
     * @throws IllegalArgumentException if the support is another one
     */
    public Optional<FrictionRange> frictionRange(double frictionOfFirst, double frictionOfSecond) {
        return FrictionRange.of(this, frictionOfFirst, frictionOfSecond);
    }

    /** Returns all values of the last solve as one immutable object with names. */
    public Solution solution() {
        place();
        return Solutions.of(this);
    }
}

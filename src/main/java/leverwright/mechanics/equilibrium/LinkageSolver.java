package leverwright.mechanics.equilibrium;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.numeric.Trigonometry;
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
    final Load[] loads;
    final int[] loadLinks;
    final Reactions reactions;
    private final int size;
    private final int[] parents;
    private final int[] lasts;
    private final boolean chain;
    // geometry of the links, m
    private final double[] centreAlong;
    private final double[] centreAcross;
    private final double[] jointAlong;
    private final double[] jointAcross;
    // inputs
    final double[] masses;
    final double[] inertias;
    final double[] sines;
    final double[] cosines;
    private final double[] velocities;
    private final double[] accelerations;
    double originX;
    double originY;
    private double gravityX;
    private double gravityY = -STANDARD_GRAVITY;
    private double gravity = STANDARD_GRAVITY;
    // where things lie, from the first link's start, m
    final double[] startX;
    final double[] startY;
    final double[] centreX;
    final double[] centreY;
    final double[] loadX;
    final double[] loadY;
    private final double[] startAccelerationX;
    private final double[] startAccelerationY;
    // forces: weight with inertia at each mass centre and its couple; loads at their points
    final double[] weightX;
    final double[] weightY;
    final double[] inertiaCouples;
    final double[] loadForceX;
    final double[] loadForceY;
    // all forces on a link but the support's, with the moment about the link's start
    private final double[] ownX;
    private final double[] ownY;
    private final double[] ownMoment;
    // the same over a link and all that hangs on it, about the link's start
    private final double[] beyondX;
    private final double[] beyondY;
    private final double[] beyondMoment;
    // running sums over links 0 .. k − 1 and k .. size − 1, moments about the first link's start
    private final double[] before;
    private final double[] after;
    // results: from the load's side and from the support's side
    final double[] jointX;
    final double[] jointY;
    final double[] jointMoment;
    final double[] otherX;
    final double[] otherY;
    final double[] otherMoment;

    private LinkageSolver(Linkage linkage, List<Load> loads, Support support) {
        this.linkage = linkage;
        this.loads = loads.toArray(new Load[0]);
        size = linkage.size();
        parents = new int[size];
        lasts = new int[size];
        centreAlong = new double[size];
        centreAcross = new double[size];
        jointAlong = new double[size];
        jointAcross = new double[size];
        masses = new double[size];
        inertias = new double[size];
        sines = new double[size];
        cosines = new double[size];
        Arrays.fill(cosines, 1);
        velocities = new double[size];
        accelerations = new double[size];
        startX = new double[size];
        startY = new double[size];
        centreX = new double[size];
        centreY = new double[size];
        startAccelerationX = new double[size];
        startAccelerationY = new double[size];
        weightX = new double[size];
        weightY = new double[size];
        inertiaCouples = new double[size];
        ownX = new double[size];
        ownY = new double[size];
        ownMoment = new double[size];
        beyondX = new double[size];
        beyondY = new double[size];
        beyondMoment = new double[size];
        before = new double[3 * (size + 1)];
        after = new double[3 * (size + 1)];
        jointX = new double[size];
        jointY = new double[size];
        jointMoment = new double[size];
        otherX = new double[size];
        otherY = new double[size];
        otherMoment = new double[size];
        loadLinks = new int[this.loads.length];
        loadX = new double[this.loads.length];
        loadY = new double[this.loads.length];
        loadForceX = new double[this.loads.length];
        loadForceY = new double[this.loads.length];
        chain = takeLinks();
        for (int l = 0; l < this.loads.length; l++) {
            loadLinks[l] = linkage.indexOf(this.loads[l].on());
        }
        reactions = Reactions.of(support, linkage);
    }

    private boolean takeLinks() {
        boolean allLast = true;
        for (int k = 0; k < size; k++) {
            Link link = linkage.link(k);
            parents[k] = linkage.parent(k);
            lasts[k] = linkage.lastOf(k);
            allLast &= lasts[k] == size - 1;
            centreAlong[k] = link.centre().along();
            centreAcross[k] = link.centre().across();
            jointAlong[k] = linkage.attachment(k).along();
            jointAcross[k] = linkage.attachment(k).across();
            masses[k] = link.mass();
            inertias[k] = link.inertia();
        }
        return allLast;
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

    /** Sets the direction of a link, rad from forward, counter-clockwise positive. */
    public LinkageSolver direction(int link, double direction) {
        Trigonometry.sineAndCosine(Configuration.direction(direction, link), sines, cosines, link);
        return this;
    }

    /** Sets how a link turns: angular velocity, rad/s, and angular acceleration, rad/s². */
    public LinkageSolver turning(int link, double velocity, double acceleration) {
        velocities[link] = Configuration.angularVelocity(velocity, link);
        accelerations[link] = Configuration.angularAcceleration(acceleration, link);
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
        masses[link] = mass >= 0 && mass <= Link.GREATEST_MASS
                ? mass
                : Require.within(mass, 0, Link.GREATEST_MASS, "mass of link " + link, "kg");
        return this;
    }

    /** Sets the moment of inertia of a link about its mass centre, kg·m². */
    public LinkageSolver inertia(int link, double inertia) {
        inertias[link] = Require.within(inertia, 0, Link.GREATEST_INERTIA, "inertia of a link", "kg m^2");
        return this;
    }

    /**
     * Replaces a load.
     *
     * @param index its place in the list of loads
     * @throws IllegalArgumentException if it acts on a link that does not exist
     */
    public LinkageSolver load(int index, Load load) {
        if (!load.on().equals(loads[index].on())) {
            loadLinks[index] = linkage.indexOf(load.on());
        }
        loads[index] = load;
        return this;
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
        place();
        if (moving()) {
            addInertia();
        }
        for (int l = 0; l < loads.length; l++) {
            addLoad(l);
        }
        sumBeyond();
        reactions.solve(this, beyondX[0], beyondY[0], beyondMoment[0]);
        sumBefore();
        if (!chain) {
            sumAfter();
        }
        for (int k = 1; k < size; k++) {
            cut(k);
        }
        return this;
    }

    private boolean moving() {
        boolean moving = false;
        for (int k = 0; k < size; k++) {
            moving |= velocities[k] != 0 | accelerations[k] != 0;
        }
        return moving;
    }

    private void place() {
        for (int k = 0; k < size; k++) {
            double sine = sines[k];
            double cosine = cosines[k];
            int parent = parents[k];
            if (parent >= 0) {
                startX[k] = startX[parent] + (jointAlong[k] * cosines[parent] - jointAcross[k] * sines[parent]);
                startY[k] = startY[parent] + (jointAlong[k] * sines[parent] + jointAcross[k] * cosines[parent]);
            }
            double x = centreAlong[k] * cosine - centreAcross[k] * sine;
            double y = centreAlong[k] * sine + centreAcross[k] * cosine;
            centreX[k] = startX[k] + x;
            centreY[k] = startY[k] + y;
            double forceX = masses[k] * gravityX;
            double forceY = masses[k] * gravityY;
            weightX[k] = forceX;
            weightY[k] = forceY;
            inertiaCouples[k] = 0;
            ownX[k] = forceX;
            ownY[k] = forceY;
            ownMoment[k] = x * forceY - y * forceX;
            startAccelerationX[k] = 0;
            startAccelerationY[k] = 0;
        }
    }

    private void addInertia() {
        for (int k = 0; k < size; k++) {
            int parent = parents[k];
            if (parent >= 0) {
                startAccelerationX[k] = startAccelerationX[parent]
                        + turnX(parent, startX[k] - startX[parent], startY[k] - startY[parent]);
                startAccelerationY[k] = startAccelerationY[parent]
                        + turnY(parent, startX[k] - startX[parent], startY[k] - startY[parent]);
            }
            double x = centreX[k] - startX[k];
            double y = centreY[k] - startY[k];
            double forceX = masses[k] * (gravityX - (startAccelerationX[k] + turnX(k, x, y)));
            double forceY = masses[k] * (gravityY - (startAccelerationY[k] + turnY(k, x, y)));
            weightX[k] = forceX;
            weightY[k] = forceY;
            inertiaCouples[k] = -inertias[k] * accelerations[k];
            ownX[k] = forceX;
            ownY[k] = forceY;
            ownMoment[k] = x * forceY - y * forceX + inertiaCouples[k];
        }
    }

    /** Forward acceleration of a point at (x, y) from the start of link k, relative to that start: α × r − ω²·r. */
    private double turnX(int k, double x, double y) {
        return -accelerations[k] * y - velocities[k] * velocities[k] * x;
    }

    private double turnY(int k, double x, double y) {
        return accelerations[k] * x - velocities[k] * velocities[k] * y;
    }

    private void addLoad(int l) {
        Load load = loads[l];
        int k = loadLinks[l];
        double along = load.at().along();
        double across = load.at().across();
        double x = along * cosines[k] - across * sines[k];
        double y = along * sines[k] + across * cosines[k];
        loadX[l] = startX[k] + x;
        loadY[l] = startY[k] + y;
        LoadPoint point = new LoadPoint(
                originX + loadX[l],
                originY + loadY[l],
                cosines[k],
                sines[k],
                startAccelerationX[k] + turnX(k, x, y),
                startAccelerationY[k] + turnY(k, x, y),
                gravityX,
                gravityY,
                gravity);
        double forceX = load.forceX(point);
        double forceY = load.forceY(point);
        loadForceX[l] = forceX;
        loadForceY[l] = forceY;
        ownX[k] += forceX;
        ownY[k] += forceY;
        ownMoment[k] += x * forceY - y * forceX + load.couple();
    }

    /** From the last link to the first: what acts beyond each joint, moments carried from joint to joint. */
    private void sumBeyond() {
        System.arraycopy(ownX, 0, beyondX, 0, size);
        System.arraycopy(ownY, 0, beyondY, 0, size);
        System.arraycopy(ownMoment, 0, beyondMoment, 0, size);
        for (int k = size - 1; k > 0; k--) {
            int parent = parents[k];
            double x = startX[k] - startX[parent];
            double y = startY[k] - startY[parent];
            beyondX[parent] += beyondX[k];
            beyondY[parent] += beyondY[k];
            beyondMoment[parent] += beyondMoment[k] + (x * beyondY[k] - y * beyondX[k]);
        }
    }

    private void sumBefore() {
        double x = 0;
        double y = 0;
        double moment = 0;
        for (int k = 0; k < size; k++) {
            x += ownX[k];
            y += ownY[k];
            moment += ownMoment[k] + (startX[k] * ownY[k] - startY[k] * ownX[k]);
            before[3 * k + 3] = x;
            before[3 * k + 4] = y;
            before[3 * k + 5] = moment;
        }
    }

    private void sumAfter() {
        double x = 0;
        double y = 0;
        double moment = 0;
        for (int k = size - 1; k >= 0; k--) {
            x += ownX[k];
            y += ownY[k];
            moment += ownMoment[k] + (startX[k] * ownY[k] - startY[k] * ownX[k]);
            after[3 * k] = x;
            after[3 * k + 1] = y;
            after[3 * k + 2] = moment;
        }
    }

    private void cut(int k) {
        int end = lasts[k];
        double farX = beyondX[k];
        double farY = beyondY[k];
        double farMoment = beyondMoment[k];
        double nearX = before[3 * k] + after[3 * end + 3];
        double nearY = before[3 * k + 1] + after[3 * end + 4];
        double nearMoment = before[3 * k + 2] + after[3 * end + 5];
        boolean heldBeyond = false;
        for (int r = 0; r < reactions.count; r++) {
            double x = reactions.forceX[r];
            double y = reactions.forceY[r];
            if (reactions.links[r] >= k && reactions.links[r] <= end) {
                heldBeyond = true;
                farX += x;
                farY += y;
                farMoment +=
                        (reactions.atX[r] - startX[k]) * y - (reactions.atY[r] - startY[k]) * x + reactions.couples[r];
            } else {
                nearX += x;
                nearY += y;
                nearMoment += reactions.atX[r] * y - reactions.atY[r] * x + reactions.couples[r];
            }
        }
        nearMoment -= startX[k] * nearY - startY[k] * nearX;
        boolean near = heldBeyond && reactions.count == 1;
        jointX[k] = near ? nearX : -farX;
        jointY[k] = near ? nearY : -farY;
        jointMoment[k] = near ? nearMoment : -farMoment;
        otherX[k] = near ? -farX : nearX;
        otherY[k] = near ? -farY : nearY;
        otherMoment[k] = near ? -farMoment : nearMoment;
    }

    /** Returns the linkage. */
    public Linkage linkage() {
        return linkage;
    }

    /** Returns the forward force that the parent of link {@code joint} exerts on it, N, from the load's side. */
    public double forceX(int joint) {
        return jointX[joint];
    }

    /** Returns the upward force that the parent of link {@code joint} exerts on it, N, from the load's side. */
    public double forceY(int joint) {
        return jointY[joint];
    }

    /** Returns the moment that the parent of link {@code joint} exerts on it, N·m, from the load's side. */
    public double moment(int joint) {
        return jointMoment[joint];
    }

    /** Returns the same forward force found from the other side of the cut, where the support is. */
    public double supportSideForceX(int joint) {
        return otherX[joint];
    }

    /** Returns the same upward force found from the other side of the cut, where the support is. */
    public double supportSideForceY(int joint) {
        return otherY[joint];
    }

    /** Returns the same moment found from the other side of the cut, where the support is. */
    public double supportSideMoment(int joint) {
        return otherMoment[joint];
    }

    /** Returns where a link starts, forward, world, m. */
    public double startX(int link) {
        return originX + startX[link];
    }

    /** Returns where a link starts, upward, world, m. */
    public double startY(int link) {
        return originY + startY[link];
    }

    /** Returns where the mass centre of a link lies, forward, world, m. */
    public double centreX(int link) {
        return originX + centreX[link];
    }

    /** Returns where the mass centre of a link lies, upward, world, m. */
    public double centreY(int link) {
        return originY + centreY[link];
    }

    /** Returns how many points hold the linkage: 2 for two contacts, else 1. */
    public int reactionCount() {
        return reactions.count;
    }

    /** Returns the forward force of the support (0, or 1 for the second contact), N. */
    public double reactionX(int support) {
        return reactions.forceX[support];
    }

    /** Returns the upward force of the support (0, or 1 for the second contact), N. */
    public double reactionY(int support) {
        return reactions.forceY[support];
    }

    /** Returns the couple of a fixed support, N·m; for a ground that would have to pull, the couple that would close. */
    public double reactionCouple() {
        return reactions.couples[0];
    }

    /** Tells whether ground pushes; false when it would have to pull, and for other supports. */
    public boolean groundPushes() {
        return reactions.pushes;
    }

    /** Returns where the ground's force acts, x in the world, m; NaN when {@link #groundPushes} is false. */
    public double centreOfPressure() {
        return reactions.pushes ? originX + reactions.atX[0] : Double.NaN;
    }

    /**
     * Tells whether the ground pushes at a point between the start of the supporting link and the end of its axis, in x.
     * Always true for a fixed support; for two contacts, whether both push along the surfaces' normal.
     */
    public boolean balanced() {
        return reactions.balanced(this);
    }

    /** Returns the largest sum over all forces of |r × F| + |couple| about any one joint, N·m; 0 without joints. */
    public double scale() {
        return Rounding.scale(this);
    }

    /** Returns the largest difference between the moments of the two cuts of any joint, over {@link #scale}. */
    public double closure() {
        return Rounding.closure(this);
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
        return Solutions.of(this);
    }
}

package leverwright.mechanics.bulk;

import java.util.List;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.equilibrium.TwoContacts;
import leverwright.mechanics.load.CoupleLoad;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import org.jspecify.annotations.Nullable;

/**
 * One linkage at rest, solved for many settings at once: say what changes, then {@link #solve}.
 *
 * <pre>{@code
 * BulkStatics arm = BulkStatics.of(linkage, loads, new FixedSupport("upper arm", Place.START))
 *         .direction(1, Column.of(elbowDirections))
 *         .loadMass(0, Column.constant(8));
 * BulkSolution found = BulkSolution.moments(linkage, elbowDirections.length);
 * arm.solve(Crew.alone(), found);
 * }</pre>
 *
 * <p><b>What goes block by block</b>: any tree of links whose first link is held, by ground or fixed, under masses, forces and
 * couples. Other supports, and loads that depend on where they are (cables, bands, pads, levers), are solved point by point by
 * {@link LinkageSolver}, on all threads too; the numbers are the same either way.
 *
 * <p>Fixed inputs are those of the solver: origin (0, 0), directions 0, standard gravity, unless set. Change it before solving,
 * not during.
 */
public final class BulkStatics {
    /** Points that one thread takes at a time. */
    static final int CHUNK = 16 * 1024;

    final Linkage linkage;
    final List<Load> loads;
    final Support support;
    final Column[] directions;
    final Column[] masses;
    final Column[] loadMasses;
    final Column[] forcesX;
    final Column[] forcesY;

    @Nullable
    Column freeForce;

    double originX;
    double originY;
    double gravityX;
    double gravityY = -LinkageSolver.STANDARD_GRAVITY;

    private BulkStatics(Linkage linkage, List<Load> loads, Support support) {
        this.linkage = linkage;
        this.loads = loads;
        this.support = support;
        int size = linkage.size();
        directions = new Column[size];
        masses = new Column[size];
        for (int k = 0; k < size; k++) {
            directions[k] = Column.constant(0);
            masses[k] = Column.constant(linkage.link(k).mass());
        }
        loadMasses = new Column[loads.size()];
        forcesX = new Column[loads.size()];
        forcesY = new Column[loads.size()];
        for (int l = 0; l < loads.size(); l++) {
            Load load = loads.get(l);
            loadMasses[l] = Column.constant(load.attachedMass());
            forcesX[l] = Column.constant(load instanceof ForceLoad force ? force.x() : 0);
            forcesY[l] = Column.constant(load instanceof ForceLoad force ? force.y() : 0);
        }
    }

    /**
     * Returns the statics of a linkage with loads and a support.
     *
     * @throws IllegalArgumentException if a load or the support names a link that does not exist
     */
    public static BulkStatics of(Linkage linkage, List<? extends Load> loads, Support support) {
        List<Load> all = List.copyOf(loads);
        LinkageSolver.of(linkage, all, support);
        return new BulkStatics(linkage, all, support);
    }

    /** Sets gravity's pull as a vector, m/s², as {@link LinkageSolver#gravity(double, double)} does. */
    public BulkStatics gravity(double x, double y) {
        double most = LinkageSolver.GREATEST_GRAVITY;
        gravityX = Require.within(x, -most, most, "forward part of gravity", "m/s^2");
        gravityY = Require.within(y, -most, most, "upward part of gravity", "m/s^2");
        return this;
    }

    /** Sets where the first link starts, m. */
    public BulkStatics origin(double x, double y) {
        originX = Configuration.coordinate(x, "x of the origin");
        originY = Configuration.coordinate(y, "y of the origin");
        return this;
    }

    /**
     * Sets the direction of a link, rad from forward, counter-clockwise positive.
     *
     * @throws IllegalArgumentException if one is outside the range of {@link Configuration#GREATEST_DIRECTION}
     */
    public BulkStatics direction(int link, Column column) {
        double most = Configuration.GREATEST_DIRECTION;
        directions[link] = column.within(-most, most, "direction of link " + link, "rad");
        return this;
    }

    /**
     * Sets the mass of a link, kg, both sides together.
     *
     * @throws IllegalArgumentException if one is outside 0 to {@link Link#GREATEST_MASS}
     */
    public BulkStatics mass(int link, Column column) {
        masses[link] = column.within(0, Link.GREATEST_MASS, "mass of link " + link, "kg");
        return this;
    }

    /**
     * Sets the mass of a load of kind "mass", kg.
     *
     * @param index its place in the list of loads
     * @throws IllegalArgumentException if the load is of another kind or a mass outside 0 to {@link MassLoad#GREATEST_MASS}
     */
    public BulkStatics loadMass(int index, Column column) {
        if (!(loads.get(index) instanceof MassLoad)) {
            throw otherKind(index, "mass");
        }
        loadMasses[index] = column.within(0, MassLoad.GREATEST_MASS, "attached mass", "kg");
        return this;
    }

    /**
     * Sets the force of a load of kind "force", N.
     *
     * @param index its place in the list of loads
     * @throws IllegalArgumentException if the load is of another kind or a part outside ±{@link Load#GREATEST_FORCE}
     */
    public BulkStatics loadForce(int index, Column x, Column y) {
        if (!(loads.get(index) instanceof ForceLoad)) {
            throw otherKind(index, "force");
        }
        double most = Load.GREATEST_FORCE;
        forcesX[index] = x.within(-most, most, "forward part of a force", "N");
        forcesY[index] = y.within(-most, most, "upward part of a force", "N");
        return this;
    }

    private IllegalArgumentException otherKind(int index, String wanted) {
        return new IllegalArgumentException(
                "load " + index + " is of kind \"" + loads.get(index).kind() + "\"; allowed: \"" + wanted + "\"");
    }

    /**
     * Sets the free force of two contacts, N.
     *
     * @throws IllegalArgumentException if the support is another one or a force outside ±{@link Load#GREATEST_FORCE}
     */
    public BulkStatics freeForce(Column column) {
        if (!(support instanceof TwoContacts)) {
            throw new IllegalArgumentException("a free force was given, but the support is not two contacts");
        }
        double most = Load.GREATEST_FORCE;
        freeForce = column.within(-most, most, "free force of the first contact", "N");
        return this;
    }

    /**
     * Solves all points there is room for, in chunks that the crew's threads share; no digit depends on their number.
     *
     * @param found takes the values
     * @return how many points were solved: all unless stopped
     * @throws IllegalArgumentException if a column has fewer numbers than there are points
     */
    public int solve(Crew crew, BulkSolution found) {
        checkSizes(found.count());
        boolean blocks = goesByBlocks();
        return crew.inOrder(
                found.count(),
                CHUNK,
                (from, to) -> {
                    if (blocks) {
                        BlockRoom room = found.takeRoom();
                        new StaticsBlock(this, found, room).solve(from, to);
                        found.giveBack(room);
                    } else {
                        new PointByPoint(this, found).solve(from, to);
                    }
                    return to;
                },
                done -> {});
    }

    private void checkSizes(int count) {
        for (Column[] columns : new Column[][] {directions, masses, loadMasses, forcesX, forcesY}) {
            for (Column column : columns) {
                checkSize(column, count);
            }
        }
        if (freeForce != null) {
            checkSize(freeForce, count);
        }
    }

    private static void checkSize(Column column, int count) {
        if (column.size() < count) {
            throw new IllegalArgumentException("a column has " + column.size() + " numbers, but " + count
                    + " points are to be solved; allowed: one number per point, or the same for all");
        }
    }

    /** Whether blocks can do it: the first link is held, and no load depends on where it is. */
    boolean goesByBlocks() {
        boolean held = support instanceof GroundSupport ground
                ? linkage.indexOf(ground.on()) == 0
                : support instanceof FixedSupport fixed && linkage.indexOf(fixed.on()) == 0;
        return held && loads.stream().allMatch(BulkStatics::isPlain);
    }

    private static boolean isPlain(Load load) {
        return load instanceof MassLoad || load instanceof ForceLoad || load instanceof CoupleLoad;
    }
}

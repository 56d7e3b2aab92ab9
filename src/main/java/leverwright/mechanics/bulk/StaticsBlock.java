package leverwright.mechanics.bulk;

import java.util.Arrays;
import java.util.stream.IntStream;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.numeric.RotationBlock;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;

/**
 * Solves blocks of points, from the last link to the first as {@code LinkageSolver.sumBeyond} does: the same operations on the
 * same numbers in the same order, for one link after another instead of one point after another.
 */
final class StaticsBlock {
    private static final int SIZE = RotationBlock.SIZE;

    private final BulkStatics plan;
    private final BulkSolution found;
    private final Linkage linkage;
    private final int links;
    private final boolean upright;
    private final boolean ground;
    private final RotationBlock rotation = new RotationBlock();
    private final double[][] sines;
    private final double[][] cosines;
    private final int[][] loadsOn;
    private final boolean[] straight;

    private final double[] sumX = new double[SIZE];
    private final double[] sumY = new double[SIZE];
    private final double[] sumMoment = new double[SIZE];
    private final double[] carried = new double[SIZE];
    private final double[] ownX = new double[SIZE];
    private final double[] ownY = new double[SIZE];
    private final double[] ownMoment = new double[SIZE];
    private final double[] forceX = new double[SIZE];
    private final double[] forceY = new double[SIZE];
    private final double[] armX = new double[SIZE];
    private final double[] armY = new double[SIZE];
    /** What branches bring to each link, gathered while summing; none in a chain. */
    private final double[][] branches;

    StaticsBlock(BulkStatics plan, BulkSolution found) {
        this.plan = plan;
        this.found = found;
        linkage = plan.linkage;
        links = linkage.size();
        sines = new double[links][SIZE];
        cosines = new double[links][SIZE];
        straight = new boolean[links];
        loadsOn = new int[links][];
        boolean chain = true;
        for (int k = 0; k < links; k++) {
            straight[k] = linkage.link(k).centre().across() == 0
                    && linkage.attachment(k).across() == 0;
            loadsOn[k] = loadsOn(k);
            chain &= linkage.parent(k) == k - 1;
            if (plan.directions[k].isConstant()) {
                turn(k, 0, SIZE);
            }
        }
        branches = chain ? new double[0][] : new double[links][3 * SIZE];
        upright = chain && plan.gravityX == 0;
        ground = plan.support instanceof GroundSupport;
    }

    private int[] loadsOn(int link) {
        String name = linkage.link(link).name();
        return IntStream.range(0, plan.loads.size())
                .filter(l -> plan.loads.get(l).on().equals(name))
                .toArray();
    }

    private void turn(int k, int from, int count) {
        Column column = plan.directions[k];
        rotation.turn(column.values(), column.start(from), column.factor, column.offset, count, sines[k], cosines[k]);
    }

    void solve(int from, int to) {
        for (int start = from; start < to; start += SIZE) {
            block(start, Math.min(SIZE, to - start));
        }
    }

    private void block(int from, int count) {
        for (int k = 0; k < links; k++) {
            if (!plan.directions[k].isConstant()) {
                turn(k, from, count);
            }
        }
        clear(count);
        for (int k = links - 1; k >= 0; k--) {
            add(k, from, count);
            if (k > 0) {
                read(k, from, count);
                reach(k, count);
            }
        }
        pressure(from, count);
    }

    private void clear(int count) {
        Arrays.fill(sumX, 0, count, 0);
        Arrays.fill(sumY, 0, count, 0);
        Arrays.fill(sumMoment, 0, count, 0);
        Arrays.fill(carried, 0, count, 0);
    }

    /** Adds what acts on a link, and what its branches brought, to the sums. */
    private void add(int k, int from, int count) {
        Column mass = plan.masses[k];
        int at = mass.start(from);
        double along = linkage.link(k).centre().along();
        if (upright && straight[k] && loadsOn[k].length == 0) {
            double[] given = mass.values();
            BlockLoops.weight(given, at, mass.factor, mass.offset, plan.gravityY, ownY, count);
            BlockLoops.hangAlone(along, cosines[k], ownY, sumY, sumMoment, carried, count);
            return;
        }
        weigh(k, mass, at, count);
        for (int load : loadsOn[k]) {
            apply(load, k, from, count);
        }
        BlockLoops.sumForces(ownX, ownY, sumX, sumY, count);
        BlockLoops.sumMoments(ownMoment, sumMoment, carried, count);
        if (branches.length > 0) {
            BlockLoops.gather(branches[k], SIZE, sumX, sumY, sumMoment, count);
            Arrays.fill(branches[k], 0);
        }
    }

    private void weigh(int k, Column mass, int at, int count) {
        Place centre = linkage.link(k).centre();
        double[] s = sines[k];
        double[] c = cosines[k];
        BlockLoops.weight(mass.values(), at, mass.factor, mass.offset, plan.gravityY, ownY, count);
        if (!upright) {
            BlockLoops.weight(mass.values(), at, mass.factor, mass.offset, plan.gravityX, ownX, count);
            BlockLoops.weightMoment(centre.along(), centre.across(), s, c, ownX, ownY, ownMoment, count);
        } else {
            Arrays.fill(ownX, 0, count, 0);
            if (straight[k]) {
                BlockLoops.straightMoment(centre.along(), c, ownY, ownMoment, count);
            } else {
                BlockLoops.bentMoment(centre.along(), centre.across(), s, c, ownY, ownMoment, count);
            }
        }
    }

    private void apply(int index, int k, int from, int count) {
        Load load = plan.loads.get(index);
        Column mass = plan.loadMasses[index];
        Column x = plan.forcesX[index];
        Column y = plan.forcesY[index];
        BlockLoops.force(
                x.values(),
                x.start(from),
                x.factor,
                x.offset,
                mass.values(),
                mass.start(from),
                mass.factor,
                mass.offset,
                plan.gravityX,
                forceX,
                count);
        BlockLoops.force(
                y.values(),
                y.start(from),
                y.factor,
                y.offset,
                mass.values(),
                mass.start(from),
                mass.factor,
                mass.offset,
                plan.gravityY,
                forceY,
                count);
        Place at = load.at();
        BlockLoops.arm(at.along(), -at.across(), cosines[k], sines[k], armX, count);
        BlockLoops.arm(at.along(), at.across(), sines[k], cosines[k], armY, count);
        BlockLoops.addLoad(armX, armY, forceX, forceY, load.couple(), ownMoment, count);
        BlockLoops.sumForces(forceX, forceY, ownX, ownY, count);
    }

    /** Writes what the parent exerts on a link. */
    private void read(int k, int from, int count) {
        BlockLoops.negate(sumMoment, found.moment(k), from, count);
        if (found.hasForces()) {
            BlockLoops.negate(sumX, found.forceX(k), from, count);
            BlockLoops.negate(sumY, found.forceY(k), from, count);
        }
    }

    /** Carries the moment to the parent's start; what hangs on a link further back waits there as a branch. */
    private void reach(int k, int count) {
        int parent = linkage.parent(k);
        Place at = linkage.attachment(k);
        double[] s = sines[parent];
        double[] c = cosines[parent];
        if (straight[k]) {
            BlockLoops.carryStraight(at.along(), s, c, sumX, sumY, carried, count);
        } else {
            BlockLoops.carryBent(at.along(), at.across(), s, c, sumX, sumY, carried, count);
        }
        if (parent != k - 1) {
            BlockLoops.branch(branches[parent], SIZE, sumX, sumY, sumMoment, carried, count);
            clear(count);
        }
    }

    /** Finds where the ground pushes, and marks where it would have to pull. */
    private void pressure(int from, int count) {
        double[] pressure = found.centreOfPressure();
        if (!ground) {
            Arrays.fill(pressure, from, from + count, Double.NaN);
            return;
        }
        BlockLoops.pressure(sumX, sumY, sumMoment, plan.originX, plan.originY, ownX, ownY, count);
        System.arraycopy(ownX, 0, pressure, from, count);
        for (int i = 0; i < count; i++) {
            if (!(sumY[i] < 0 && Math.abs(ownY[i]) < Double.MAX_VALUE)) {
                pressure[from + i] = Double.NaN;
            }
        }
    }
}

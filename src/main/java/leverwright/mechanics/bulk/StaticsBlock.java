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
    private final boolean chain;
    private final RotationBlock rotation;
    private final double[][] sines;
    private final double[][] cosines;
    private final int[][] loadsOn;
    /** Whether a link's mass centre, and where it is attached, lie on the straight line of their links. */
    private final boolean[] straight;
    /** Whether one loop carries to a link what hangs at its end, and adds its weight. */
    private final boolean[] joined;

    private final double[] sumX;
    private final double[] sumY;
    private final double[] sumMoment;
    private final double[] carried;
    private final double[] ownX;
    private final double[] ownY;
    private final double[] ownMoment;
    private final double[] forceX;
    private final double[] forceY;
    private final double[] spare;
    /** What branches bring to each link, gathered while summing: forward, upward, moment; none in a chain. */
    private final double[][][] branches;

    StaticsBlock(BulkStatics plan, BulkSolution found, BlockRoom room) {
        this.plan = plan;
        this.found = found;
        linkage = plan.linkage;
        links = linkage.size();
        rotation = room.rotation;
        sumX = room.sumX;
        sumY = room.sumY;
        sumMoment = room.sumMoment;
        carried = room.carried;
        ownX = room.ownX;
        ownY = room.ownY;
        ownMoment = room.ownMoment;
        forceX = room.forceX;
        forceY = room.forceY;
        spare = room.spare;
        chain = IntStream.range(0, links).allMatch(k -> linkage.parent(k) == k - 1);
        upright = chain && plan.gravityX == 0;
        ground = plan.support instanceof GroundSupport;
        sines = new double[links][];
        cosines = new double[links][];
        straight = new boolean[links];
        joined = new boolean[links];
        loadsOn = new int[links][];
        for (int k = 0; k < links; k++) {
            straight[k] = linkage.link(k).centre().across() == 0
                    && linkage.attachment(k).across() == 0;
            loadsOn[k] = loadsOn(k);
            boolean plain = upright && straight[k] && loadsOn[k].length == 0;
            joined[k] = plain && k < links - 1 && linkage.attachment(k + 1).across() == 0;
            int row = chain && !plan.directions[k].isConstant() ? k % 2 : k + 2;
            sines[k] = room.sines[row];
            cosines[k] = room.cosines[row];
            if (plan.directions[k].isConstant()) {
                turn(k, 0, SIZE);
            }
        }
        branches = chain ? new double[0][][] : new double[links][3][SIZE];
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
        for (int k = 0; k < links - 1 && !chain; k++) {
            turnIfItMoves(k, from, count);
        }
        turnIfItMoves(links - 1, from, count);
        clear(count);
        for (int k = links - 1; k >= 0; k--) {
            add(k, from, count);
            if (k > 0) {
                read(k, from, count);
                if (chain) {
                    turnIfItMoves(k - 1, from, count);
                }
                reach(k, count);
            }
        }
        pressure(from, count);
    }

    private void turnIfItMoves(int k, int from, int count) {
        if (!plan.directions[k].isConstant()) {
            turn(k, from, count);
        }
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
        if (joined[k]) {
            carryAndHang(k, mass, from, count);
            return;
        }
        weigh(k, mass, mass.start(from), count);
        for (int load : loadsOn[k]) {
            apply(load, k, from, count);
        }
        BlockLoops.sumForces(ownX, ownY, sumX, sumY, count);
        BlockLoops.sumMoments(ownMoment, sumMoment, carried, count);
        if (!chain) {
            double[][] branch = branches[k];
            BlockLoops.gather(branch[0], branch[1], branch[2], sumX, sumY, sumMoment, count);
            for (double[] part : branch) {
                Arrays.fill(part, 0);
            }
        }
    }

    private void carryAndHang(int k, Column mass, int from, int count) {
        System.arraycopy(mass.values(), mass.start(from), ownY, 0, count);
        BlockLoops.carryAndHang(
                linkage.attachment(k + 1).along(),
                linkage.link(k).centre().along(),
                sines[k],
                cosines[k],
                ownY,
                mass.factor,
                mass.offset,
                plan.gravityY,
                sumX,
                sumY,
                sumMoment,
                count);
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
        force(plan.forcesX[index], mass, plan.gravityX, from, forceX, count);
        force(plan.forcesY[index], mass, plan.gravityY, from, forceY, count);
        Place at = load.at();
        BlockLoops.addLoad(
                at.along(), at.across(), sines[k], cosines[k], forceX, forceY, load.couple(), ownMoment, count);
        BlockLoops.sumForces(forceX, forceY, ownX, ownY, count);
    }

    /** Writes a part of a load's force: of a load, either what is fixed changes or its mass, never both. */
    private static void force(Column fixed, Column mass, double gravity, int from, double[] force, int count) {
        Column changing = mass.isConstant() ? fixed : mass;
        System.arraycopy(changing.values(), changing.start(from), force, 0, count);
        if (mass.isConstant()) {
            BlockLoops.force(fixed.factor, fixed.offset, mass.at(0) * gravity, force, count);
        } else {
            BlockLoops.hanging(fixed.at(0), mass.factor, mass.offset, gravity, force, count);
        }
    }

    /** Writes what the parent exerts on a link. */
    private void read(int k, int from, int count) {
        BlockLoops.negate(sumMoment, spare, found.moment(k), from, count);
        if (found.hasForces()) {
            BlockLoops.negate(sumX, spare, found.forceX(k), from, count);
            BlockLoops.negate(sumY, spare, found.forceY(k), from, count);
        }
    }

    /** Carries the moment to the parent's start; what hangs on a link further back waits there as a branch. */
    private void reach(int k, int count) {
        int parent = linkage.parent(k);
        if (joined[parent]) {
            return;
        }
        Place at = linkage.attachment(k);
        double[] s = sines[parent];
        double[] c = cosines[parent];
        if (straight[k]) {
            BlockLoops.carryStraight(at.along(), s, c, sumX, sumY, carried, count);
        } else {
            BlockLoops.carryBent(at.along(), at.across(), s, c, sumX, sumY, carried, count);
        }
        if (parent != k - 1) {
            double[][] branch = branches[parent];
            BlockLoops.sumForces(sumX, sumY, branch[0], branch[1], count);
            BlockLoops.sumMoments(sumMoment, branch[2], carried, count);
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

package leverwright.mechanics.bulk;

import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import leverwright.mechanics.posture.Linkage;

/**
 * Room for what is found at many points, by link index; to be filled again and again. A point without a value, such as a centre
 * of pressure where the ground would have to pull, holds NaN.
 */
public final class BulkSolution {
    /** Greatest number of numbers kept: half a gigabyte of them. */
    private static final long MOST_NUMBERS = 1L << 26;

    private final int count;
    private final double[][] moments;
    private final double[][] forcesX;
    private final double[][] forcesY;
    private final double[] centresOfPressure;
    /** Room for blocks that no thread uses now. */
    private final Queue<BlockRoom> idle = new ConcurrentLinkedQueue<>();

    private BulkSolution(int count, int links, boolean forces) {
        this.count = count;
        moments = new double[links][];
        forcesX = new double[forces ? links : 0][];
        forcesY = new double[forces ? links : 0][];
        for (int k = 1; k < links; k++) {
            moments[k] = new double[count];
            if (forces) {
                forcesX[k] = new double[count];
                forcesY[k] = new double[count];
            }
        }
        centresOfPressure = new double[count];
    }

    /**
     * Returns room for the moments at every joint and the centre of pressure.
     *
     * @param count points, at least 0
     * @throws IllegalArgumentException if so many points do not fit
     */
    public static BulkSolution moments(Linkage linkage, int count) {
        return of(linkage, count, false);
    }

    /**
     * Returns room for the forces at every joint besides.
     *
     * @param count points, at least 0
     * @throws IllegalArgumentException if so many points do not fit
     */
    public static BulkSolution momentsAndForces(Linkage linkage, int count) {
        return of(linkage, count, true);
    }

    private static BulkSolution of(Linkage linkage, int count, boolean forces) {
        long numbers = (long) count * (linkage.size() * (forces ? 3L : 1L) + 1);
        if (count < 0 || numbers > MOST_NUMBERS) {
            throw new IllegalArgumentException(count + " points were asked for, which need room for " + numbers
                    + " numbers; allowed: 0 points or more, at most " + MOST_NUMBERS
                    + " numbers at a time. Solve them in parts.");
        }
        return new BulkSolution(count, linkage.size(), forces);
    }

    /** Returns for how many points there is room. */
    public int count() {
        return count;
    }

    /** Returns the moment that the parent of link {@code joint} ≥ 1 exerts on it, N·m, at every point; not a copy. */
    public double[] moment(int joint) {
        return moments[joint];
    }

    /** Returns the forward force that the parent of link {@code joint} exerts on it, N, at every point; not a copy. */
    public double[] forceX(int joint) {
        return forcesX[joint];
    }

    /** Returns the upward force that the parent of link {@code joint} exerts on it, N, at every point; not a copy. */
    public double[] forceY(int joint) {
        return forcesY[joint];
    }

    /** Returns where the ground's force acts, x in the world, m, at every point; NaN for other supports; not a copy. */
    public double[] centreOfPressure() {
        return centresOfPressure;
    }

    /** Whether there is room for forces. */
    boolean hasForces() {
        return forcesX.length > 0;
    }

    /** Returns room for a block, to be given back after use. */
    BlockRoom takeRoom() {
        BlockRoom room = idle.poll();
        return room == null ? new BlockRoom(moments.length) : room;
    }

    void giveBack(BlockRoom room) {
        idle.add(room);
    }
}

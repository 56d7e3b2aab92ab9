package leverwright.mechanics.bulk;

/**
 * The loops of {@link StaticsBlock}: each a few operations over a block, in arrays of its own, as compilers vectorise them. The
 * order of operations is that of the solver for one point.
 */
final class BlockLoops {
    private BlockLoops() {}

    /** Weight: mass times a part of gravity. */
    static void weight(double[] masses, int from, double factor, double offset, double gravity, double[] own, int n) {
        for (int i = 0; i < n; i++) {
            own[i] = (factor * masses[from + i] + offset) * gravity;
        }
    }

    /** A link without loads in a chain under upright gravity: its weight's moment, and its weight, into the sums. */
    static void hangAlone(
            double along, double[] cosines, double[] own, double[] sumY, double[] moment, double[] carried, int n) {
        for (int i = 0; i < n; i++) {
            moment[i] = moment[i] + (along * cosines[i] * own[i] + carried[i]);
            sumY[i] = sumY[i] + own[i];
        }
    }

    static void straightMoment(double along, double[] cosines, double[] ownY, double[] moment, int n) {
        for (int i = 0; i < n; i++) {
            moment[i] = along * cosines[i] * ownY[i];
        }
    }

    static void bentMoment(
            double along, double across, double[] sines, double[] cosines, double[] ownY, double[] moment, int n) {
        for (int i = 0; i < n; i++) {
            moment[i] = (along * cosines[i] - across * sines[i]) * ownY[i];
        }
    }

    static void weightMoment(
            double along,
            double across,
            double[] sines,
            double[] cosines,
            double[] ownX,
            double[] ownY,
            double[] moment,
            int n) {
        for (int i = 0; i < n; i++) {
            moment[i] = (along * cosines[i] - across * sines[i]) * ownY[i]
                    - (along * sines[i] + across * cosines[i]) * ownX[i];
        }
    }

    /** A part of a load's force: what is fixed, and its mass times a part of gravity. */
    static void force(
            double[] fixed,
            int from,
            double factor,
            double offset,
            double[] masses,
            int massFrom,
            double massFactor,
            double massOffset,
            double gravity,
            double[] force,
            int n) {
        for (int i = 0; i < n; i++) {
            force[i] = (factor * fixed[from + i] + offset) + (massFactor * masses[massFrom + i] + massOffset) * gravity;
        }
    }

    /** A part of the way from a link's start to a place on it. */
    static void arm(double along, double across, double[] with, double[] square, double[] arm, int n) {
        for (int i = 0; i < n; i++) {
            arm[i] = along * with[i] + across * square[i];
        }
    }

    static void addLoad(
            double[] armX, double[] armY, double[] forceX, double[] forceY, double couple, double[] moment, int n) {
        for (int i = 0; i < n; i++) {
            moment[i] = moment[i] + (armX[i] * forceY[i] - armY[i] * forceX[i] + couple);
        }
    }

    static void sumForces(double[] x, double[] y, double[] sumX, double[] sumY, int n) {
        for (int i = 0; i < n; i++) {
            sumX[i] = sumX[i] + x[i];
            sumY[i] = sumY[i] + y[i];
        }
    }

    static void sumMoments(double[] own, double[] moment, double[] carried, int n) {
        for (int i = 0; i < n; i++) {
            moment[i] = moment[i] + (own[i] + carried[i]);
        }
    }

    /** Adds what branches brought. */
    static void gather(double[] branch, int size, double[] sumX, double[] sumY, double[] moment, int n) {
        for (int i = 0; i < n; i++) {
            sumX[i] = sumX[i] + branch[i];
            sumY[i] = sumY[i] + branch[size + i];
            moment[i] = moment[i] + branch[2 * size + i];
        }
    }

    /** Leaves what hangs on a link further back with that link. */
    static void branch(
            double[] branch, int size, double[] sumX, double[] sumY, double[] moment, double[] carried, int n) {
        for (int i = 0; i < n; i++) {
            branch[i] = branch[i] + sumX[i];
            branch[size + i] = branch[size + i] + sumY[i];
            branch[2 * size + i] = branch[2 * size + i] + (moment[i] + carried[i]);
        }
    }

    static void carryStraight(
            double along, double[] sines, double[] cosines, double[] sumX, double[] sumY, double[] carried, int n) {
        for (int i = 0; i < n; i++) {
            carried[i] = along * cosines[i] * sumY[i] - along * sines[i] * sumX[i];
        }
    }

    static void carryBent(
            double along,
            double across,
            double[] sines,
            double[] cosines,
            double[] sumX,
            double[] sumY,
            double[] carried,
            int n) {
        for (int i = 0; i < n; i++) {
            carried[i] = (along * cosines[i] - across * sines[i]) * sumY[i]
                    - (along * sines[i] + across * cosines[i]) * sumX[i];
        }
    }

    static void negate(double[] values, double[] into, int from, int n) {
        for (int i = 0; i < n; i++) {
            into[from + i] = -values[i];
        }
    }

    /** Where all moments about a point on the ground vanish, in the world and from the first link's start. */
    static void pressure(
            double[] sumX,
            double[] sumY,
            double[] moment,
            double originX,
            double originY,
            double[] world,
            double[] local,
            int n) {
        for (int i = 0; i < n; i++) {
            double c = (moment[i] - originY * sumX[i]) / sumY[i];
            local[i] = c;
            world[i] = originX + c;
        }
    }
}

package leverwright.mechanics.bulk;

/**
 * The loops of {@link StaticsBlock}: each a few operations over a block, in arrays of its own, as compilers vectorise them. The
 * order of operations is that of the solver for one point.
 */
final class BlockLoops {
    private BlockLoops() {}

    /** Weight: mass times a part of gravity. */
    static void weight(double[] masses, int from, double factor, double offset, double gravity, double[] own, int n) {
        System.arraycopy(masses, from, own, 0, n);
        for (int i = 0; i < n; i++) {
            own[i] = (factor * own[i] + offset) * gravity;
        }
    }

    /**
     * A link without loads in a chain under upright gravity, whose next one is attached straight on: carries what hangs there to
     * its start, and adds its weight's moment and its weight to the sums.
     */
    static void carryAndHang(
            double reach,
            double along,
            double[] sines,
            double[] cosines,
            double[] own,
            double factor,
            double offset,
            double gravity,
            double[] sumX,
            double[] sumY,
            double[] moment,
            int n) {
        for (int i = 0; i < n; i++) {
            double weight = (factor * own[i] + offset) * gravity;
            double y = sumY[i];
            double cosine = cosines[i];
            moment[i] = moment[i] + (along * cosine * weight + (reach * cosine * y - reach * sines[i] * sumX[i]));
            sumY[i] = y + weight;
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

    /** A part of a load's force without a mass of its own: what is given in {@code force}, in its unit, and a fixed weight. */
    static void force(double factor, double offset, double weight, double[] force, int n) {
        for (int i = 0; i < n; i++) {
            force[i] = (factor * force[i] + offset) + weight;
        }
    }

    /** A part of a mass's force: something fixed, and the mass given in {@code force} times a part of gravity. */
    static void hanging(double fixed, double factor, double offset, double gravity, double[] force, int n) {
        for (int i = 0; i < n; i++) {
            force[i] = fixed + (factor * force[i] + offset) * gravity;
        }
    }

    /** Adds the moment of a force, from its place on the link and the way the link points, and of a couple. */
    static void addLoad(
            double along,
            double across,
            double[] sines,
            double[] cosines,
            double[] forceX,
            double[] forceY,
            double couple,
            double[] moment,
            int n) {
        for (int i = 0; i < n; i++) {
            double x = along * cosines[i] - across * sines[i];
            double y = along * sines[i] + across * cosines[i];
            moment[i] = moment[i] + (x * forceY[i] - y * forceX[i] + couple);
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
    static void gather(double[] x, double[] y, double[] moment, double[] sumX, double[] sumY, double[] sum, int n) {
        for (int i = 0; i < n; i++) {
            sumX[i] = sumX[i] + x[i];
            sumY[i] = sumY[i] + y[i];
            sum[i] = sum[i] + moment[i];
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

    static void negate(double[] values, double[] negated, double[] into, int from, int n) {
        for (int i = 0; i < n; i++) {
            negated[i] = -values[i];
        }
        System.arraycopy(negated, 0, into, from, n);
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

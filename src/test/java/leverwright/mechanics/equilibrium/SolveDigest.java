package leverwright.mechanics.equilibrium;

/** Prints one number made of the raw bits of many solves: {@link SameBitsTest} runs it in another Java machine. */
public final class SolveDigest {
    static final int CASES = 400;

    private SolveDigest() {}

    /** Prints the digest of {@link #CASES} cases. */
    public static void main(String[] arguments) {
        System.out.println(of(1, CASES));
    }

    /** Returns the digest of the cases with seeds from one to another, both included. */
    static String of(long from, long to) {
        long digest = 17;
        for (long seed = from; seed <= to; seed++) {
            LinkageSolver solver = RandomCase.of(seed).solver();
            for (int k = 1; k < solver.linkage().size(); k++) {
                digest = mixed(digest, solver.forceX(k));
                digest = mixed(digest, solver.forceY(k));
                digest = mixed(digest, solver.moment(k));
                digest = mixed(digest, solver.supportSideMoment(k));
                digest = mixed(digest, solver.startX(k));
            }
            digest = mixed(digest, solver.reactionX(0));
            digest = mixed(digest, solver.reactionY(0));
            digest = mixed(digest, solver.scale());
        }
        return Long.toHexString(digest);
    }

    private static long mixed(long digest, double value) {
        return digest * 0x100000001B3L ^ Double.doubleToRawLongBits(value);
    }
}

package leverwright.mechanics.numeric;

/**
 * Sine and cosine at the multiples of π/64 rad, exact to more than 100 bits, for {@link Trigonometry}. The numbers are the
 * first and second 53 bits of the sines, from π by Machin's formula and Taylor's series in decimal arithmetic of 80 digits;
 * {@code SineTableTest} does that sum again.
 */
final class SineTable {
    /** Entries in a full turn. */
    static final int TURN = 128;
    /** From an entry's sine to its cosine: the sine a quarter of a turn on. */
    static final int QUARTER = TURN / 4;
    /** Numbers of one entry: its sine, what the sine lacks, its cosine rounded to −1, 0 or 1, and the rest of the cosine. */
    static final int WIDTH = 4;

    private static final double[] SINES = {
        0,
        0,
        0x1.91f65f10dd814p-5,
        -0x1.912bd0d569a90p-61,
        0x1.917a6bc29b42cp-4,
        -0x1.e2718d26ed688p-60,
        0x1.2c8106e8e613ap-3,
        0x1.13000a89a11e0p-58,
        0x1.8f8b83c69a60bp-3,
        -0x1.26d19b9ff8d82p-57,
        0x1.f19f97b215f1bp-3,
        -0x1.42deef11da2c4p-57,
        0x1.294062ed59f06p-2,
        -0x1.5d28da2c4612dp-56,
        0x1.58f9a75ab1fddp-2,
        -0x1.efdc0d58cf620p-62,
        0x1.87de2a6aea963p-2,
        -0x1.72cedd3d5a610p-57,
        0x1.b5d1009e15cc0p-2,
        0x1.5b362cb974183p-57,
        0x1.e2b5d3806f63bp-2,
        0x1.e0d891d3c6841p-58,
        0x1.073879922ffeep-1,
        -0x1.a5a014347406cp-55,
        0x1.1c73b39ae68c8p-1,
        0x1.b25dd267f6600p-55,
        0x1.30ff7fce17035p-1,
        -0x1.efcc626f74a6fp-57,
        0x1.44cf325091dd6p-1,
        0x1.8076a2cfdc6b3p-57,
        0x1.57d69348ceca0p-1,
        -0x1.75720992bfbb2p-55,
        0x1.6a09e667f3bcdp-1,
        -0x1.bdd3413b26456p-55,
        0x1.7b5df226aafafp-1,
        -0x1.0f537acdf0ad7p-56,
        0x1.8bc806b151741p-1,
        -0x1.2c5e12ed1336dp-55,
        0x1.9b3e047f38741p-1,
        -0x1.30ee286712474p-55,
        0x1.a9b66290ea1a3p-1,
        0x1.9f630e8b6dac8p-60,
        0x1.b728345196e3ep-1,
        -0x1.bc69f324e6d61p-55,
        0x1.c38b2f180bdb1p-1,
        -0x1.6e0b1757c8d07p-56,
        0x1.ced7af43cc773p-1,
        -0x1.e7b6bb5ab58aep-58,
        0x1.d906bcf328d46p-1,
        0x1.457e610231ac2p-56,
        0x1.e212104f686e5p-1,
        -0x1.014c76c126527p-55,
        0x1.e9f4156c62ddap-1,
        0x1.760b1e2e3f81ep-55,
        0x1.f0a7efb9230d7p-1,
        0x1.52c7adc6b4989p-56,
        0x1.f6297cff75cb0p-1,
        0x1.562172a361fd3p-56,
        0x1.fa7557f08a517p-1,
        -0x1.7a0a8ca13571fp-55,
        0x1.fd88da3d12526p-1,
        -0x1.87df6378811c7p-55,
        0x1.ff621e3796d7ep-1,
        -0x1.c57bc2e24aa15p-57,
        1,
        0
    };

    /** The entries of a turn and a quarter, one after another. */
    static final double[] ENTRIES = entries();

    private SineTable() {}

    private static double[] entries() {
        double[] entries = new double[WIDTH * (TURN + QUARTER)];
        for (int k = 0; k < TURN + QUARTER; k++) {
            double whole = Math.rint(sine(k + QUARTER, 0));
            entries[WIDTH * k] = sine(k, 0);
            entries[WIDTH * k + 1] = sine(k, 1);
            entries[WIDTH * k + 2] = whole;
            entries[WIDTH * k + 3] = (sine(k + QUARTER, 0) - whole) + sine(k + QUARTER, 1);
        }
        return entries;
    }

    /** Returns the first (0) or second (1) part of the sine of entry k ≥ 0. */
    static double sine(int k, int part) {
        int into = k % QUARTER;
        boolean falls = k / QUARTER % 2 == 1;
        double sine = SINES[2 * (falls ? QUARTER - into : into) + part];
        return k / QUARTER % 4 < 2 || sine == 0 ? sine : -sine;
    }
}

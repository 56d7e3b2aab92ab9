package leverwright.mechanics.numeric;

/** As many linear equations as unknowns, by elimination with row exchange; for some tens of them. */
public final class LinearSystem {
    private LinearSystem() {}

    /**
     * Returns x with a·x = b; both are left as they are. A row that says nothing gives its unknown the value 0.
     *
     * @param a a square of numbers
     * @param b right sides
     */
    public static double[] solve(double[][] a, double[] b) {
        int n = b.length;
        double[][] m = new double[n][];
        for (int i = 0; i < n; i++) {
            m[i] = a[i].clone();
        }
        double[] x = b.clone();
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                if (Math.abs(m[i][k]) > Math.abs(m[best][k])) {
                    best = i;
                }
            }
            double[] line = m[best];
            m[best] = m[k];
            m[k] = line;
            double right = x[best];
            x[best] = x[k];
            x[k] = right;
            if (line[k] == 0) {
                continue;
            }
            for (int i = k + 1; i < n; i++) {
                double part = m[i][k] / line[k];
                for (int j = k; j < n; j++) {
                    m[i][j] -= part * line[j];
                }
                x[i] -= part * right;
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            double sum = x[k];
            for (int j = k + 1; j < n; j++) {
                sum -= m[k][j] * x[j];
            }
            x[k] = m[k][k] == 0 ? 0 : sum / m[k][k];
        }
        return x;
    }
}

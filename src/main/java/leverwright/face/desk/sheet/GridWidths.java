package leverwright.face.desk.sheet;

/** How the columns of a table share the width there is. */
final class GridWidths {

    private GridWidths() {}

    /**
     * Returns a width for every column: at least what its entries need; of the rest as much as its heading would like; and
     * what then remains goes to the first column. Where not even the least fits, every column gets less in proportion.
     *
     * @param least what the entries need
     * @param wanted what the heading would like, at least {@code least}
     * @param width what there is
     */
    static double[] share(double[] least, double[] wanted, double width) {
        double[] widths = new double[least.length];
        if (least.length == 0) {
            return widths;
        }
        double leastSum = sum(least);
        double wantedSum = sum(wanted);
        if (width <= leastSum) {
            for (int i = 0; i < widths.length; i++) {
                widths[i] = Math.floor(least[i] * width / leastSum);
            }
            return widths;
        }
        double share = wantedSum > leastSum ? Math.min(1, (width - leastSum) / (wantedSum - leastSum)) : 0;
        double used = 0;
        for (int i = 0; i < widths.length; i++) {
            widths[i] = Math.floor(least[i] + share * Math.max(0, wanted[i] - least[i]));
            used += widths[i];
        }
        widths[0] += Math.max(0, Math.floor(width - used));
        return widths;
    }

    private static double sum(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum;
    }
}

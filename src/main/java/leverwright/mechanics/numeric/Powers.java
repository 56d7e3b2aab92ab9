package leverwright.mechanics.numeric;

/** Powers with the same bits on every JDK: those of {@link StrictMath}. */
public final class Powers {
    private Powers() {}

    /**
     * Returns the base to the exponent.
     *
     * @param base not negative
     * @param exponent any number
     */
    public static double power(double base, double exponent) {
        return StrictMath.pow(base, exponent);
    }

    /** Returns e to the exponent. */
    public static double exponential(double exponent) {
        return StrictMath.exp(exponent);
    }

    /**
     * Returns the natural logarithm.
     *
     * @param value greater than 0
     */
    public static double logarithm(double value) {
        return StrictMath.log(value);
    }
}

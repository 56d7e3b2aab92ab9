package leverwright.mechanics.numeric;

/**
 * The sine and cosine of an angle that may change: one computation for both, without a new object for each angle. Starts at
 * the angle 0; turning to the angle it has costs nothing. Open to be part of what turns: one object less to reach.
 */
public class Rotation {
    private long angleBits;
    private double sine;
    private double cosine = 1;

    /**
     * Turns to an angle and returns this.
     *
     * @param angle rad; NaN and infinity give NaN
     */
    public Rotation turnTo(double angle) {
        long bits = Double.doubleToRawLongBits(angle);
        if (bits != angleBits) {
            angleBits = bits;
            Trigonometry.turn(this, angle);
        }
        return this;
    }

    void set(double newSine, double newCosine) {
        sine = newSine;
        cosine = newCosine;
    }

    /** Returns the sine of the angle. */
    public double sine() {
        return sine;
    }

    /** Returns the cosine of the angle. */
    public double cosine() {
        return cosine;
    }
}

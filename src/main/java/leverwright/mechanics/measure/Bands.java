package leverwright.mechanics.measure;

/** Half widths of products and quotients: the largest distance from the nominal result over both bands. */
final class Bands {
    private Bands() {}

    /** |a|·eb + |b|·ea + ea·eb: the corner of the two bands that lies farthest from a·b. */
    static double ofProduct(Measure<?> a, Measure<?> b) {
        return Math.abs(a.si()) * b.error() + Math.abs(b.si()) * a.error() + a.error() * b.error();
    }

    static double quotient(Measure<?> a, Measure<?> b) {
        if (Math.abs(b.si()) <= b.error()) {
            throw new IllegalArgumentException("cannot divide by " + MeasureText.print(b)
                    + (b.si() == 0 && b.error() == 0 ? "" : ", whose band holds zero")
                    + "; the divisor must stay away from zero");
        }
        return a.si() / b.si();
    }

    /** (|a| + ea)/(|b| − eb) − |a|/|b|: farthest where the numerator is largest and the divisor nearest to zero. */
    static double ofQuotient(Measure<?> a, Measure<?> b) {
        if (a.error() == 0 && b.error() == 0) {
            return 0;
        }
        double size = Math.abs(b.si());
        return (a.error() + Math.abs(a.si()) * (b.error() / size)) / (size - b.error());
    }
}

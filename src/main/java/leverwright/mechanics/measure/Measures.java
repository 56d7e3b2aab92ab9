package leverwright.mechanics.measure;

/**
 * The short words by which a cell says a quantity: {@code deg(45)}, {@code cm(178)}, {@code kg(71)}. All refuse NaN and
 * infinity, and carry no error until {@link Measure#plusOrMinus} gives one.
 */
public final class Measures {
    /** Standard gravity, 9.80665 m/s², exact: 3rd General Conference on Weights and Measures, 1901. */
    public static final Acceleration STANDARD_GRAVITY = Acceleration.of(9.80665);

    private Measures() {}

    /** Returns an angle given in degrees. */
    public static Angle deg(double value) {
        return Angle.of(Unit.DEGREE.toSi(value));
    }

    /** Returns an angle given in radians. */
    public static Angle rad(double value) {
        return Angle.of(Unit.RADIAN.toSi(value));
    }

    /** Returns a length given in metres. */
    public static Length m(double value) {
        return Length.of(Unit.METRE.toSi(value));
    }

    /** Returns a length given in centimetres. */
    public static Length cm(double value) {
        return Length.of(Unit.CENTIMETRE.toSi(value));
    }

    /** Returns a length given in millimetres. */
    public static Length mm(double value) {
        return Length.of(Unit.MILLIMETRE.toSi(value));
    }

    /** Returns a length given in inches of 0.0254 m. */
    public static Length inches(double value) {
        return Length.of(Unit.INCH.toSi(value));
    }

    /** Returns a length given in feet of 0.3048 m. */
    public static Length feet(double value) {
        return Length.of(Unit.FOOT.toSi(value));
    }

    /** Returns a mass given in kilograms. */
    public static Mass kg(double value) {
        return Mass.of(Unit.KILOGRAM.toSi(value));
    }

    /** Returns a mass given in grams. */
    public static Mass grams(double value) {
        return Mass.of(Unit.GRAM.toSi(value));
    }

    /** Returns a mass given in pounds of 0.45359237 kg. */
    public static Mass lb(double value) {
        return Mass.of(Unit.POUND.toSi(value));
    }

    /** Returns a force given in newtons. */
    public static Force newtons(double value) {
        return Force.of(Unit.NEWTON.toSi(value));
    }

    /** Returns a force given in pounds-force of 4.4482216152605 N. */
    public static Force poundsForce(double value) {
        return Force.of(Unit.POUND_FORCE.toSi(value));
    }

    /** Returns a moment given in newton metres. */
    public static Moment newtonMetres(double value) {
        return Moment.of(Unit.NEWTON_METRE.toSi(value));
    }

    /** Returns work given in joules. */
    public static Work joules(double value) {
        return Work.of(Unit.JOULE.toSi(value));
    }

    /** Returns a power given in watts. */
    public static Power watts(double value) {
        return Power.of(Unit.WATT.toSi(value));
    }

    /** Returns a duration given in seconds. */
    public static Duration seconds(double value) {
        return Duration.of(Unit.SECOND.toSi(value));
    }

    /** Returns a ratio given in ones. */
    public static Ratio ratio(double value) {
        return Ratio.of(Unit.ONE.toSi(value));
    }

    /** Returns a ratio given in hundredths. */
    public static Ratio percent(double value) {
        return Ratio.of(Unit.PERCENT.toSi(value));
    }

    /** Returns a stress given in pascals. */
    public static Stress pascals(double value) {
        return Stress.of(Unit.PASCAL.toSi(value));
    }

    /** Returns a stress given in newtons per square centimetre. */
    public static Stress newtonsPerSquareCentimetre(double value) {
        return Stress.of(Unit.NEWTON_PER_SQUARE_CENTIMETRE.toSi(value));
    }

    /** Returns an area given in square metres. */
    public static Area squareMetres(double value) {
        return Area.of(Unit.SQUARE_METRE.toSi(value));
    }

    /** Returns an area given in square centimetres. */
    public static Area squareCentimetres(double value) {
        return Area.of(Unit.SQUARE_CENTIMETRE.toSi(value));
    }

    /** Returns a stiffness given in newtons per metre. */
    public static Stiffness newtonsPerMetre(double value) {
        return Stiffness.of(Unit.NEWTON_PER_METRE.toSi(value));
    }

    /** Returns an angular velocity given in degrees per second. */
    public static AngularVelocity degPerSecond(double value) {
        return AngularVelocity.of(Unit.DEGREE_PER_SECOND.toSi(value));
    }

    /** Returns an angular velocity given in radians per second. */
    public static AngularVelocity radPerSecond(double value) {
        return AngularVelocity.of(Unit.RADIAN_PER_SECOND.toSi(value));
    }

    /** Returns an angular acceleration given in degrees per second squared. */
    public static AngularAcceleration degPerSecondSquared(double value) {
        return AngularAcceleration.of(Unit.DEGREE_PER_SECOND_SQUARED.toSi(value));
    }

    /** Returns an angular acceleration given in radians per second squared. */
    public static AngularAcceleration radPerSecondSquared(double value) {
        return AngularAcceleration.of(Unit.RADIAN_PER_SECOND_SQUARED.toSi(value));
    }

    /** Returns a speed given in metres per second. */
    public static Speed metresPerSecond(double value) {
        return Speed.of(Unit.METRE_PER_SECOND.toSi(value));
    }

    /** Returns an acceleration given in metres per second squared. */
    public static Acceleration metresPerSecondSquared(double value) {
        return Acceleration.of(Unit.METRE_PER_SECOND_SQUARED.toSi(value));
    }

    /** Returns a moment of inertia given in kilogram square metres. */
    public static Inertia kilogramSquareMetres(double value) {
        return Inertia.of(Unit.KILOGRAM_SQUARE_METRE.toSi(value));
    }

    /**
     * Returns a length given in feet and inches, as statures are said.
     *
     * @param feet whole feet, zero or more
     * @param inches zero to less than twelve
     * @throws IllegalArgumentException if a number is out of its range
     */
    public static Length feetInches(int feet, double inches) {
        if (feet < 0 || !(inches >= 0 && inches < 12)) {
            throw new IllegalArgumentException("feetInches(" + feet + ", " + Checks.inWords(inches)
                    + ") needs zero or more whole feet and 0 to less than 12 inches, such as feetInches(5, 10)");
        }
        return Length.of(Unit.INCH.toSi(12.0 * feet + inches));
    }
}

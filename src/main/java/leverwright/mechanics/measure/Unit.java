package leverwright.mechanics.measure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;

/**
 * Units as people write them, each with its exact size in the SI unit of its kind, kept as a numerator and a
 * denominator so that decimal inputs convert with one rounding (178 cm is the double nearest to 1.78 m).
 *
 * <p>Sources: the international pound of 0.45359237 kg and the yard of 0.9144 m (hence the foot of 0.3048 m and the
 * inch of 0.0254 m) are exact by the agreement of the national standards laboratories of 1959 (Federal Register,
 * 1 July 1959, 24 FR 5348); standard gravity of 9.80665 m/s² is exact by the 3rd CGPM, 1901; the pound-force is their
 * product. The degree is π/180 (SI brochure, table 8).
 */
public enum Unit {
    /** Radian. */
    RADIAN("rad", Dimension.ANGLE, 1, 1, "rad", "radian", "radians"),
    /** Degree, π/180 rad. */
    DEGREE("°", Dimension.ANGLE, Math.PI, 180, "deg", "°", "degree", "degrees"),
    /** Metre. */
    METRE("m", Dimension.LENGTH, 1, 1, "m", "metre", "metres", "meter", "meters"),
    /** Centimetre. */
    CENTIMETRE("cm", Dimension.LENGTH, 1, 100, "cm"),
    /** Millimetre. */
    MILLIMETRE("mm", Dimension.LENGTH, 1, 1000, "mm"),
    /** Foot, 0.3048 m exactly. */
    FOOT("ft", Dimension.LENGTH, 3048, 10000, "ft", "'", "′", "’", "foot", "feet"),
    /** Inch, 0.0254 m exactly. */
    INCH("in", Dimension.LENGTH, 254, 10000, "in", "\"", "″", "”", "''", "′′", "inch", "inches"),
    /** Kilogram. */
    KILOGRAM("kg", Dimension.MASS, 1, 1, "kg"),
    /** Gram. */
    GRAM("g", Dimension.MASS, 1, 1000, "g"),
    /** Pound, 0.45359237 kg exactly. */
    POUND("lb", Dimension.MASS, 45359237, 100000000, "lb", "lbs", "pound", "pounds"),
    /** Newton. */
    NEWTON("N", Dimension.FORCE, 1, 1, "N", "newton", "newtons"),
    /** Kilonewton. */
    KILONEWTON("kN", Dimension.FORCE, 1000, 1, "kN"),
    /** Pound-force, 4.4482216152605 N exactly. */
    POUND_FORCE("lbf", Dimension.FORCE, 4.4482216152605, 1, "lbf"),
    /** Newton metre as a moment. */
    NEWTON_METRE("N·m", Dimension.MOMENT, 1, 1, "N·m"),
    /** Pound-force foot as a moment, 1.3558179483314004 N·m exactly. */
    POUND_FORCE_FOOT("lbf·ft", Dimension.MOMENT, 1.3558179483314004, 1, "lbf·ft", "ft·lbf"),
    /** Joule. */
    JOULE("J", Dimension.WORK, 1, 1, "J", "joule", "joules"),
    /** Kilojoule. */
    KILOJOULE("kJ", Dimension.WORK, 1000, 1, "kJ"),
    /** Pascal. */
    PASCAL("Pa", Dimension.STRESS, 1, 1, "Pa"),
    /** Kilopascal. */
    KILOPASCAL("kPa", Dimension.STRESS, 1000, 1, "kPa"),
    /** Megapascal. */
    MEGAPASCAL("MPa", Dimension.STRESS, 1000000, 1, "MPa"),
    /** Newton per square centimetre, as muscle stress is often given. */
    NEWTON_PER_SQUARE_CENTIMETRE("N/cm²", Dimension.STRESS, 10000, 1, "N/cm²"),
    /** One: a plain number. */
    ONE("", Dimension.RATIO, 1, 1, ""),
    /** Hundredth. */
    PERCENT("%", Dimension.RATIO, 1, 100, "%", "percent"),
    /** Newton per metre. */
    NEWTON_PER_METRE("N/m", Dimension.STIFFNESS, 1, 1, "N/m"),
    /** Newton per millimetre. */
    NEWTON_PER_MILLIMETRE("N/mm", Dimension.STIFFNESS, 1000, 1, "N/mm"),
    /** Second. */
    SECOND("s", Dimension.DURATION, 1, 1, "s", "second", "seconds"),
    /** Millisecond. */
    MILLISECOND("ms", Dimension.DURATION, 1, 1000, "ms"),
    /** Minute. */
    MINUTE("min", Dimension.DURATION, 60, 1, "min", "minute", "minutes"),
    /** Radian per second. */
    RADIAN_PER_SECOND("rad/s", Dimension.ANGULAR_VELOCITY, 1, 1, "rad/s"),
    /** Degree per second. */
    DEGREE_PER_SECOND("°/s", Dimension.ANGULAR_VELOCITY, Math.PI, 180, "deg/s", "°/s"),
    /** Radian per second squared. */
    RADIAN_PER_SECOND_SQUARED("rad/s²", Dimension.ANGULAR_ACCELERATION, 1, 1, "rad/s²"),
    /** Degree per second squared. */
    DEGREE_PER_SECOND_SQUARED("°/s²", Dimension.ANGULAR_ACCELERATION, Math.PI, 180, "deg/s²", "°/s²"),
    /** Metre per second. */
    METRE_PER_SECOND("m/s", Dimension.SPEED, 1, 1, "m/s"),
    /** Centimetre per second. */
    CENTIMETRE_PER_SECOND("cm/s", Dimension.SPEED, 1, 100, "cm/s"),
    /** Metre per second squared. */
    METRE_PER_SECOND_SQUARED("m/s²", Dimension.ACCELERATION, 1, 1, "m/s²"),
    /** Watt. */
    WATT("W", Dimension.POWER, 1, 1, "W", "watt", "watts"),
    /** Square metre. */
    SQUARE_METRE("m²", Dimension.AREA, 1, 1, "m²"),
    /** Square centimetre. */
    SQUARE_CENTIMETRE("cm²", Dimension.AREA, 1, 10000, "cm²"),
    /** Square millimetre. */
    SQUARE_MILLIMETRE("mm²", Dimension.AREA, 1, 1000000, "mm²"),
    /** Kilogram square metre. */
    KILOGRAM_SQUARE_METRE("kg·m²", Dimension.INERTIA, 1, 1, "kg·m²");

    /** Whole numbers up to here are exact as doubles. */
    private static final double LARGEST_WHOLE = 0x1p53;

    private final String symbol;
    private final Dimension dimension;
    private final double numerator;
    private final double denominator;
    private final List<String> ways;

    Unit(String symbol, Dimension dimension, double numerator, double denominator, String... ways) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.numerator = numerator;
        this.denominator = denominator;
        this.ways = List.of(ways);
    }

    /** Returns the printed symbol, such as "N·m" or "°"; empty for plain numbers. */
    public String symbol() {
        return symbol;
    }

    /** Returns the kind of quantity that this unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** Returns the size of this unit in the SI unit of its kind. */
    public double inSi() {
        return numerator / denominator;
    }

    /** Returns a number of this unit in the SI unit of its kind. */
    public double toSi(double value) {
        return value * numerator / denominator;
    }

    /** Returns an SI value as a number of this unit. */
    public double fromSi(double si) {
        return si * denominator / numerator;
    }

    /**
     * Returns an SI value as the decimal number of this unit with the fewest places that reads back to the same double;
     * 17 significant digits where none with up to 15 places does.
     *
     * @param si a finite value
     */
    public BigDecimal decimal(double si) {
        double number = fromSi(si);
        double power = 1;
        for (int places = 0; places <= 15 && Math.abs(number * power) < LARGEST_WHOLE; places++) {
            double whole = Math.rint(number * power);
            if (toSi(whole / power) == si) {
                return BigDecimal.valueOf((long) whole, places);
            }
            power *= 10;
        }
        BigDecimal all = new BigDecimal(number)
                .round(new MathContext(17, RoundingMode.HALF_EVEN))
                .stripTrailingZeros();
        return all.scale() < 0 ? all.setScale(0) : all;
    }

    /**
     * Returns an SI value printed in this unit, rounded to at most six significant digits, without trailing zeros: "1.78
     * m", "45°".
     */
    public String format(double si) {
        return attach(NumberText.general(fromSi(si), 6));
    }

    /**
     * Returns an SI value printed in this unit with a number of significant digits, trailing zeros kept: "123.0 N·m".
     * Digits before the decimal point are never rounded away.
     *
     * @param significant how many digits, 1 to 17
     */
    public String format(double si, int significant) {
        return attach(NumberText.significant(fromSi(si), significant));
    }

    /** Returns a printed number followed by this unit's symbol, with the space that it takes. */
    public String attach(String number) {
        if (symbol.isEmpty()) {
            return number;
        }
        return symbol.startsWith("°") ? number + symbol : number + " " + symbol;
    }

    /** Returns the first spelling that a reader may type, in plain letters where there is one. */
    public String plainWay() {
        return ways.get(0).isEmpty() ? "no unit" : ways.get(0);
    }

    /** Returns every spelling that is read as this unit; multiplication dots and spaces may also be left out. */
    public List<String> ways() {
        return ways;
    }
}

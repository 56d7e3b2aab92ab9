package leverwright.mechanics.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The kinds of quantity that the workbench knows, each with the one record that holds its values. */
public enum Dimension {
    /** Plane angle, {@link Angle}. */
    ANGLE,
    /** Length, {@link Length}. */
    LENGTH,
    /** Mass, {@link Mass}. */
    MASS,
    /** Force, {@link Force}. */
    FORCE,
    /** Moment of force, {@link Moment}. */
    MOMENT,
    /** Work and energy, {@link Work}. */
    WORK,
    /** Stress and pressure, {@link Stress}. */
    STRESS,
    /** Pure number, {@link Ratio}. */
    RATIO,
    /** Force per stretch, {@link Stiffness}. */
    STIFFNESS,
    /** Time, {@link Duration}. */
    DURATION,
    /** Rate of turning, {@link AngularVelocity}. */
    ANGULAR_VELOCITY,
    /** Change of the rate of turning, {@link AngularAcceleration}. */
    ANGULAR_ACCELERATION,
    /** Speed, {@link Speed}. */
    SPEED,
    /** Acceleration, {@link Acceleration}. */
    ACCELERATION,
    /** Power, {@link Power}. */
    POWER,
    /** Area, {@link Area}. */
    AREA,
    /** Moment of inertia, {@link Inertia}. */
    INERTIA;

    /** Returns the kind in words, such as "angular velocity". */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Returns the kind in words with its article, such as "an angular velocity". */
    public String withArticle() {
        String words = words();
        return ("aeiou".indexOf(words.charAt(0)) >= 0 ? "an " : "a ") + words;
    }

    /** Returns the unit in which {@link Measure#si()} counts. */
    public Unit si() {
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == this) {
                return unit;
            }
        }
        throw new IllegalStateException(this + " has no unit");
    }

    /** Returns the unit in which results are shown unless asked otherwise: the SI unit, but degrees for angles. */
    public Unit shown() {
        return switch (this) {
            case ANGLE -> Unit.DEGREE;
            case ANGULAR_VELOCITY -> Unit.DEGREE_PER_SECOND;
            case ANGULAR_ACCELERATION -> Unit.DEGREE_PER_SECOND_SQUARED;
            default -> si();
        };
    }

    /** Returns all units of this kind, the SI unit first. */
    public List<Unit> units() {
        List<Unit> units = new ArrayList<>();
        for (Unit unit : Unit.values()) {
            if (unit.dimension() == this) {
                units.add(unit);
            }
        }
        return List.copyOf(units);
    }

    /**
     * Returns a value of this kind.
     *
     * @param si the value in the SI unit
     * @param error half width of its band in the SI unit, not negative
     * @throws IllegalArgumentException if a number is NaN or infinite, or if the error is negative
     */
    public Measure<?> of(double si, double error) {
        return switch (this) {
            case ANGLE -> new Angle(si, error);
            case LENGTH -> new Length(si, error);
            case MASS -> new Mass(si, error);
            case FORCE -> new Force(si, error);
            case MOMENT -> new Moment(si, error);
            case WORK -> new Work(si, error);
            case STRESS -> new Stress(si, error);
            case RATIO -> new Ratio(si, error);
            case STIFFNESS -> new Stiffness(si, error);
            case DURATION -> new Duration(si, error);
            case ANGULAR_VELOCITY -> new AngularVelocity(si, error);
            case ANGULAR_ACCELERATION -> new AngularAcceleration(si, error);
            case SPEED -> new Speed(si, error);
            case ACCELERATION -> new Acceleration(si, error);
            case POWER -> new Power(si, error);
            case AREA -> new Area(si, error);
            case INERTIA -> new Inertia(si, error);
        };
    }

    /** Returns a value of this kind as a person may type it, such as "1.78 m". */
    public String example() {
        return switch (this) {
            case ANGLE -> "45 deg";
            case LENGTH -> "1.78 m";
            case MASS -> "71 kg";
            case FORCE -> "490 N";
            case MOMENT -> "123 N·m";
            case WORK -> "250 J";
            case STRESS -> "250 kPa";
            case RATIO -> "12 %";
            case STIFFNESS -> "400 N/m";
            case DURATION -> "2.5 s";
            case ANGULAR_VELOCITY -> "60 deg/s";
            case ANGULAR_ACCELERATION -> "200 deg/s²";
            case SPEED -> "0.4 m/s";
            case ACCELERATION -> "9.81 m/s²";
            case POWER -> "300 W";
            case AREA -> "48 cm²";
            case INERTIA -> "0.1 kg·m²";
        };
    }

    String exampleWithError() {
        String[] parts = example().split(" ");
        return parts[0] + " ± 0.1 " + parts[1];
    }

    /** The ways to write units of this kind, for messages. */
    String unitList() {
        List<String> ways = new ArrayList<>();
        for (Unit unit : units()) {
            ways.add(unit.plainWay());
        }
        return String.join(", ", ways);
    }
}

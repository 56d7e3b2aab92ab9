package leverwright.mechanics.exercise;

import java.util.Arrays;
import java.util.List;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Unit;

/** The words by which a cell begins an exercise. */
public final class Exercises {
    /** Level: 0°, as in {@code backSquat().thighs(LEVEL)}. */
    public static final Angle LEVEL = Measures.deg(0);

    private Exercises() {}

    /**
     * Begins an exercise of one's own, made of the words of {@link Movement}.
     *
     * @param name as it will stand in print
     * @throws IllegalArgumentException if the name is blank
     */
    public static Movement exercise(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("an exercise needs a name; write exercise(\"Face pull\")");
        }
        return new Movement(name);
    }

    /**
     * Makes a knob of one's own: {@code knob("Box height", cm(10), cm(60), cm(40), "height of the box")}.
     *
     * @param name as a reader would say it
     * @param least lower end of its range
     * @param most upper end of its range
     * @param standard where it stands when nobody sets it
     * @param meaning what is measured, from where, which way is positive
     * @throws IllegalArgumentException if the default lies outside the range
     */
    public static <Q extends Measure<Q>> Knob<Q> knob(String name, Q least, Q most, Q standard, String meaning) {
        return new Knob<>(name, usual(standard.dimension()), least, most, standard, meaning, "as this workbook says");
    }

    /** The unit in which people say a quantity of this kind. */
    private static Unit usual(Dimension dimension) {
        for (Unit unit : List.of(Unit.CENTIMETRE, Unit.DEGREE)) {
            if (unit.dimension() == dimension) {
                return unit;
            }
        }
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension && unit.toSi(1) == 1)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no unit prints a knob of this kind: " + dimension));
    }

    /** Returns the hinge with a bar in hanging arms. */
    public static RomanianDeadlift romanianDeadlift() {
        return new RomanianDeadlift();
    }

    /** Returns the squat with a bar on the back. */
    public static BackSquat backSquat() {
        return new BackSquat();
    }

    /** Returns the seated machine knee extension. */
    public static KneeExtension kneeExtension() {
        return new KneeExtension();
    }

    /** Returns the standing curl with a dumbbell in each hand. */
    public static DumbbellCurl dumbbellCurl() {
        return new DumbbellCurl();
    }

    /** Returns the push-up on hands and balls of the feet. */
    public static PushUp pushUp() {
        return new PushUp();
    }

    /** Returns the squat with a bar on the front of the shoulders. */
    public static Movement frontSquat() {
        return Squats.FRONT_SQUAT;
    }

    /** Returns the standing raise of both arms to the sides, a dumbbell in each hand. */
    public static Movement lateralRaise() {
        return Raises.LATERAL_RAISE;
    }
}

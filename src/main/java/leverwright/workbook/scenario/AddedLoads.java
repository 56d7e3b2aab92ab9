package leverwright.workbook.scenario;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.load.Band;
import leverwright.mechanics.load.ForcePoint;
import leverwright.mechanics.load.Resistances;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Unit;

/**
 * What loads an exercise beside its own load: a vest, chains and a measured band on what is held, an upright guide of the bar.
 *
 * @param vest kg; 0 for none
 * @param chains kg, all of them; 0 for none
 * @param chainLength m, of each from its upper end
 * @param band tied to what is held
 * @param guided whether the bar is guided upright
 */
public record AddedLoads(double vest, double chains, double chainLength, Optional<Tied> band, boolean guided) {
    /** Nothing beside the exercise's own load. */
    public static final AddedLoads NONE = new AddedLoads(0, 0, 0, Optional.empty(), false);

    /**
     * A band and where its other end is.
     *
     * @param band as measured, both sides together
     * @param ahead m, of the point from which places count
     * @param height m, above the floor
     */
    public record Tied(Band band, double ahead, double height) {
        /**
         * Takes measured points.
         *
         * @param restLength m
         * @param stretched pairs of stretch, m, and force, N, in rising order; at least one
         * @param returned the same on the way back; empty where it was not measured
         * @throws IllegalArgumentException if points do not rise, or the way back asks for more
         */
        public static Tied of(
                double restLength, List<double[]> stretched, List<double[]> returned, double ahead, double height) {
            if (stretched.isEmpty()) {
                throw new IllegalArgumentException(
                        "a band has no measured point; allowed: at least one stretch with its force, such as 30 cm 70 N");
            }
            Band band = Resistances.band(Length.of(restLength));
            for (double[] point : stretched) {
                band = band.stretched(Length.of(point[0]), Force.of(point[1]));
            }
            for (double[] point : returned) {
                band = band.returned(Length.of(point[0]), Force.of(point[1]));
            }
            return new Tied(band, ahead, height);
        }

        private String words() {
            StringBuilder words = new StringBuilder("band(" + centimetres(band.restLength()) + ")");
            append(words, ".stretched(", band.stretched());
            append(words, ".returned(", band.returned());
            return words + ", " + centimetres(ahead) + ", " + centimetres(height);
        }

        private static void append(StringBuilder words, String word, List<ForcePoint> points) {
            for (ForcePoint point : points.subList(Math.min(1, points.size()), points.size())) {
                words.append(word)
                        .append(centimetres(point.position()))
                        .append(", newtons(")
                        .append(plain(Unit.NEWTON, point.force()))
                        .append("))");
            }
        }
    }

    /** Returns an exercise with these loads beside its own. */
    Exercise<?> on(Exercise<?> exercise) {
        Exercise<?> loaded = exercise;
        if (vest > 0) {
            loaded = loaded.vest(Mass.of(vest));
        }
        if (chains > 0) {
            loaded = loaded.chains(Mass.of(chains), Length.of(chainLength));
        }
        if (band.isPresent()) {
            loaded = loaded.band(
                    band.get().band(),
                    Length.of(band.get().ahead()),
                    Length.of(band.get().height()));
        }
        return guided ? loaded.guidedBar() : loaded;
    }

    /** Returns the words of a cell that add them to an exercise, such as {@code .vest(kg(5))}; empty for none. */
    String words() {
        StringBuilder words = new StringBuilder();
        if (vest > 0) {
            words.append(".vest(kg(").append(plain(Unit.KILOGRAM, vest)).append("))");
        }
        if (chains > 0) {
            words.append(".chains(kg(")
                    .append(plain(Unit.KILOGRAM, chains))
                    .append("), ")
                    .append(centimetres(chainLength))
                    .append(')');
        }
        band.ifPresent(tied -> words.append(".band(").append(tied.words()).append(')'));
        return words.append(guided ? ".guidedBar()" : "").toString();
    }

    private static String centimetres(double metres) {
        return "cm(" + plain(Unit.CENTIMETRE, metres) + ")";
    }

    private static String plain(Unit unit, double si) {
        return unit.decimal(si).stripTrailingZeros().toPlainString();
    }
}

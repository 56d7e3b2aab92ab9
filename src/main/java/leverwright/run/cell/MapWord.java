package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.study.SettingMap;
import leverwright.mechanics.study.Sweep;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Listing;

/** A map that a cell begins: two settings turned against each other, everything else set the same. */
public final class MapWord {

    private final Sweep<?> across;
    private final Sweep<?> up;

    MapWord(Sweep<?> across, Sweep<?> up) {
        this.across = across;
        this.up = up;
    }

    /**
     * Sets how many settings the map has each way; 61 unless said otherwise.
     *
     * @param count 2 to 400
     */
    public MapWord points(double count) {
        return points(count, count);
    }

    /**
     * Sets how many settings the map has from left to right, and upwards.
     *
     * @param columns 2 to 400
     * @param rows 2 to 400
     */
    public MapWord points(double columns, double rows) {
        return new MapWord(across.points(columns), up.points(rows));
    }

    /**
     * Maps a lifter's exercise.
     *
     * @param performance the exercise done by a lifter
     * @throws IllegalArgumentException when both ways turn the same, when a range does not rise or leaves its knob's, when there
     *     are too many settings, or when the exercise lacks a knob
     */
    public Over of(Performance performance) {
        return new Over(SettingMap.of(across, up, performance));
    }

    /** A map of a lifter's exercise, to be read as contours or as a table. */
    public static final class Over implements ResultBuilder {

        private final SettingMap map;
        private final List<Measure<?>> levels = new ArrayList<>();

        Over(SettingMap map) {
            this.map = map;
        }

        /**
         * Says at which values contours are drawn: {@code levels(newtonMetres(100), newtonMetres(150))}. Otherwise they are
         * drawn at round values.
         *
         * @param values rising
         */
        @SafeVarargs
        public final <M extends Measure<M>> Over levels(M... values) {
            levels.clear();
            levels.addAll(List.of(values));
            return this;
        }

        /**
         * Draws contours of what is read, a map for each: {@code chart(moment(HIP))}.
         *
         * @param readings what to read, at least one
         */
        public Over chart(Reading<?>... readings) {
            for (ContourMap each : map.maps(CellCrew.crew(), readings)) {
                Words.chart(with(each));
            }
            return this;
        }

        /**
         * Shows what is read as a table of at most nine settings each way.
         *
         * @param reading what to read
         */
        public Over table(Reading<?> reading) {
            Listing listing = map.table(CellCrew.crew(), reading);
            Words.show(() -> ListingRows.result(listing));
            return this;
        }

        /**
         * Returns what is read at every setting, for a cell that goes on with it.
         *
         * @param reading what to read
         */
        public ContourMap map(Reading<?> reading) {
            return with(map.map(CellCrew.crew(), reading));
        }

        private ContourMap with(ContourMap made) {
            List<Double> wanted = new ArrayList<>();
            for (Measure<?> level : levels) {
                if (level.dimension() != made.unit().dimension()) {
                    throw new IllegalArgumentException("a contour of the " + made.name() + " is to be drawn at " + level
                            + "; allowed: values in " + made.unit().symbol() + " or a unit of its kind");
                }
                wanted.add(level.si());
            }
            return made.withLevels(wanted);
        }
    }
}

package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.numeric.NormalCurve;

/** Numbers of the muscles that are unsure, as inputs of a spread: each with the spread that its sources give it. */
public enum MuscleInput {
    /** Areas: a normal distribution for each muscle, held within two standard deviations. */
    MUSCLE_AREAS("muscle areas"),

    /** Arms: evenly within the half width of each muscle and axis. */
    MUSCLE_ARMS("muscle arms"),

    /** Specific tensions: one draw for all muscles whose tension has the same source, held within two standard deviations. */
    SPECIFIC_TENSIONS("specific tensions"),

    /** The exponent of the rule of sharing: in one draw of two another one of 2, 3, 4, 5. */
    SHARING_EXPONENT("exponent of the sharing rule");

    private final String words;

    MuscleInput(String words) {
        this.words = words;
    }

    /** Returns what it is called in print. */
    public String words() {
        return words;
    }

    private record Arm(Muscle muscle, Axis axis) {}

    /** One of these inputs of some people, worked out once for many draws. */
    public static final class Of {
        private final MuscleInput input;
        private final List<Muscle> muscles = List.of(Muscle.values());
        private final double[] spreads;
        private final int[] sources;
        private final List<Arm> arms = new ArrayList<>();
        private final int axes;

        private Of(MuscleInput input, MuscleData data, Sex sex) {
            this.input = input;
            this.spreads = new double[muscles.size()];
            this.sources = new int[muscles.size()];
            Map<String, Integer> known = new LinkedHashMap<>();
            for (Muscle muscle : muscles) {
                int at = muscle.ordinal();
                MuscleData.Row area = data.one(muscle, "area", sex);
                MuscleData.Row tension = data.one(muscle, "tension", sex);
                MuscleData.Row row = input == MUSCLE_AREAS ? area : tension;
                spreads[at] = row.spread() / row.value();
                sources[at] = known.computeIfAbsent(tension.source() + tension.value(), key -> known.size());
                for (Axis axis : Axis.values()) {
                    if (data.curve(muscle, axis, sex).isPresent()) {
                        arms.add(new Arm(muscle, axis));
                    }
                }
            }
            this.axes = switch (input) {
                case MUSCLE_AREAS -> muscles.size();
                case MUSCLE_ARMS -> arms.size();
                case SPECIFIC_TENSIONS -> known.size();
                case SHARING_EXPONENT -> 1;
            };
        }

        /** Returns how many numbers of their own it takes. */
        public int axes() {
            return axes;
        }

        /**
         * Adds a draw of this input to draws of others.
         *
         * @param drawn what is drawn already
         * @param unit numbers greater than 0 and less than 1
         * @param from where this input's begin among them
         */
        public void draw(Drawn drawn, double[] unit, int from) {
            switch (input) {
                case MUSCLE_AREAS -> strengthen(drawn, unit, from, false);
                case SPECIFIC_TENSIONS -> strengthen(drawn, unit, from, true);
                case MUSCLE_ARMS -> {
                    for (int k = 0; k < axes; k++) {
                        drawn.draw.move(arms.get(k).muscle(), arms.get(k).axis(), 2 * unit[from + k] - 1);
                    }
                }
                case SHARING_EXPONENT -> drawn.exponent = unit[from] < 0.5 ? 0 : 2 + (int) ((unit[from] - 0.5) * 8);
            }
        }

        private void strengthen(Drawn drawn, double[] unit, int from, boolean bySource) {
            double[] normals = new double[axes];
            for (int k = 0; k < axes; k++) {
                normals[k] = NormalCurve.at(unit[from + k]);
            }
            for (Muscle muscle : muscles) {
                int at = muscle.ordinal();
                drawn.draw.strengthen(muscle, Draw.factor(normals[bySource ? sources[at] : at], spreads[at]));
            }
        }
    }

    /** Numbers of the muscles as drawn together: puts them into a model. Made for one draw and one thread. */
    public static final class Drawn implements UnaryOperator<MuscleModel> {
        private final Draw draw = Draw.open();
        private int exponent;

        /** Makes a draw at the centre of everything. */
        public Drawn() {}

        /** Returns the model with the numbers drawn. */
        @Override
        public MuscleModel apply(MuscleModel model) {
            MuscleModel drawn = model.with(draw);
            return exponent > 0 && model.rule() instanceof SharingRule.Power ? drawn.power(exponent) : drawn;
        }
    }

    /**
     * Returns this input for people of a sex by some numbers.
     *
     * @param data the numbers with their spreads
     */
    public Of of(MuscleData data, Sex sex) {
        return new Of(this, data, sex);
    }
}

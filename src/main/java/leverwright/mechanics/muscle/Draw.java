package leverwright.mechanics.muscle;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.numeric.RandomStream;

/**
 * One set of numbers out of the spreads of areas, arms and specific tensions: areas and tensions by a normal distribution with
 * the published spread as its standard deviation, held within two of them and above a fifth of the value; arms evenly within
 * their half width. Muscles whose tension has the same source share its draw.
 */
final class Draw {
    private static final double LEAST = 0.2;
    private static final int MUSCLES = Muscle.values().length;
    private static final int AXES = Axis.values().length;
    static final Draw CENTRE = new Draw();

    /** What area times tension is multiplied by, by muscle. */
    private final double[] strengths = new double[MUSCLES];
    /** Where arms lie in their half width, −1 to 1, by muscle and axis. */
    private final double[] arms = new double[MUSCLES * AXES];

    /** What a study has set in place of numbers on file; drawn factors come on top. */
    private final MuscleChanges changes;

    private Draw() {
        Arrays.fill(strengths, 1);
        changes = MuscleChanges.NONE;
    }

    private Draw(Draw that, MuscleChanges changes) {
        System.arraycopy(that.strengths, 0, strengths, 0, strengths.length);
        System.arraycopy(that.arms, 0, arms, 0, arms.length);
        this.changes = changes;
    }

    /** Returns the same draw about numbers that a study has set. */
    Draw changed(MuscleChanges other) {
        return new Draw(this, other);
    }

    /** Returns what a study has set. */
    MuscleChanges changes() {
        return changes;
    }

    static Draw from(RandomStream random, MuscleData data, Sex sex) {
        Draw draw = new Draw();
        Map<String, Double> tensions = new LinkedHashMap<>();
        for (Muscle muscle : Muscle.values()) {
            MuscleData.Row area = data.one(muscle, "area", sex);
            MuscleData.Row tension = data.one(muscle, "tension", sex);
            double common =
                    tensions.computeIfAbsent(tension.source() + tension.value(), key -> factor(random, tension));
            draw.strengths[muscle.ordinal()] = factor(random, area) * common;
            for (Axis axis : Axis.values()) {
                draw.arms[place(muscle, axis)] = random.nextBetween(-1, 1);
            }
        }
        return draw;
    }

    /** Multiplies what a muscle can pull, once more. */
    void strengthen(Muscle muscle, double factor) {
        strengths[muscle.ordinal()] *= factor;
    }

    /** Puts an arm at a part of its half width, −1 to 1. */
    void move(Muscle muscle, Axis axis, double part) {
        arms[place(muscle, axis)] = part;
    }

    /** Returns a draw at the centre, to be moved before anybody reads it. */
    static Draw open() {
        return new Draw();
    }

    private static int place(Muscle muscle, Axis axis) {
        return muscle.ordinal() * AXES + axis.ordinal();
    }

    private static double factor(RandomStream random, MuscleData.Row row) {
        return factor(random.nextNormal(), row.spread() / row.value());
    }

    /** What a number is multiplied by: a standard normal draw times the spread over the value. */
    static double factor(double normal, double spread) {
        return Math.max(LEAST, 1 + spread * Math.max(-2, Math.min(2, normal)));
    }

    /** By what area times tension is multiplied. */
    double strength(Muscle muscle) {
        return strengths[muscle.ordinal()];
    }

    /** Where in its half width an arm lies, −1 to 1. */
    double arm(Muscle muscle, Axis axis) {
        return arms[place(muscle, axis)];
    }
}

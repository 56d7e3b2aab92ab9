package leverwright.mechanics.muscle;

import java.util.EnumMap;
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
    static final Draw CENTRE = new Draw();

    private final Map<Muscle, Double> areas = new EnumMap<>(Muscle.class);
    private final Map<String, Double> arms = new LinkedHashMap<>();

    private Draw() {}

    static Draw from(RandomStream random, MuscleData data, Sex sex) {
        Draw draw = new Draw();
        Map<String, Double> tensions = new LinkedHashMap<>();
        for (Muscle muscle : Muscle.values()) {
            MuscleData.Row area = data.one(muscle, "area", sex);
            MuscleData.Row tension = data.one(muscle, "tension", sex);
            double common =
                    tensions.computeIfAbsent(tension.source() + tension.value(), key -> factor(random, tension));
            draw.areas.put(muscle, factor(random, area) * common);
            for (Axis axis : Axis.values()) {
                draw.arms.put(muscle + " " + axis, random.nextBetween(-1, 1));
            }
        }
        return draw;
    }

    private static double factor(RandomStream random, MuscleData.Row row) {
        double normal = Math.max(-2, Math.min(2, random.nextNormal()));
        return Math.max(LEAST, 1 + row.spread() / row.value() * normal);
    }

    /** By what area times tension is multiplied. */
    double strength(Muscle muscle) {
        return areas.getOrDefault(muscle, 1.0);
    }

    /** Where in its half width an arm lies, −1 to 1. */
    double arm(Muscle muscle, Axis axis) {
        return arms.getOrDefault(muscle + " " + axis, 0.0);
    }
}

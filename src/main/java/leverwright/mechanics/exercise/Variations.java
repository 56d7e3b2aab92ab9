package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/** The postures all over the bands of the uncertain inputs. */
final class Variations {
    private final List<HeldPosture> postures;
    private final int impossible;

    private Variations(List<HeldPosture> postures, int impossible) {
        this.postures = postures;
        this.impossible = impossible;
    }

    /**
     * The ends of a result's band.
     *
     * @param remark what must be said about it; empty when all is well
     */
    record Band(double low, double high, Optional<String> remark) {}

    static Variations of(Performance performance) {
        List<HeldPosture> postures = new ArrayList<>();
        int impossible = 0;
        for (Performance moved : performance.variations()) {
            try {
                postures.add(moved.posture());
            } catch (ImpossibleSetting nowhere) {
                impossible++;
            }
        }
        return new Variations(postures, impossible);
    }

    Band band(double value, ToDoubleFunction<HeldPosture> again) {
        double low = value;
        double high = value;
        int without = impossible;
        for (HeldPosture posture : postures) {
            try {
                double other = again.applyAsDouble(posture);
                low = Math.min(low, other);
                high = Math.max(high, other);
            } catch (IllegalArgumentException none) {
                without++;
            }
        }
        Optional<String> remark = without == 0
                ? Optional.empty()
                : Optional.of("Within the inputs' bands " + without + " of " + (postures.size() + impossible)
                        + " settings have no such value; the band leaves them out.");
        return new Band(low, high, remark);
    }
}

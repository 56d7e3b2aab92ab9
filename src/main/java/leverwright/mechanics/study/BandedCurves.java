package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.numeric.Crew;
import leverwright.mechanics.working.Curves;
import org.jspecify.annotations.Nullable;

/** Curves of a spread over one setting: median, and nine tenths of the draws as the band. */
final class BandedCurves {
    private static final int PLACES = 41;
    private static final double MOST_LEFT_OUT = 0.5;

    private BandedCurves() {}

    static Curves of(Spread spread, Crew crew, Variable<?> turned, Reading<?>... readings) {
        List<Double> places = new ArrayList<>();
        List<Performance> performances = new ArrayList<>();
        double from = turned.least().si();
        double to = turned.most().si();
        for (int k = 0; k < PLACES; k++) {
            double place = k == PLACES - 1 ? to : from + (to - from) * k / (PLACES - 1);
            places.add(place);
            performances.add(turned.set(spread.performance(), place));
        }
        List<Asked> asked = new ArrayList<>();
        for (Reading<?> reading : readings) {
            for (int k = 0; k < PLACES; k++) {
                asked.add(new Asked(k, reading));
            }
        }
        SpreadResult result = SpreadResult.of(spread.alongside(performances), crew, asked, List.of());
        List<Curves.Curve> curves = new ArrayList<>();
        for (int r = 0; r < readings.length; r++) {
            curves.add(curve(readings[r], spread.performance(), result, r * PLACES));
        }
        Set<String> notes = new LinkedHashSet<>(result.notes());
        notes.add(
                "Curve: the median of the draws at each setting; band: nine tenths of them. A setting at which half of the"
                        + " draws or more have no value is a gap.");
        double present = turned.present(spread.performance());
        boolean onTheWay = present >= from && present <= to;
        return new Curves(
                "How sure: " + spread.performance() + ", through " + turned,
                new Curves.Axis(turned.name(), turned.unit(), places),
                curves,
                onTheWay ? present : null,
                List.copyOf(notes));
    }

    private static Curves.Curve curve(Reading<?> reading, Performance of, SpreadResult result, int at) {
        List<@Nullable Double> middle = new ArrayList<>();
        List<@Nullable Double> low = new ArrayList<>();
        List<@Nullable Double> high = new ArrayList<>();
        for (int k = 0; k < PLACES; k++) {
            Tally tally = result.tally(at + k);
            boolean gap = tally.count() == 0 || tally.missing() >= MOST_LEFT_OUT * (tally.missing() + tally.count());
            middle.add(gap ? null : tally.quantile(0.5));
            low.add(gap ? null : tally.quantile(0.05));
            high.add(gap ? null : tally.quantile(0.95));
        }
        return new Curves.Curve(reading.label(of), reading.unit(), reading.sides(), middle, low, high);
    }
}

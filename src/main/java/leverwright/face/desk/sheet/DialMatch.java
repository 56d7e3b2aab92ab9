package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import leverwright.face.desk.model.DialView;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * Which dial stands behind a chart's axis or a figure's handle. Results name the knob of the exercise; the dial that turns it
 * mostly has the same name. Where it has another, it is the only one of the same kind that stands where the knob does.
 */
final class DialMatch {

    private static final double SAME = 1e-9;
    private static final double NEAR_METRES = 0.004;

    private DialMatch() {}

    /** Returns the dial that moves along a chart's axis. */
    static Optional<DialView> of(List<DialView> dials, Curves curves) {
        return of(dials, curves.axis(), curves.current());
    }

    /** Returns the dial that moves along an axis on which the present setting lies at a place; null for nowhere. */
    static Optional<DialView> of(List<DialView> dials, Curves.Axis axis, @Nullable Double current) {
        Optional<DialView> named = named(dials, axis.name(), axis.unit());
        if (named.isPresent() || current == null) {
            return named;
        }
        List<DialView> there = new ArrayList<>();
        for (DialView dial : dials) {
            double inForce = dial.declared().get().setting().value();
            if (isOfKind(dial, axis.unit()) && Math.abs(inForce - current) <= SAME * Math.max(1, Math.abs(current))) {
                there.add(dial);
            }
        }
        return there.size() == 1 ? Optional.of(there.get(0)) : Optional.empty();
    }

    /** Returns the dial that drags a figure's handle. */
    static Optional<DialView> of(List<DialView> dials, Sketch.Handle handle) {
        for (DialView dial : dials) {
            if (dial.name().equalsIgnoreCase(handle.name())) {
                return Optional.of(dial);
            }
        }
        List<DialView> there = new ArrayList<>();
        for (DialView dial : dials) {
            double inForce = dial.declared().get().setting().value();
            Optional<Sketch.Point> place = HandlePath.at(handle.stops(), inForce);
            if (place.isPresent()
                    && Math.hypot(
                                    place.get().x() - handle.at().x(),
                                    place.get().y() - handle.at().y())
                            < NEAR_METRES) {
                there.add(dial);
            }
        }
        return there.size() == 1 ? Optional.of(there.get(0)) : Optional.empty();
    }

    private static Optional<DialView> named(List<DialView> dials, String name, Unit unit) {
        return dials.stream()
                .filter(dial -> dial.name().equalsIgnoreCase(name) && isOfKind(dial, unit))
                .findFirst();
    }

    private static boolean isOfKind(DialView dial, Unit unit) {
        return dial.declared().get().setting().unit().dimension() == unit.dimension();
    }
}

package leverwright.face.desk.sheet;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.working.Sketch;

/** The way on which a figure's handle can be dragged: straight from stop to stop. Metres, x forward and y up. */
final class HandlePath {

    private HandlePath() {}

    /** Returns where the handle lies at a setting; empty beyond the stops. */
    static Optional<Sketch.Point> at(List<Sketch.Stop> stops, double setting) {
        for (int i = 0; i + 1 < stops.size(); i++) {
            Sketch.Stop one = stops.get(i);
            Sketch.Stop two = stops.get(i + 1);
            if (one.setting() <= setting && setting <= two.setting()) {
                double share = (setting - one.setting()) / (two.setting() - one.setting());
                return Optional.of(between(one, two, share));
            }
        }
        return Optional.empty();
    }

    /** Returns the setting at the place of the way that is nearest to a point; NaN when there are fewer than two stops. */
    static double nearest(List<Sketch.Stop> stops, Sketch.Point point) {
        double best = Double.MAX_VALUE;
        double setting = Double.NaN;
        for (int i = 0; i + 1 < stops.size(); i++) {
            Sketch.Stop one = stops.get(i);
            Sketch.Stop two = stops.get(i + 1);
            double dx = two.at().x() - one.at().x();
            double dy = two.at().y() - one.at().y();
            double square = dx * dx + dy * dy;
            double along = square == 0
                    ? 0
                    : ((point.x() - one.at().x()) * dx + (point.y() - one.at().y()) * dy) / square;
            double share = Math.max(0, Math.min(1, along));
            Sketch.Point place = between(one, two, share);
            double distance = Math.hypot(place.x() - point.x(), place.y() - point.y());
            if (distance < best) {
                best = distance;
                setting = one.setting() + share * (two.setting() - one.setting());
            }
        }
        return setting;
    }

    private static Sketch.Point between(Sketch.Stop one, Sketch.Stop two, double share) {
        return new Sketch.Point(
                one.at().x() + share * (two.at().x() - one.at().x()),
                one.at().y() + share * (two.at().y() - one.at().y()));
    }
}

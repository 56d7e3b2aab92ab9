package leverwright.face.desk.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Sketch.Point;
import org.junit.jupiter.api.Test;

/** A quarter of a circle of 1 m: what the settings must be follows from its geometry. */
class HandlePathTest {

    private static final List<Sketch.Stop> QUARTER = java.util.stream.IntStream.rangeClosed(0, 90)
            .mapToObj(degrees -> new Sketch.Stop(
                    Math.toRadians(degrees),
                    new Point(Math.sin(Math.toRadians(degrees)), Math.cos(Math.toRadians(degrees)))))
            .toList();

    @Test
    void theMouseFindsTheSettingInWhoseDirectionItLies() {
        for (int degrees = 0; degrees <= 90; degrees += 10) {
            double angle = Math.toRadians(degrees);
            for (double far : new double[] {0.5, 1, 1.7}) {
                Point mouse = new Point(far * Math.sin(angle), far * Math.cos(angle));
                assertEquals(angle, HandlePath.nearest(QUARTER, mouse), Math.toRadians(0.51));
            }
        }
    }

    @Test
    void beyondTheEndsTheEndIsMeant() {
        assertEquals(0, HandlePath.nearest(QUARTER, new Point(-1, 1)), 1e-12);
        assertEquals(Math.PI / 2, HandlePath.nearest(QUARTER, new Point(1, -1)), 1e-12);
    }

    @Test
    void aWayOfOnePointLeadsNowhere() {
        assertTrue(Double.isNaN(HandlePath.nearest(QUARTER.subList(0, 1), new Point(0, 1))));
        assertTrue(HandlePath.at(QUARTER, Math.toRadians(91)).isEmpty());
    }

    @Test
    void aSettingBetweenStopsLiesOnTheLineBetweenThem() {
        Point at = HandlePath.at(QUARTER, Math.toRadians(30.5)).orElseThrow();
        assertEquals(Math.sin(Math.toRadians(30.5)), at.x(), 1e-4);
        assertEquals(Math.cos(Math.toRadians(30.5)), at.y(), 1e-4);
    }
}

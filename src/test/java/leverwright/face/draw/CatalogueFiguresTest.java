package leverwright.face.draw;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Course;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.FigureResult;
import org.junit.jupiter.api.Test;

/** Every exercise of the catalogue, through its usual range, has its whole body in its figure. */
class CatalogueFiguresTest {
    private static final int STOPS = 5;

    private final Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));

    @Test
    void bodiesLieWithinTheirFigures() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            Performance performance = exercise.by(ines).alongItsWay();
            check(performance.posture());
            if (exercise.course().isPresent()) {
                Course course = exercise.course().get();
                for (int k = 0; k < STOPS; k++) {
                    double setting = course.from() + (course.to() - course.from()) * k / (STOPS - 1);
                    check(performance.withSi(course.knob(), setting).posture());
                }
            }
        }
    }

    private static void check(HeldPosture held) {
        Sketch sketch = sketch(held);
        FigureView view = new FigureView(FigureFrame.of(sketch), FigureDrawing.PAGE_WIDTH, FigureView.TALLEST);
        Rectangle2D frame = new Rectangle2D.Double(0, 0, view.width(), view.height());
        int bones = 0;
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.Bone bone) {
                bones++;
                inside(frame, view.place(bone.from()), sketch.title() + ": " + bone.name());
                inside(frame, view.place(bone.to()), sketch.title() + ": " + bone.name());
            }
        }
        assertTrue(bones >= 7, sketch.title());
        nothingBelowTheFloor(sketch);
        Picture picture = FigureDrawing.of(new FigureResult(sketch.title(), sketch.title(), sketch, sketch.notes()));
        assertTrue(picture.marks().size() > bones, sketch.title());
    }

    /** Where a floor at height 0 is drawn, no bone ends below it, or below the lowest of the floors that are drawn. */
    private static void nothingBelowTheFloor(Sketch sketch) {
        double lowest = 0;
        boolean floor = false;
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.GroundLine line
                    && line.from().y() == line.to().y()) {
                floor |= line.from().y() == 0;
                lowest = Math.min(lowest, line.from().y());
            }
        }
        for (Sketch.Shape shape : sketch.shapes()) {
            if (floor && shape instanceof Sketch.Bone bone) {
                double low = Math.min(bone.from().y(), bone.to().y());
                assertTrue(low > lowest - 0.02, sketch.title() + ": " + bone.name() + " ends at " + low);
            }
        }
    }

    private static void inside(Rectangle2D frame, Point2D point, String what) {
        assertTrue(frame.contains(point), () -> what + " at " + point + " of " + frame);
    }

    private static Sketch sketch(HeldPosture held) {
        Joint[] driven = held.performance().exercise().drivenJoints().toArray(new Joint[0]);
        try {
            return held.sketch(driven);
        } catch (IllegalArgumentException carried) {
            return held.sketch();
        }
    }
}

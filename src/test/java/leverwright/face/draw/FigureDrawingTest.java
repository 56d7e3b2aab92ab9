package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import leverwright.face.SampleResults;
import leverwright.mechanics.working.Sketch;
import leverwright.mechanics.working.Sketch.Point;
import leverwright.run.result.FigureResult;
import org.junit.jupiter.api.Test;

class FigureDrawingTest {
    private static final Point HERE = new Point(0.2, 0.4);
    private static final Point THERE = new Point(0.6, 1.1);
    private static final List<Sketch.Shape> EVERY = List.of(
            new Sketch.GroundLine(new Point(-0.5, 0), new Point(1, 0)),
            new Sketch.Bone("thigh", HERE, THERE),
            new Sketch.JointMark("hip", THERE),
            new Sketch.HeadOutline(THERE, 0.12, 0.08, 0.6),
            new Sketch.Disc("plate", HERE, 0.2),
            new Sketch.Line("cable", HERE, new Point(1, 1)),
            new Sketch.LineOfAction(HERE, new Point(0, 1)),
            new Sketch.LoadArm(THERE, new Point(0.2, 1.1), "hip 40.0 cm"),
            new Sketch.AngleArc(THERE, 0.2, 1.5, 0.6, "52°"),
            new Sketch.Arrow(HERE, new Point(0, -500), "bar 500 N", Sketch.ForceKind.LOAD),
            new Sketch.Arrow(new Point(0.2, 0), new Point(0, 900), "ground 900 N", Sketch.ForceKind.REACTION),
            new Sketch.Arrow(THERE, new Point(300, 300), "muscle 424 N", Sketch.ForceKind.MUSCLE),
            new Sketch.Arrow(THERE, new Point(-200, 0), "joint 200 N", Sketch.ForceKind.JOINT),
            new Sketch.Label(new Point(0.9, 0.8), "a remark"));

    @Test
    void everyShapeLeavesAMark() {
        int empty = FigureDrawing.of(figure(List.of())).marks().size();
        for (Sketch.Shape shape : EVERY) {
            int marks = FigureDrawing.of(figure(List.of(shape))).marks().size();
            assertTrue(marks > empty, shape.toString());
        }
        Set<String> permitted = Set.of(Sketch.Shape.class.getPermittedSubclasses()).stream()
                .map(Class::getSimpleName)
                .collect(Collectors.toSet());
        Set<String> tried =
                EVERY.stream().map(shape -> shape.getClass().getSimpleName()).collect(Collectors.toSet());
        assertEquals(permitted, tried, "a shape is not tried here");
    }

    @Test
    void theGreaterPullOfAMuscleIsTheBroaderOne() {
        Picture picture = FigureDrawing.of(figure(List.of(
                new Sketch.Bone("thigh", HERE, THERE),
                new Sketch.Arrow(THERE, new Point(0, 2000), "quadriceps", Sketch.ForceKind.MUSCLE),
                new Sketch.Arrow(HERE, new Point(0, 1000), "calf", Sketch.ForceKind.MUSCLE),
                new Sketch.Arrow(HERE, new Point(0, -500), "bar", Sketch.ForceKind.LOAD))));
        List<Double> widths = picture.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke
                        && stroke.pen().ink() == Ink.TEXT
                        && !stroke.pen().dash().isEmpty())
                .map(mark -> ((Mark.Stroke) mark).pen().width())
                .toList();
        assertEquals(2, widths.size(), "dashed pulls");
        assertEquals(9, widths.get(0), 1e-9);
        assertEquals((9 + 1.6) / 2, widths.get(1), 1e-9);
    }

    @Test
    void aLoadArmIsDrawnToTheScaleOfTheBody() {
        Picture picture = FigureDrawing.of(figure(List.of(
                new Sketch.Bone("thigh", new Point(0, 0), new Point(0, 0.5)),
                new Sketch.LoadArm(new Point(0, 0.5), new Point(0.25, 0.5), "hip 25.0 cm"))));
        double bone = length(picture, Ink.BODY);
        double arm = length(picture, Ink.ACCENT);
        assertEquals(0.5, arm / bone, 1e-9);
    }

    @Test
    void forcesAreDrawnToOneScaleAndPointTheRightWay() {
        Picture picture = FigureDrawing.of(figure(EVERY));
        Line2D load = line(picture, Ink.LOAD);
        Line2D ground = line(picture, Ink.SUPPORT);
        assertTrue(load.getY2() > load.getY1(), "a load of −500 N points down the picture");
        assertTrue(ground.getY2() < ground.getY1(), "the ground's 900 N point up the picture");
        double head = 11;
        double ratio =
                (load.getP1().distance(load.getP2()) + head) / (ground.getP1().distance(ground.getP2()) + head);
        assertEquals(500.0 / 900, ratio, 1e-9);
    }

    @Test
    void wordsCoverNeitherWordsNorForcesNorJoints() {
        for (Picture picture :
                List.of(FigureDrawing.of(SampleResults.figure()), FigureDrawing.of(SampleResults.figure(), 300))) {
            assertWordsApart(picture);
            List<Rectangle2D> words = boxes(picture);
            for (Mark mark : picture.marks()) {
                if (mark instanceof Mark.Stroke stroke && stroke.pen().width() == 3) {
                    words.forEach(box ->
                            assertFalse(stroke.shape().intersects(box), "words cover a force or a load arm: " + box));
                }
                if (mark instanceof Mark.Stroke stroke && stroke.pen().width() == 1.6) {
                    words.forEach(
                            box -> assertFalse(box.intersects(stroke.shape().getBounds2D()), "words on a joint"));
                }
            }
        }
    }

    /** Fails where two lines of words overlap or leave the picture. */
    static void assertWordsApart(Picture picture) {
        List<Rectangle2D> words = boxes(picture);
        Rectangle2D whole = new Rectangle2D.Double(0, 0, picture.width(), picture.height());
        for (int i = 0; i < words.size(); i++) {
            assertTrue(whole.contains(words.get(i)), "outside: " + words.get(i));
            for (int other = 0; other < i; other++) {
                assertFalse(words.get(i).intersects(words.get(other)), words.get(i) + " and " + words.get(other));
            }
        }
    }

    /** The letters themselves, without the air that placing leaves around them. */
    private static List<Rectangle2D> boxes(Picture picture) {
        return picture.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> (Mark.Words) mark)
                .map(words -> (Rectangle2D) new Rectangle2D.Double(
                        words.left(),
                        words.y() - words.type().size() * 0.75,
                        words.type().width(words.text()),
                        words.type().size() * 0.8))
                .toList();
    }

    @Test
    void aFigureInWordsNamesForcesArmsAndAngles() {
        FigureResult figure = SampleResults.figure();
        assertEquals("The lifter hinges at the hip, the torso leaning 45° forward.", FigureWords.of(figure));
        String words = FigureWords.of(new FigureResult("", "", figure.sketch(), List.of()));
        assertEquals(
                "Hinge at a torso lean of 45°. Forces: bar 490 N, ground 1187 N,"
                        + " mid-foot. Load arms: hip 25.6 cm, low back 18.5 cm. Angles: 45°.",
                words);
    }

    @Test
    void aWidthTooSmallIsRefused() {
        FigureResult figure = SampleResults.figure();
        assertThrows(IllegalArgumentException.class, () -> FigureDrawing.of(figure, 100));
    }

    @Test
    void farAwayAndDegenerateFiguresAreDrawn() {
        for (List<Sketch.Shape> shapes : List.<List<Sketch.Shape>>of(
                List.of(new Sketch.JointMark("hip", new Point(1e6, -1e6))),
                List.of(new Sketch.Bone("thigh", HERE, HERE)),
                List.of(new Sketch.Arrow(HERE, new Point(0, 0), "none", Sketch.ForceKind.LOAD)),
                List.of(new Sketch.LineOfAction(HERE, new Point(1e-3, 0)), new Sketch.JointMark("hip", THERE)))) {
            String svg = SvgText.element(FigureDrawing.of(figure(shapes)), "f");
            assertFalse(svg.contains("NaN") || svg.contains("922337203685477580"), svg);
        }
    }

    private static FigureResult figure(List<Sketch.Shape> shapes) {
        return new FigureResult("a figure", "", new Sketch("a posture", shapes, List.of(), List.of()), List.of());
    }

    private static double length(Picture picture, Ink ink) {
        Line2D line = line(picture, ink);
        return line.getP1().distance(line.getP2());
    }

    private static Line2D line(Picture picture, Ink ink) {
        return picture.marks().stream()
                .filter(mark -> mark instanceof Mark.Stroke stroke
                        && stroke.pen().ink() == ink
                        && stroke.pen().width() >= 3
                        && stroke.shape() instanceof Line2D)
                .map(mark -> (Line2D) ((Mark.Stroke) mark).shape())
                .findFirst()
                .orElseThrow();
    }
}

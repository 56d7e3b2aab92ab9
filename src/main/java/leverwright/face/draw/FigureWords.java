package leverwright.face.draw;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.FigureResult;

/** A figure in words, for readers who do not see it. */
public final class FigureWords {
    private FigureWords() {}

    /** Returns the figure's description; where it has none, its forces, load arms and angles with their numbers. */
    public static String of(FigureResult result) {
        if (!result.description().isBlank()) {
            return result.description();
        }
        List<String> forces = new ArrayList<>();
        List<String> arms = new ArrayList<>();
        List<String> angles = new ArrayList<>();
        for (Sketch.Shape shape : result.sketch().shapes()) {
            if (shape instanceof Sketch.Arrow arrow) {
                add(forces, arrow.label());
            } else if (shape instanceof Sketch.LoadArm arm) {
                add(arms, arm.label());
            } else if (shape instanceof Sketch.AngleArc arc) {
                add(angles, arc.label());
            }
        }
        StringBuilder words = new StringBuilder(result.sketch().title());
        append(words, "Forces", forces);
        append(words, "Load arms", arms);
        append(words, "Angles", angles);
        return words.toString();
    }

    private static void add(List<String> list, String label) {
        if (!label.isBlank()) {
            list.add(label);
        }
    }

    private static void append(StringBuilder words, String what, List<String> labels) {
        if (labels.isEmpty()) {
            return;
        }
        if (words.length() > 0) {
            words.append(words.toString().endsWith(".") ? " " : ". ");
        }
        words.append(what).append(": ").append(String.join(", ", labels)).append('.');
    }
}

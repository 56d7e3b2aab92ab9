package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.measure.Duration;
import leverwright.mechanics.motion.Tempo;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.study.MuscleWords;
import leverwright.mechanics.study.Repetition;
import leverwright.mechanics.study.Studies;
import leverwright.mechanics.working.Sketch;
import leverwright.run.result.FigureResult;
import org.jspecify.annotations.Nullable;

/** A figure of a posture; it may still be told which load arms to draw, at which tempo it is played and what to be called. */
public final class FigureWord implements ResultBuilder {

    private final HeldPosture posture;
    private Joint[] joints = {};
    private String title = "";
    private @Nullable MuscleModel muscles;
    private @Nullable Repetition repetition;

    FigureWord(HeldPosture posture) {
        this.posture = posture;
    }

    FigureWord(Repetition repetition) {
        this(repetition.performance().posture());
        this.repetition = repetition;
    }

    /**
     * Gives the figure the times of one repetition along the exercise's own way, at which the desk plays it.
     *
     * @param out time of the way out, 0.1 to 60 s
     * @param back time of the way back, 0.1 to 60 s
     * @throws IllegalArgumentException when the exercise does not tell its way; draw a repetition then
     */
    public FigureWord tempo(Duration out, Duration back) {
        return tempo(Tempo.of(out, back));
    }

    /**
     * Gives the figure the times of one repetition along the exercise's own way, with its pauses, at which the desk plays it.
     *
     * @param tempo of the repetition
     * @throws IllegalArgumentException when the exercise does not tell its way; draw a repetition then
     */
    public FigureWord tempo(Tempo tempo) {
        repetition = Studies.repetition(posture.performance()).alongItsWay().tempo(tempo);
        return this;
    }

    /**
     * Draws the load arms of some joints.
     *
     * @param of the joints
     */
    public FigureWord loadArms(Joint... of) {
        joints = of.clone();
        return this;
    }

    /** Draws the pull of the muscle groups that work, with force and share of capacity by the standard model. */
    public FigureWord muscles() {
        return muscles(MuscleModel.standard());
    }

    /**
     * Draws the pull of the muscle groups that work.
     *
     * @param model of the muscles
     */
    public FigureWord muscles(MuscleModel model) {
        muscles = model;
        return this;
    }

    /**
     * Gives the figure a title of the cell's own.
     *
     * @param words the title
     */
    public FigureWord called(String words) {
        title = words;
        return this;
    }

    FigureResult result() {
        MuscleModel model = muscles;
        Sketch bare = posture.sketch(joints);
        Sketch still = model == null ? bare : MuscleWords.shares(posture, model).onto(bare);
        Repetition played = repetition;
        Sketch sketch = played == null ? still : still.playing(played.play());
        return new FigureResult(title.isEmpty() ? sketch.title() : title, inWords(sketch), sketch, sketch.notes());
    }

    /** Returns what the figure tells a reader who does not see it: forces, load arms and angles. */
    private static String inWords(Sketch sketch) {
        List<String> told = new ArrayList<>();
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.Arrow arrow) {
                told.add("force: " + arrow.label());
            } else if (shape instanceof Sketch.LoadArm arm) {
                told.add("load arm: " + arm.label());
            } else if (shape instanceof Sketch.AngleArc arc) {
                told.add("angle: " + arc.label());
            }
        }
        return sketch.title() + (told.isEmpty() ? "" : "; " + String.join("; ", told));
    }
}

package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Plane;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.Muscle;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleGroup;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.MuscleState;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * Adds to a figure, seen from the side, the pull of those muscle groups that work: an arrow along the bone, as far from the
 * joint's centre as the muscle arm and on its side, with force and share of capacity in words. Pulls are taken along the bone;
 * where a muscle really runs is not on file.
 */
final class LinesOfPull {
    private static final double DOWN = 0.07;
    /** Share of capacity below which a pull is left out. */
    private static final double LEAST = 0.03;

    private record Drawn(Muscles muscles, Axis axis, String bone, boolean distalBeyond) {}

    private static final List<Drawn> DRAWN = List.of(
            new Drawn(MuscleGroup.CALF, Axis.ANKLE, "shank", false),
            new Drawn(Muscle.TIBIALIS_ANTERIOR, Axis.ANKLE, "shank", false),
            new Drawn(MuscleGroup.QUADRICEPS, Axis.KNEE, "shank", true),
            new Drawn(MuscleGroup.HAMSTRINGS, Axis.KNEE, "shank", true),
            new Drawn(Muscle.GLUTEUS_MAXIMUS, Axis.HIP, "thigh", true),
            new Drawn(MuscleGroup.ILIOPSOAS, Axis.HIP, "thigh", true),
            new Drawn(Muscle.ERECTOR_SPINAE, Axis.LOW_BACK, "trunk", true),
            new Drawn(MuscleGroup.ABDOMINALS, Axis.LOW_BACK, "trunk", true),
            new Drawn(MuscleGroup.ELBOW_FLEXORS, Axis.ELBOW, "forearm", true),
            new Drawn(MuscleGroup.TRICEPS, Axis.ELBOW, "forearm", true));

    private LinesOfPull() {}

    static Sketch onto(Sketch sketch, HeldPosture held, MuscleModel model) {
        if (held.plane() != Plane.SAGITTAL) {
            throw new IllegalArgumentException(
                    "lines of pull are drawn seen from the side only; leave out .muscles() for this exercise");
        }
        List<Sketch.Shape> shapes = new ArrayList<>(sketch.shapes());
        List<String> notes = new ArrayList<>(sketch.notes());
        for (MuscleForces own : Shares.parts(held, model)) {
            Shares.beyond(own).ifPresent(notes::add);
            MuscleForces forces = own.asked();
            if (!forces.feasible()) {
                continue;
            }
            for (Drawn drawn : DRAWN) {
                if (forces.moments().containsKey(drawn.axis())) {
                    add(shapes, sketch, forces, drawn);
                }
            }
        }
        notes.add(
                "Muscles pull along the bone in this figure, as far from the joint as their arm, as broad as their force; percent: share"
                        + " of capacity, below 3 % left out. "
                        + model.basis(held.performance().lifter()));
        return new Sketch(sketch.title(), shapes, sketch.handles(), notes, sketch.play());
    }

    private static void add(List<Sketch.Shape> shapes, Sketch sketch, MuscleForces forces, Drawn drawn) {
        double force = 0;
        double turning = 0;
        for (MuscleState state : forces.states()) {
            Double arm = state.arms().get(drawn.axis());
            if (arm != null && drawn.muscles().members().contains(state.muscle())) {
                force += forces.force(state.muscle());
                turning += arm * forces.force(state.muscle());
            }
        }
        Sketch.Point joint = joint(sketch, drawn.axis().joint());
        Sketch.Bone bone = bone(sketch, drawn.bone());
        double share = forces.capacityUsed(drawn.muscles());
        if (share < LEAST || joint == null || bone == null) {
            return;
        }
        String label = drawn.muscles().words() + " "
                + NumberText.print(NumberText.rounded(force, 3)) + " N, "
                + String.format(Locale.ROOT, "%.0f %%", 100 * share);
        shapes.add(arrow(joint, bone, drawn, force, turning / force, label));
    }

    private static Sketch.Arrow arrow(
            Sketch.Point joint, Sketch.Bone bone, Drawn drawn, double force, double arm, String label) {
        double length = Math.max(
                1e-9,
                Math.sqrt(square(bone.to().x() - bone.from().x())
                        + square(bone.to().y() - bone.from().y())));
        // from the moved part towards the joint; at the ankle up along the shank
        double alongX = (bone.from().x() - bone.to().x()) / length;
        double alongY = (bone.from().y() - bone.to().y()) / length;
        if (drawn.axis() == Axis.LOW_BACK) {
            alongX = -(bone.to().x() - bone.from().x()) / length;
            alongY = -(bone.to().y() - bone.from().y()) / length;
        }
        boolean leg = drawn.axis() == Axis.ANKLE || drawn.axis() == Axis.KNEE || drawn.axis() == Axis.HIP;
        int turns = drawn.axis().joint().counterClockwise() * (leg ? -1 : 1) * (arm >= 0 ? 1 : -1);
        double size = Math.abs(arm);
        double down = drawn.distalBeyond() ? DOWN : 0;
        Sketch.Point at = new Sketch.Point(
                joint.x() + turns * alongY * size - alongX * down, joint.y() - turns * alongX * size - alongY * down);
        return new Sketch.Arrow(at, new Sketch.Point(alongX * force, alongY * force), label, Sketch.ForceKind.MUSCLE);
    }

    private static double square(double value) {
        return value * value;
    }

    private static Sketch.@Nullable Point joint(Sketch sketch, Joint joint) {
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.JointMark mark && mark.name().equals(joint.words())) {
                return mark.at();
            }
        }
        return null;
    }

    private static Sketch.@Nullable Bone bone(Sketch sketch, String name) {
        for (Sketch.Shape shape : sketch.shapes()) {
            if (shape instanceof Sketch.Bone bone && bone.name().equals(name)) {
                return bone;
            }
        }
        return null;
    }
}

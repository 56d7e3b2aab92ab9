package leverwright.mechanics.exercise;

import java.util.List;

/**
 * The knob that drives an exercise, the range in which it is usually moved, and what moves with it.
 *
 * @param knob the one coordinate that the posture follows
 * @param from its SI value at the start
 * @param to its SI value at the end; may be less than the start
 * @param inStep knobs that move in step with it; often none
 */
public record Course(Knob<?> knob, double from, double to, List<InStep> inStep) {
    /** A course of one knob alone. */
    public Course(Knob<?> knob, double from, double to) {
        this(knob, from, to, List.of());
    }

    /** Returns this course with another knob that moves in step, evenly from one SI value to another. */
    Course with(Knob<?> other, double start, double end) {
        List<InStep> more = new java.util.ArrayList<>(inStep);
        more.add(new InStep(other, start, end, knob, from, to));
        return new Course(knob, from, to, List.copyOf(more));
    }
}

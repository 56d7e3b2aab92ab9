/**
 * Exercises: typed settings, the posture they lead to, and what a lifter's joints bear in it.
 *
 * <p><b>Concept.</b> An {@link leverwright.mechanics.exercise.Exercise} is an immutable value with
 * {@link leverwright.mechanics.exercise.Knobs knobs}; done by a lifter it is a
 * {@link leverwright.mechanics.exercise.Performance}, whose {@code posture()} finds the angle that balance leaves open and
 * returns a {@link leverwright.mechanics.exercise.HeldPosture}. What can be read off that,
 * {@code moment(HIP)} or {@code tiltRule(HIP)}, is a {@link leverwright.mechanics.exercise.Reading}.
 *
 * <pre>{@code
 * var held = romanianDeadlift().barbell(kg(50)).barAhead(cm(3)).torsoLean(deg(45)).by(ines).posture();
 * held.moments(HIP, KNEE, ANKLE, LOW_BACK);
 * }</pre>
 *
 * <p><b>How a number comes about.</b> An exercise fills a layout: a lean for each of seven segments, the loads, the support.
 * A cut at a joint sums weights and forces on the side that no unknown support touches. The hand calculation writes the same
 * sums as steps; a general linkage solves the same posture once more from both sides of every joint, which checks the sums
 * and not the model.
 *
 * <p><b>Frame and signs.</b> x forward of the back of the heel, y above the floor. Leans are measured from the vertical,
 * forward positive; of the arms, from hanging. Moments count the joint's positive action: extension, plantarflexion at the
 * ankle. The table stands with {@link leverwright.mechanics.body.Joint} and in docs/signs.md.
 *
 * <p><b>Units.</b> m, kg, N, N·m, rad; both sides together inside, per side for limbs and in total for the spine in answers.
 *
 * <p><b>To add an exercise</b>: docs/how-to-add-an-exercise.md.
 */
@NullMarked
package leverwright.mechanics.exercise;

import org.jspecify.annotations.NullMarked;

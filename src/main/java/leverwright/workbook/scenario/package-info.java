/**
 * One mechanics case as JSON in, its solution as one line of JSON out: for people who work in other languages, and for
 * checking the mechanics from outside.
 *
 * <p>{@link leverwright.workbook.scenario.ScenarioSolver} reads a scenario strictly (unknown keys are errors, so that a
 * misspelt one is not ignored), solves kind "linkage" with
 * {@link leverwright.mechanics.equilibrium.LinkageSolver}, kind "sharing" with {@link leverwright.mechanics.muscle.Sharing}, and
 * writes the solution. SI units; x forward, y up, counter-clockwise positive; masses, loads and moments are for both sides together.
 */
@NullMarked
package leverwright.workbook.scenario;

import org.jspecify.annotations.NullMarked;

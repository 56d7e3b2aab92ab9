package leverwright.mechanics.exercise;

/**
 * The knob that drives an exercise, and the range in which it is usually moved.
 *
 * @param knob the one coordinate that the posture follows
 * @param from its SI value at the start
 * @param to its SI value at the end; may be less than the start
 */
public record Course(Knob<?> knob, double from, double to) {}

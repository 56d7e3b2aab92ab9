package leverwright.mechanics.muscle;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Moment;

/**
 * What a lifter was measured to make: a moment about an axis, held still at an angle, one side (low back: in total).
 *
 * @param axis about which
 * @param moment positive for the positive action of the axis, not 0
 * @param angle flexion at which it was measured
 * @param how it was measured, such as "dynamometer" or "leg extension, 45 kg, 8 repetitions"
 */
public record TestedStrength(Axis axis, Moment moment, Angle angle, String how) {
    /**
     * Checks the moment.
     *
     * @throws IllegalArgumentException if it is 0 or larger than 2000 N·m
     */
    public TestedStrength {
        if (moment.si() == 0 || Math.abs(moment.si()) > 2000) {
            throw new IllegalArgumentException("the tested moment about the " + axis.words() + " is " + moment
                    + "; allowed: not 0, at most 2000 N·m");
        }
    }
}

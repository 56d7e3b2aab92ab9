package leverwright.mechanics.body;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Moment;

/**
 * What a lifter was measured to make about a joint, seen from the side: held still, one side (low back: in total).
 *
 * @param joint about which; not the neck, which has no muscles on file
 * @param moment positive for the joint's positive action (extension, plantarflexion), not 0, at most 2000 N·m
 * @param angle flexion of the joint, dorsiflexion at the ankle
 * @param how it was measured, such as "dynamometer" or "leg extension, 45 kg, 8 repetitions"
 */
public record StrengthTest(Joint joint, Moment moment, Angle angle, String how) {
    private static final double MOST = 2000;

    /**
     * Checks joint and moment.
     *
     * @throws IllegalArgumentException if the moment is 0 or beyond 2000 N·m, or the joint is the neck
     */
    public StrengthTest {
        if (joint == Joint.NECK) {
            throw new IllegalArgumentException("no muscle of the neck is on file; test another joint");
        }
        if (moment.si() == 0 || !(Math.abs(moment.si()) <= MOST)) {
            throw new IllegalArgumentException("the tested moment about the " + joint.words() + " is " + moment
                    + "; allowed: not 0, at most 2000 N·m, positive for extension");
        }
    }
}

package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;

/** Squats with other bars and supports than the back squat's. */
final class Squats {
    static final Movement FRONT_SQUAT = squat("Front squat", 15)
            .barbellOnShoulders(cm(2), cm(-12))
            .lean(Segment.UPPER_ARM, deg(75))
            .bend(Joint.ELBOW, deg(130))
            .trains("quadriceps, gluteus maximus; the upper back holds the bar up");

    private Squats() {}

    private static Movement squat(String name, int lean) {
        return new Movement(name)
                .of(Family.SQUAT)
                .standing(Knobs.THIGH_ABOVE_LEVEL, Knobs.TORSO_LEAN)
                .knob(Knobs.TORSO_LEAN, deg(lean), "as it often looks at level thighs (from memory)")
                .knob(Knobs.SHANK_LEAN, deg(30), "a shank as it often leans in squats (from memory)")
                .knob(Knobs.KNEE_FLEXION, deg(110), "near level thighs (from memory)")
                .path(Knobs.THIGH_ABOVE_LEVEL, deg(90), deg(0))
                .drives(Joint.KNEE, Joint.HIP, Joint.ANKLE)
                .cautions(Cautions.LOW_BACK, Cautions.KNEE);
    }
}

package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;

import leverwright.mechanics.body.Joint;

/** Raises of the arm. */
final class Raises {
    static final Movement LATERAL_RAISE = new Movement("Lateral raise")
            .of(Family.RAISE)
            .in(Plane.FRONTAL)
            .standing()
            .bend(Joint.SHOULDER, SetupKnobs.SHOULDER_ABDUCTION)
            .dumbbellsInHands()
            .path(SetupKnobs.SHOULDER_ABDUCTION, deg(10), deg(90))
            .drives(Joint.SHOULDER)
            .trains("deltoid, its middle part; supraspinatus")
            .cautions(Cautions.SHOULDER);

    private Raises() {}
}

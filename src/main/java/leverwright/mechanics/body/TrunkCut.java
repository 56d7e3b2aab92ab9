package leverwright.mechanics.body;

import java.util.List;

/**
 * The trunk with head cut at the low back.
 *
 * <p>The part below is the table's lowest part, less what of it lies above the low back, taken in proportion to height; the
 * part above is the rest of the trunk with head, so that both together always have its mass, mass centre and moment of
 * inertia. The moment of inertia of the part below is that of a thin rod as long as it is.
 */
record TrunkCut(
        BodySegment pelvis,
        BodySegment above,
        double headMass,
        double headCentre,
        double neck,
        List<SourcedValue> numbers) {

    static TrunkCut at(double lowBack, BodySegment trunk, Proportions table) {
        TrunkParts parts = table.trunk();
        double share = trunk.mass() / table.row(Segment.TRUNK).mass().value();
        double lower = parts.lowerMass().value() * share;
        double top = parts.lowerTop().value() * trunk.length();
        double movedUp = lowBack < top ? lower * (top - lowBack) / top : 0;
        double mass = lower - movedUp;
        double centre = (lower * parts.lowerCentre().value() * trunk.length() - movedUp * (lowBack + top) / 2) / mass;
        double inertia = mass * lowBack * lowBack / 12;
        BodySegment pelvis = new BodySegment("pelvis", 1, mass, lowBack, centre, 0, inertia);
        return new TrunkCut(
                pelvis,
                rest(trunk, pelvis),
                parts.headMass().value() * share,
                parts.headCentre().value() * trunk.length(),
                parts.neck().value() * trunk.length(),
                List.of(
                        parts.lowerMass(),
                        parts.lowerCentre(),
                        parts.lowerTop(),
                        parts.headMass(),
                        parts.headCentre(),
                        parts.neck()));
    }

    private static BodySegment rest(BodySegment trunk, BodySegment pelvis) {
        double mass = trunk.mass() - pelvis.mass();
        double centre = (trunk.mass() * trunk.centre() - pelvis.mass() * pelvis.centre()) / mass;
        double down = pelvis.centre() - trunk.centre();
        double up = centre - trunk.centre();
        double inertia = trunk.inertia() - pelvis.inertia() - pelvis.mass() * down * down - mass * up * up;
        return new BodySegment(
                "trunk above low back",
                1,
                mass,
                trunk.length() - pelvis.length(),
                centre - pelvis.length(),
                0,
                Math.max(0, inertia));
    }
}

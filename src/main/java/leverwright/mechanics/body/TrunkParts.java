package leverwright.mechanics.body;

/**
 * What a table knows inside the trunk: its lowest part, which the low back divides or borders, and the head.
 *
 * @param lowerMass mass of the lowest part, of body mass
 * @param lowerCentre its mass centre above the hip, of the hip-to-shoulder length
 * @param lowerTop its upper border above the hip, of the hip-to-shoulder length; within the part the mass that lies above a
 *     lower cut is taken in proportion to height
 * @param headMass mass of head, or head and neck, of body mass
 * @param headCentre its mass centre above the hip, in line with the trunk, of the hip-to-shoulder length
 * @param neck the neck joint above the hip, of the hip-to-shoulder length
 */
public record TrunkParts(
        SourcedValue lowerMass,
        SourcedValue lowerCentre,
        SourcedValue lowerTop,
        SourcedValue headMass,
        SourcedValue headCentre,
        SourcedValue neck) {}

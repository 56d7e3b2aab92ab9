package leverwright.mechanics.body;

/**
 * A table's default for a place on the body.
 *
 * @param landmark which place
 * @param ofStature its distance, of stature
 * @param halfWidth half width of the band in which it is meant to lie, m
 */
public record LandmarkRow(Landmark landmark, SourcedValue ofStature, double halfWidth) {}

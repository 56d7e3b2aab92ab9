/**
 * The lifter's body: segments with length, mass, mass centre and moment of inertia, from a published table or as measured.
 *
 * <p><b>Concept.</b> A {@link leverwright.mechanics.body.Lifter} is sex, stature, body mass and one
 * {@link leverwright.mechanics.body.SegmentTable}; tables are never mixed within one lifter. Every length, mass and mass
 * centre may be replaced by a measured one. What comes out is a {@link leverwright.mechanics.body.Body}: seven rigid parts,
 * the places of ankle, low back, neck and grip, and for each number its source and how it was read.
 *
 * <p><b>Frame.</b> Each segment has its own axis from its start to its end (hip to knee, and so on, see
 * {@link leverwright.mechanics.body.Segment}); "along" runs with the axis, "across" is 90° counter-clockwise from it. For the
 * foot that is forward and up from the back of the heel. Movement is planar, seen from the side; moments of inertia are about
 * the transverse axis through the mass centre. Signs of joints: {@link leverwright.mechanics.body.Joint}.
 *
 * <p><b>Units.</b> Metre, kilogram, kg·m². Masses given for a pair are for one of the two; a
 * {@link leverwright.mechanics.body.BodySegment} holds both together and says so.
 */
@NullMarked
package leverwright.mechanics.body;

import org.jspecify.annotations.NullMarked;

package leverwright.mechanics.load;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.working.Step;

/**
 * An elastic band by its measured forces: a branch for stretching and one for the return, each straight between measured
 * points, both from 0 N at rest length. Without a return branch the band returns by the branch on which it was stretched, and
 * every result says that the return force is overstated. Position: length of the band; up to its rest length the force is 0.
 *
 * @param restLength m, greater than 0
 * @param stretched force over stretch while it is stretched, from (0, 0) on
 * @param returned force over stretch on the way back, from (0, 0) on; empty if it was not measured
 */
public record Band(double restLength, List<ForcePoint> stretched, List<ForcePoint> returned) implements Resistance {
    private static final ForcePoint REST = new ForcePoint(0, 0);

    /**
     * Makes the band.
     *
     * @throws IllegalArgumentException if the points do not rise, the return branch lies above the other or ends elsewhere, or
     *     there are none
     */
    public Band {
        if (!(restLength > 0 && restLength <= 100)) {
            throw new IllegalArgumentException(
                    "rest length of a band is " + restLength + " m; allowed: greater than 0, at most 100 m");
        }
        stretched = List.copyOf(stretched);
        returned = List.copyOf(returned);
        // a band that is being described has only its rest point yet
        if (stretched.size() > 1 && returned.size() > 1) {
            ForceCurve up = new ForceCurve("the band", stretched);
            for (ForcePoint point : returned) {
                if (point.position() <= up.last() && point.force() > up.at(point.position())) {
                    throw new IllegalArgumentException("the band returns with " + point.force() + " N at a stretch of "
                            + point.position() + " m, but was stretched with " + up.at(point.position())
                            + " N there; allowed: at most as much on the way back");
                }
            }
        }
    }

    /** Begins a band of a rest length; tell at least one measured point. */
    static Band ofRestLength(Length length) {
        return new Band(length.si(), List.of(REST), List.of());
    }

    /** Returns this band with a force measured while it was stretched; further points lie further out. */
    public Band stretched(Length stretch, Force force) {
        return new Band(restLength, with(stretched, stretch, force), returned);
    }

    /** Returns this band with a force measured on the way back. */
    public Band returned(Length stretch, Force force) {
        List<ForcePoint> before = returned.isEmpty() ? List.of(REST) : returned;
        return new Band(restLength, stretched, with(before, stretch, force));
    }

    private static List<ForcePoint> with(List<ForcePoint> points, Length at, Force force) {
        List<ForcePoint> more = new ArrayList<>(points);
        more.add(new ForcePoint(at.si(), force.si()));
        return new ForceCurve("the band", more).points();
    }

    @Override
    public String name() {
        return "band";
    }

    @Override
    public String positionWords() {
        return "length of the band";
    }

    private ForceCurve branch(Direction direction) {
        boolean back = direction == Direction.LOWERED && !returned.isEmpty();
        return new ForceCurve(back ? "the band's way back" : "the band", back ? returned : stretched);
    }

    /** What is given back on the way home. */
    private ForceCurve elastic() {
        return branch(Direction.LOWERED);
    }

    private double stretch(Travel travel) {
        return Math.max(0, travel.position() - restLength);
    }

    @Override
    public double force(Travel travel) {
        double stretch = stretch(travel);
        return stretch == 0 ? 0 : branch(travel.direction()).at(stretch);
    }

    @Override
    public double stored(Travel travel) {
        double stretch = stretch(travel);
        return stretch == 0 ? 0 : elastic().workTo(stretch);
    }

    @Override
    public double heat(Travel travel) {
        double stretch = stretch(travel);
        return stretch == 0 || travel.speed() <= 0
                ? 0
                : (force(travel) - elastic().at(stretch)) * travel.speed();
    }

    @Override
    public List<String> notes() {
        String way = returned.isEmpty()
                ? "No return branch was measured: the force on the way back is overstated."
                : "Where the motion turns, the band changes from one measured branch to the other at once.";
        return List.of(way, NOT_CHECKED);
    }

    @Override
    public List<Step> steps(Travel travel) {
        double stretch = stretch(travel);
        return stretch == 0
                ? List.of(Step.given("F", Force.of(0), "the band is not longer than at rest: slack"))
                : branch(travel.direction()).steps("F", stretch, "stretch: length less rest length");
    }
}

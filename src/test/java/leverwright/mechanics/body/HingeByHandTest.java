package leverwright.mechanics.body;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Solution;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.numeric.RootFinder;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import org.junit.jupiter.api.Test;

/**
 * A hinge at the hips with a 50 kg bar, computed once by an independent program from the same inputs: 71 kg, 1.78 m, Winter's
 * segments, ankle 5.5 cm ahead of the heel and 8 cm up, foot 25 cm with its centre at (11, 3.5) cm, hand's centre at 0.506 of
 * its length, shank 4° and torso 45° ahead of the vertical, straight arms, the bar at half the hand's length and 15.5 cm
 * ahead of the heel, pressure 12.5 cm ahead of it. Tolerance: half of the last printed digit.
 */
class HingeByHandTest {
    private static final double UP = deg(90).si();
    private static final double BAR = 0.155;
    private static final double PRESSURE = 0.125;

    private final Lifter ines = lifter("Ines")
            .of(Sex.FEMALE, cm(178), kg(71))
            .segments(SegmentTable.WINTER)
            .foot(cm(25))
            .ankleFromHeel(cm(5.5))
            .ankleHeight(cm(8))
            .centre(Segment.FOOT, cm(11))
            .place(Landmark.FOOT_CENTRE_HEIGHT, cm(3.5))
            .centre(Segment.HAND, m(0.506 * 0.108 * 1.78));
    private final Body body = ines.body();
    private final Linkage linkage = linkage();

    private Linkage linkage() {
        List<Link> links = new ArrayList<>();
        for (Segment segment : Segment.values()) {
            boolean leg = segment == Segment.SHANK || segment == Segment.THIGH;
            BodySegment part = leg ? body.segment(segment).turned() : body.segment(segment);
            Place next = segment == Segment.FOOT
                    ? new Place(
                            body.place(Landmark.ANKLE_FROM_HEEL).si(),
                            body.place(Landmark.ANKLE_HEIGHT).si())
                    : Place.along(part.length());
            links.add(new Link(
                    part.name(),
                    part.sides(),
                    part.mass(),
                    part.length(),
                    new Place(part.centre(), part.across()),
                    next,
                    part.inertia()));
        }
        return Linkage.chain(links);
    }

    private double length(Segment segment) {
        return body.segment(segment).length();
    }

    /** Angle of the straight arms behind the vertical that brings the bar to its place, rad. */
    private double armsBehind(double thighLean) {
        double shoulder = 0.055
                + length(Segment.SHANK) * Trigonometry.sine(deg(4).si())
                + length(Segment.THIGH) * Trigonometry.sine(thighLean)
                + length(Segment.TRUNK) * Trigonometry.sine(deg(45).si());
        double reach = length(Segment.UPPER_ARM) + length(Segment.FOREARM) + length(Segment.HAND) / 2;
        return Trigonometry.arcSine((shoulder - BAR) / reach);
    }

    private Solution held(double thighLean, double armsBehind) {
        double arm = -UP - armsBehind;
        Configuration posture = Configuration.at(
                linkage, Vector.ZERO, 0, UP - deg(4).si(), UP - thighLean, UP - deg(45).si(), arm, arm, arm);
        MassLoad bar = new MassLoad("hand", Place.along(length(Segment.HAND) / 2), 50);
        return LinkageSolver.solve(linkage, posture, List.of(bar), new GroundSupport("foot"));
    }

    private double moment(Solution held, String above, Joint joint) {
        Solution.JointLoad load = held.joint(above);
        return joint.counterClockwise() * load.moment() / load.sides();
    }

    @Test
    void towardsAGivenBar() {
        double thigh = RootFinder.between(
                        "balance",
                        "rad",
                        lean -> held(lean, armsBehind(lean)).centreOfPressure().orElseThrow() - PRESSURE,
                        -1,
                        0.2,
                        1e-14)
                .at();
        Solution held = held(thigh, armsBehind(thigh));
        assertEquals(-25.97, thigh / deg(1).si(), 0.005);
        assertEquals(8.54, armsBehind(thigh) / deg(1).si(), 0.005);
        assertEquals(40.98, moment(held, "shank", Joint.ANKLE), 0.005);
        assertEquals(-23.59, moment(held, "thigh", Joint.KNEE), 0.005);
        assertEquals(123.04, moment(held, "trunk with head", Joint.HIP), 0.005);
        assertEquals(26.60, moment(held, "upper arm", Joint.SHOULDER), 0.005);
    }

    @Test
    void withPlumbArms() {
        double thigh = RootFinder.between(
                        "balance",
                        "rad",
                        lean -> held(lean, 0).centreOfPressure().orElseThrow() - PRESSURE,
                        -1.2,
                        0.2,
                        1e-14)
                .at();
        assertEquals(149.6, moment(held(thigh, 0), "trunk with head", Joint.HIP), 0.05);
    }
}

package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.body.BodySegment;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Solution;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.equilibrium.TwoContacts;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;

/**
 * The same posture as a general linkage, solved from both sides of every joint; the sums made for the hand calculation join
 * as a third.
 */
final class CrossCheck {
    private static final double UP = Measures.deg(90).si();
    private static final String FOOT = "foot";
    private static final String SHANK = "shank";
    private static final String THIGH = "thigh";
    private static final String PELVIS = "pelvis";
    private static final String TRUNK = "trunk";
    private static final String UPPER_ARM = "upper arm";
    private static final String FOREARM = "forearm";
    private static final String HAND = "hand";

    private CrossCheck() {}

    static BothCuts of(Layout layout) {
        Linkage linkage = linkage(layout.body());
        Solution solution =
                LinkageSolver.solve(linkage, configuration(linkage, layout), loads(layout), support(layout));
        double scale = solution.scale();
        double worst = solution.closure();
        boolean seated = layout.support() == Layout.Support.SEAT;
        for (Joint joint : seated ? FREE_JOINTS : JOINTS) {
            double theirs = solution.joint(linkAbove(joint)).moment() * layout.counterClockwise(joint);
            worst = Math.max(worst, Math.abs(theirs - new Cut(layout, joint).moment()) / scale);
        }
        return new BothCuts(true, worst, scale);
    }

    /** The posture as a general linkage, for motion and joint forces. */
    static Mechanism mechanism(Layout layout) {
        Linkage linkage = linkage(layout.body());
        boolean seated = layout.support() == Layout.Support.SEAT;
        Map<Joint, Mechanism.JointLink> joints = new EnumMap<>(Joint.class);
        for (Joint joint : seated ? FREE_JOINTS : JOINTS) {
            int divisor = joint.sides() == Sides.PER_SIDE ? 2 : 1;
            joints.put(joint, new Mechanism.JointLink(linkAbove(joint), layout.counterClockwise(joint), divisor));
        }
        return new Mechanism(
                linkage, configuration(linkage, layout), loads(layout), support(layout), Layout.GRAVITY, joints);
    }

    private static final List<Joint> JOINTS =
            List.of(Joint.ANKLE, Joint.KNEE, Joint.HIP, Joint.LOW_BACK, Joint.SHOULDER, Joint.ELBOW, Joint.WRIST);

    /** The joints of a seated lifter that do not depend on how seat and backrest share the load. */
    private static final List<Joint> FREE_JOINTS =
            List.of(Joint.ANKLE, Joint.KNEE, Joint.SHOULDER, Joint.ELBOW, Joint.WRIST);

    /** A seat holds the thigh by a force and a couple; hands and feet share by moments and the free force that was set. */
    private static Support support(Layout layout) {
        return switch (layout.support()) {
            case FEET -> new GroundSupport(FOOT);
            case SEAT -> new FixedSupport(THIGH, Place.START);
            case HANDS_AND_FEET -> {
                Load hands = layout.loads().get(0);
                Place feet = placeOf(Segment.FOOT, layout.pressureX(), 0, layout);
                yield TwoContacts.onFloor(
                        new TwoContacts.Contact(linkOf(hands.on()), placeOf(hands.on(), hands.x(), hands.y(), layout)),
                        new TwoContacts.Contact(FOOT, feet),
                        hands.forceX());
            }
        };
    }

    private static String linkAbove(Joint joint) {
        return switch (joint) {
            case ANKLE -> SHANK;
            case KNEE -> THIGH;
            case HIP -> PELVIS;
            case LOW_BACK, NECK -> TRUNK;
            case SHOULDER -> UPPER_ARM;
            case ELBOW -> FOREARM;
            case WRIST -> HAND;
        };
    }

    private static String linkOf(Segment segment) {
        return switch (segment) {
            case FOOT -> FOOT;
            case SHANK -> SHANK;
            case THIGH -> THIGH;
            case TRUNK -> TRUNK;
            case UPPER_ARM -> UPPER_ARM;
            case FOREARM -> FOREARM;
            case HAND -> HAND;
        };
    }

    private static Linkage linkage(Skeleton body) {
        BodySegment pelvis = body.body().pelvis();
        BodySegment above = body.body().trunkAboveLowBack();
        Place ankle = new Place(body.ankleAlong(), body.ankleAcross());
        Place footCentre = new Place(body.centre(Segment.FOOT), body.footCentreAcross());
        List<Link> links = new ArrayList<>();
        links.add(new Link(
                FOOT,
                2,
                body.mass(Segment.FOOT),
                body.length(Segment.FOOT),
                footCentre,
                ankle,
                inertia(Segment.FOOT, body)));
        links.add(limb(SHANK, Segment.SHANK, body));
        links.add(limb(THIGH, Segment.THIGH, body));
        links.add(part(PELVIS, pelvis));
        links.add(part(TRUNK, above));
        links.add(limb(UPPER_ARM, Segment.UPPER_ARM, body));
        links.add(limb(FOREARM, Segment.FOREARM, body));
        links.add(limb(HAND, Segment.HAND, body));
        return Linkage.chain(links);
    }

    private static Link limb(String name, Segment segment, Skeleton body) {
        double length = body.length(segment);
        Place centre = Place.along(body.centre(segment));
        return new Link(name, 2, body.mass(segment), length, centre, Place.along(length), inertia(segment, body));
    }

    private static Link part(String name, BodySegment part) {
        Place end = Place.along(part.length());
        return new Link(name, 1, part.mass(), part.length(), Place.along(part.centre()), end, part.inertia());
    }

    /** Moment of inertia about the mass centre, both sides together, kg·m². */
    private static double inertia(Segment segment, Skeleton body) {
        return body.body().segment(segment).inertia();
    }

    private static Configuration configuration(Linkage linkage, Layout layout) {
        double trunk = UP - layout.lean(Segment.TRUNK);
        return Configuration.at(
                linkage,
                new Vector(layout.startX(Segment.FOOT), layout.startY(Segment.FOOT)),
                -layout.lean(Segment.FOOT),
                UP - layout.lean(Segment.SHANK),
                UP - layout.lean(Segment.THIGH),
                trunk,
                trunk,
                layout.lean(Segment.UPPER_ARM) - UP,
                layout.lean(Segment.FOREARM) - UP,
                layout.lean(Segment.HAND) - UP);
    }

    private static List<leverwright.mechanics.load.Load> loads(Layout layout) {
        List<leverwright.mechanics.load.Load> loads = new ArrayList<>();
        for (Load load : layout.loads()) {
            if (layout.support() == Layout.Support.HANDS_AND_FEET && !load.isWeight()) {
                continue;
            }
            Place at = placeOf(load.on(), load.x(), load.y(), layout);
            String on = linkOf(load.on());
            loads.add(
                    load.isWeight()
                            ? new MassLoad(on, at, load.mass())
                            : new ForceLoad(on, at, load.forceX(), load.forceY()));
        }
        return loads;
    }

    /** A point of the world measured along and across the link that it is on. */
    private static Place placeOf(Segment on, double worldX, double worldY, Layout layout) {
        double startX = on == Segment.TRUNK ? layout.jointX(Joint.LOW_BACK) : layout.startX(on);
        double startY = on == Segment.TRUNK ? layout.jointY(Joint.LOW_BACK) : layout.startY(on);
        double axisX = on == Segment.FOOT ? layout.cosine(on) : layout.sine(on);
        double axisY = on == Segment.FOOT ? -layout.sine(on) : Layout.upward(on) * layout.cosine(on);
        double x = worldX - startX;
        double y = worldY - startY;
        return new Place(x * axisX + y * axisY, y * axisX - x * axisY);
    }
}

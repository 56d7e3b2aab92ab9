package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
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
    private static final double STUB = 0.1;
    private static final String PELVIS = "pelvis";

    private final Layout layout;
    private final Skeleton body;
    private final List<Double> directions = new ArrayList<>();
    private final Linkage linkage;
    /** Whether loads stand as what they are in motion. */
    private boolean moves;

    private CrossCheck(Layout layout) {
        this.layout = layout;
        this.body = layout.body();
        Linkage.Builder builder = Linkage.builder();
        if (layout.parting().armsAlone()) {
            add(builder.start(new Link(name(Member.TRUNK), 1, 0, STUB, Place.START, Place.START, 0)), Member.TRUNK);
        } else {
            legsAndTrunk(builder);
        }
        arm(builder, false);
        if (layout.parting().isSplit(Segment.UPPER_ARM)) {
            arm(builder, true);
        }
        if (!layout.parting().armsAlone() && layout.parting().isSplit(Segment.THIGH)) {
            otherLeg(builder);
        }
        linkage = builder.build();
    }

    static BothCuts of(Layout layout) {
        return new CrossCheck(layout).compare();
    }

    private BothCuts compare() {
        Solution solution = LinkageSolver.of(linkage, loads(), support())
                .gravity(layout.gravity())
                .configuration(configuration())
                .solve()
                .solution();
        double scale = solution.scale();
        double worst = solution.closure();
        for (Joint joint : JOINTS) {
            if (isFree(joint)) {
                double theirs = solution.joint(linkAbove(joint)).moment() * layout.counterClockwise(joint);
                worst = Math.max(worst, Math.abs(theirs - new Cut(layout, joint).moment()) / scale);
            }
        }
        return new BothCuts(true, worst, scale);
    }

    /** The posture as a general linkage, for motion and joint forces. */
    static Mechanism mechanism(Layout layout) {
        CrossCheck check = new CrossCheck(layout);
        check.moves = true;
        Map<Joint, Mechanism.JointLink> joints = new EnumMap<>(Joint.class);
        for (Joint joint : JOINTS) {
            if (check.isFree(joint)) {
                boolean halved =
                        joint.sides() == Sides.PER_SIDE && !layout.parting().isSplit(joint);
                int divisor = halved ? 2 : 1;
                joints.put(joint, new Mechanism.JointLink(linkAbove(joint), layout.counterClockwise(joint), divisor));
            }
        }
        return new Mechanism(
                check.linkage, check.configuration(), check.loads(), check.support(), layout.gravity(), joints);
    }

    /** Moment of inertia about the mass centre, kg·m²: of both sides together where they are alike. */
    private double inertia(Member member) {
        double both = body.body().segment(member.segment()).inertia();
        return layout.parting().isSplit(member.segment()) ? both / 2 : both;
    }

    private static final List<Joint> JOINTS =
            List.of(Joint.ANKLE, Joint.KNEE, Joint.HIP, Joint.LOW_BACK, Joint.SHOULDER, Joint.ELBOW, Joint.WRIST);

    /** Whether a joint does not depend on how what holds the body shares the load. */
    private boolean isFree(Joint joint) {
        return Cut.isKnown(layout, joint);
    }

    /** A seat holds the thigh by a force and a couple; hands and feet share by moments and the free force that was set. */
    private Support support() {
        return switch (layout.support()) {
            case FEET -> new GroundSupport(heldLink());
            case SEAT -> new FixedSupport(name(Member.THIGH), Place.START);
            case HELD -> new FixedSupport(heldLink(), Place.START);
            case HANDS_AND_FEET -> {
                Load hands = layout.hands();
                Place feet = placeOf(Member.FOOT, layout.pressureX(), 0);
                yield TwoContacts.onFloor(
                        new TwoContacts.Contact(name(hands.on()), placeOf(hands.on(), hands.x(), hands.y())),
                        new TwoContacts.Contact(name(Member.FOOT), feet),
                        hands.forceX());
            }
        };
    }

    private String heldLink() {
        for (Member member : Member.ALL) {
            if (member != Member.TRUNK && (layout.held() & member.bit()) != 0 && linkage.has(name(member))) {
                return name(member);
            }
        }
        return layout.holdsTrunk(false) && linkage.has(PELVIS) ? PELVIS : name(Member.TRUNK);
    }

    private static String linkAbove(Joint joint) {
        return joint == Joint.HIP ? PELVIS : name(Member.of(Layout.above(joint)));
    }

    private static String name(Member member) {
        return member == Member.TRUNK ? "trunk" : member.words();
    }

    private Linkage.Builder add(Linkage.Builder builder, Member member) {
        directions.add(direction(member));
        return builder;
    }

    private double direction(Member member) {
        if (member.segment() == Segment.FOOT) {
            return -layout.lean(member);
        }
        return member.isArm() ? layout.lean(member) - UP : UP - layout.lean(member);
    }

    private void legsAndTrunk(Linkage.Builder builder) {
        Place ankle = new Place(layout.ankleAlong(), body.ankleAcross());
        Place footCentre = new Place(layout.footCentreAlong(), body.footCentreAcross());
        double offset = layout.hipOffset(false);
        BodySegment pelvis = body.body().pelvis();
        BodySegment above = body.body().trunkAboveLowBack();
        add(
                builder.start(new Link(
                        name(Member.FOOT),
                        2,
                        mass(Member.FOOT),
                        body.length(Segment.FOOT),
                        footCentre,
                        ankle,
                        inertia(Member.FOOT))),
                Member.FOOT);
        add(builder.then(limb(Member.SHANK)), Member.SHANK);
        add(builder.then(limb(Member.THIGH)), Member.THIGH);
        Place lowBack = new Place(pelvis.length(), offset);
        Place centre = new Place(pelvis.centre(), offset);
        add(
                builder.then(new Link(PELVIS, 1, pelvis.mass(), pelvis.length(), centre, lowBack, pelvis.inertia())),
                Member.TRUNK);
        Place upperCentre = Place.along(above.centre());
        Place shoulder = new Place(above.length(), -layout.shoulderOffset(false));
        add(
                builder.then(new Link(
                        name(Member.TRUNK), 1, above.mass(), above.length(), upperCentre, shoulder, above.inertia())),
                Member.TRUNK);
    }

    private void arm(Linkage.Builder builder, boolean other) {
        Member upper = Member.of(Segment.UPPER_ARM, other);
        Member fore = Member.of(Segment.FOREARM, other);
        Member hand = Member.of(Segment.HAND, other);
        double along = layout.parting().armsAlone()
                ? 0
                : body.body().trunkAboveLowBack().length();
        Place at = new Place(along, -layout.shoulderOffset(other));
        add(builder.attach(limb(upper), name(Member.TRUNK), at), upper);
        add(builder.then(limb(fore)), fore);
        add(builder.then(limb(hand)), hand);
    }

    /** The other leg hangs on the pelvis, so that its links run down. */
    private void otherLeg(Linkage.Builder builder) {
        Place hip = new Place(0, layout.hipOffset(false) - layout.hipOffset(true));
        builder.attach(hanging(Member.OTHER_THIGH), PELVIS, hip);
        directions.add(direction(Member.OTHER_THIGH) - 2 * UP);
        builder.then(hanging(Member.OTHER_SHANK));
        directions.add(direction(Member.OTHER_SHANK) - 2 * UP);
        Place centre =
                new Place(layout.footCentreAlong() - layout.ankleAlong(), body.footCentreAcross() - body.ankleAcross());
        builder.then(new Link(
                name(Member.OTHER_FOOT),
                2,
                mass(Member.OTHER_FOOT),
                body.length(Segment.FOOT),
                centre,
                Place.START,
                inertia(Member.OTHER_FOOT)));
        directions.add(direction(Member.OTHER_FOOT));
    }

    private double mass(Member member) {
        return layout.pieces().mass(member.ordinal());
    }

    private Link limb(Member member) {
        double length = body.length(member.segment());
        Place centre = Place.along(body.centre(member.segment()));
        return new Link(name(member), 2, mass(member), length, centre, Place.along(length), inertia(member));
    }

    private Link hanging(Member member) {
        double length = body.length(member.segment());
        Place centre = Place.along(length - body.centre(member.segment()));
        return new Link(name(member), 2, mass(member), length, centre, Place.along(length), inertia(member));
    }

    private Configuration configuration() {
        // the tree keeps its links in another order than that of building where the pelvis has branches
        double[] ordered = new double[linkage.size()];
        List<String> built = names();
        for (int k = 0; k < built.size(); k++) {
            ordered[linkage.indexOf(built.get(k))] = directions.get(k);
        }
        Vector origin = layout.parting().armsAlone()
                ? new Vector(layout.startX(Member.TRUNK), layout.startY(Member.TRUNK))
                : new Vector(layout.startX(Member.FOOT), layout.startY(Member.FOOT));
        return Configuration.at(linkage, origin, ordered);
    }

    private List<String> names() {
        List<String> names = new ArrayList<>();
        if (!layout.parting().armsAlone()) {
            names.addAll(List.of(name(Member.FOOT), name(Member.SHANK), name(Member.THIGH), PELVIS));
        }
        names.add(name(Member.TRUNK));
        for (Member arm : List.of(Member.UPPER_ARM, Member.FOREARM, Member.HAND)) {
            names.add(name(arm));
        }
        if (layout.parting().isSplit(Segment.UPPER_ARM)) {
            for (Member arm : List.of(Member.OTHER_UPPER_ARM, Member.OTHER_FOREARM, Member.OTHER_HAND)) {
                names.add(name(arm));
            }
        }
        if (!layout.parting().armsAlone() && layout.parting().isSplit(Segment.THIGH)) {
            for (Member leg : List.of(Member.OTHER_THIGH, Member.OTHER_SHANK, Member.OTHER_FOOT)) {
                names.add(name(leg));
            }
        }
        return names;
    }

    private List<leverwright.mechanics.load.Load> loads() {
        List<leverwright.mechanics.load.Load> loads = new ArrayList<>();
        for (int k = 0; k < layout.loads().size(); k++) {
            Load load = layout.loads().get(k);
            if (layout.support() == Layout.Support.HANDS_AND_FEET && load.reaction()) {
                continue;
            }
            String on = linkOf(load);
            Place at = on.equals(PELVIS)
                    ? placeFrom(layout.jointX(Joint.HIP), layout.jointY(Joint.HIP), Member.TRUNK, load.x(), load.y())
                    : placeOf(load.on(), load.x(), load.y());
            Optional<Law> law = moves ? layout.inMotion(k) : Optional.empty();
            if (law.isPresent()) {
                loads.add(law.orElseThrow().on(on, at));
                continue;
            }
            loads.add(
                    load.isWeight()
                            ? new MassLoad(on, at, load.mass())
                            : new ForceLoad(on, at, load.forceX(), load.forceY()));
        }
        return loads;
    }

    private String linkOf(Load load) {
        boolean onPelvis =
                load.on() == Member.TRUNK && linkage.has(PELVIS) && !Cut.isAboveJoint(layout, Joint.LOW_BACK, load);
        return onPelvis ? PELVIS : name(load.on());
    }

    /** A point of the world measured along and across the link that it is on. */
    private Place placeOf(Member on, double worldX, double worldY) {
        boolean upperTrunk = on == Member.TRUNK && !layout.parting().armsAlone();
        boolean hangs = on == Member.OTHER_THIGH || on == Member.OTHER_SHANK || on == Member.OTHER_FOOT;
        if (upperTrunk) {
            return placeFrom(layout.jointX(Joint.LOW_BACK), layout.jointY(Joint.LOW_BACK), on, worldX, worldY);
        }
        if (hangs) {
            Joint start = on == Member.OTHER_THIGH ? Joint.HIP : on == Member.OTHER_SHANK ? Joint.KNEE : Joint.ANKLE;
            return placeFrom(layout.jointX(start, true), layout.jointY(start, true), on, worldX, worldY);
        }
        return placeFrom(layout.startX(on), layout.startY(on), on, worldX, worldY);
    }

    private Place placeFrom(double startX, double startY, Member on, double worldX, double worldY) {
        boolean foot = on.segment() == Segment.FOOT;
        boolean down = on == Member.OTHER_THIGH || on == Member.OTHER_SHANK;
        double axisX = foot ? layout.cosine(on) : layout.sine(on);
        double axisY = foot ? -layout.sine(on) : Layout.upward(on) * layout.cosine(on);
        if (down) {
            axisX = -axisX;
            axisY = -axisY;
        }
        double x = worldX - startX;
        double y = worldY - startY;
        return new Place(x * axisX + y * axisY, y * axisX - x * axisY);
    }
}

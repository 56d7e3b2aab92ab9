package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * Where the segments of a body lie, and the loads on them. An exercise fills it, then leaves it alone.
 *
 * <p>Members are indexed as {@link Member} lists them: one for both sides where they are alike, else one for each. x is
 * forward of the back of the heel (of the anchor where another point is given), y up, m; other planes: {@link Plane}. A lean
 * is measured from the vertical, forward positive, along shank, thigh and trunk upwards and along the arms downwards: the end
 * of a segment lies L·sin(lean) ahead of its start and, standing, L·cos(lean) above, hanging, as far below. The foot's lean
 * is its pitch: toes down positive.
 */
final class Layout {
    /** Standard gravity, m/s². */
    static final double GRAVITY = Measures.STANDARD_GRAVITY.si();

    /** The segments in order, without copying. */
    static final List<Segment> SEGMENTS = List.of(Segment.values());

    private static final int FOOT = Segment.FOOT.ordinal();
    private static final int SHANK = Segment.SHANK.ordinal();
    private static final int THIGH = Segment.THIGH.ordinal();
    private static final int TRUNK = Segment.TRUNK.ordinal();
    private static final int UPPER_ARM = Segment.UPPER_ARM.ordinal();
    private static final int TO_OTHER_ARM = 6;
    private static final int TO_OTHER_LEG = 7;

    private final Skeleton body;
    private final Plane plane;
    private final Parting parting;
    private final Pieces pieces;
    private final double[] leans = new double[Member.COUNT];
    private final double[] sines = new double[Member.COUNT];
    private final double[] cosines = new double[Member.COUNT];
    private final double[] startX = new double[Member.COUNT];
    private final double[] startY = new double[Member.COUNT];
    private final List<Load> loads = new ArrayList<>();
    /** What a load is in motion, by its place among the loads; without one its force stays as it is held still. */
    private final Map<Integer, Supplier<Optional<Law>>> laws = new LinkedHashMap<>();

    private final List<Function<Hand, List<Expression.Symbol>>> confirmations = new ArrayList<>();
    private final List<Sketch.Shape> scenery = new ArrayList<>();
    private final @Nullable String[] origins = new String[Member.COUNT];
    private Function<Member, @Nullable String> otherOrigins = member -> null;
    private @Nullable Found found;
    private double pressureX;
    private double anchorX;
    private double anchorY;
    private Anchor anchor = Anchor.HEEL;
    private boolean anchoredOnOther;
    private String anchorWords = "";
    private double halfHips;
    private double halfShoulders;
    /** +1 where the reported side lies at positive x, −1 where the other side does; 1 where they are alike. */
    private int side = 1;
    /** What acts in the plane of gravity, of the whole of it. */
    private double gravityShare = 1;

    private double gravityTilt;
    private int held = Member.FOOT.bit();
    private TrunkHold trunkHold = TrunkHold.WHOLE;
    private boolean palmsBack;
    private boolean swapped;
    private boolean kept;
    private Runnable showing = () -> {};
    private Support support = Support.FEET;

    /** What carries the body. */
    enum Support {
        /** Both feet, or one, on the floor: everything above a joint is known. */
        FEET,
        /** A seat that holds the knee in its place: only what hangs beyond a joint is known. */
        SEAT,
        /** Hands and feet on the floor: the hands' force is among the loads, and so all above a joint is known. */
        HANDS_AND_FEET,
        /** Something holds some of the segments; what other contacts give is among the loads. */
        HELD
    }

    /**
     * What balance was asked for.
     *
     * @param segment the segment whose lean was sought
     * @param balanced whether the pressure could be brought to the chosen place
     */
    record Found(Segment segment, boolean balanced) {}

    Layout(Skeleton body) {
        this(body, Plane.SAGITTAL, Parting.NONE);
    }

    Layout(Skeleton body, Plane plane, Parting parting) {
        this.body = body;
        this.plane = plane;
        this.parting = parting;
        this.pieces = body.pieces(parting);
    }

    Skeleton body() {
        return body;
    }

    Plane plane() {
        return plane;
    }

    Parting parting() {
        return parting;
    }

    Pieces pieces() {
        return pieces;
    }

    /** Keeps hips and shoulders apart, m from the trunk's line on either side; −1 turns the reported side to negative x. */
    void apart(double hips, double shoulders, int sideOfReport) {
        halfHips = hips;
        halfShoulders = shoulders;
        side = sideOfReport;
    }

    /** How far the reported or other side's hip lies from the trunk's line, to positive x for an upright trunk, m. */
    double hipOffset(boolean other) {
        return other ? -side * halfHips : side * halfHips;
    }

    /** How far that side's shoulder lies from the trunk's line, likewise, m. */
    double shoulderOffset(boolean other) {
        return other ? -side * halfShoulders : side * halfShoulders;
    }

    /** +1 for the side at positive x, or where both are alike; −1 for that at negative x. */
    int side() {
        return side;
    }

    /** Sets what part of gravity acts in the plane: the cosine of its tilt; 0 where it acts square to the plane. */
    void gravityTilt(double tilt) {
        gravityTilt = tilt;
        gravityShare = Trigonometry.cosine(tilt);
    }

    /** Says that gravity acts square to the plane. */
    void noGravity() {
        gravityTilt = Measures.deg(90).si();
        gravityShare = 0;
    }

    double gravityTilt() {
        return gravityTilt;
    }

    double gravityShare() {
        return gravityShare;
    }

    /** Gravity in the plane, downwards, m/s². */
    double gravity() {
        return GRAVITY * gravityShare;
    }

    /** Sets the lean of a segment, rad. */
    void lean(Segment segment, double lean) {
        lean(Member.of(segment), lean);
    }

    /** Sets the lean of a member, rad. */
    void lean(Member member, double lean) {
        int k = member.ordinal();
        if (leans[k] == lean && (sines[k] != 0 || cosines[k] != 0)) {
            return;
        }
        leans[k] = lean;
        Trigonometry.sineAndCosine(lean, sines, cosines, k);
    }

    /** Sets the lean of a segment by its sine and cosine; {@link #settle} computes the angle. */
    void leanBySine(Segment segment, double sine, double cosine) {
        leanBySine(Member.of(segment), sine, cosine);
    }

    /** Sets the lean of a member by its sine and cosine. */
    void leanBySine(Member member, double sine, double cosine) {
        int k = member.ordinal();
        leans[k] = Double.NaN;
        sines[k] = sine;
        cosines[k] = cosine;
    }

    /** Gives a segment the same lean as another one. */
    void leanLike(Segment segment, Segment other) {
        int k = segment.ordinal();
        leans[k] = leans[other.ordinal()];
        sines[k] = sines[other.ordinal()];
        cosines[k] = cosines[other.ordinal()];
    }

    /** Computes the angle of a lean that was set by its sine and cosine. */
    void settle(Segment segment) {
        int k = segment.ordinal();
        leans[k] = Trigonometry.arcTangent(sines[k], cosines[k]);
    }

    /** Places heel, ankle, knee, hip and shoulder from the leans of foot, shank, thigh and trunk; the heel at a height. */
    void placeLegsAndTrunk(double heelHeight) {
        anchorAt(Anchor.HEEL, 0, heelHeight);
        placeLegsAndTrunk();
    }

    /** Gives the place of the anchor, m. */
    void anchorAt(Anchor what, double x, double y) {
        anchor = what;
        anchorX = x;
        anchorY = y;
    }

    /** Gives the place of the anchor on the other side, m. */
    void anchorOtherAt(Anchor what, double x, double y) {
        anchorAt(what, x, y);
        anchoredOnOther = true;
    }

    /** Says what the anchor's place is, for the working. */
    void anchorWords(String words) {
        anchorWords = words;
    }

    Anchor anchor() {
        return anchor;
    }

    boolean anchoredOnOther() {
        return anchoredOnOther;
    }

    String anchorWords() {
        return anchorWords;
    }

    /** Places ankle and heel below a knee that a seat holds in its place, hip and shoulder beyond it. */
    void placeFromKnee(double x, double y) {
        anchorAt(Anchor.KNEE, x, y);
        placeLegsAndTrunk();
    }

    /** Places trunk and legs, and an arm that holds the anchor, from the leans set so far. */
    void placeLegsAndTrunk() {
        if (anchor.onLeg()) {
            placeTrunkFromLeg(anchoredOnOther ? TO_OTHER_LEG : 0);
        } else if (anchor.onArm()) {
            placeTrunkFromArm(anchoredOnOther ? TO_OTHER_ARM : 0);
        } else {
            double back = anchor == Anchor.HIP ? 0 : body.length(TRUNK);
            startX[TRUNK] = anchorX - back * sines[TRUNK];
            startY[TRUNK] = anchorY - back * cosines[TRUNK];
        }
        if (!anchor.onLeg() || anchoredOnOther) {
            hangLeg(false);
        }
        if (parting.isSplit(Segment.THIGH) && !(anchor.onLeg() && anchoredOnOther)) {
            hangLeg(true);
        }
        placeShoulders();
    }

    private void placeTrunkFromLeg(int shift) {
        int foot = FOOT + shift;
        int shank = SHANK + shift;
        int thigh = THIGH + shift;
        if (anchor == Anchor.HEEL) {
            startX[foot] = anchorX;
            startY[foot] = anchorY;
            startX[shank] = anchorX + (ankleAlong() * cosines[foot] + body.ankleAcross() * sines[foot]);
            startY[shank] = anchorY - ankleAlong() * sines[foot] + body.ankleAcross() * cosines[foot];
        } else if (anchor == Anchor.ANKLE) {
            startX[shank] = anchorX;
            startY[shank] = anchorY;
        } else {
            startX[thigh] = anchorX;
            startY[thigh] = anchorY;
            startX[shank] = anchorX - body.length(SHANK) * sines[shank];
            startY[shank] = anchorY - body.length(SHANK) * cosines[shank];
        }
        if (anchor != Anchor.HEEL) {
            placeHeel(shift);
        }
        if (anchor != Anchor.KNEE) {
            startX[thigh] = startX[shank] + body.length(SHANK) * sines[shank];
            startY[thigh] = startY[shank] + body.length(SHANK) * cosines[shank];
        }
        double offset = hipOffset(shift > 0);
        startX[TRUNK] = startX[thigh] + body.length(THIGH) * sines[thigh];
        startY[TRUNK] = startY[thigh] + body.length(THIGH) * cosines[thigh];
        if (offset != 0) {
            startX[TRUNK] -= offset * cosines[TRUNK];
            startY[TRUNK] += offset * sines[TRUNK];
        }
    }

    private void placeHeel(int shift) {
        int foot = FOOT + shift;
        int shank = SHANK + shift;
        startX[foot] = startX[shank] - ankleAlong() * cosines[foot] - body.ankleAcross() * sines[foot];
        startY[foot] = startY[shank] + ankleAlong() * sines[foot] - body.ankleAcross() * cosines[foot];
    }

    /** Places knee, ankle and heel of a leg that hangs on its hip. */
    void hangLeg(boolean other) {
        int shift = other ? TO_OTHER_LEG : 0;
        int thigh = THIGH + shift;
        int shank = SHANK + shift;
        startX[thigh] = hipX(other) - body.length(THIGH) * sines[thigh];
        startY[thigh] = hipY(other) - body.length(THIGH) * cosines[thigh];
        startX[shank] = startX[thigh] - body.length(SHANK) * sines[shank];
        startY[shank] = startY[thigh] - body.length(SHANK) * cosines[shank];
        placeHeel(shift);
    }

    private void placeTrunkFromArm(int shift) {
        int upper = UPPER_ARM + shift;
        int fore = upper + 1;
        int hand = fore + 1;
        double x = anchorX;
        double y = anchorY;
        if (anchor == Anchor.GRIP) {
            x -= body.gripAlong() * sines[hand];
            y += body.gripAlong() * cosines[hand];
        }
        if (anchor != Anchor.ELBOW) {
            startX[hand] = x;
            startY[hand] = y;
            x -= body.length(UPPER_ARM + 1) * sines[fore];
            y += body.length(UPPER_ARM + 1) * cosines[fore];
        }
        startX[fore] = x;
        startY[fore] = y;
        if (anchor == Anchor.ELBOW) {
            startX[hand] = x + body.length(UPPER_ARM + 1) * sines[fore];
            startY[hand] = y - body.length(UPPER_ARM + 1) * cosines[fore];
        }
        startX[upper] = x - body.length(UPPER_ARM) * sines[upper];
        startY[upper] = y + body.length(UPPER_ARM) * cosines[upper];
        double offset = shoulderOffset(shift > 0);
        startX[TRUNK] = startX[upper] - offset * cosines[TRUNK] - body.length(TRUNK) * sines[TRUNK];
        startY[TRUNK] = startY[upper] + offset * sines[TRUNK] - body.length(TRUNK) * cosines[TRUNK];
    }

    /** Places the shoulders at the trunk's end, and apart where the plane shows them so. */
    private void placeShoulders() {
        double x = startX[TRUNK] + trunkLength() * sines[TRUNK];
        double y = startY[TRUNK] + trunkLength() * cosines[TRUNK];
        startX[UPPER_ARM] = x;
        startY[UPPER_ARM] = y;
        if (halfShoulders != 0) {
            shoulder(UPPER_ARM, shoulderOffset(false), x, y);
            shoulder(UPPER_ARM + TO_OTHER_ARM, shoulderOffset(true), x, y);
        } else if (parting.isSplit(Segment.UPPER_ARM)) {
            startX[UPPER_ARM + TO_OTHER_ARM] = x;
            startY[UPPER_ARM + TO_OTHER_ARM] = y;
        }
    }

    private void shoulder(int upperArm, double offset, double x, double y) {
        startX[upperArm] = x + offset * cosines[TRUNK];
        startY[upperArm] = y - offset * sines[TRUNK];
    }

    /** Length of the trunk as the plane shows it, m: seen from the head, none. */
    double trunkLength() {
        return plane == Plane.TRANSVERSE ? 0 : body.length(TRUNK);
    }

    /** Distance of the ankle ahead of the heel as the plane shows it, m. */
    double ankleAlong() {
        return plane == Plane.FRONTAL ? 0 : body.ankleAlong();
    }

    /** Distance of the foot's mass centre ahead of the heel as the plane shows it, m. */
    double footCentreAlong() {
        return plane == Plane.FRONTAL ? 0 : body.centre(FOOT);
    }

    /** Length of the foot as the plane shows it, m. */
    double footLength() {
        return plane == Plane.FRONTAL ? 0 : body.length(FOOT);
    }

    /** Places elbow and wrist from the leans of upper arm and forearm. */
    void placeArms() {
        placeArm(false);
        if (parting.isSplit(Segment.UPPER_ARM)) {
            placeArm(true);
        }
    }

    private void placeArm(boolean other) {
        int upper = other ? UPPER_ARM + TO_OTHER_ARM : UPPER_ARM;
        hang(upper, body.length(UPPER_ARM));
        hang(upper + 1, body.length(UPPER_ARM + 1));
    }

    private void hang(int k, double length) {
        startX[k + 1] = startX[k] + length * sines[k];
        startY[k + 1] = startY[k] - (length * cosines[k]);
    }

    /** Adds a load and what it is in motion, if more is known than its force held still. */
    void add(Load load, Optional<Law> inMotion) {
        addMoving(load, () -> inMotion);
    }

    /** The same, where what it is in motion is worked out when it is asked for. */
    void addMoving(Load load, Supplier<Optional<Law>> inMotion) {
        laws.put(loads.size(), inMotion);
        loads.add(load);
    }

    /** Returns what the load with an index is in motion, if more is known than its force held still. */
    Optional<Law> inMotion(int index) {
        Supplier<Optional<Law>> law = laws.get(index);
        return law == null ? Optional.empty() : law.get();
    }

    void add(Load load) {
        loads.add(load);
    }

    /** Takes all loads away, so that a search can lay them out again. */
    void clearLoads() {
        loads.clear();
        laws.clear();
    }

    /** Adds something to the figure that is no part of the body: a bench, a wall, a cable. */
    void show(Sketch.Shape shape) {
        scenery.add(shape);
    }

    /** Says what is to be shown, when a figure is asked for. */
    void showing(Runnable what) {
        showing = what;
    }

    List<Sketch.Shape> scenery() {
        scenery.clear();
        showing.run();
        return List.copyOf(scenery);
    }

    /** Says where the lean of a segment comes from, for the working. */
    void origin(Segment segment, String words) {
        origin(Member.of(segment), words);
    }

    /** Says where the lean of a member comes from, for the working. */
    void origin(Member member, String words) {
        origins[member.ordinal()] = words;
    }

    /** Says where the leans come from that have no words of their own, when they are asked for. */
    void originsBy(Function<Member, @Nullable String> words) {
        otherOrigins = words;
    }

    String origin(Segment segment) {
        return origin(Member.of(segment));
    }

    String origin(Member member) {
        String words = origins[member.ordinal()];
        if (words == null) {
            words = otherOrigins.apply(member);
        }
        return words == null ? "set by the exercise" : words;
    }

    /** Says where the pressure of the feet is meant to lie, m ahead of the heel. */
    void pressureAt(double x) {
        pressureX = x;
    }

    double pressureX() {
        return pressureX;
    }

    void found(Found what) {
        found = what;
    }

    /** Adds a rule that writes, into a hand calculation, lines which confirm what was found, and returns their results; see {@link #confirmations}. */
    void confirm(Function<Hand, List<Expression.Symbol>> lines) {
        confirmations.add(lines);
    }

    List<Function<Hand, List<Expression.Symbol>>> confirmations() {
        return confirmations;
    }

    /** Says that the palms face back when the arms hang (overhand grip, hands flat on the floor), not forward. */
    void palmsBack() {
        palmsBack = true;
    }

    boolean hasPalmsBack() {
        return palmsBack;
    }

    /**
     * {@link Joint#counterClockwise} in this plane and for these palms: turning them changes flexion and extension of the
     * wrist; at negative x a limb turns the other way.
     */
    int counterClockwise(Joint joint) {
        int sign = plane.counterClockwise(joint);
        boolean isLimb = joint != Joint.LOW_BACK && joint != Joint.NECK;
        if (joint == Joint.WRIST && palmsBack && plane == Plane.SAGITTAL) {
            sign = -sign;
        }
        return isLimb ? side * sign : sign;
    }

    void supportedBy(Support what) {
        support = what;
        if (what == Support.SEAT) {
            held = Member.THIGH.bit() | Member.TRUNK.bit();
        }
    }

    /** Says on which members the body stands, where they are not the feet of the reported side. */
    void standsOn(int members) {
        held = members;
    }

    /** Says that the working side is the other one here. */
    void swap() {
        swapped = true;
    }

    boolean isSwapped() {
        return swapped;
    }

    /** Says that what holds these members gives forces that are not known beforehand; contacts elsewhere are loads. */
    void heldAt(int members) {
        support = Support.HELD;
        held = members;
    }

    /** Which part of a trunk that is held touches what holds it. */
    enum TrunkHold {
        /** Both parts, or nobody knows which. */
        WHOLE,
        /** The part below the low back: a seat without a backrest. */
        PELVIS,
        /** The part above the low back: a bench under the shoulders. */
        BACK;

        boolean touches(boolean aboveLowBack) {
            return this == WHOLE || (this == BACK) == aboveLowBack;
        }
    }

    /** Says which part of the trunk is held. */
    void trunkHeldBy(TrunkHold part) {
        trunkHold = part;
    }

    /** Returns the bits of the members that something not known beforehand holds. */
    int held() {
        return held;
    }

    /** Tells whether the trunk's part on one side of the low back is held. */
    boolean holdsTrunk(boolean aboveLowBack) {
        return (held & Member.TRUNK.bit()) != 0 && trunkHold.touches(aboveLowBack);
    }

    @Nullable
    Found found() {
        return found;
    }

    Support support() {
        return support;
    }

    /** Tells whether all that carries the body are its feet, on which it could fall over. */
    boolean standsOnFeet() {
        return support == Support.FEET;
    }

    /** Tells whether the floor's reaction at the feet is what remains. */
    boolean endsAtFeet() {
        return support == Support.FEET || support == Support.HANDS_AND_FEET;
    }

    List<Load> loads() {
        return loads;
    }

    /** Says that a force which follows keeps the pressure at its place, so that no angle is sought. */
    void keptInBalance() {
        kept = true;
    }

    boolean isKeptInBalance() {
        return kept;
    }

    /** What the floor gives back to the hands. */
    Load hands() {
        for (Load load : loads) {
            if (load.reaction()) {
                return load;
            }
        }
        throw new IllegalStateException("no hands stand on the floor");
    }

    double lean(Segment segment) {
        return leans[segment.ordinal()];
    }

    double lean(Member member) {
        return leans[member.ordinal()];
    }

    double sine(Segment segment) {
        return sines[segment.ordinal()];
    }

    double sine(Member member) {
        return sines[member.ordinal()];
    }

    double cosine(Segment segment) {
        return cosines[segment.ordinal()];
    }

    double cosine(Member member) {
        return cosines[member.ordinal()];
    }

    double startX(Segment segment) {
        return startX[segment.ordinal()];
    }

    double startX(Member member) {
        return startX[member.ordinal()];
    }

    double startY(Segment segment) {
        return startY[segment.ordinal()];
    }

    double startY(Member member) {
        return startY[member.ordinal()];
    }

    /** Returns +1 where a segment points up from its start, −1 where it hangs. */
    static int upward(Member member) {
        return member.isArm() ? -1 : 1;
    }

    /** x of a point on a segment (not the foot) at a distance from its start, m. */
    double alongX(Segment segment, double along) {
        return alongX(Member.of(segment), along);
    }

    /** x of a point on a member (not the foot) at a distance from its start, m. */
    double alongX(Member member, double along) {
        return startX(member) + along * sine(member);
    }

    /** y of a point on a segment (not the foot) at a distance from its start, m. */
    double alongY(Segment segment, double along) {
        return alongY(Member.of(segment), along);
    }

    /** y of a point on a member (not the foot) at a distance from its start, m. */
    double alongY(Member member, double along) {
        return startY(member) + upward(member) * (along * cosine(member));
    }

    /** x of a segment's mass centre, m. */
    double centreX(Segment segment) {
        return centreX(Member.of(segment));
    }

    /** y of a segment's mass centre, m. */
    double centreY(Segment segment) {
        return centreY(Member.of(segment));
    }

    /** x of a member's mass centre, m. */
    double centreX(Member member) {
        int k = member.ordinal();
        return member.segment() == Segment.FOOT
                ? startX[k] + footCentreAlong() * cosines[k] + body.footCentreAcross() * sines[k]
                : startX[k] + body.centre(member.segment()) * sines[k];
    }

    /** y of a member's mass centre, m. */
    double centreY(Member member) {
        int k = member.ordinal();
        return member.segment() == Segment.FOOT
                ? startY[k] - footCentreAlong() * sines[k] + body.footCentreAcross() * cosines[k]
                : startY[k] + upward(member) * (body.centre(member.segment()) * cosines[k]);
    }

    private double hipX(boolean other) {
        double offset = hipOffset(other);
        return offset == 0 ? startX[TRUNK] : startX[TRUNK] + offset * cosines[TRUNK];
    }

    private double hipY(boolean other) {
        double offset = hipOffset(other);
        return offset == 0 ? startY[TRUNK] : startY[TRUNK] - offset * sines[TRUNK];
    }

    /** x of a joint, m. */
    double jointX(Joint joint) {
        return jointX(joint, false);
    }

    /** y of a joint, m. */
    double jointY(Joint joint) {
        return jointY(joint, false);
    }

    /** x of a joint of the reported or the other side, m. */
    double jointX(Joint joint, boolean other) {
        return switch (joint) {
            case LOW_BACK -> alongX(Segment.TRUNK, body.lowBackAlong());
            case NECK -> alongX(Segment.TRUNK, body.neckAlong());
            case HIP -> hipX(other);
            default -> startX(Member.of(above(joint), other));
        };
    }

    /** y of a joint of the reported or the other side, m. */
    double jointY(Joint joint, boolean other) {
        return switch (joint) {
            case LOW_BACK -> alongY(Segment.TRUNK, body.lowBackAlong());
            case NECK -> alongY(Segment.TRUNK, body.neckAlong());
            case HIP -> hipY(other);
            default -> startY(Member.of(above(joint), other));
        };
    }

    /** Returns the segment that starts at a joint, going up from the feet and out along the arms. */
    static Segment above(Joint joint) {
        return switch (joint) {
            case ANKLE -> Segment.SHANK;
            case KNEE -> Segment.THIGH;
            case HIP, LOW_BACK, NECK -> Segment.TRUNK;
            case SHOULDER -> Segment.UPPER_ARM;
            case ELBOW -> Segment.FOREARM;
            case WRIST -> Segment.HAND;
        };
    }

    /** x of the hand's grip, m. */
    double gripX() {
        return alongX(Segment.HAND, body.gripAlong());
    }

    /** y of the hand's grip, m. */
    double gripY() {
        return alongY(Segment.HAND, body.gripAlong());
    }

    /** Σ m·(x − at) over all segments, both sides, kg·m; loads left out. */
    double massMomentAbout(double at) {
        double sum = 0;
        for (int k = 0; k < Member.COUNT; k++) {
            double mass = pieces.mass(k);
            if (mass > 0) {
                Member member = Member.ALL.get(k);
                sum += mass * (centreX(member) - at);
            }
        }
        return sum;
    }
}

package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;
import org.jspecify.annotations.Nullable;

/**
 * Where the segments of a body lie, and the loads on them. An exercise fills it, then leaves it alone.
 *
 * <p>Segments are indexed as {@link Segment} lists them. x is forward of the back of the heel (of
 * the knee where a seat carries), y above the floor, m. A lean is
 * measured from the vertical, forward positive, along shank, thigh and trunk upwards and along the arms downwards: the end of
 * a segment lies L·sin(lean) ahead of its start and, standing, L·cos(lean) above, hanging, as far below. The foot's lean
 * is its pitch: toes down positive.
 */
final class Layout {
    /** Standard gravity, m/s². */
    static final double GRAVITY = Measures.STANDARD_GRAVITY.si();

    private static final int FOOT = Segment.FOOT.ordinal();
    private static final int SHANK = Segment.SHANK.ordinal();
    private static final int TRUNK = Segment.TRUNK.ordinal();
    private static final int UPPER_ARM = Segment.UPPER_ARM.ordinal();
    private static final int SIZE = Segment.values().length;

    private final Skeleton body;
    private final double[] leans = new double[SIZE];
    private final double[] sines = new double[SIZE];
    private final double[] cosines = new double[SIZE];
    private final double[] startX = new double[SIZE];
    private final double[] startY = new double[SIZE];
    private final List<Load> loads = new ArrayList<>();
    private final List<Function<Hand, List<Expression.Symbol>>> confirmations = new ArrayList<>();
    private final @Nullable String[] origins = new String[SIZE];
    private @Nullable Found found;
    private double pressureX;
    private boolean palmsBack;
    private Support support = Support.FEET;

    /** What carries the body. */
    enum Support {
        /** Both feet on the floor: everything above a joint is known. */
        FEET,
        /** A seat or bench: only what hangs beyond a joint is known. */
        SEAT,
        /** Hands and feet on the floor: the hands' force is among the loads, and so all above a joint is known. */
        HANDS_AND_FEET
    }

    /**
     * What balance was asked for.
     *
     * @param segment the segment whose lean was sought
     * @param balanced whether the pressure could be brought to the chosen place
     */
    record Found(Segment segment, boolean balanced) {}

    Layout(Skeleton body) {
        this.body = body;
    }

    Skeleton body() {
        return body;
    }

    /** Sets the lean of a segment, rad. */
    void lean(Segment segment, double lean) {
        int k = segment.ordinal();
        leans[k] = lean;
        Trigonometry.sineAndCosine(lean, sines, cosines, k);
    }

    /** Sets the lean of a segment by its sine and cosine; {@link #settle} computes the angle. */
    void leanBySine(Segment segment, double sine, double cosine) {
        int k = segment.ordinal();
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
        startX[FOOT] = 0;
        startY[FOOT] = heelHeight;
        startX[SHANK] = body.ankleAlong() * cosines[FOOT] + body.ankleAcross() * sines[FOOT];
        startY[SHANK] = heelHeight - body.ankleAlong() * sines[FOOT] + body.ankleAcross() * cosines[FOOT];
        for (int k = SHANK; k < UPPER_ARM; k++) {
            next(k, 1);
        }
    }

    /** Places ankle and heel below a knee that a seat holds in its place, hip and shoulder beyond it. */
    void placeFromKnee(double x, double y) {
        int knee = SHANK + 1;
        startX[knee] = x;
        startY[knee] = y;
        startX[SHANK] = x - body.length(SHANK) * sines[SHANK];
        startY[SHANK] = y - body.length(SHANK) * cosines[SHANK];
        startX[FOOT] = startX[SHANK] - body.ankleAlong() * cosines[FOOT] - body.ankleAcross() * sines[FOOT];
        startY[FOOT] = startY[SHANK] + body.ankleAlong() * sines[FOOT] - body.ankleAcross() * cosines[FOOT];
        for (int k = knee; k < UPPER_ARM; k++) {
            next(k, 1);
        }
    }

    /** Places elbow and wrist from the leans of upper arm and forearm. */
    void placeArms() {
        next(UPPER_ARM, -1);
        next(UPPER_ARM + 1, -1);
    }

    private void next(int k, int upward) {
        startX[k + 1] = startX[k] + body.length(k) * sines[k];
        startY[k + 1] = startY[k] + upward * (body.length(k) * cosines[k]);
    }

    void add(Load load) {
        loads.add(load);
    }

    /** Says where the lean of a segment comes from, for the working. */
    void origin(Segment segment, String words) {
        origins[segment.ordinal()] = words;
    }

    String origin(Segment segment) {
        String words = origins[segment.ordinal()];
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

    /** {@link Joint#counterClockwise} for these palms: turning them changes flexion and extension of the wrist. */
    int counterClockwise(Joint joint) {
        return joint == Joint.WRIST && palmsBack ? -joint.counterClockwise() : joint.counterClockwise();
    }

    void supportedBy(Support what) {
        support = what;
    }

    @Nullable
    Found found() {
        return found;
    }

    Support support() {
        return support;
    }

    List<Load> loads() {
        return loads;
    }

    double lean(Segment segment) {
        return leans[segment.ordinal()];
    }

    double sine(Segment segment) {
        return sines[segment.ordinal()];
    }

    double cosine(Segment segment) {
        return cosines[segment.ordinal()];
    }

    double startX(Segment segment) {
        return startX[segment.ordinal()];
    }

    double startY(Segment segment) {
        return startY[segment.ordinal()];
    }

    /** Returns +1 where a segment points up from its start, −1 where it hangs. */
    static int upward(Segment segment) {
        return segment.ordinal() < UPPER_ARM ? 1 : -1;
    }

    /** x of a point on a segment (not the foot) at a distance from its start, m. */
    double alongX(Segment segment, double along) {
        return startX(segment) + along * sine(segment);
    }

    /** y of a point on a segment (not the foot) at a distance from its start, m. */
    double alongY(Segment segment, double along) {
        return startY(segment) + upward(segment) * (along * cosine(segment));
    }

    /** x of a segment's mass centre, m. */
    double centreX(Segment segment) {
        int k = segment.ordinal();
        return k == FOOT
                ? startX[k] + body.centre(k) * cosines[k] + body.footCentreAcross() * sines[k]
                : startX[k] + body.centre(k) * sines[k];
    }

    /** y of a segment's mass centre, m. */
    double centreY(Segment segment) {
        int k = segment.ordinal();
        return k == FOOT
                ? startY[k] - body.centre(k) * sines[k] + body.footCentreAcross() * cosines[k]
                : startY[k] + upward(segment) * (body.centre(k) * cosines[k]);
    }

    /** x of a joint, m. */
    double jointX(Joint joint) {
        return switch (joint) {
            case LOW_BACK -> alongX(Segment.TRUNK, body.lowBackAlong());
            case NECK -> alongX(Segment.TRUNK, body.neckAlong());
            default -> startX(above(joint));
        };
    }

    /** y of a joint, m. */
    double jointY(Joint joint) {
        return switch (joint) {
            case LOW_BACK -> alongY(Segment.TRUNK, body.lowBackAlong());
            case NECK -> alongY(Segment.TRUNK, body.neckAlong());
            default -> startY(above(joint));
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
        double foot = startX[FOOT] + body.centre(FOOT) * cosines[FOOT] + body.footCentreAcross() * sines[FOOT];
        double sum = body.mass(FOOT) * (foot - at);
        for (int k = SHANK; k < SIZE; k++) {
            sum += body.mass(k) * (startX[k] + body.centre(k) * sines[k] - at);
        }
        return sum;
    }

    /** The segments in order, without copying. */
    static final List<Segment> SEGMENTS = List.of(Segment.values());

    /** Returns the index of the trunk, above which the arms hang. */
    static boolean isArm(Segment segment) {
        return segment.ordinal() > TRUNK;
    }
}

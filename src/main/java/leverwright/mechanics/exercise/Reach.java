package leverwright.mechanics.exercise;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;

/**
 * A limb that bends so that its end lies at a place: hands on a bar, a foot on the floor. Hand and forearm lie in one line,
 * unless the wrist is what has a place.
 *
 * @param upper upper arm or thigh, of either side of the rules
 * @param target where the grip, or the ankle, is meant to be
 * @param bend 1 where the elbow bends by turning the forearm counter-clockwise, −1 clockwise; 1 for a knee that points ahead
 * @param toWrist whether the wrist is to be there, and the hand leans by its own rule
 */
record Reach(Member upper, Target target, int bend, boolean toWrist) {
    /** A limb whose grip, or ankle, is to be at a place. */
    Reach(Member upper, Target target, int bend) {
        this(upper, target, bend, false);
    }

    /** A place that may follow from knobs and from the posture of the trunk. */
    interface Target {
        double x(Work work);

        double y(Work work);

        /** How x or y follows, for the working. */
        Expression in(Hand hand, Work work, boolean isX);
    }

    /** Reach beyond the limb's length, m, that is rounding of a search. */
    private static final double ROUNDING = 1e-9;

    private double palm(Layout layout) {
        return isArm() && !toWrist ? layout.body().gripAlong() : 0;
    }

    private boolean isArm() {
        return upper.isArm();
    }

    private Member lower() {
        return isArm() ? Member.of(Segment.FOREARM, upper.isOther()) : Member.of(Segment.SHANK, upper.isOther());
    }

    /** Bends the limb; trunk and shoulder or hip are placed. */
    void bend(Work work) {
        Layout layout = work.layout();
        Member far = work.on(lower());
        Member near = work.on(upper);
        Joint root = isArm() ? Joint.SHOULDER : Joint.HIP;
        double x = layout.jointX(root, near.isOther());
        double y = layout.jointY(root, near.isOther());
        double toX = target.x(work) - x;
        double toY = target.y(work) - y;
        double distance = Math.sqrt(toX * toX + toY * toY);
        double one = layout.body().length(near.segment());
        double two = layout.body().length(far.segment()) + palm(layout);
        if (!work.isSearching()) {
            requireReach(distance, one, two);
        }
        double cosine = clamp((one * one + distance * distance - two * two) / (2 * one * distance));
        int turn = work.layout().plane() != Plane.SAGITTAL && upper.isOther() ? -bend : bend;
        int down = isArm() ? 1 : -1;
        if (work.isSearching()) {
            swing(work, new double[] {down * toX / distance, -toY / distance}, cosine, turn);
            return;
        }
        double straight = Trigonometry.arcTangent(down * toX, -toY);
        layout.lean(near, straight - turn * Trigonometry.arcCosine(cosine));
        double farX = target.x(work) - (x + down * one * layout.sine(near));
        double farY = target.y(work) - (y - one * layout.cosine(near));
        layout.lean(far, Trigonometry.arcTangent(down * farX, -farY));
        if (isArm() && !toWrist) {
            Member hand = work.on(Member.of(Segment.HAND, upper.isOther()));
            layout.lean(hand, layout.lean(far));
            layout.origin(hand, "in line with the forearm");
        }
        layout.origin(near, "found: the limb bends until its end is at its place, see the check");
        layout.origin(far, "found: the limb bends until its end is at its place, see the check");
    }

    /** The same by sines alone, which a search needs; straight is the sine and cosine of the lean towards the place. */
    private void swing(Work work, double[] straight, double cosine, int turn) {
        Layout layout = work.layout();
        Member near = work.on(upper);
        Member far = work.on(lower());
        double sine = turn * Math.sqrt(1 - cosine * cosine);
        layout.leanBySine(near, straight[0] * cosine - straight[1] * sine, straight[1] * cosine + straight[0] * sine);
        Joint root = isArm() ? Joint.SHOULDER : Joint.HIP;
        int down = isArm() ? 1 : -1;
        double one = layout.body().length(near.segment());
        double farX = target.x(work) - layout.jointX(root, near.isOther()) - down * one * layout.sine(near);
        double farY = target.y(work) - layout.jointY(root, near.isOther()) + one * layout.cosine(near);
        double size = Math.sqrt(farX * farX + farY * farY);
        layout.leanBySine(far, down * farX / size, -farY / size);
        if (isArm() && !toWrist) {
            layout.leanBySine(work.on(Member.of(Segment.HAND, upper.isOther())), layout.sine(far), layout.cosine(far));
        }
    }

    private static double clamp(double cosine) {
        return Math.max(-1, Math.min(1, cosine));
    }

    private void requireReach(double distance, double one, double two) {
        String what = isArm() ? "hands" : "foot";
        String from = isArm() ? "shoulder" : "hip";
        String limb = isArm() ? "arm" : "leg";
        if (!(distance <= one + two + ROUNDING)) {
            throw new ImpossibleSetting("the place of the " + what + " is " + Measures.m(distance) + " from the " + from
                    + ", but the " + limb + " reaches " + Measures.m(one + two) + "; set it nearer to the " + from);
        }
        if (distance < Math.abs(one - two) - ROUNDING || distance < 1e-6) {
            throw new ImpossibleSetting("the place of the " + what + " is " + Measures.m(distance) + " from the " + from
                    + ", nearer than the folded " + limb + " comes; set it farther from the " + from);
        }
    }

    /** Lines that confirm that the limb's end is where it is meant to be. */
    List<Expression.Symbol> confirm(Hand hand, Work work) {
        return List.of(confirm(hand, work, true), confirm(hand, work, false));
    }

    private Expression.Symbol confirm(Hand hand, Work work, boolean isX) {
        Layout layout = work.layout();
        boolean other = work.isOther(upper);
        Member palm = work.on(Member.of(Segment.HAND, upper.isOther()));
        double along = palm(layout);
        String name = (other ? "other_" : "") + (isArm() ? (toWrist ? "wrist" : "grip") : "ankle");
        double at;
        Expression end;
        if (isArm()) {
            at = isX ? layout.alongX(palm, along) : layout.alongY(palm, along);
            end = toWrist ? hand.joint(Joint.WRIST, other, isX) : hand.along(palm, Joint.WRIST, hand.gripAlong(), isX);
        } else {
            at = isX ? layout.jointX(Joint.ANKLE, other) : layout.jointY(Joint.ANKLE, other);
            end = hand.joint(Joint.ANKLE, other, isX);
        }
        double meant = isX ? target.x(work) : target.y(work);
        return hand.step(
                (isX ? "x_" : "y_") + name + "_less_place",
                end.minus(target.in(hand, work, isX)),
                Length.of(at - meant),
                "vanishes: this decided the leans of the limb");
    }
}

package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.working.Expression;

/** Writes into a hand calculation how joints follow from the anchor of a layout, segment by segment. */
final class HandPlaces {
    private final Hand hand;
    private final Layout layout;

    HandPlaces(Hand hand, Layout layout) {
        this.hand = hand;
        this.layout = layout;
    }

    /** Whether the other side's joint lies elsewhere than the reported side's. */
    boolean hasOwn(Joint joint) {
        return switch (joint) {
            case ANKLE, KNEE -> layout.parting().isSplit(joint);
            case HIP -> layout.hipOffset(true) != 0;
            case SHOULDER -> layout.shoulderOffset(true) != 0;
            case ELBOW, WRIST -> layout.parting().isSplit(joint);
            case LOW_BACK, NECK -> false;
        };
    }

    private boolean anchored(boolean other) {
        return layout.anchoredOnOther() == other;
    }

    /** Whether a joint's place is given: it is the anchor. */
    boolean isGiven(Joint joint, boolean other) {
        return switch (layout.anchor()) {
            case ANKLE -> joint == Joint.ANKLE && anchored(other);
            case KNEE -> joint == Joint.KNEE && anchored(other);
            case HIP -> joint == Joint.HIP && layout.hipOffset(false) == 0;
            case SHOULDER -> joint == Joint.SHOULDER && layout.shoulderOffset(false) == 0;
            case ELBOW -> joint == Joint.ELBOW && anchored(other);
            case WRIST -> joint == Joint.WRIST && anchored(other);
            case HEEL, GRIP -> false;
        };
    }

    String givenWords(Joint joint, boolean isX) {
        if (layout.support() == Layout.Support.SEAT) {
            return isX ? "the knee, from which x counts" : "height of the knee on the seat";
        }
        String words = layout.anchorWords().isEmpty() ? "from which all places count" : layout.anchorWords();
        return "the " + joint.words() + ", " + words;
    }

    /** Whether a foot's places count from its heel: not where its leg hangs on hip or knee. */
    boolean standsOnHeel(Member foot) {
        return layout.anchor() == Anchor.HEEL && anchored(foot.isOther());
    }

    Expression formula(Joint joint, boolean other, boolean isX) {
        return switch (joint) {
            case ANKLE -> ankle(other, isX);
            case KNEE -> knee(other, isX);
            case HIP -> hip(other, isX);
            case LOW_BACK -> onTrunk(hand.lowBackAlong(), isX);
            case NECK -> onTrunk(hand.neckAlong(), isX);
            case SHOULDER -> shoulder(other, isX);
            case ELBOW -> elbow(other, isX);
            case WRIST -> wrist(other, isX);
        };
    }

    private Expression ankle(boolean other, boolean isX) {
        Member foot = Member.of(Segment.FOOT, other);
        if (standsOnHeel(foot)) {
            return hand.onFoot(foot, hand.ankleAlong(), hand.ankleAcross(), isX);
        }
        return hand.back(Member.of(Segment.SHANK, other), Joint.KNEE, hand.length(Segment.SHANK), isX);
    }

    private Expression knee(boolean other, boolean isX) {
        if (layout.anchor().onLeg() && anchored(other)) {
            return hand.along(Member.of(Segment.SHANK, other), Joint.ANKLE, hand.length(Segment.SHANK), isX);
        }
        return hand.back(Member.of(Segment.THIGH, other), Joint.HIP, hand.length(Segment.THIGH), isX);
    }

    private Expression hip(boolean other, boolean isX) {
        if (layout.anchor().onLeg() && (anchored(other) || layout.hipOffset(false) == 0)) {
            boolean from = layout.anchoredOnOther();
            return hand.along(Member.of(Segment.THIGH, from), Joint.KNEE, hand.length(Segment.THIGH), isX);
        }
        double offset = layout.hipOffset(other);
        if (offset == 0) {
            return shoulders(isX).minus(trunkPart(hand.length(Segment.TRUNK), isX));
        }
        return aside(pelvis(isX), offset, "s_hip", "hip beside the trunk's line", isX);
    }

    /** The trunk's lower end: the hip where both are one, else the middle between them. */
    private Expression.Symbol pelvis(boolean isX) {
        if (layout.hipOffset(false) == 0) {
            return hand.joint(Joint.HIP, false, isX);
        }
        double value = isX ? layout.startX(Member.TRUNK) : layout.startY(Member.TRUNK);
        String name = isX ? "x_pelvis" : "y_pelvis";
        if (layout.anchor() == Anchor.HIP) {
            return hand.place(name, value, "the middle between the hips, " + given());
        }
        Expression formula;
        if (layout.anchor().onLeg()) {
            boolean from = layout.anchoredOnOther();
            Expression leg = hand.joint(Joint.HIP, from, isX);
            formula = aside(leg, -layout.hipOffset(from), "s_hip", "hip beside the trunk's line", isX);
        } else {
            formula = shoulders(isX).minus(trunkPart(hand.length(Segment.TRUNK), isX));
        }
        return hand.middle(name, formula, value);
    }

    private String given() {
        return layout.anchorWords().isEmpty() ? "from which all places count" : layout.anchorWords();
    }

    /** The trunk's upper end: the shoulder where both are one, else the middle between them. */
    Expression.Symbol shoulders(boolean isX) {
        if (layout.shoulderOffset(false) == 0) {
            return hand.joint(Joint.SHOULDER, false, isX);
        }
        double along = layout.trunkLength();
        double value = isX ? layout.alongX(Member.TRUNK, along) : layout.alongY(Member.TRUNK, along);
        String name = isX ? "x_shoulders" : "y_shoulders";
        if (layout.anchor() == Anchor.SHOULDER || layout.plane() == Plane.TRANSVERSE) {
            return hand.place(name, value, "the middle between the shoulders, " + given());
        }
        Expression formula;
        if (layout.anchor().onArm()) {
            boolean from = layout.anchoredOnOther();
            Expression arm = hand.joint(Joint.SHOULDER, from, isX);
            formula = aside(arm, -layout.shoulderOffset(from), "s_shoulder", "shoulder beside the trunk's line", isX);
        } else {
            formula = onTrunk(hand.length(Segment.TRUNK), isX);
        }
        return hand.middle(name, formula, value);
    }

    private Expression shoulder(boolean other, boolean isX) {
        if (layout.anchor().onArm() && (anchored(other) || layout.shoulderOffset(false) == 0)) {
            boolean from = layout.anchoredOnOther();
            return hand.back(Member.of(Segment.UPPER_ARM, from), Joint.ELBOW, hand.length(Segment.UPPER_ARM), isX);
        }
        double offset = layout.shoulderOffset(other);
        if (offset == 0) {
            return onTrunk(hand.length(Segment.TRUNK), isX);
        }
        return aside(shoulders(isX), offset, "s_shoulder", "shoulder beside the trunk's line", isX);
    }

    private Expression elbow(boolean other, boolean isX) {
        Member forearm = Member.of(Segment.FOREARM, other);
        if (isAnchorBeyondElbow() && anchored(other)) {
            return hand.back(forearm, Joint.WRIST, hand.length(Segment.FOREARM), isX);
        }
        return hand.along(Member.of(Segment.UPPER_ARM, other), Joint.SHOULDER, hand.length(Segment.UPPER_ARM), isX);
    }

    private boolean isAnchorBeyondElbow() {
        return layout.anchor() == Anchor.WRIST || layout.anchor() == Anchor.GRIP;
    }

    private Expression wrist(boolean other, boolean isX) {
        if (layout.anchor() == Anchor.GRIP && anchored(other)) {
            Member palm = Member.of(Segment.HAND, other);
            double along = layout.body().gripAlong();
            double value = isX ? layout.alongX(palm, along) : layout.alongY(palm, along);
            Expression grip = hand.place(isX ? "x_grip" : "y_grip", value, "the grip, " + given());
            Expression distance = hand.gripAlong();
            Expression lean = hand.lean(palm);
            return isX
                    ? grip.minus(distance.times(Expression.sine(lean)))
                    : grip.plus(distance.times(Expression.cosine(lean)));
        }
        return hand.along(Member.of(Segment.FOREARM, other), Joint.ELBOW, hand.length(Segment.FOREARM), isX);
    }

    /** A place on the trunk's line at a distance from its lower end. */
    Expression onTrunk(Expression distance, boolean isX) {
        return pelvis(isX).plus(trunkPart(distance, isX));
    }

    private Expression trunkPart(Expression distance, boolean isX) {
        Expression lean = hand.lean(Member.TRUNK);
        return distance.times(isX ? Expression.sine(lean) : Expression.cosine(lean));
    }

    /** A place beside the trunk's line, to positive x where the trunk stands upright and the offset is positive. */
    private Expression aside(Expression from, double offset, String name, String words, boolean isX) {
        Expression size = hand.input(name, Length.of(Math.abs(offset)), words + "; part of stature, set");
        Expression lean = hand.lean(Member.TRUNK);
        Expression part = size.times(isX ? Expression.cosine(lean) : Expression.sine(lean));
        return (offset > 0) == isX ? from.plus(part) : from.minus(part);
    }
}

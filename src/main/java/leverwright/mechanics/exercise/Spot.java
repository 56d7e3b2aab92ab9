package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.working.Expression;
import org.jspecify.annotations.Nullable;

/**
 * A place on a segment: so far along it from the joint nearer the trunk (on the trunk from the hips, on the foot from the
 * heel along the sole), and so far across it, ahead positive; each given or set by a knob.
 *
 * @param on the segment, of the working side
 * @param from from where the distance along counts
 * @param along knob of the distance along; null where it is fixed
 * @param fixedAlong m, added to the knob
 * @param across knob of the distance across; null where it is fixed
 * @param acrossSign sign of that knob: −1 where it counts backwards
 * @param fixedAcross m, ahead positive, added
 */
record Spot(
        Member on,
        From from,
        @Nullable Knob<?> along,
        double fixedAlong,
        @Nullable Knob<?> across,
        int acrossSign,
        double fixedAcross) {

    /** From where a distance along a segment counts. */
    enum From {
        /** From the joint nearer the trunk; on the trunk from the hips. */
        NEAR,
        /** On the trunk from the shoulders, towards the head. */
        SHOULDERS,
        /** On the foot from the heel, in parts of its length where a knob sets it. */
        HEEL,
        /** In the grip. */
        GRIP
    }

    static Spot grip(Member hand) {
        return new Spot(hand, From.GRIP, null, 0, null, 1, 0);
    }

    /** At a distance from the joint nearer the trunk. */
    static Spot at(Member on, double along) {
        return new Spot(on, From.NEAR, null, along, null, 1, 0);
    }

    static Spot at(Member on, double along, double ahead) {
        return new Spot(on, From.NEAR, null, along, null, 1, ahead);
    }

    /** At a distance that a knob sets. */
    static Spot at(Member on, Knob<Length> along) {
        return new Spot(on, From.NEAR, along, 0, null, 1, 0);
    }

    static Spot at(Member on, Knob<Length> along, double ahead) {
        return new Spot(on, From.NEAR, along, 0, null, 1, ahead);
    }

    /** On the trunk: above the shoulders and behind its line, by knobs. */
    static Spot onShoulders(Knob<Length> above, Knob<Length> behind) {
        return new Spot(Member.TRUNK, From.SHOULDERS, above, 0, behind, -1, 0);
    }

    /** On the sole, at a part of its length. */
    static Spot onSole(Member foot, Knob<?> part) {
        return new Spot(foot, From.HEEL, part, 0, null, 1, 0);
    }

    static Spot onSole(Member foot) {
        return new Spot(foot, From.HEEL, null, 0, null, 1, 0);
    }

    private double along(Work work) {
        Layout layout = work.layout();
        double set = fixedAlong + (along == null ? 0 : work.si(along));
        return switch (from) {
            case NEAR -> set;
            case SHOULDERS -> layout.trunkLength() + set;
            case HEEL -> set * layout.footLength();
            case GRIP -> layout.body().gripAlong();
        };
    }

    private double across(Work work) {
        return fixedAcross + (across == null ? 0 : acrossSign * work.si(across));
    }

    /** Whether the segment runs up to the joint nearer the trunk. */
    private boolean isHung(Member member) {
        return member.isLeg() && member.segment() != Segment.FOOT;
    }

    /** Refuses a place beyond the segment's end. */
    void check(Work work, String what) {
        double length = work.layout().body().length(on.segment());
        if (from == From.NEAR && on != Member.TRUNK && along(work) > length) {
            throw new ImpossibleSetting("the " + what + " is " + Measures.m(along(work)) + " from the "
                    + near().words() + ", but the " + on.segment().words() + " is " + Measures.m(length)
                    + " long; set the " + what + " nearer to the " + near().words());
        }
    }

    private Joint near() {
        return switch (on.segment()) {
            case FOOT -> Joint.ANKLE;
            case SHANK -> Joint.KNEE;
            case THIGH, TRUNK -> Joint.HIP;
            case UPPER_ARM -> Joint.SHOULDER;
            case FOREARM -> Joint.ELBOW;
            case HAND -> Joint.WRIST;
        };
    }

    double x(Work work) {
        Layout layout = work.layout();
        Member member = work.on(on);
        double d = along(work);
        double ahead = across(work);
        if (member.segment() == Segment.FOOT) {
            return layout.startX(member) + d * layout.cosine(member) + ahead * layout.sine(member);
        }
        double start = isHung(member) ? layout.jointX(near(), member.isOther()) : layout.startX(member);
        double x = isHung(member) ? start - d * layout.sine(member) : start + d * layout.sine(member);
        return ahead == 0 ? x : x + ahead * layout.cosine(member);
    }

    double y(Work work) {
        Layout layout = work.layout();
        Member member = work.on(on);
        double d = along(work);
        double ahead = across(work);
        if (member.segment() == Segment.FOOT) {
            return layout.startY(member) - d * layout.sine(member) + ahead * layout.cosine(member);
        }
        double start = isHung(member) ? layout.jointY(near(), member.isOther()) : layout.startY(member);
        boolean up = !isHung(member) && !member.isArm();
        double y = up ? start + d * layout.cosine(member) : start - d * layout.cosine(member);
        if (ahead == 0) {
            return y;
        }
        return member.isArm() ? y + ahead * layout.sine(member) : y - ahead * layout.sine(member);
    }

    /** How x or y follows, for the working. */
    Expression in(Hand hand, Work work, String what, boolean isX) {
        Member member = work.on(on);
        if (from == From.GRIP) {
            return member.isOther() ? hand.along(member, Joint.WRIST, hand.gripAlong(), isX) : grip(hand, isX);
        }
        if (from == From.HEEL || member.segment() == Segment.FOOT) {
            return onSole(hand, work, what, isX);
        }
        Expression distance = hand.input("d_" + what, Length.of(along(work)), words(what));
        Expression place;
        if (member == Member.TRUNK) {
            place = hand.places().onTrunk(distance, isX);
        } else {
            place = isHung(member)
                    ? hand.back(member, near(), distance, isX)
                    : hand.along(member, near(), distance, isX);
        }
        return across(work) == 0 ? place : beside(hand, work, member, what, place, isX);
    }

    private static Expression grip(Hand hand, boolean isX) {
        return isX ? hand.gripX() : hand.gripY();
    }

    private Expression beside(Hand hand, Work work, Member member, String what, Expression place, boolean isX) {
        Expression ahead = hand.input(
                "e_" + what,
                Length.of(across(work)),
                what.replace('_', ' ') + " ahead of the line of the segment; set");
        Expression lean = hand.lean(member);
        if (isX) {
            return place.plus(ahead.times(Expression.cosine(lean)));
        }
        Expression part = ahead.times(Expression.sine(lean));
        return member.isArm() ? place.plus(part) : place.minus(part);
    }

    private Expression onSole(Hand hand, Work work, String what, boolean isX) {
        Member foot = work.on(on);
        Layout layout = work.layout();
        Expression along = hand.input(
                "d_" + what, Length.of(along(work)), what.replace('_', ' ') + " from the heel along the sole; set");
        Expression above = Expression.exact("0");
        if (hand.places().standsOnHeel(foot)) {
            return hand.onFoot(foot, along, above, isX);
        }
        Expression back = hand.ankleAlong().minus(along);
        Expression down = hand.ankleAcross();
        Expression sine = Expression.sine(hand.lean(foot));
        Expression cosine = Expression.cosine(hand.lean(foot));
        Expression ankle =
                hand.joint(Joint.ANKLE, foot.isOther() && layout.parting().isSplit(Segment.FOOT), isX);
        return isX
                ? ankle.minus(back.times(cosine)).minus(down.times(sine))
                : ankle.plus(back.times(sine)).minus(down.times(cosine));
    }

    private String words(String what) {
        String from = on == Member.TRUNK ? "the hips along the trunk" : "the " + near().words();
        String origin = from().equals(From.SHOULDERS) ? "trunk's length and what is set above the shoulder" : "set";
        return what.replace('_', ' ') + " from " + from + "; " + origin;
    }
}

package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Angle;
import org.jspecify.annotations.Nullable;

/**
 * How a segment's lean follows: a neighbour's lean or none, plus or minus a knob or none, plus a fixed angle; or the lean that
 * a search tries.
 *
 * @param base the neighbour; null for none
 * @param baseSign its sign, 1 or −1
 * @param knob the knob; null for none
 * @param knobSign its sign and factor
 * @param fixed rad
 * @param searched 1 where the angle that a search tries is added, else 0
 * @param worked a lean worked out from settings and body, added; null for none
 * @param words where the lean comes from, for the working
 */
record LeanRule(
        @Nullable Member base,
        int baseSign,
        @Nullable Knob<Angle> knob,
        double knobSign,
        double fixed,
        double searched,
        Plan.@Nullable Coordinate worked,
        String words) {

    static LeanRule fixed(Angle angle) {
        return new LeanRule(null, 0, null, 0, angle.si(), 0, null, "set by the exercise");
    }

    static LeanRule knob(Knob<Angle> knob, double sign, double fixed, String words) {
        return new LeanRule(null, 0, knob, sign, fixed, 0, null, words);
    }

    static LeanRule from(
            Member base, int baseSign, @Nullable Knob<Angle> knob, double sign, double fixed, String words) {
        return new LeanRule(base, baseSign, knob, sign, fixed, 0, null, words);
    }

    static LeanRule searched(double fixed, String words) {
        return new LeanRule(null, 0, null, 0, fixed, 1, null, words);
    }

    static LeanRule worked(Plan.Coordinate lean, String words) {
        return new LeanRule(null, 0, null, 0, 0, 0, lean, words);
    }

    /** The same rule for the other side of a body seen from the front or from the head: everything turns the other way. */
    LeanRule mirrored() {
        Plan.@Nullable Coordinate lean = worked;
        return new LeanRule(
                base == null ? null : base.twin(),
                baseSign,
                knob,
                -knobSign,
                -fixed,
                -searched,
                lean == null ? null : work -> -lean.of(work),
                words);
    }

    /** The same rule for the other side of a body seen from the side. */
    LeanRule copied() {
        return new LeanRule(
                base == null ? null : base.twin(), baseSign, knob, knobSign, fixed, searched, worked, words);
    }

    /** The lean, rad, when the base's is known. */
    double of(Work work) {
        double sum = fixed;
        if (base != null) {
            sum += baseSign * work.layout().lean(work.on(base));
        }
        if (knob != null) {
            sum += knobSign * work.si(knob);
        }
        if (worked != null) {
            sum += worked.of(work);
        }
        return searched == 0 ? sum : sum + searched * work.unknown();
    }
}

package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;
import org.jspecify.annotations.Nullable;

/** How large forces are. */
final class Sizes {
    private Sizes() {}

    /**
     * A stack's weight, whole or a part.
     *
     * @param stack mass
     * @param parts by how many it is divided, such as 2 where each hand has half
     */
    record Stack(Knob<Mass> stack, int parts) implements Pull.Size {
        @Override
        public double newtons(Work work) {
            return work.si(stack) * Layout.GRAVITY / parts;
        }

        @Override
        public Expression in(Hand hand, Work work, String symbol) {
            Expression mass = hand.input("m_stack", Mass.of(work.si(stack)), "stack; set on the exercise");
            Expression weight = mass.times(hand.wholeGravity());
            return parts == 1 ? weight : weight.dividedBy(Expression.exact(String.valueOf(parts)));
        }
    }

    /**
     * A force that a knob sets, whole or a part.
     *
     * @param knob force
     * @param parts by how many it is divided
     */
    record Given(Knob<Force> knob, int parts) implements Pull.Size {
        @Override
        public double newtons(Work work) {
            return work.si(knob) / parts;
        }

        @Override
        public Expression in(Hand hand, Work work, String symbol) {
            Expression force = hand.input(
                    "P_" + symbol, Force.of(work.si(knob)), knob.meaning().replace('[', '('));
            return parts == 1 ? force : force.dividedBy(Expression.exact(String.valueOf(parts)));
        }
    }

    /** A part of the weight of a mass: of a bar that both hands hold, say, or one that a guide carries in its direction. */
    record Weight(Knob<Mass> mass, int parts, @Nullable Knob<Ratio> times) implements Pull.Size {
        @Override
        public double newtons(Work work) {
            double factor = times == null ? 1 : work.si(times);
            return work.si(mass) * Layout.GRAVITY * factor / parts;
        }

        @Override
        public Expression in(Hand hand, Work work, String symbol) {
            Expression weight = hand.input(
                            "m_" + symbol,
                            Mass.of(work.si(mass)),
                            mass.meaning().replace('[', '('))
                    .times(hand.wholeGravity());
            Expression timed = times == null
                    ? weight
                    : weight.times(hand.input("k_" + symbol, Ratio.of(work.si(times)), times.meaning()));
            return parts == 1 ? timed : timed.dividedBy(Expression.exact(String.valueOf(parts)));
        }
    }

    /** A machine's pad: stack times the wheel's arm over the pad's distance from the axis, or the measured force. */
    record Wheel() implements Pull.Size {
        @Override
        public double newtons(Work work) {
            if (work.settings().given(Knobs.PAD_FORCE)) {
                if (work.settings().given(Knobs.STACK)) {
                    throw new IllegalArgumentException("stack and pad force are both set, but either decides the other;"
                            + " take one of them back with without(...)");
                }
                return work.si(Knobs.PAD_FORCE);
            }
            return work.si(Knobs.STACK) * Layout.GRAVITY * work.si(Knobs.WHEEL_ARM) / work.si(Knobs.PAD);
        }

        @Override
        public Expression in(Hand hand, Work work, String symbol) {
            if (work.settings().given(Knobs.PAD_FORCE)) {
                return hand.input("P_pad", Force.of(work.si(Knobs.PAD_FORCE)), "measured force of the pad; set");
            }
            Expression stack = hand.input("m_stack", Mass.of(work.si(Knobs.STACK)), "stack; set on the exercise");
            Expression arm = hand.input("r_wheel", Length.of(work.si(Knobs.WHEEL_ARM)), "arm of the cable; set");
            Expression pad = hand.input("r_pad", Length.of(work.si(Knobs.PAD)), "pad from the machine's axis; set");
            return stack.times(hand.wholeGravity()).times(arm).dividedBy(pad);
        }
    }

    /** What a sled on a rail asks of the feet, along the rail: m·g·(sin + μ·cos), held or moving up. */
    record OnRail() implements Pull.Size {
        @Override
        public double newtons(Work work) {
            double rail = work.si(SetupKnobs.RAIL);
            double mass = work.si(SetupKnobs.SLED) + work.si(SetupKnobs.PLATES);
            double friction = work.si(SetupKnobs.RAIL_FRICTION);
            return mass * Layout.GRAVITY * (Trigonometry.sine(rail) + friction * Trigonometry.cosine(rail));
        }

        @Override
        public Expression in(Hand hand, Work work, String symbol) {
            Expression rail = hand.input("α_rail", Angle.of(work.si(SetupKnobs.RAIL)), "rail above level; set");
            Expression sled = hand.input("m_sled", Mass.of(work.si(SetupKnobs.SLED)), "empty sled; set");
            Expression plates = hand.input("m_plates", Mass.of(work.si(SetupKnobs.PLATES)), "plates; set");
            Expression friction =
                    hand.input("μ_rail", Ratio.of(work.si(SetupKnobs.RAIL_FRICTION)), "friction of the rail; set");
            Expression along = Expression.sine(rail).plus(friction.times(Expression.cosine(rail)));
            return sled.plus(plates).times(hand.wholeGravity()).times(along);
        }
    }
}

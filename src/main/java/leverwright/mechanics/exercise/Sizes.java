package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Ratio;
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
}

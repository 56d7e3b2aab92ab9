package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.working.Expression;

/** A point about which moments are taken to find what a contact gives. */
interface Pivot {
    double x(Work work);

    double y(Work work);

    Expression in(Hand hand, Work work, boolean isX);

    /** The chosen centre of pressure of the feet, on the floor. */
    record Pressure() implements Pivot {
        @Override
        public double x(Work work) {
            return work.layout().pressureX();
        }

        @Override
        public double y(Work work) {
            return 0;
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            return isX ? hand.pressure() : Expression.exact("0");
        }
    }

    /** A joint of the working side. */
    record At(Joint joint) implements Pivot {
        @Override
        public double x(Work work) {
            return work.layout().jointX(joint, other(work));
        }

        @Override
        public double y(Work work) {
            return work.layout().jointY(joint, other(work));
        }

        private boolean other(Work work) {
            return work.isOther(Member.of(Layout.above(joint)))
                    && work.layout().parting().isSplit(joint);
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            return hand.joint(joint, other(work), isX);
        }
    }

    /** A place on a segment. */
    record On(Spot spot, String name) implements Pivot {
        @Override
        public double x(Work work) {
            return spot.x(work);
        }

        @Override
        public double y(Work work) {
            return spot.y(work);
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            return hand.step(
                    (isX ? "x_" : "y_") + name,
                    spot.in(hand, work, name, isX),
                    Length.of(isX ? x(work) : y(work)),
                    name.replace('_', ' '));
        }
    }
}

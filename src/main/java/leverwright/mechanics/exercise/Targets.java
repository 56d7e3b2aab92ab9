package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;

/** Places that hands and feet reach for. */
final class Targets {
    private Targets() {}

    /** The same place on the other side of the body's middle, x = 0. */
    record Mirrored(Reach.Target of) implements Reach.Target {
        @Override
        public double x(Work work) {
            return -of.x(work);
        }

        @Override
        public double y(Work work) {
            return of.y(work);
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            return isX ? of.in(hand, work, true).negated() : of.in(hand, work, false);
        }
    }

    /** Half the grip's width beside the middle, and so far above the shoulders. */
    record OnBar() implements Reach.Target {
        @Override
        public double x(Work work) {
            return work.si(SetupKnobs.GRIP_WIDTH) / 2;
        }

        @Override
        public double y(Work work) {
            Layout layout = work.layout();
            return layout.alongY(Member.TRUNK, layout.trunkLength()) + work.si(SetupKnobs.BAR_HEIGHT);
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            if (isX) {
                Expression width = hand.input(
                        "w_grip", Length.of(work.si(SetupKnobs.GRIP_WIDTH)), "distance between the grips; set");
                return width.dividedBy(Expression.exact("2"));
            }
            Expression height =
                    hand.input("h_bar", Length.of(work.si(SetupKnobs.BAR_HEIGHT)), "bar above the shoulders; set");
            return hand.places().shoulders(false).plus(height);
        }
    }

    /** So far ahead of the chosen centre of pressure and above the shoulders. */
    record OverFoot() implements Reach.Target {
        @Override
        public double x(Work work) {
            return work.layout().pressureX() + work.si(Knobs.BAR_AHEAD);
        }

        @Override
        public double y(Work work) {
            return work.layout().jointY(Joint.SHOULDER) + work.si(SetupKnobs.BAR_HEIGHT);
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            if (isX) {
                Expression ahead = hand.input(
                        "a_bar", Length.of(work.si(Knobs.BAR_AHEAD)), "bar ahead of the chosen pressure; set");
                return hand.pressure().plus(ahead);
            }
            Expression height =
                    hand.input("h_bar", Length.of(work.si(SetupKnobs.BAR_HEIGHT)), "bar above the shoulders; set");
            return hand.y(Joint.SHOULDER).plus(height);
        }
    }

    /** A place on a segment that is placed before the arms: what is held against the trunk. */
    record On(String name, Spot spot) implements Reach.Target {
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
            return spot.in(hand, work, name, isX);
        }
    }

    /** A place worked out beforehand. */
    record Point(String name, Plan.Coordinate toX, Plan.Coordinate toY, String words) implements Reach.Target {
        @Override
        public double x(Work work) {
            return toX.of(work);
        }

        @Override
        public double y(Work work) {
            return toY.of(work);
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            return hand.input((isX ? "x_" : "y_") + name, Length.of(isX ? x(work) : y(work)), words);
        }
    }

    /** The ankle on a line through the hip along a rail, as far as the bend of the knee puts it. */
    record AlongRail() implements Reach.Target {
        private static double distance(Work work) {
            double thigh = work.layout().body().length(Segment.THIGH);
            double shank = work.layout().body().length(Segment.SHANK);
            double bend = Trigonometry.cosine(work.si(Knobs.KNEE_FLEXION));
            return Math.sqrt(thigh * thigh + shank * shank + 2 * thigh * shank * bend);
        }

        @Override
        public double x(Work work) {
            return work.layout().jointX(Joint.HIP) + distance(work) * Trigonometry.cosine(work.si(SetupKnobs.RAIL));
        }

        @Override
        public double y(Work work) {
            return work.layout().jointY(Joint.HIP) + distance(work) * Trigonometry.sine(work.si(SetupKnobs.RAIL));
        }

        @Override
        public Expression in(Hand hand, Work work, boolean isX) {
            Expression thigh = hand.length(Segment.THIGH);
            Expression shank = hand.length(Segment.SHANK);
            Expression bend = hand.input("φ_set", Angle.of(work.si(Knobs.KNEE_FLEXION)), "flexion of the knee; set");
            Expression both = Expression.exact("2").times(thigh).times(shank).times(Expression.cosine(bend));
            Expression.Symbol distance = hand.step(
                    "l_leg",
                    Expression.squareRoot(thigh.squared().plus(shank.squared()).plus(both)),
                    Length.of(distance(work)),
                    "from hip to ankle");
            Expression rail = hand.input("α_rail", Angle.of(work.si(SetupKnobs.RAIL)), "rail above level; set");
            return isX
                    ? hand.x(Joint.HIP).plus(distance.times(Expression.cosine(rail)))
                    : hand.y(Joint.HIP).plus(distance.times(Expression.sine(rail)));
        }
    }
}

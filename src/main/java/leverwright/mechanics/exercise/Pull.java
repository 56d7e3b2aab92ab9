package leverwright.mechanics.exercise;

import java.util.Locale;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/**
 * A load on a movement: its place, its size, and where it points.
 *
 * @param name in print, such as "cable"
 * @param at where it acts
 * @param size how large it is
 * @param aim where it points
 */
record Pull(String name, Spot at, Size size, Aim aim) implements LoadRule {
    /** How large a force is. */
    interface Size {
        /** N. */
        double newtons(Work work);

        /** How it follows, written into a working under a name. */
        Expression in(Hand hand, Work work, String symbol);
    }

    /** Where a force points. */
    interface Aim {
        /** Its direction from a place, rad counter-clockwise from forward. */
        double direction(Work work, double x, double y);

        /** The forward part of 1 in that direction. */
        default double unitX(Work work, double x, double y) {
            return Trigonometry.cosine(direction(work, x, y));
        }

        /** The upward part of 1 in that direction. */
        default double unitY(Work work, double x, double y) {
            return Trigonometry.sine(direction(work, x, y));
        }

        /** Its forward (x) or upward part, of 1, for the working. */
        Expression in(Hand hand, Work work, Load load, boolean isX);

        /** What the figure shows beside the force. */
        default Sketch.@Nullable Shape shown(Work work, double x, double y) {
            return null;
        }
    }

    @Override
    public String words() {
        return name + " on the " + at.on().words();
    }

    @Override
    public void add(Work work) {
        at.check(work, name);
        double x = at.x(work);
        double y = at.y(work);
        double newtons = size.newtons(work);
        String symbol = Load.symbolOf(name);
        int index = work.layout().loads().size();
        Load still = Load.force(
                name,
                work.on(at.on()),
                x,
                y,
                newtons * aim.unitX(work, x, y),
                newtons * aim.unitY(work, x, y),
                hand -> at.in(hand, work, symbol, true),
                hand -> at.in(hand, work, symbol, false),
                hand -> part(hand, work, symbol, index, true),
                hand -> part(hand, work, symbol, index, false));
        work.layout().addMoving(still, () -> Law.of(this, work, x, y, aim.direction(work, x, y)));
    }

    private Expression part(Hand hand, Work work, String symbol, int index, boolean isX) {
        Force newtons = Force.of(size.newtons(work));
        Expression whole = hand.step("F_" + symbol, size.in(hand, work, symbol), newtons, name);
        return whole.times(aim.in(hand, work, work.layout().loads().get(index), isX));
    }

    @Override
    public void show(Work work) {
        Sketch.@Nullable Shape shape = aim.shown(work, at.x(work), at.y(work));
        if (shape != null) {
            work.layout().show(shape);
        }
    }

    /** A direction that a knob sets, with a fixed angle added, rad counter-clockwise from forward. */
    record ByKnob(Knob<Angle> knob, double added) implements Aim {
        @Override
        public double direction(Work work, double x, double y) {
            return work.si(knob) + added;
        }

        @Override
        public Expression in(Hand hand, Work work, Load load, boolean isX) {
            Expression angle = hand.input(
                    "δ_" + load.symbol(),
                    Angle.of(work.si(knob) + added),
                    "direction, counter-clockwise from forward; set");
            return isX ? Expression.cosine(angle) : Expression.sine(angle);
        }
    }

    /** A fixed direction, rad counter-clockwise from forward. */
    record Fixed(double angle) implements Aim {
        @Override
        public double direction(Work work, double x, double y) {
            return angle;
        }

        @Override
        public Expression in(Hand hand, Work work, Load load, boolean isX) {
            Expression input = hand.input(
                    "δ_" + load.symbol(),
                    Angle.of(angle),
                    "direction, counter-clockwise from forward; by the exercise");
            return isX ? Expression.cosine(input) : Expression.sine(input);
        }
    }

    /**
     * Square to a segment, ahead of it where sense is 1, behind it where −1.
     *
     * @param on the segment, of the working side
     */
    record Square(Member on, int sense) implements Aim {
        @Override
        public double direction(Work work, double x, double y) {
            Member member = work.on(on);
            double lean = work.layout().lean(member);
            double ahead = member.isArm() ? lean : -lean;
            return sense > 0 ? ahead : ahead + Math.PI;
        }

        @Override
        public double unitX(Work work, double x, double y) {
            return sense * work.layout().cosine(work.on(on));
        }

        @Override
        public double unitY(Work work, double x, double y) {
            Member member = work.on(on);
            int up = member.isArm() ? sense : -sense;
            return up * work.layout().sine(member);
        }

        @Override
        public Expression in(Hand hand, Work work, Load load, boolean isX) {
            Member member = work.on(on);
            Expression lean = hand.lean(member);
            Expression part = isX ? Expression.cosine(lean) : Expression.sine(lean);
            boolean negative = (sense < 0) != (!isX && !member.isArm());
            return negative ? part.negated() : part;
        }
    }

    /** Towards a pulley, m forward and up of the point from which places count, unless a direction is given. */
    record Pulley(Knob<Length> ahead, Knob<Length> height, Knob<Angle> direction, boolean mirrored) implements Aim {
        double awayX(Work work, double x) {
            return (mirrored ? -work.si(ahead) : work.si(ahead)) - x;
        }

        double awayY(Work work, double y) {
            return work.si(height) - y;
        }

        boolean given(Work work) {
            return work.settings().given(direction);
        }

        @Override
        public double direction(Work work, double x, double y) {
            if (given(work)) {
                double angle = work.si(direction);
                return mirrored ? Math.PI - angle : angle;
            }
            double dx = awayX(work, x);
            double dy = awayY(work, y);
            length(dx, dy);
            return Trigonometry.arcTangent(dy, dx);
        }

        private double length(double dx, double dy) {
            double length = Math.sqrt(dx * dx + dy * dy);
            if (length < SHORTEST) {
                throw new ImpossibleSetting("the cable would be less than 1 cm long: its pulley lies where it is held;"
                        + " set " + ahead.name().toLowerCase(Locale.ROOT) + " or "
                        + height.name().toLowerCase(Locale.ROOT) + " elsewhere");
            }
            return length;
        }

        @Override
        public double unitX(Work work, double x, double y) {
            if (given(work)) {
                return Trigonometry.cosine(direction(work, x, y));
            }
            double dx = awayX(work, x);
            return dx / length(dx, awayY(work, y));
        }

        @Override
        public double unitY(Work work, double x, double y) {
            if (given(work)) {
                return Trigonometry.sine(direction(work, x, y));
            }
            double dy = awayY(work, y);
            return dy / length(awayX(work, x), dy);
        }

        private static final double SHORTEST = 0.01;

        @Override
        public Expression in(Hand hand, Work work, Load load, boolean isX) {
            if (given(work)) {
                Angle angle = Angle.of(direction(work, load.x(), load.y()));
                Expression set =
                        hand.input("δ_" + load.symbol(), angle, "direction, counter-clockwise from forward; set");
                return isX ? Expression.cosine(set) : Expression.sine(set);
            }
            double dx = awayX(work, load.x());
            double dy = awayY(work, load.y());
            String symbol = load.symbol();
            Expression placeX = hand.input("x_pulley_" + symbol, Length.of(dx + load.x()), "pulley; set");
            Expression placeY = hand.input("y_pulley_" + symbol, Length.of(dy + load.y()), "pulley; set");
            Expression toX = placeX.minus(hand.x(load));
            Expression toY = placeY.minus(hand.y(load));
            Expression length = hand.step(
                    "l_" + symbol,
                    Expression.squareRoot(toX.squared().plus(toY.squared())),
                    Length.of(Math.sqrt(dx * dx + dy * dy)),
                    "from the hand to the pulley");
            return (isX ? toX : toY).dividedBy(length);
        }

        @Override
        public Sketch.@Nullable Shape shown(Work work, double x, double y) {
            if (given(work)) {
                return null;
            }
            return new Sketch.Line(
                    "cable", new Sketch.Point(x, y), new Sketch.Point(x + awayX(work, x), y + awayY(work, y)));
        }
    }
}

package leverwright.mechanics.exercise;

import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.numeric.Swing;
import leverwright.mechanics.working.Expression;

/**
 * A lean that is found, so that something comes true.
 *
 * @param least smallest lean tried, rad
 * @param most largest
 * @param steps parts of that range in which the first change of sign is looked up
 * @param goal what comes true
 * @param failure what to say where no lean does it
 */
record Search(double least, double most, int steps, Goal goal, String failure) {
    private static final double ACCURACY = 1e-14;

    /** Something that vanishes at the right lean. */
    interface Goal {
        double of(Work work);

        /** The line that confirms it. */
        Expression.Symbol confirm(Hand hand, Work work);
    }

    /** Finds the lean: {@code lay} places everything for the one tried. */
    void find(Work work, Runnable lay) {
        work.searching(true);
        seek(work, lay);
        work.searching(false);
        lay.run();
    }

    private void seek(Work work, Runnable lay) {
        double from = least;
        double low = at(work, lay, from);
        for (int k = 1; k <= steps; k++) {
            double to = least + k * (most - least) / steps;
            double high = at(work, lay, to);
            if (low * high <= 0) {
                work.unknown(Swing.root("posture", tried -> at(work, lay, tried), from, to, low, high, ACCURACY));
                return;
            }
            from = to;
            low = high;
        }
        throw new ImpossibleSetting(failure);
    }

    private double at(Work work, Runnable lay, double tried) {
        work.unknown(tried);
        lay.run();
        return goal.of(work);
    }

    List<Expression.Symbol> confirm(Hand hand, Work work) {
        return List.of(goal.confirm(hand, work));
    }

    /** Everything hangs or stands balanced about a point. */
    record Balanced(Pivot about, String name) implements Goal {
        @Override
        public double of(Work work) {
            return work.momentAbout(about.x(work), about.y(work), -1);
        }

        @Override
        public Expression.Symbol confirm(Hand hand, Work work) {
            Expression x = about.in(hand, work, true);
            Expression y = about.in(hand, work, false);
            Expression sum = Work.momentIn(
                    hand, work.layout(), x, y, -1, work.layout().loads().size());
            return hand.step(
                    "M_about_" + name,
                    sum,
                    Moment.of(of(work)),
                    "vanishes when all is balanced there: this decided the lean that was left open");
        }
    }

    /** A joint lies at a height. */
    record Height(Joint joint, Knob<Length> height) implements Goal {
        @Override
        public double of(Work work) {
            return work.layout().jointY(joint) - work.si(height);
        }

        @Override
        public Expression.Symbol confirm(Hand hand, Work work) {
            Expression set = hand.input(
                    "h_" + Hand.name(joint),
                    Length.of(work.si(height)),
                    height.meaning().replace('[', '('));
            return hand.step(
                    "y_" + Hand.name(joint) + "_less_h",
                    hand.y(joint).minus(set),
                    Length.of(of(work)),
                    "vanishes: this decided the lean that was left open");
        }
    }
}

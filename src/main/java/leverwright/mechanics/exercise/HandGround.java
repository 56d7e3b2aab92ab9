package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;

/** The hand calculation of the ground's reaction and of where it acts. */
final class HandGround {
    private final Layout layout;
    private final Hand hand;
    private final List<Expression> masses = new ArrayList<>();
    private final List<Expression> massMoments = new ArrayList<>();

    HandGround(Layout layout) {
        this(layout, new Hand(layout));
    }

    /** Writes into a hand calculation that has begun. */
    HandGround(Layout layout, Hand hand) {
        this.layout = layout;
        this.hand = hand;
    }

    List<Step> steps() {
        return hand.steps();
    }

    /** Upward force of the ground, both feet, N. */
    static double reactionSi(Layout layout) {
        double up = 0;
        for (Part part : layout.pieces().all()) {
            up += part.mass() * layout.gravity();
        }
        for (Load load : layout.loads()) {
            up -= load.forceY();
        }
        return up;
    }

    /** Forward force of the ground, both feet, N. */
    static double forwardSi(Layout layout) {
        double forward = 0;
        for (Load load : layout.loads()) {
            forward -= load.forceX();
        }
        return forward;
    }

    /** Place of that force ahead of the heel, m; the ground lies at y = 0. */
    static double pressureSi(Layout layout) {
        return momentSi(layout) / reactionSi(layout);
    }

    /** Moment that the ground must give about the heel's place on the floor, counter-clockwise, N·m. */
    private static double momentSi(Layout layout) {
        double sum = 0;
        for (Part part : layout.pieces().all()) {
            sum += part.mass() * layout.gravity() * layout.centreX(part.on());
        }
        for (Load load : layout.loads()) {
            sum -= load.momentAbout(0, 0);
        }
        return sum;
    }

    /** Adds the steps to the reaction. */
    Expression.Symbol reaction() {
        collect();
        Expression weight = Expression.sum(masses).times(hand.gravity());
        List<Expression> terms = new ArrayList<>();
        terms.add(weight);
        for (Load load : layout.loads()) {
            if (!load.isWeight()) {
                terms.add(up(load).negated());
            }
        }
        return hand.step("R_ground", Expression.sum(terms), Force.of(reactionSi(layout)), "both feet, up");
    }

    /** The forward force of the ground, both feet: what the loads ask for. */
    Expression forward() {
        return Expression.sum(layout.loads().stream()
                .filter(load -> !load.isWeight())
                .map(load -> (Expression) hand.forceX(load).negated())
                .toList());
    }

    /** Adds the steps to the centre of pressure. */
    Expression.Symbol pressure() {
        Expression.Symbol reaction = reaction();
        for (Part part : layout.pieces().all()) {
            massMoments.add(hand.mass(part).times(hand.x(part)));
        }
        for (Load load : layout.loads()) {
            if (load.isWeight()) {
                massMoments.add(hand.mass(load).times(hand.x(load)));
            }
        }
        List<Expression> terms = new ArrayList<>();
        terms.add(hand.gravity().times(Expression.sum(massMoments)));
        for (Load load : layout.loads()) {
            if (!load.isWeight()) {
                Expression fx = hand.forceX(load);
                terms.add(hand.x(load).times(up(load)).negated());
                terms.add(hand.y(load).times(fx));
            }
        }
        Expression.Symbol moment =
                hand.step("M_ground", Expression.sum(terms), Moment.of(momentSi(layout)), "about the heel, both feet");
        return hand.step("x_ground", moment.dividedBy(reaction), Length.of(pressureSi(layout)), "ahead of the heel");
    }

    private Expression up(Load load) {
        return hand.forceY(load);
    }

    private void collect() {
        for (Part part : layout.pieces().all()) {
            masses.add(hand.mass(part));
        }
        for (Load load : layout.loads()) {
            if (load.isWeight()) {
                masses.add(hand.mass(load));
            }
        }
    }
}

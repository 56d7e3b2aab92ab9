package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/** The hand calculation of what a joint bears: weight beyond it, load arm, moment; and the check of what balance found. */
final class HandMoments {
    private final Layout layout;
    private final Cut cut;
    private final Hand hand;
    private final String joint;

    HandMoments(Layout layout, Cut cut) {
        this(layout, cut, new Hand(layout));
    }

    HandMoments(Layout layout, Cut cut, Hand hand) {
        this.layout = layout;
        this.cut = cut;
        this.hand = hand;
        this.joint = Hand.name(cut.joint());
    }

    Hand hand() {
        return hand;
    }

    /** Returns the working that leads to a result, with the check of what balance found. */
    Working working(String title, Expression.Symbol result) {
        List<Step> steps = hand.leadingTo(List.of(result));
        return Working.of(title, steps).checked(checks(steps));
    }

    /** The weight of all that lies beyond the joint. */
    Expression.Symbol weight() {
        Expression mass = hung().isEmpty() ? bodyMass() : hungMass().plus(bodyMass());
        return hand.step("W_" + joint, mass.times(hand.gravity()), Force.of(cut.weight()), sides());
    }

    private String sides() {
        return layout.parting().splitsAny() ? "all of it" : "both sides";
    }

    /** The arm of that weight about the joint, positive where it asks for the joint's positive action. */
    Expression.Symbol arm() {
        Expression.Symbol at = massX();
        Expression.Symbol about = hand.x(cut.joint());
        Expression formula = cut.direction() > 0 ? at.minus(about) : about.minus(at);
        String meaning = "positive asks for " + layout.plane().positiveAction(cut.joint());
        return hand.step("d_" + joint, formula, Length.of(cut.arm()), meaning);
    }

    /** The moment as it is reported. */
    Expression.Symbol moment() {
        Expression.Symbol weight = weight();
        Expression.Symbol arm = arm();
        List<Expression> terms = new ArrayList<>();
        terms.add(weight.times(arm));
        for (Load load : layout.loads()) {
            if (cut.isBeyond(load) && !load.isWeight()) {
                terms.add(otherMoment(load));
            }
        }
        Expression sum = terms.size() == 1 ? terms.get(0) : Expression.sum(terms);
        boolean halved = cut.divisor() == 2;
        return hand.step(
                "M_" + joint,
                halved ? sum.dividedBy(Expression.exact("2")) : sum,
                Moment.of(cut.reported()),
                halved
                        ? "per side: both sides carry alike"
                        : layout.parting().isSplit(cut.joint()) ? "of this side" : "in total");
    }

    /** All forces beyond the joint taken together. */
    Expression.Symbol load() {
        Expression.Symbol weight = weight();
        if (cut.onlyWeights()) {
            return weight;
        }
        List<Expression> forward = new ArrayList<>();
        List<Expression> up = new ArrayList<>();
        for (Load load : layout.loads()) {
            if (cut.isBeyond(load) && !load.isWeight()) {
                forward.add(forward(load));
                up.add(up(load));
            }
        }
        up.add(weight.negated());
        Expression size = Expression.squareRoot(
                Expression.sum(forward).squared().plus(Expression.sum(up).squared()));
        return hand.step("R_" + joint, size, Force.of(cut.load()), "size of all forces beyond the joint, " + sides());
    }

    /** The arm of that load. */
    Expression.Symbol loadArm() {
        if (cut.isOneWeight()) {
            return arm();
        }
        Expression.Symbol moment = moment();
        Expression both = cut.divisor() == 2 ? Expression.exact("2").times(moment) : moment;
        return hand.step("d_R_" + joint, both.dividedBy(load()), Length.of(cut.loadArm()), "arm of that load");
    }

    private Expression.Symbol otherMoment(Load load) {
        Expression.Symbol fx = forward(load);
        Expression.Symbol fy = up(load);
        Expression across = hand.y(load).minus(hand.y(cut.joint())).times(fx);
        Expression upward = hand.x(load).minus(hand.x(cut.joint())).times(fy);
        Expression formula = cut.direction() > 0 ? across.minus(upward) : upward.minus(across);
        return hand.step("M_" + load.symbol() + "_" + joint, formula, Moment.of(cut.momentFor(load)), sides());
    }

    private Expression.Symbol forward(Load load) {
        return hand.forceX(load);
    }

    private Expression.Symbol up(Load load) {
        return hand.forceY(load);
    }

    private List<Load> hung() {
        return layout.loads().stream()
                .filter(load -> cut.isBeyond(load) && load.isWeight() && !load.isNothing())
                .toList();
    }

    private Expression hungMass() {
        return Expression.sum(hung().stream().map(hand::mass).toList());
    }

    private Expression.Symbol bodyMass() {
        Expression.Symbol before = hand.known("m_beyond_" + joint);
        if (before != null) {
            return before;
        }
        List<Expression.Symbol> masses = cut.parts().stream().map(hand::mass).toList();
        return hand.step(
                "m_beyond_" + joint,
                Expression.sum(masses),
                Mass.of(cut.bodyMass()),
                "the body beyond the " + cut.joint().words() + ", " + sides());
    }

    private Expression.Symbol bodyX() {
        Expression.Symbol mass = bodyMass();
        List<Expression> terms = new ArrayList<>();
        for (Part part : cut.parts()) {
            terms.add(hand.mass(part).times(hand.x(part)));
        }
        return hand.step(
                "x_beyond_" + joint, Expression.sum(terms).dividedBy(mass), Length.of(cut.bodyX()), "its mass centre");
    }

    private Expression.Symbol massX() {
        if (hung().isEmpty()) {
            return bodyX();
        }
        Expression.Symbol bodyX = bodyX();
        List<Expression> terms = new ArrayList<>();
        for (Load load : hung()) {
            terms.add(hand.mass(load).times(hand.x(load)));
        }
        terms.add(bodyMass().times(bodyX));
        return hand.step(
                "x_W_" + joint,
                Expression.sum(terms).dividedBy(hungMass().plus(bodyMass())),
                Length.of(cut.massX()),
                "where that weight acts");
    }

    /**
     * Lines that confirm what was found: the mass centre of lifter and load over the chosen pressure, and what the exercise
     * adds.
     *
     * @param stated steps that were printed already
     */
    List<Step> checks(List<Step> stated) {
        List<Expression.Symbol> confirmed = new ArrayList<>();
        Layout.Found found = layout.found();
        if (found != null && found.balanced()) {
            confirmed.add(residual(found));
        }
        layout.confirmations().forEach(lines -> confirmed.addAll(lines.apply(hand)));
        Set<String> names = new LinkedHashSet<>();
        stated.forEach(step -> names.add(step.symbol()));
        return hand.leadingTo(confirmed).stream()
                .filter(step -> !names.contains(step.symbol()))
                .toList();
    }

    private Expression.Symbol residual(Layout.Found found) {
        String name = "x_all_less_x_pressure";
        Expression.Symbol before = hand.known(name);
        if (before != null) {
            return before;
        }
        List<Expression> masses = new ArrayList<>();
        List<Expression> moments = new ArrayList<>();
        double mass = 0;
        double massX = 0;
        for (Part part : layout.pieces().all()) {
            masses.add(hand.mass(part));
            moments.add(hand.mass(part).times(hand.x(part)));
            mass += part.mass();
            massX += part.mass() * cut.partX(part);
        }
        for (Load load : layout.loads()) {
            if (!load.isWeight()) {
                return residualOfForces(found, name);
            }
            masses.add(hand.mass(load));
            moments.add(hand.mass(load).times(hand.x(load)));
            mass += load.mass();
            massX += load.mass() * load.x();
        }
        Expression.Symbol all = hand.step(
                "x_all",
                Expression.sum(moments).dividedBy(Expression.sum(masses)),
                Length.of(massX / mass),
                "mass centre of lifter and load");
        return hand.step(
                name,
                all.minus(hand.pressure()),
                Length.of(massX / mass - layout.pressureX()),
                "vanishes when the pressure lies at the chosen place: this decided the lean of the "
                        + found.segment().words());
    }

    /** Where other forces than weights act, the pressure lies elsewhere than under the mass centre. */
    private Expression.Symbol residualOfForces(Layout.Found found, String name) {
        Expression.Symbol ground = new HandGround(layout, hand).pressure();
        return hand.step(
                name,
                ground.minus(hand.pressure()),
                Length.of(HandGround.pressureSi(layout) - layout.pressureX()),
                "vanishes when the pressure lies at the chosen place: this decided the lean of the "
                        + found.segment().words());
    }
}

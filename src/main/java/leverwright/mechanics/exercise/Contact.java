package leverwright.mechanics.exercise;

import java.util.Optional;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Expression;

/**
 * A second contact, such as a bench under the shoulders: moments about the first one give its force along the normal, and the
 * force along the surface is free.
 *
 * @param name in print, such as "bench"
 * @param at where it touches
 * @param normal where its normal points, towards the body
 * @param about the point about which moments are taken: the first contact
 * @param members of the working side, whose weights and loads count: all, or those beyond a joint that is at rest
 * @param free the force along the surface, to the right of the normal
 * @param friction coefficient that limits it
 * @param why why the free force starts where it starts
 */
record Contact(
        String name,
        Spot at,
        Pull.Aim normal,
        Pivot about,
        int members,
        Knob<Force> free,
        Knob<Ratio> friction,
        String why)
        implements LoadRule {
    private static final double TINY = 1e-9;
    private static final double ROUNDING = 1e-9;

    @Override
    public String words() {
        return "";
    }

    @Override
    public void add(Work work) {
        double x = at.x(work);
        double y = at.y(work);
        double normalX = normal.unitX(work, x, y);
        double normalY = normal.unitY(work, x, y);
        double toX = x - about.x(work);
        double toY = y - about.y(work);
        double lever = toX * normalY - toY * normalX;
        if (Math.abs(lever) < TINY) {
            throw new ImpossibleSetting(
                    "the " + name + " pushes straight towards the other contact, so that balance gives"
                            + " no force for it; choose another posture or another place of the " + name);
        }
        double along = work.si(free);
        int who = members(work);
        double moment = work.momentAbout(about.x(work), about.y(work), who);
        double push = -(moment + along * (-toX * normalX - toY * normalY)) / lever;
        int index = work.layout().loads().size();
        String symbol = symbol();
        work.layout()
                .add(Load.force(
                                name,
                                work.on(at.on()),
                                x,
                                y,
                                push * normalX + along * normalY,
                                push * normalY - along * normalX,
                                hand -> at.in(hand, work, symbol, true),
                                hand -> at.in(hand, work, symbol, false),
                                hand -> force(hand, work, index, true),
                                hand -> force(hand, work, index, false))
                        .asReaction());
    }

    private String symbol() {
        return Load.symbolOf(name);
    }

    private int members(Work work) {
        int mask = 0;
        for (Member member : Member.ALL) {
            if ((members & member.bit()) != 0) {
                mask |= work.on(member).bit();
            }
        }
        return mask;
    }

    private Expression force(Hand hand, Work work, int index, boolean isX) {
        Load load = work.layout().loads().get(index);
        Expression push = push(hand, work, index);
        Expression x = normal.in(hand, work, load, true);
        Expression y = normal.in(hand, work, load, false);
        Expression along = along(hand, work);
        return isX ? push.times(x).plus(along.times(y)) : push.times(y).minus(along.times(x));
    }

    private Expression along(Hand hand, Work work) {
        return hand.input("T_" + symbol(), Force.of(work.si(free)), "force along the surface, free; set");
    }

    /** The force along the normal: all other moments about the first contact, over its lever. */
    private Expression push(Hand hand, Work work, int index) {
        Load load = work.layout().loads().get(index);
        Expression aboutX = about.in(hand, work, true);
        Expression aboutY = about.in(hand, work, false);
        Expression toX = hand.x(load).minus(aboutX);
        Expression toY = hand.y(load).minus(aboutY);
        Expression x = normal.in(hand, work, load, true);
        Expression y = normal.in(hand, work, load, false);
        Expression others = Work.momentIn(hand, work.layout(), aboutX, aboutY, members(work), index);
        Expression ofAlong = along(hand, work).times(toX.times(x).plus(toY.times(y)));
        Expression formula = ofAlong.minus(others).dividedBy(toX.times(y).minus(toY.times(x)));
        return hand.step("N_" + symbol(), formula, Force.of(pushSi(work, load)), "moments about the first contact");
    }

    double pushSi(Work work, Load load) {
        return load.forceX() * normal.unitX(work, load.x(), load.y())
                + load.forceY() * normal.unitY(work, load.x(), load.y());
    }

    /** What must be said of a posture: a contact that would pull, or slide. */
    Optional<String> remark(Work work, Load load) {
        double push = pushSi(work, load);
        double along = Math.abs(work.si(free));
        if (push < 0) {
            return Optional.of("The " + name + " would have to pull with " + newtons(-push)
                    + ": in this posture it carries nothing, and the lifter would leave it.");
        }
        double holds = work.si(friction) * push;
        return along <= holds * (1 + ROUNDING)
                ? Optional.empty()
                : Optional.of("The " + name + " would slide: the force along it is " + newtons(along)
                        + ", friction holds " + newtons(holds) + ".");
    }

    private static String newtons(double force) {
        return MeasureText.print(Force.of(force), Unit.NEWTON, 3);
    }

    String freeComponent() {
        return free.meaning() + " (" + free.name() + "): " + why + " It may lie anywhere while friction holds ("
                + friction.name() + ").";
    }
}

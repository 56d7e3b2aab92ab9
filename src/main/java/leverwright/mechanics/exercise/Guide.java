package leverwright.mechanics.exercise;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;

/**
 * An upright guide of the bar: a horizontal force on it. A knob sets it; not set, it is 0 where balance finds an angle, and where
 * three angles are set it is what keeps the pressure at its place.
 *
 * @param preferred the angles that count as set where too few were given
 */
record Guide(List<Knob<Angle>> preferred) implements LoadRule {
    @Override
    public String words() {
        return "an upright guide of the bar";
    }

    @Override
    public Optional<String> leavesFree() {
        return Optional.of(SetupKnobs.GUIDE_FORCE.meaning() + " (" + SetupKnobs.GUIDE_FORCE.name()
                + "): 0 by default, a lifter who balances the bar. Where three angles are set and it is not, it keeps the"
                + " pressure at its place. The feet take the opposite force while friction holds ("
                + Knobs.FRICTION.name()
                + ").");
    }

    private boolean follows(Work work) {
        return !work.settings().given(SetupKnobs.GUIDE_FORCE)
                && Stance.decided(work.settings(), preferred).size() == 3;
    }

    private static Load bar(Work work) {
        for (Load load : work.layout().loads()) {
            if (load.name().equals("bar")) {
                return load;
            }
        }
        throw new ImpossibleSetting("there is no bar that a guide could hold");
    }

    @Override
    public void add(Work work) {
        Load bar = bar(work);
        int index = work.layout().loads().size();
        boolean follows = follows(work);
        if (follows) {
            work.layout().keptInBalance();
        }
        double force = follows
                ? work.momentAbout(work.layout().pressureX(), 0, -1) / bar.y()
                : work.si(SetupKnobs.GUIDE_FORCE);
        work.layout()
                .add(Load.force(
                        "guide",
                        bar.on(),
                        bar.x(),
                        bar.y(),
                        force,
                        0,
                        bar.formulaX(),
                        bar.formulaY(),
                        hand -> formula(hand, work, index, force),
                        hand -> Expression.exact("0")));
    }

    private Expression formula(Hand hand, Work work, int index, double force) {
        if (!follows(work)) {
            return hand.input("H_guide", Force.of(force), "force of the guide on the bar, forward, free; set");
        }
        Layout layout = work.layout();
        Expression others = Work.momentIn(hand, layout, hand.pressure(), Expression.exact("0"), -1, index);
        return hand.step(
                "H_guide",
                others.dividedBy(hand.y(layout.loads().get(index))),
                Force.of(force),
                "moments about the chosen pressure: what the guide must give");
    }

    @Override
    public void show(Work work) {
        Load bar = bar(work);
        work.layout()
                .show(new Sketch.Line(
                        "guide", new Sketch.Point(bar.x(), 0), new Sketch.Point(bar.x(), bar.y() + ABOVE)));
    }

    /** How far the guide is drawn above the bar, m. */
    private static final double ABOVE = 0.4;
}

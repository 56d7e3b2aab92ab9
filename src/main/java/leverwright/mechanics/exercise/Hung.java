package leverwright.mechanics.exercise;

import leverwright.mechanics.measure.Mass;

/**
 * A mass that hangs on or rests on a segment.
 *
 * @param name in print
 * @param at where
 * @param mass knob
 * @param times 2 for one in each hand of hands that are taken together, 0.5 for a hand's half of a bar, else 1
 */
record Hung(String name, Spot at, Knob<Mass> mass, double times) implements LoadRule {
    private static final double VEST_HEIGHT = 0.2;

    /** A weight vest on the trunk, 20 cm above the hips (from memory). */
    static Hung vest() {
        return new Hung("vest", Spot.at(Member.TRUNK, VEST_HEIGHT), SetupKnobs.VEST, 1);
    }

    @Override
    public String words() {
        return name + " on the " + at.on().words();
    }

    @Override
    public boolean pushes() {
        return false;
    }

    @Override
    public void add(Work work) {
        at.check(work, name);
        String symbol = Load.symbolOf(name);
        String source = times == 1
                ? "set on the exercise"
                : times > 1 ? "both, 2 × one, set on the exercise" : "half of what is set on the exercise";
        work.layout()
                .add(Load.weight(
                        name,
                        work.on(at.on()),
                        times * work.si(mass),
                        source,
                        at.x(work),
                        at.y(work),
                        hand -> at.in(hand, work, symbol, true),
                        hand -> at.in(hand, work, symbol, false),
                        work.layout().gravity()));
    }
}

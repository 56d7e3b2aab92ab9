package leverwright.mechanics.exercise;

import java.util.Optional;
import leverwright.mechanics.load.LineLoad;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Sketch;

/**
 * A load of {@code leverwright.mechanics.load} on a movement. Its place is measured along the segment from the end nearer the
 * feet (arms: nearer the trunk) and to the left of that axis.
 *
 * @param name in print
 * @param on the segment
 * @param load the load
 */
record Given(String name, Member on, leverwright.mechanics.load.Load load) implements LoadRule {
    static Given of(leverwright.mechanics.load.Load load, int before) {
        for (Member member : Member.ALL) {
            boolean named = member.words().equals(load.on())
                    || (member == Member.TRUNK && load.on().equals("trunk"));
            if (named) {
                return new Given(load.kind() + (before == 0 ? "" : " " + (before + 1)), member, load);
            }
        }
        throw new IllegalArgumentException("there is no segment \"" + load.on()
                + "\" to put a load on; allowed: foot, shank, thigh, trunk, upper arm, forearm, hand, and the same after"
                + " \"other \"");
    }

    @Override
    public String words() {
        return name + " on the " + on.words();
    }

    @Override
    public boolean pushes() {
        return !(load instanceof MassLoad);
    }

    @Override
    public void show(Work work) {
        if (load instanceof LineLoad line) {
            Layout layout = work.layout();
            Load laid = layout.loads().stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow();
            layout.show(new Sketch.Line(
                    line.resistance().name(),
                    new Sketch.Point(laid.x(), laid.y()),
                    new Sketch.Point(line.anchor().x(), line.anchor().y())));
        }
    }

    @Override
    public void add(Work work) {
        Layout layout = work.layout();
        Member member = work.on(on);
        boolean foot = member.segment() == leverwright.mechanics.body.Segment.FOOT;
        double axisX = foot ? layout.cosine(member) : layout.sine(member);
        double axisY = foot ? -layout.sine(member) : Layout.upward(member) * layout.cosine(member);
        Place at = load.at();
        double atX = layout.startX(member) + at.along() * axisX - at.across() * axisY;
        double atY = layout.startY(member) + at.along() * axisY + at.across() * axisX;
        double gravity = layout.gravity();
        LoadPoint point = new LoadPoint(atX, atY, axisX, axisY, 0, 0, 0, 0, 0, 0, 0, -gravity, Layout.GRAVITY);
        double forceX = load.forceX(point);
        double forceY = load.forceY(point);
        double couple = load.couple(point);
        double square = forceX * forceX + forceY * forceY;
        if (couple != 0 && square == 0) {
            throw new ImpossibleSetting("the " + name + " is a couple without a force, which an exercise cannot hold;"
                    + " give a force at a distance instead");
        }
        // a force with a couple is the same force on a line beside its place
        double aside = couple == 0 ? 0 : couple / square;
        double x = atX + aside * forceY;
        double y = atY - aside * forceX;
        String symbol = name.replace(' ', '_');
        Load.Formula placeX = hand -> hand.input("x_" + symbol + "_at", Length.of(x), "place of the " + name);
        Load.Formula placeY = hand -> hand.input("y_" + symbol + "_at", Length.of(y), "place of the " + name);
        if (load instanceof MassLoad mass) {
            layout.add(Load.weight(name, member, mass.mass(), "given", x, y, placeX, placeY, gravity));
            return;
        }
        Load still = Load.force(
                name,
                member,
                x,
                y,
                forceX,
                forceY,
                placeX,
                placeY,
                hand -> input(hand, "Px_" + symbol, forceX),
                hand -> input(hand, "Py_" + symbol, forceY));
        // links of trunk and other leg start elsewhere; in a plane without gravity a stack would lose its weight
        boolean sameLink = member != Member.TRUNK && !(member.isOther() && member.isLeg());
        Optional<Law> law =
                sameLink && layout.gravityShare() == 1 ? Optional.of((link, where) -> load) : Optional.empty();
        layout.add(still, law);
    }

    private Expression input(Hand hand, String symbol, double force) {
        return hand.input(symbol, Force.of(force), "given by the " + name + ", worked out by itself");
    }
}

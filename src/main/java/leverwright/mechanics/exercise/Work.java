package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.working.Expression;

/**
 * A movement being laid out for one body: the layout, the settings, and which side is reported. Rules speak of the side that
 * works; {@link #on} turns that into the layout's member.
 */
final class Work {
    private final Layout layout;
    private final Settings settings;
    private final boolean swapped;
    private double unknown;
    private boolean searching;

    Work(Layout layout, Settings settings, boolean swapped) {
        this.layout = layout;
        this.settings = settings;
        this.swapped = swapped;
    }

    Layout layout() {
        return layout;
    }

    Settings settings() {
        return settings;
    }

    double si(Knob<?> knob) {
        return settings.si(knob);
    }

    /** The layout's member for a member of the rules. */
    Member on(Member ruled) {
        return swapped && layout.parting().isSplit(ruled.segment()) ? ruled.twin() : ruled;
    }

    /** Whether the layout keeps a member of the rules on its other side. */
    boolean isOther(Member ruled) {
        return on(ruled).isOther();
    }

    /** The lean or length that a search tries. */
    double unknown() {
        return unknown;
    }

    void unknown(double tried) {
        unknown = tried;
    }

    /** Whether a lean is being tried: what does not reach then is only on the way. */
    boolean isSearching() {
        return searching;
    }

    void searching(boolean now) {
        searching = now;
    }

    /** Turning moment of everything about a point, counter-clockwise, N·m: weights, and the loads added so far. */
    double momentAbout(double x, double y, int members) {
        double sum = 0;
        double gravity = layout.gravity();
        for (Part part : layout.pieces().all()) {
            if ((part.on().bit() & members) != 0) {
                sum -= part.mass() * gravity * (layout.centreX(part.on()) - x);
            }
        }
        List<Load> loads = layout.loads();
        for (int k = 0; k < loads.size(); k++) {
            Load load = loads.get(k);
            if ((load.on().bit() & members) != 0) {
                sum += load.momentAbout(x, y);
            }
        }
        return sum;
    }

    /** The same for a hand calculation, with the loads that lie before one in the list. */
    static Expression momentIn(Hand hand, Layout layout, Expression x, Expression y, int members, int before) {
        List<Expression> terms = new ArrayList<>();
        for (Part part : layout.pieces().all()) {
            if ((part.on().bit() & members) != 0) {
                terms.add(hand.mass(part)
                        .times(hand.gravity())
                        .times(hand.x(part).minus(x))
                        .negated());
            }
        }
        for (int k = 0; k < before; k++) {
            Load load = layout.loads().get(k);
            if ((load.on().bit() & members) != 0) {
                if (!load.isWeight()) {
                    terms.add(hand.y(load).minus(y).times(hand.forceX(load)).negated());
                }
                terms.add(hand.x(load).minus(x).times(hand.forceY(load)));
            }
        }
        return Expression.sum(terms);
    }
}

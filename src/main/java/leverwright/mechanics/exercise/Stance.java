package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Swing;
import leverwright.mechanics.numeric.Trigonometry;

/**
 * Stands a lifter on both feet: shank, thigh and trunk have three leans; the settings give two and balance finds the third,
 * or the settings give all three and the pressure falls where it falls.
 *
 * <p>Balance: Σ m·(x − x_pressure) = 0 over all segments and the bar, which holds at rest with vertical loads only. It is
 * sought between the ends of the range of the lean in question. One lean alone enters the balance through its sine, which
 * grows all the way through those ranges, so that there is at most one such posture; should there be two, the search takes the
 * one between the lower end and the first change of sign.
 */
final class Stance {
    private static final double RIGHT_ANGLE = Measures.deg(90).si();
    /** Places where the sign is looked up when the two ends of the range have the same sign. */
    private static final int STEPS = 12;

    private static final double ACCURACY = 1e-14;
    /** Part of the imbalance at the ends up to which the straight line's root leaves rounding only. */
    private static final double STRAIGHT = 1e-14;

    private final Layout layout;
    private final Settings settings;
    private final Upper upper;
    private final double pressureX;
    private final double heelHeight;
    private final double load;
    private final double[] flexionSine = new double[1];
    private final double[] flexionCosine = new double[1];
    private final boolean other;
    private boolean together;

    /** The arms and what they hold, which follow trunk and legs. */
    interface Upper {
        /** Places the arms on a layout whose legs and trunk stand, and returns the load's x, m. */
        double place(Layout layout);

        /** How far mass and loads lie ahead of a place on the floor, kg·m; called when the arms are placed. */
        default double imbalance(Layout layout, double at, double load, double loadX) {
            return layout.massMomentAbout(at) + load * (loadX - at);
        }
    }

    /**
     * Begins a stance; the foot is placed.
     *
     * @param load mass that arms or trunk hold, kg, whose x {@code upper} returns
     */
    Stance(Layout layout, Settings settings, double load, Upper upper) {
        this(layout, settings, load, upper, false);
    }

    /** The same on the leg of the other side alone, where both sides are kept apart. */
    Stance(Layout layout, Settings settings, double load, Upper upper, boolean other) {
        this.other = other;
        this.layout = layout;
        this.settings = settings;
        this.upper = upper;
        this.heelHeight = settings.si(Knobs.HEEL_HEIGHT);
        this.load = load;
        double foot = layout.body().length(Segment.FOOT);
        double pitch = heelHeight == 0 ? 0 : Trigonometry.arcSine(Math.min(1, heelHeight / foot));
        layout.lean(member(Segment.FOOT), pitch);
        this.pressureX = settings.si(Knobs.PRESSURE) * foot;
        layout.pressureAt(pressureX);
        layout.origin(member(Segment.FOOT), "from the heel's height over the foot's length");
    }

    /**
     * Sets the leans, finds the one that balance decides, and places legs, trunk and arms.
     *
     * @param preferred the knobs that count as set, in this order, where fewer than two were given
     * @return the load's x, m
     * @throws IllegalArgumentException if more angles are set than can differ
     */
    double stand(List<Knob<Angle>> preferred) {
        List<Knob<Angle>> given = decided(settings, preferred);
        boolean trunk = given.contains(Knobs.TORSO_LEAN);
        boolean shank = given.contains(Knobs.SHANK_LEAN);
        boolean thigh = given.contains(Knobs.THIGH_ABOVE_LEVEL);
        boolean knee = given.contains(Knobs.KNEE_FLEXION);
        if (trunk) {
            set(Segment.TRUNK, settings.si(Knobs.TORSO_LEAN), Knobs.TORSO_LEAN);
        }
        if (shank) {
            set(Segment.SHANK, settings.si(Knobs.SHANK_LEAN), Knobs.SHANK_LEAN);
        }
        if (thigh) {
            set(Segment.THIGH, settings.si(Knobs.THIGH_ABOVE_LEVEL) - RIGHT_ANGLE, Knobs.THIGH_ABOVE_LEVEL);
        }
        if (knee && shank) {
            set(
                    Segment.THIGH,
                    layout.lean(member(Segment.SHANK)) - settings.si(Knobs.KNEE_FLEXION),
                    Knobs.KNEE_FLEXION);
        } else if (knee && thigh) {
            set(
                    Segment.SHANK,
                    layout.lean(member(Segment.THIGH)) + settings.si(Knobs.KNEE_FLEXION),
                    Knobs.KNEE_FLEXION);
        }
        if (given.size() == 3) {
            place();
            return upper.place(layout);
        }
        return balance(trunk, shank, thigh, knee);
    }

    private Member member(Segment segment) {
        return Member.of(segment, other);
    }

    private void place() {
        if (other) {
            layout.anchorOtherAt(Anchor.HEEL, 0, heelHeight);
        } else {
            layout.anchorAt(Anchor.HEEL, 0, heelHeight);
        }
        layout.placeLegsAndTrunk();
    }

    private void set(Segment segment, double lean, Knob<Angle> by) {
        layout.lean(member(segment), lean);
        layout.origin(member(segment), settings.given(by) ? BY_HAND : BY_DEFAULT);
    }

    private static final String BY_HAND = "set on the exercise";
    private static final String BY_DEFAULT = "the exercise's default";
    private static final String BY_BALANCE = "found by balance, see the check";
    private static final String AT_THE_END = "the end of its range that comes nearest to balance";

    /**
     * Returns the angles that count as set.
     *
     * @throws IllegalArgumentException if more are set than can differ
     */
    static List<Knob<Angle>> decided(Settings settings, List<Knob<Angle>> preferred) {
        List<Knob<Angle>> given = new ArrayList<>(4);
        for (Knob<Angle> knob : ANGLES) {
            if (settings.given(knob)) {
                given.add(knob);
            }
        }
        for (Knob<Angle> knob : preferred) {
            if (given.size() < 2 && !given.contains(knob)) {
                given.add(knob);
            }
        }
        if (given.size() == 4 || (given.size() == 3 && !given.contains(Knobs.TORSO_LEAN))) {
            throw new IllegalArgumentException(
                    "shank lean, thigh above level and knee flexion are all set, but any two of"
                            + " them decide the third; take one back with without(...)");
        }
        return given;
    }

    static final List<Knob<Angle>> ANGLES =
            List.of(Knobs.TORSO_LEAN, Knobs.SHANK_LEAN, Knobs.THIGH_ABOVE_LEVEL, Knobs.KNEE_FLEXION);

    private double balance(boolean trunk, boolean shank, boolean thigh, boolean knee) {
        if (!trunk) {
            return search(
                    Segment.TRUNK,
                    Knobs.TORSO_LEAN.least().si(),
                    Knobs.TORSO_LEAN.most().si());
        }
        if (shank) {
            return search(Segment.THIGH, -RIGHT_ANGLE, layout.lean(member(Segment.SHANK)));
        }
        if (knee && !thigh) {
            together = true;
            Trigonometry.sineAndCosine(settings.si(Knobs.KNEE_FLEXION), flexionSine, flexionCosine, 0);
        }
        return search(
                Segment.SHANK,
                Knobs.SHANK_LEAN.least().si(),
                Knobs.SHANK_LEAN.most().si());
    }
    /** Finds the lean of a segment; of shank and thigh by its sine, which enters the balance evenly and needs no other. */
    private double search(Segment segment, double least, double most) {
        boolean bySine = segment != Segment.TRUNK;
        double from = bySine ? Trigonometry.sine(least) : least;
        double to = bySine ? Trigonometry.sine(most) : most;
        DoubleUnaryOperator imbalance = unknown -> {
            double loadX = pose(segment, unknown, bySine);
            return upper.imbalance(layout, pressureX, load, loadX);
        };
        Bracket bracket = Bracket.within(imbalance, from, to);
        double lean = bracket.crosses()
                ? root(imbalance, bracket, bySine)
                : bySine ? Trigonometry.arcSine(bracket.nearest()) : bracket.nearest();
        layout.lean(member(segment), lean);
        layout.origin(member(segment), bracket.crosses() ? BY_BALANCE : AT_THE_END);
        if (together) {
            layout.lean(member(Segment.THIGH), lean - settings.si(Knobs.KNEE_FLEXION));
            layout.origin(member(Segment.THIGH), "the shank's lean, found by balance, less the knee's flexion");
        }
        layout.found(new Layout.Found(segment, bracket.crosses()));
        place();
        return upper.place(layout);
    }

    /** The lean at the root: of the straight line through the bracket's ends where the balance is one in the sine, else sought. */
    private static double root(DoubleUnaryOperator imbalance, Bracket bracket, boolean bySine) {
        double low = bracket.low();
        double high = bracket.high();
        if (!bySine) {
            return Swing.root("balanced posture", imbalance, bracket.from(), bracket.to(), low, high, ACCURACY);
        }
        double straight = low == high ? bracket.from() : (bracket.from() * high - bracket.to() * low) / (high - low);
        if (Math.abs(imbalance.applyAsDouble(straight)) <= STRAIGHT * (Math.abs(low) + Math.abs(high))) {
            return Trigonometry.arcSine(straight);
        }
        double from = Trigonometry.arcSine(bracket.from());
        double to = Trigonometry.arcSine(bracket.to());
        DoubleUnaryOperator byAngle = angle -> imbalance.applyAsDouble(Trigonometry.sine(angle));
        return Swing.root("balanced posture", byAngle, from, to, low, high, ACCURACY);
    }

    private double pose(Segment segment, double unknown, boolean bySine) {
        if (bySine) {
            double cosine = Math.sqrt(Math.max(0, 1 - unknown * unknown));
            layout.leanBySine(member(segment), unknown, cosine);
            if (together) {
                layout.leanBySine(
                        member(Segment.THIGH),
                        unknown * flexionCosine[0] - cosine * flexionSine[0],
                        cosine * flexionCosine[0] + unknown * flexionSine[0]);
            }
        } else {
            layout.lean(segment, unknown);
        }
        place();
        return upper.place(layout);
    }

    /**
     * Where a function changes its sign, looked up at the ends of a range and, if they agree, between.
     *
     * @param low value at the lower end
     * @param high value at the upper end
     * @param crosses whether the signs differ
     * @param nearest the end at which it is nearest to zero
     */
    private record Bracket(double from, double to, double low, double high, boolean crosses, double nearest) {
        static Bracket within(DoubleUnaryOperator function, double least, double most) {
            double low = function.applyAsDouble(least);
            double high = function.applyAsDouble(most);
            double nearest = Math.abs(low) <= Math.abs(high) ? least : most;
            if (low * high <= 0) {
                return new Bracket(least, most, low, high, true, nearest);
            }
            for (int k = 1; k < STEPS; k++) {
                double to = least + k * (most - least) / STEPS;
                double there = function.applyAsDouble(to);
                if (low * there <= 0) {
                    return new Bracket(least, to, low, there, true, nearest);
                }
            }
            return new Bracket(least, most, low, high, false, nearest);
        }
    }
}

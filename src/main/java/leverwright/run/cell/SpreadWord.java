package leverwright.run.cell;

import java.util.List;
import java.util.Locale;
import leverwright.mechanics.body.Population;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.muscle.MuscleInput;
import leverwright.mechanics.numeric.Sampling;
import leverwright.mechanics.study.Order;
import leverwright.mechanics.study.Spread;
import leverwright.mechanics.study.SpreadResult;
import leverwright.mechanics.study.Uncertainty;
import leverwright.mechanics.study.Variable;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Curves;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Verdict;

/**
 * A spread that a cell begins: {@code spread(squat.by(ines)).vary(TORSO_LEAN, withinLimits(deg(5))).of(moment(HIP))}. Words that
 * add an input return another spread; words that ask show a result.
 */
public final class SpreadWord implements ResultBuilder {
    private static final double SURE = 0.95;

    private final Spread spread;
    private final double sure;

    SpreadWord(Spread spread) {
        this(spread, SURE);
    }

    private SpreadWord(Spread spread, double sure) {
        this.spread = spread;
        this.sure = sure;
    }

    private SpreadWord with(Spread other) {
        return new SpreadWord(other, sure);
    }

    /**
     * Adds an input that is unsure: {@code vary(TORSO_LEAN, withinLimits(deg(5)))}.
     *
     * @param knob the input
     * @param uncertainty how unsure it is
     * @param <Q> its kind
     */
    public <Q extends Measure<Q>> SpreadWord vary(Knob<Q> knob, Uncertainty<Q> uncertainty) {
        return with(spread.vary(knob, uncertainty));
    }

    /**
     * Adds an input that is unsure: {@code vary(lengthOf(THIGH), normal(cm(1)))}.
     *
     * @param variable the input
     * @param uncertainty how unsure it is
     * @param <Q> its kind
     */
    public <Q extends Measure<Q>> SpreadWord vary(Variable<Q> variable, Uncertainty<Q> uncertainty) {
        return with(spread.vary(variable, uncertainty));
    }

    /**
     * Adds numbers of the muscles, as unsure as their sources say: {@code vary(MUSCLE_AREAS)}.
     *
     * @param inputs which numbers
     */
    public SpreadWord vary(MuscleInput... inputs) {
        Spread more = spread;
        for (MuscleInput input : inputs) {
            more = more.vary(input);
        }
        return with(more);
    }

    /**
     * Adds one kind of numbers of the muscles: {@code vary(MUSCLE_AREAS, published())}.
     *
     * @param input which numbers
     * @param published as unsure as their sources say
     */
    public SpreadWord vary(MuscleInput input, Uncertainty.Published published) {
        return with(spread.vary(input));
    }

    /**
     * Draws the lifter's body from a survey: {@code people(population(FEMALE))}.
     *
     * @param population who is drawn
     */
    public SpreadWord people(Population population) {
        return with(spread.people(population));
    }

    /**
     * Lets two inputs go together: {@code together(TORSO_LEAN, BAR, 0.5)}; all others are independent.
     *
     * @param one an input: a knob or a variable such as lengthOf(THIGH) that is varied, or whose error was typed
     * @param other another one
     * @param correlation greater than −1 and less than 1
     */
    public SpreadWord together(Object one, Object other, double correlation) {
        return with(spread.together(one, other, Ratio.of(correlation)));
    }

    /**
     * Sets how many draws are made; 2000 unless said otherwise.
     *
     * @param count from 10 on; what would take too long is refused with an estimate
     */
    public SpreadWord draws(double count) {
        return with(spread.draws(count));
    }

    /**
     * Sets the seed; equal seeds give equal draws.
     *
     * @param seed any number
     */
    public SpreadWord seed(long seed) {
        return with(spread.seed(seed));
    }

    /**
     * Sets how draws are laid: RANDOM, LATIN_HYPERCUBE, or SOBOL, which stands unless said otherwise.
     *
     * @param sampling how
     */
    public SpreadWord drawnBy(Sampling sampling) {
        return with(spread.drawnBy(sampling));
    }

    /**
     * Sets in which share of the draws a claim must hold to get the verdict that it holds; 95 % unless said otherwise. It does
     * not hold when it fails in as many.
     *
     * @param share above 50 %, up to 100 %
     */
    public SpreadWord sure(Ratio share) {
        if (!(share.si() > 0.5 && share.si() <= 1)) {
            throw new IllegalArgumentException(
                    "a claim must hold in " + share + " of the draws; allowed: more than 50 %, up to 100 %");
        }
        return new SpreadWord(spread, share.si());
    }

    /**
     * Shows the quantiles of results as a table.
     *
     * @param readings what is read, at least one
     */
    public SpreadWord of(Reading<?>... readings) {
        SpreadResult result = result(readings);
        Words.show(() -> ListingRows.result(result.listing()));
        return this;
    }

    /**
     * Returns a result's median with nine tenths of the draws as its band, for a cell that goes on with it.
     *
     * @param reading what is read
     * @param <M> its kind
     */
    @SuppressWarnings("unchecked") // a reading's dimension gives its one kind of measure
    public <M extends Measure<M>> Answer<M> middle(Reading<M> reading) {
        return (Answer<M>) result(reading).answer(0);
    }

    /**
     * Returns what came of the draws, for a cell that goes on with it.
     *
     * @param readings what is read, at least one
     */
    public SpreadResult result(Reading<?>... readings) {
        return spread.of(CellCrew.crew(), readings);
    }

    /**
     * Draws which share of the draws lies below each value.
     *
     * @param readings what is read, at least one; of one kind
     */
    public SpreadWord chart(Reading<?>... readings) {
        Words.chart(result(readings).distribution());
        return this;
    }

    /**
     * Shows which inputs make results unsure: the share of the variance that each makes alone, and in all.
     *
     * @param readings what is read, at least one
     */
    public SpreadWord shares(Reading<?>... readings) {
        spread.shares(CellCrew.crew(), readings).listings().forEach(Words::table);
        return this;
    }

    /**
     * Shows what becomes of a result while one input at a time goes through its spread: a chart, and a table with the input
     * first that moves it most.
     *
     * @param reading what is read
     */
    public SpreadWord oneAtATime(Reading<?> reading) {
        Words.chart(spread.oneAtATime(reading).curves());
        Words.table(spread.oneAtATime(reading));
        return this;
    }

    /**
     * Draws results over a knob with the band of nine tenths of the draws.
     *
     * @param knob the knob that is turned
     * @param least its first setting
     * @param most its last setting
     * @param readings what is read, at least one
     * @param <Q> the kind of quantity that the knob sets
     */
    public <Q extends Measure<Q>> SpreadWord through(Knob<Q> knob, Q least, Q most, Reading<?>... readings) {
        Words.chart(curves(knob, least, most, readings));
        return this;
    }

    /**
     * Returns results over a knob with the band of nine tenths of the draws, for a cell that goes on with them.
     *
     * @param knob the knob that is turned
     * @param least its first setting
     * @param most its last setting
     * @param readings what is read, at least one
     * @param <Q> the kind of quantity that the knob sets
     */
    public <Q extends Measure<Q>> Curves curves(Knob<Q> knob, Q least, Q most, Reading<?>... readings) {
        return spread.curves(CellCrew.crew(), knob, least, most, readings);
    }

    /**
     * Tells in how many draws a sentence holds.
     *
     * @param sentence what is claimed, in words
     * @param reading what is read
     * @param test against which other reading
     * @param <M> the kind of value
     */
    public <M extends Measure<M>> SpreadWord holds(
            String sentence, Reading<M> reading, StudyWords.ReadingTest<M> test) {
        String words = (test.above() ? "is greater than the " : "is less than the ") + test.other();
        return claim(
                test.above()
                        ? Order.above(sentence, reading, test.other())
                        : Order.below(sentence, reading, test.other()),
                words);
    }

    /**
     * Tells in how many draws a sentence holds: {@code holds("Over 100", moment(HIP), greaterThan(newtonMetres(100)))}.
     *
     * @param sentence what is claimed, in words
     * @param reading what is read
     * @param test what the sentence asks of it
     * @param <M> the kind of value
     */
    public <M extends Measure<M>> SpreadWord holds(String sentence, Reading<M> reading, ClaimTest<M> test) {
        return claim(Order.between(sentence, reading, test.least(), test.greatest(), test.openEnds()), test.words());
    }

    private SpreadWord claim(Order order, String words) {
        Claims.sentence(order.sentence());
        SpreadResult result = spread.orders(CellCrew.crew(), List.of(order));
        SpreadMarks marks = new SpreadMarks();
        Words.show(() -> claim(order, words, result, marks));
        CellSink.current().lastClaim(marks);
        return this;
    }

    /** Marks the claim made last as one that the reader is meant to complete: a recheck compares it with its record. */
    public SpreadWord forReader() {
        CellSink.current().lastClaim().forReader = true;
        return this;
    }

    /** Marks the claim made last as doubted by the author: a recheck compares it with its record. */
    public SpreadWord doubted() {
        CellSink.current().lastClaim().doubted = true;
        return this;
    }

    private ClaimResult claim(Order order, String words, SpreadResult result, SpreadMarks marks) {
        double share = result.probability(0);
        double doubt = result.doubt(0);
        Quantity quantity = new Quantity(share, Math.max(0, share - doubt), Math.min(1, share + doubt), Unit.PERCENT);
        Verdict verdict = Verdict.CANNOT_TELL;
        if (share >= sure) {
            verdict = Verdict.HOLDS;
        } else if (share <= 1 - sure) {
            verdict = Verdict.DOES_NOT_HOLD;
        }
        String reason = String.format(
                Locale.ROOT,
                "this holds in %d of %d draws; %.0f %% of them are asked for",
                result.held(0),
                result.judged(0),
                100 * sure);
        return new ClaimResult(
                order.sentence(),
                quantity,
                "share of draws in which the " + order.reading() + " " + words,
                Sides.NOT_SIDED,
                "holds in at least " + Unit.PERCENT.format(sure) + " of the draws",
                verdict,
                reason,
                marks.forReader,
                marks.doubted,
                "",
                List.of(spread.performance().toString()),
                null,
                result.notes());
    }
}

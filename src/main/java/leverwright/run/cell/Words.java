package leverwright.run.cell;

import java.util.Objects;
import java.util.function.Supplier;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.LeverView;
import leverwright.mechanics.exercise.MomentTable;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.study.Repetition;
import leverwright.mechanics.study.Sweep;
import leverwright.mechanics.study.Variable;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.ContourMap;
import leverwright.mechanics.working.Curves;
import leverwright.mechanics.working.Listed;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Working;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.Result;

/**
 * The words a cell may say. Each hands its result to the cell that runs: {@code figure(held)} draws, {@code table(…)}
 * lists, {@code working(…)} shows the hand calculation, {@code claim(…)} checks a sentence.
 */
public final class Words {

    private Words() {}

    /**
     * Begins a dial, a named input that a reader can turn: {@code dial("Torso lean", deg(45)).from(deg(10)).to(deg(80))}.
     * A dial that has the name of a knob can also be turned by dragging the figure.
     *
     * @param name what the reader sees; each dial of a workbook has a name of its own
     * @param standard the value until a reader sets another
     * @param <M> the kind of value
     * @return the dial, to be told its range
     * @throws IllegalArgumentException when the name is blank
     */
    public static <M extends Measure<M>> DialRange<M> dial(String name, M standard) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a dial needs a name; write dial(\"Torso lean\", deg(45))");
        }
        return new DialRange<>(name, standard);
    }

    /**
     * Shows what some joints bear: {@code table(held.moments(HIP, KNEE))}.
     *
     * @param moments the moments of the joints asked for
     */
    public static void table(MomentTable moments) {
        show(() -> MomentRows.result(moments));
    }

    /**
     * Shows a joint as a lever: {@code table(held.leverView(KNEE))}.
     *
     * @param view the joint's load on its arm against one equivalent muscle on its own
     */
    public static void table(LeverView view) {
        show(() -> LeverRows.result(view));
    }

    /**
     * Shows a table that the mechanics made, such as a low back's forces or a session's ledger.
     *
     * @param listing the table
     */
    public static void table(Listing listing) {
        show(() -> ListingRows.result(listing));
    }

    /**
     * Shows what can be laid out as a table: {@code table(shares(held))}.
     *
     * @param listed how muscles share, a greatest load, a comparison
     */
    public static void table(Listed listed) {
        show(() -> ListingRows.result(listed.listing()));
    }

    /**
     * Shows values of the mechanics one below the other: {@code table(held.moment(HIP), held.loadArm(HIP))}.
     *
     * @param first a value
     * @param more further values
     */
    public static void table(Answer<?> first, Answer<?>... more) {
        TableWord table = new TableWord("").columns("what", "value");
        table.row(first.label(), first);
        for (Answer<?> answer : more) {
            table.row(answer.label(), answer);
        }
        show(table::result);
    }

    /**
     * Begins a table that is filled row by row: {@code table("Two lifters").columns("lifter", "hip").row("Ines", hip)}.
     *
     * @param title what the table shows
     */
    public static TableWord table(String title) {
        TableWord table = new TableWord(title);
        show(table::result);
        return table;
    }

    /**
     * Draws a posture: {@code figure(held).loadArms(HIP, LOW_BACK)}.
     *
     * @param posture the posture
     */
    public static FigureWord figure(HeldPosture posture) {
        FigureWord figure = new FigureWord(posture);
        show(figure::result);
        return figure;
    }

    /**
     * Draws the posture of a repetition; the desk plays the figure at its tempo:
     * {@code figure(repetition(hinge.by(ines)).alongItsWay().tempo(seconds(3), seconds(1)).pause(seconds(1)))}.
     *
     * @param repetition the repetition; its knob may be turned by a dial of the same name
     */
    public static FigureWord figure(Repetition repetition) {
        FigureWord figure = new FigureWord(repetition);
        show(figure::result);
        return figure;
    }

    /**
     * Begins a sweep of a knob: {@code sweep(TORSO_LEAN).from(deg(10)).to(deg(80)).of(hinge.by(ines)).chart(moment(HIP))}.
     *
     * @param knob the knob to turn; over its whole range unless told otherwise
     * @param <Q> the kind of quantity that the knob sets
     */
    public static <Q extends Measure<Q>> SweepWord<Q> sweep(Knob<Q> knob) {
        return new SweepWord<>(Sweep.sweep(knob));
    }

    /**
     * Begins a sweep of a variable, such as a length of the lifter: {@code sweep(lengthOf(THIGH)).from(cm(38)).to(cm(46))}.
     *
     * @param variable what to turn; over its whole range unless told otherwise
     * @param <Q> its kind
     */
    public static <Q extends Measure<Q>> SweepWord<Q> sweep(Variable<Q> variable) {
        return new SweepWord<>(Sweep.sweep(variable));
    }

    /**
     * Draws a contour map that the mechanics made.
     *
     * @param map the map
     */
    public static void chart(ContourMap map) {
        show(() -> new MapResult(map.title(), map, map.notes()));
    }

    /**
     * Draws curves that the mechanics made.
     *
     * @param curves the curves
     */
    public static void chart(Curves curves) {
        show(() -> new CurvesResult(curves.title(), curves, curves.notes()));
    }

    /**
     * Begins a chart of a cell's own values: {@code chart("Bar and hip").over("bar", bars).curve("hip", moments)}.
     *
     * @param title what the chart shows
     */
    public static ChartWord chart(String title) {
        ChartWord chart = new ChartWord(title);
        show(chart::result);
        return chart;
    }

    /**
     * Shows the hand calculation of a value, line by line.
     *
     * @param answer a value of the mechanics, such as {@code held.moment(HIP)}
     */
    public static void working(Answer<?> answer) {
        show(() -> Values.number(answer, true));
    }

    /**
     * Shows a value under a name of the cell's own.
     *
     * @param name what the value is
     * @param answer a value of the mechanics
     */
    public static void show(String name, Answer<?> answer) {
        show(() -> Values.number(name, answer));
    }

    /**
     * Shows a value under a name of the cell's own.
     *
     * @param name what the value is
     * @param value the value
     */
    public static void show(String name, Measure<?> value) {
        show(() -> Values.number(name, value));
    }

    /**
     * Shows a plain number under a name of the cell's own.
     *
     * @param name what the number is
     * @param value the number; finite
     */
    public static void show(String name, double value) {
        show(() -> Values.number(name, value));
    }

    /**
     * Checks a sentence: {@code claim("The hip carries 120 N·m a side", held.moment(HIP),
     * equalTo(newtonMetres(120)).within(percent(1)))}. A claim keeps its own settings: write them in the claim instead of
     * using a dial.
     *
     * @param sentence what is claimed, in words
     * @param answer what the model gives
     * @param test what the sentence asks of it
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ClaimWord claim(String sentence, Answer<M> answer, ClaimTest<M> test) {
        ClaimWord claim = new ClaimWord(sentence, answer, test);
        show(claim::result);
        return claim;
    }

    /**
     * Checks a sentence about a lifter's exercise and prints the settings that the claim was computed at: {@code claim("The
     * hip carries 120 N·m a side", hinge.torsoLean(deg(45)).by(ines), moment(HIP),
     * equalTo(newtonMetres(120)).within(percent(1)))}.
     *
     * @param sentence what is claimed, in words
     * @param performance the exercise done by a lifter
     * @param reading what is read off the posture
     * @param test what the sentence asks of it
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ClaimWord claim(
            String sentence, Performance performance, Reading<M> reading, ClaimTest<M> test) {
        return claim(sentence, performance.posture().read(reading), test).at(performance);
    }

    /**
     * Checks a sentence about a value that the cell computed itself.
     *
     * @param sentence what is claimed, in words
     * @param value the cell's value
     * @param test what the sentence asks of it
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ClaimWord claim(String sentence, M value, ClaimTest<M> test) {
        Working working = Working.given("the cell's own value", "v", value, "computed in the cell")
                .endingWith(Working.CELL_BEGINS);
        return claim(
                sentence,
                Answer.of("the cell's own value", value, Sides.NOT_SIDED, working)
                        .between(value.lowest(), value.highest()),
                test);
    }

    /**
     * Checks a sentence about a plain number that the cell computed itself.
     *
     * @param sentence what is claimed, in words
     * @param value the cell's number; finite
     * @param test what the sentence asks of it
     */
    public static ClaimWord claim(String sentence, double value, ClaimTest<Ratio> test) {
        return claim(sentence, Ratio.of(value), test);
    }

    /**
     * States a claim about something that this model does not contain, such as growth, soreness or transfer; its verdict is
     * "outside this model".
     *
     * @param sentence what is claimed, in words
     */
    public static OutsideClaim claimOutsideThisModel(String sentence) {
        OutsideClaim claim = new OutsideClaim(sentence);
        show(claim::result);
        return claim;
    }

    /**
     * Asserts a value, to be told its tolerance: {@code equalTo(newtonMetres(120)).within(percent(1))}.
     *
     * @param value the value asserted
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> EqualTo<M> equalTo(M value) {
        return new EqualTo<>(value);
    }

    /**
     * Asserts a ratio, to be told its tolerance: {@code equalTo(ratio(0.5)).within(0.05)}.
     *
     * @param value the ratio asserted
     */
    public static EqualToNumber equalTo(Ratio value) {
        return new EqualToNumber(value);
    }

    /**
     * Asserts a plain number, to be told its tolerance: {@code equalTo(0.5).within(0.05)}.
     *
     * @param value the number asserted; finite
     */
    public static EqualToNumber equalTo(double value) {
        return new EqualToNumber(Ratio.of(value));
    }

    /**
     * Asserts that a value lies above another.
     *
     * @param limit the other value
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ClaimTest<M> greaterThan(M limit) {
        return new ClaimTest<>("is greater than " + shown(limit), limit.si(), Double.POSITIVE_INFINITY, true);
    }

    /**
     * Asserts that a value lies below another.
     *
     * @param limit the other value
     * @param <M> the kind of value
     */
    public static <M extends Measure<M>> ClaimTest<M> lessThan(M limit) {
        return new ClaimTest<>("is less than " + shown(limit), Double.NEGATIVE_INFINITY, limit.si(), true);
    }

    /**
     * Asserts that a value lies between two others, both included.
     *
     * @param least the lower limit
     * @param greatest the upper limit
     * @param <M> the kind of value
     * @throws IllegalArgumentException when the limits are the wrong way round
     */
    public static <M extends Measure<M>> ClaimTest<M> between(M least, M greatest) {
        if (least.si() > greatest.si()) {
            throw new IllegalArgumentException("a claim cannot lie between " + shown(least) + " and " + shown(greatest)
                    + "; give the smaller limit first");
        }
        return new ClaimTest<>(
                "lies between " + shown(least) + " and " + shown(greatest), least.si(), greatest.si(), false);
    }

    /** Hands a result to the cell that runs. */
    static void show(Supplier<? extends Result> result) {
        CellSink.current().add(Objects.requireNonNull(result));
    }

    private static String shown(Measure<?> limit) {
        Unit unit = limit.dimension().shown();
        return unit.format(limit.si());
    }
}

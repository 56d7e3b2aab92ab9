package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.working.Answer;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Verdict;

/** A claim that a cell has made; it may still be told who completes it, where it comes from and what it was set to. */
public final class ClaimWord implements ResultBuilder {

    private final String sentence;
    private final Answer<?> answer;
    private final ClaimTest<?> test;
    private final List<String> settings = new ArrayList<>();
    private boolean forReader;
    private boolean doubted;
    private String source = "";

    <M extends Measure<M>> ClaimWord(String sentence, Answer<M> answer, ClaimTest<M> test) {
        this.sentence = Claims.sentence(sentence);
        this.answer = answer;
        this.test = test;
    }

    /** Marks the claim as one that the reader is meant to complete: a recheck then compares it with its record. */
    public ClaimWord forReader() {
        forReader = true;
        return this;
    }

    /** Marks the claim as doubted by the author: a recheck then compares it with its record. */
    public ClaimWord doubted() {
        doubted = true;
        return this;
    }

    /**
     * Says where the claim comes from.
     *
     * @param where for example {@code "handout, page 2"}
     */
    public ClaimWord source(String where) {
        source = where;
        return this;
    }

    /** Keeps the settings of the exercise that the claim speaks of: exercise, lifter, and every knob that somebody set. */
    ClaimWord at(Performance performance) {
        settings.add(performance.toString());
        Exercise<?> exercise = performance.exercise();
        for (Knob<?> knob : exercise.knobs()) {
            if (exercise.isSet(knob)) {
                Measure<?> value = exercise.get(knob);
                settings.add(knob.name() + " " + MeasureText.exact(value, knob.unit()));
            }
        }
        return this;
    }

    ClaimResult result() {
        Unit unit = answer.value().dimension().shown();
        Quantity computed = new Quantity(
                answer.value().si(), answer.low().si(), answer.high().si(), unit);
        Verdict verdict = test.verdict(computed.low(), computed.high());
        return new ClaimResult(
                sentence,
                computed,
                answer.label(),
                answer.sides(),
                test.words(),
                verdict,
                reason(computed, verdict),
                forReader,
                doubted,
                source,
                settings,
                Values.folded(answer),
                answer.notes());
    }

    private String reason(Quantity computed, Verdict verdict) {
        Unit unit = computed.unit();
        String value = unit.format(computed.value(), 4)
                + (answer.sides() == Sides.NOT_SIDED ? "" : " " + answer.sides().words());
        if (computed.hasBand()) {
            value += " (" + computed.band(4) + " with the errors typed)";
        }
        String head = "the " + answer.label() + " is " + value + " in this model";
        return verdict == Verdict.CANNOT_TELL ? head + ", which reaches over the claim's limit" : head;
    }
}

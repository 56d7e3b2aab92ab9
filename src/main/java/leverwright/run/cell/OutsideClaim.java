package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Sides;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Verdict;

/** A claim about something that this model does not contain, with a place for the evidence that others have. */
public final class OutsideClaim implements ResultBuilder {

    private final String sentence;
    private final List<String> evidence = new ArrayList<>();
    private String source = "";

    OutsideClaim(String sentence) {
        this.sentence = Claims.sentence(sentence);
    }

    /**
     * Says where the claim comes from.
     *
     * @param where for example {@code "handout, page 2"}
     */
    public OutsideClaim source(String where) {
        source = where;
        return this;
    }

    /**
     * Cites evidence from elsewhere; the workbench prints it and does not judge it.
     *
     * @param citation author, year, and what was found
     */
    public OutsideClaim evidence(String citation) {
        evidence.add("cited evidence, not judged here: " + citation);
        return this;
    }

    ClaimResult result() {
        return new ClaimResult(
                sentence,
                null,
                "",
                Sides.NOT_SIDED,
                "",
                Verdict.OUTSIDE_THIS_MODEL,
                "a model of levers at one moment says nothing about growth, soreness, recovery, damage, fatigue or transfer",
                false,
                false,
                source,
                List.of(),
                null,
                evidence);
    }
}

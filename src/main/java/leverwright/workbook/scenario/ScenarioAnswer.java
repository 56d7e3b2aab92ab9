package leverwright.workbook.scenario;

import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;

/**
 * What became of one scenario file.
 *
 * @param solution the solution, or the object that says in its key {@code error} why there is none
 * @param problem why there is no solution, in one line naming the file; empty when there is one
 */
public record ScenarioAnswer(JsonValue solution, String problem) {
    /** Tells whether there is a solution; "not balanced" is one. */
    public boolean solved() {
        return problem.isEmpty();
    }

    /** Returns the answer as one line of JSON, without a line end. */
    public String line() {
        return JsonWriter.compact(solution);
    }

    /** Returns the answer laid out for people, ending with a line feed. */
    public String pretty() {
        return JsonWriter.laidOut(solution);
    }
}

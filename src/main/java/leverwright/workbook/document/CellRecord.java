package leverwright.workbook.document;

import java.util.List;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonObject;

/**
 * What one script came to when the workbook was last computed. Results are kept as the file has them, so that keys which
 * this version does not know survive at every depth; {@link #results()} gives them as values.
 *
 * @param state fresh, failed, refused or not run
 * @param problem what went wrong, in words; empty when nothing did
 * @param recordedDials the dials the cell declared, as in the file
 * @param recordedResults the results in the order they were shown, as in the file
 * @param unknown keys of the file that this version does not know
 */
public record CellRecord(
        CellState state, String problem, JsonArray recordedDials, JsonArray recordedResults, JsonObject unknown) {

    /** The states that a record can hold. */
    public static final List<CellState> STATES =
            List.of(CellState.FRESH, CellState.FAILED, CellState.REFUSED, CellState.NOT_RUN);

    /**
     * Checks the state.
     *
     * @throws IllegalArgumentException when the state is stale or running, which no record can hold
     */
    public CellRecord {
        if (!STATES.contains(state)) {
            throw new IllegalArgumentException(
                    "a cell that is " + state.words() + " cannot be recorded; wait until it is computed");
        }
    }

    /**
     * Makes the record of a cell that was just computed.
     *
     * @param state fresh, failed, refused or not run
     * @param problem what went wrong, in words; empty when nothing did
     * @param dials the dials the cell declared, with the settings in force
     * @param results the results in the order they were shown
     * @throws IllegalArgumentException when the state is stale or running
     */
    public static CellRecord of(CellState state, String problem, List<DialDeclared> dials, List<Result> results) {
        return new CellRecord(
                state,
                problem,
                new JsonArray(dials.stream().map(ResultCodec::write).toList()),
                new JsonArray(results.stream().map(ResultCodec::write).toList()),
                JsonObject.EMPTY);
    }

    /** Returns the results in the order they were shown, number by number with the bits that were recorded. */
    public List<Result> results() {
        return JsonCursor.at(recordedResults).elements().stream()
                .map(ResultCodec::readResult)
                .toList();
    }

    /** Returns the dials the cell declared, with the settings in force when it was computed. */
    public List<DialDeclared> dials() {
        return JsonCursor.at(recordedDials).elements().stream()
                .map(ResultCodec::readDial)
                .toList();
    }
}

package leverwright.workbook.document;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import leverwright.run.result.FoldedWorkings;
import leverwright.workbook.json.JsonObject;

/**
 * The results of a workbook as last computed.
 *
 * @param engine the version of Leverwright that computed them
 * @param java the version of Java that they were computed on
 * @param seed where the cells' random numbers start; 0 to 2^53 − 1
 * @param sheet the short digest of the scripts they belong to, see {@link Seal#scripts(Workbook)}
 * @param dials the settings handed to the run: the workbook's {@link Workbook#dials()} at that time
 * @param cells what each script came to, by cell id, in the order of the sheet
 * @param unknown keys of the file that this version does not know
 */
public record WorkbookRecord(
        String engine,
        String java,
        long seed,
        String sheet,
        Map<String, String> dials,
        Map<String, CellRecord> cells,
        JsonObject unknown) {

    /** The greatest seed, 2^53 − 1, which every reader of JSON holds exactly. */
    public static final long GREATEST_SEED = (1L << 53) - 1;

    /**
     * Copies the collections and checks the seed.
     *
     * @throws IllegalArgumentException when the seed lies outside 0 to 2^53 − 1
     */
    public WorkbookRecord {
        if (seed < 0 || seed > GREATEST_SEED) {
            throw new IllegalArgumentException(
                    "a seed is a whole number from 0 to " + GREATEST_SEED + ", but is " + seed + "; choose another");
        }
        dials = Collections.unmodifiableMap(new LinkedHashMap<>(dials));
        cells = Collections.unmodifiableMap(new LinkedHashMap<>(cells));
    }

    /** Returns this record as files keep it: without the workings that a reader sees folded, which a run makes again. */
    public WorkbookRecord toKeep() {
        Map<String, CellRecord> kept = new LinkedHashMap<>();
        cells.forEach((id, cell) -> kept.put(
                id,
                CellRecord.of(
                        cell.state(),
                        cell.problem(),
                        cell.dials(),
                        cell.results().stream().map(FoldedWorkings::without).toList())));
        return new WorkbookRecord(engine, java, seed, sheet, dials, kept, unknown);
    }

    /**
     * Returns the record of a run of a workbook as it stands.
     *
     * @param workbook the workbook that was run
     * @param engine the version of Leverwright
     * @param java the version of Java
     * @param seed where the cells' random numbers start; 0 to 2^53 − 1
     * @param cells what each script came to, by cell id
     * @throws IllegalArgumentException when the seed lies outside its range
     */
    public static WorkbookRecord of(
            Workbook workbook, String engine, String java, long seed, Map<String, CellRecord> cells) {
        return new WorkbookRecord(
                engine, java, seed, Seal.scripts(workbook), workbook.dials(), cells, JsonObject.EMPTY);
    }
}

package leverwright.workbook.document;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import leverwright.workbook.json.JsonObject;
import org.jspecify.annotations.Nullable;

/**
 * A workbook: a sheet of cells, the settings of its dials, and what is known of its results. Immutable; every change
 * returns a new workbook and keeps record and seal as they were, so that {@link #recordIsCurrent()} and {@link Seal} tell
 * whether they still belong to it.
 *
 * @param title what the workbook is called
 * @param author who wrote it
 * @param about what it is for
 * @param sheet the cells from top to bottom; no two with the same id
 * @param dials the settings that were chosen by hand, by the dial's name, for example {@code "Torso lean"} to
 *     {@code "45 deg"}; in the order they were first chosen; a dial that is absent stands where its script puts it
 * @param record the results as last computed
 * @param seal the digest of sheet, dials and record as last sealed
 * @param unknown keys of the file that this version does not know
 */
public record Workbook(
        String title,
        String author,
        String about,
        List<Cell> sheet,
        Map<String, String> dials,
        Optional<WorkbookRecord> record,
        Optional<String> seal,
        JsonObject unknown) {

    /** The greatest number of cells in a sheet. */
    public static final int MOST_CELLS = 2000;

    /**
     * Copies the collections and checks the cells.
     *
     * @throws IllegalArgumentException when two cells have one id, there are more than {@link #MOST_CELLS} cells, or a dial
     *     has no name
     */
    public Workbook {
        sheet = List.copyOf(sheet);
        dials = Collections.unmodifiableMap(new LinkedHashMap<>(dials));
        if (sheet.size() > MOST_CELLS) {
            throw new IllegalArgumentException(
                    "the sheet has " + sheet.size() + " cells; allowed are " + MOST_CELLS + "; split the workbook");
        }
        Set<String> seen = new HashSet<>();
        for (Cell cell : sheet) {
            if (!seen.add(cell.id())) {
                throw new IllegalArgumentException(
                        "two cells are called " + cell.id() + "; give each cell an id of its own");
            }
        }
        if (dials.keySet().stream().anyMatch(String::isBlank)) {
            throw new IllegalArgumentException("a dial needs a name; name the dial that is set");
        }
    }

    /** As every record's, but written out: what a record is given is linked when it is first used, in the midst of a start. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Workbook workbook
                && title.equals(workbook.title)
                && author.equals(workbook.author)
                && about.equals(workbook.about)
                && dials.equals(workbook.dials)
                && seal.equals(workbook.seal)
                && sheet.equals(workbook.sheet)
                && record.equals(workbook.record)
                && unknown.equals(workbook.unknown);
    }

    @Override
    public int hashCode() {
        return Objects.hash(title, author, about, sheet, dials, record, seal, unknown);
    }

    /**
     * Returns a workbook without cells.
     *
     * @param title what the workbook is called
     */
    public static Workbook empty(String title) {
        return new Workbook(title, "", "", List.of(), Map.of(), Optional.empty(), Optional.empty(), JsonObject.EMPTY);
    }

    /** Returns the script cells from top to bottom. */
    public List<ScriptCell> scripts() {
        return sheet.stream()
                .filter(ScriptCell.class::isInstance)
                .map(ScriptCell.class::cast)
                .toList();
    }

    /**
     * Returns the cell with an id.
     *
     * @param id the cell's id
     */
    public Optional<Cell> cell(String id) {
        return sheet.stream().filter(cell -> cell.id().equals(id)).findFirst();
    }

    /** Returns an id that no cell of this sheet and no cell of its record has: c1, c2, … */
    public String newId() {
        int number = sheet.size() + 1;
        while (isTaken("c" + number)) {
            number++;
        }
        return "c" + number;
    }

    private boolean isTaken(String id) {
        return cell(id).isPresent()
                || record.map(kept -> kept.cells().containsKey(id)).orElse(false);
    }

    /**
     * Returns this workbook with one cell changed.
     *
     * @param changed the cell as it is to be; takes the place of the cell with its id
     * @throws IllegalArgumentException when no cell has that id
     */
    public Workbook withCell(Cell changed) {
        List<Cell> cells = new ArrayList<>(sheet);
        cells.set(indexOf(changed.id()), changed);
        return withSheet(cells);
    }

    /**
     * Returns this workbook with the text of one cell changed.
     *
     * @param id the cell's id
     * @param text the text as it is to be
     * @throws IllegalArgumentException when no cell has that id
     */
    public Workbook withText(String id, String text) {
        return withCell(sheet.get(indexOf(id)).withLines(List.of(text)));
    }

    /**
     * Returns this workbook with a cell added.
     *
     * @param index where the cell is to stand, 0 for the top, the number of cells for the end
     * @param added the cell; its id must be new
     * @throws IllegalArgumentException when the id is taken or the place does not exist
     */
    public Workbook withAdded(int index, Cell added) {
        requirePlace(index, sheet.size());
        List<Cell> cells = new ArrayList<>(sheet);
        cells.add(index, added);
        return withSheet(cells);
    }

    /**
     * Returns this workbook with a cell moved.
     *
     * @param id the cell's id
     * @param index where it is to stand afterwards, 0 for the top
     * @throws IllegalArgumentException when no cell has that id or the place does not exist
     */
    public Workbook withMoved(String id, int index) {
        requirePlace(index, sheet.size() - 1);
        List<Cell> cells = new ArrayList<>(sheet);
        Cell moved = cells.remove(indexOf(id));
        cells.add(index, moved);
        return withSheet(cells);
    }

    /**
     * Returns this workbook without a cell.
     *
     * @param id the cell's id
     * @throws IllegalArgumentException when no cell has that id
     */
    public Workbook withoutCell(String id) {
        List<Cell> cells = new ArrayList<>(sheet);
        cells.remove(indexOf(id));
        return withSheet(cells);
    }

    /**
     * Returns this workbook with another sheet.
     *
     * @param cells the cells from top to bottom
     */
    public Workbook withSheet(List<Cell> cells) {
        return new Workbook(title, author, about, cells, dials, record, seal, unknown);
    }

    /**
     * Returns this workbook with one dial set.
     *
     * @param name the dial's name; not blank
     * @param setting the setting as people write it, for example {@code "45 deg"}
     */
    public Workbook withDial(String name, String setting) {
        Map<String, String> settings = new LinkedHashMap<>(dials);
        settings.put(name, setting);
        return withDials(settings);
    }

    /**
     * Returns this workbook with one dial back where its script puts it.
     *
     * @param name the dial's name
     */
    public Workbook withoutDial(String name) {
        Map<String, String> settings = new LinkedHashMap<>(dials);
        settings.remove(name);
        return withDials(settings);
    }

    /**
     * Returns this workbook with other dial settings.
     *
     * @param settings the settings by the dials' names
     */
    public Workbook withDials(Map<String, String> settings) {
        return new Workbook(title, author, about, sheet, settings, record, seal, unknown);
    }

    /**
     * Returns this workbook with other words about it.
     *
     * @param newTitle what the workbook is called
     * @param newAuthor who wrote it
     * @param newAbout what it is for
     */
    public Workbook withWords(String newTitle, String newAuthor, String newAbout) {
        return new Workbook(newTitle, newAuthor, newAbout, sheet, dials, record, seal, unknown);
    }

    /**
     * Returns this workbook with other results.
     *
     * @param newRecord the results as last computed
     */
    public Workbook withRecord(WorkbookRecord newRecord) {
        return new Workbook(title, author, about, sheet, dials, Optional.of(newRecord), seal, unknown);
    }

    /** Returns this workbook without results. */
    public Workbook withoutRecord() {
        return new Workbook(title, author, about, sheet, dials, Optional.empty(), seal, unknown);
    }

    /**
     * Returns this workbook with another seal. To seal it as it stands, use {@link Seal#seal(Workbook)}.
     *
     * @param newSeal the seal, or empty for none
     */
    public Workbook withSeal(Optional<String> newSeal) {
        return new Workbook(title, author, about, sheet, dials, record, newSeal, unknown);
    }

    /** Returns whether there is a record, and scripts and dials are those that it was computed from. */
    public boolean recordIsCurrent() {
        return record.map(kept ->
                        kept.sheet().equals(Seal.scripts(this)) && kept.dials().equals(dials))
                .orElse(false);
    }

    private int indexOf(String id) {
        for (int index = 0; index < sheet.size(); index++) {
            if (sheet.get(index).id().equals(id)) {
                return index;
            }
        }
        throw new IllegalArgumentException("there is no cell called " + id + " in this workbook; its cells are "
                + sheet.stream().map(Cell::id).toList());
    }

    private static void requirePlace(int index, int last) {
        if (index < 0 || index > last) {
            throw new IllegalArgumentException(
                    "there is no place " + index + " in the sheet; allowed are 0 to " + last);
        }
    }
}

package leverwright.mechanics.body;

import java.util.List;
import java.util.Locale;

/**
 * A published segment table, or one of the user's own. One lifter uses one table.
 */
public final class SegmentTable {
    /**
     * P. de Leva, Journal of Biomechanics 29 (1996) 1223–1230, table 4, after Zatsiorsky and Seluyanov: gamma-ray scans of
     * 100 young men and 15 young women. Lengths are those of the sample over its mean stature, 1.741 m and 1.735 m.
     */
    public static final SegmentTable DE_LEVA = DeLevaTable.load();

    /**
     * D. A. Winter, table 4.1, after Dempster 1955: cadavers of a few old men, used here for both sexes because the table
     * has but one column. Lengths are those of Drillis and Contini 1966, from memory.
     */
    public static final SegmentTable WINTER = WinterTable.load();

    private final String name;
    private final String citation;
    private final Proportions female;
    private final Proportions male;
    private final List<Note> notes;

    SegmentTable(String name, String citation, Proportions female, Proportions male, List<Note> notes) {
        this.name = name;
        this.citation = citation;
        this.female = female;
        this.male = male;
        this.notes = List.copyOf(notes);
    }

    /**
     * Returns a table of one's own, the same for both sexes. The parts of the trunk, and the places of ankle, grip and low
     * back, are those this program uses beside Winter's table, which says so on the lifter.
     *
     * @param name short name for print
     * @param source where the numbers come from
     * @param rows one row per segment
     * @throws IllegalArgumentException if a segment is missing or doubled, or if the body does not sum to its mass within
     *     0.02 %
     */
    public static SegmentTable own(String name, String source, List<SegmentRow> rows) {
        Proportions female = WinterTable.around(rows, Sex.FEMALE);
        Proportions male = WinterTable.around(rows, Sex.MALE);
        Note note = new Note(
                Note.Kind.TABLE,
                "The segment table \"" + name + "\" (" + source
                        + ") is the author's own; pelvis, head, ankle, grip and low back are placed as beside Winter's table.");
        return new SegmentTable(name, source, female, male, List.of(note));
    }

    /** Returns its short name, such as "de Leva 1996". */
    public String name() {
        return name;
    }

    /** Returns publication and table. */
    public String citation() {
        return citation;
    }

    /** Returns its numbers for one sex. */
    public Proportions proportions(Sex sex) {
        return sex == Sex.FEMALE ? female : male;
    }

    /** Returns what must be said about the table beside results for one sex. */
    public List<Note> notes(Sex sex) {
        if (this != WINTER || sex == Sex.MALE) {
            return notes;
        }
        List<Note> all = new java.util.ArrayList<>(notes);
        all.add(new Note(
                Note.Kind.OUT_OF_SAMPLE,
                String.format(Locale.ROOT, "%s measured men only; this lifter is a woman.", name)));
        return List.copyOf(all);
    }

    @Override
    public String toString() {
        return name;
    }
}

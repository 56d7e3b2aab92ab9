package leverwright.face.command;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leverwright.run.result.DialDeclared;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;

/** The dials of a workbook, as far as they are known before it runs: those of its record and those its scripts name. */
final class DialNames {

    private static final Pattern DIAL = Pattern.compile("\\bdial\\s*\\(\\s*(?:\"((?:[^\"\\\\]|\\\\.)*)\"\\s*,)?");

    private final Set<String> names = new LinkedHashSet<>();
    private boolean complete = true;

    private DialNames() {}

    /** Returns what record and scripts of a workbook say. */
    static DialNames of(Workbook workbook) {
        DialNames known = new DialNames();
        workbook.record().ifPresent(known::add);
        for (ScriptCell cell : workbook.scripts()) {
            Matcher dial = DIAL.matcher(cell.text());
            while (dial.find()) {
                String name = dial.group(1);
                if (name == null || name.contains("\\")) {
                    known.complete = false;
                } else {
                    known.names.add(name);
                }
            }
        }
        return known;
    }

    /** Adds the dials that the cells of a run declared. */
    void add(WorkbookRecord record) {
        Computation.dials(record).stream().map(DialDeclared::name).forEach(names::add);
    }

    /**
     * Refuses settings of dials that cannot be there, before anything runs. Where a script makes a dial's name by itself,
     * nothing is refused yet.
     *
     * @throws IllegalArgumentException naming the dials there are
     */
    void requireBeforeRun(List<String> wanted) {
        if (complete) {
            requireAfterRun(wanted);
        }
    }

    /**
     * Refuses settings of dials that no cell declares.
     *
     * @throws IllegalArgumentException naming the dials there are
     */
    void requireAfterRun(List<String> wanted) {
        for (String name : wanted) {
            if (!names.contains(name)) {
                throw new IllegalArgumentException("no cell declares a dial \"" + name + "\"; this workbook has "
                        + (names.isEmpty() ? "no dials" : String.join(", ", names)));
            }
        }
    }
}

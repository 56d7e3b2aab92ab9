package leverwright.face.desk.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.session.CellScript;

/** What differs between two states of a workbook. */
final class SheetChange {

    private SheetChange() {}

    /** Every script that stands, reads or is written differently, and all below the first that moved. */
    static Set<String> changed(List<CellScript> before, List<CellScript> after) {
        Set<String> ids = new LinkedHashSet<>();
        boolean sameOrder = before.stream()
                .map(CellScript::id)
                .toList()
                .equals(after.stream().map(CellScript::id).toList());
        boolean moved = false;
        for (int i = 0; i < after.size(); i++) {
            boolean same = i < before.size() && before.get(i).equals(after.get(i));
            moved |= !same && !sameOrder;
            if (!same || moved) {
                ids.add(after.get(i).id());
            }
        }
        before.forEach(script -> {
            if (after.stream().noneMatch(other -> other.id().equals(script.id()))) {
                ids.add(script.id());
            }
        });
        return ids;
    }

    /** The scripts of a workbook as the session takes them. */
    static List<CellScript> scripts(Workbook workbook) {
        return workbook.scripts().stream()
                .map(cell -> new CellScript(cell.id(), cell.text()))
                .toList();
    }

    /** Whether two workbooks have the same cells and words; dials and record do not count. */
    static boolean sameText(Workbook one, Workbook other) {
        return one.sheet().equals(other.sheet())
                && one.title().equals(other.title())
                && one.author().equals(other.author())
                && one.about().equals(other.about());
    }

    /** The scripts of a workbook that is not to run; empty when it runs. */
    static Optional<List<CellScript>> unrun(Workbook workbook, Permission permission) {
        return permission == Permission.ASLEEP ? Optional.of(scripts(workbook)) : Optional.empty();
    }
}

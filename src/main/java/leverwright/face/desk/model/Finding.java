package leverwright.face.desk.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import leverwright.workbook.document.Cell;

/** What is sought in a workbook, where it stands, and at which place the search is. On the window's thread only. */
public final class Finding {

    private final DeskModel model;
    private final ReadOnlyObjectWrapper<Optional<Query>> query = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Match>> here = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyStringWrapper words = new ReadOnlyStringWrapper("");
    private final ReadOnlyBooleanWrapper failed = new ReadOnlyBooleanWrapper();
    private List<Match> matches = List.of();
    private List<Cell> sheet = List.of();

    Finding(DeskModel model) {
        this.model = model;
        model.workbook().addListener((property, before, now) -> {
            if (query.get().isPresent() && !now.sheet().equals(sheet)) {
                look();
            }
        });
    }

    /** Returns what is sought; empty when nothing is, or when it cannot be read. */
    public ReadOnlyObjectProperty<Optional<Query>> query() {
        return query.getReadOnlyProperty();
    }

    /** Returns the place at which the search is; empty before the first step. */
    public ReadOnlyObjectProperty<Optional<Match>> here() {
        return here.getReadOnlyProperty();
    }

    /** Returns how many places there are and at which the search is, or what is wrong with the query. */
    public ReadOnlyStringProperty words() {
        return words.getReadOnlyProperty();
    }

    /** Returns whether the words say what is wrong. */
    public ReadOnlyBooleanProperty failed() {
        return failed.getReadOnlyProperty();
    }

    /** Returns every place where the query stands, from top to bottom. */
    public List<Match> matches() {
        return matches;
    }

    /**
     * Seeks something; an empty text ends the search.
     *
     * @param sought what to seek
     */
    public void seek(Query sought) {
        if (sought.text().isEmpty()) {
            end();
            return;
        }
        here.set(Optional.empty());
        try {
            sought.pattern();
            query.set(Optional.of(sought));
            look();
        } catch (IllegalArgumentException broken) {
            complain(broken);
        }
    }

    /** Seeks nothing any more. */
    public void end() {
        matches = List.of();
        here.set(Optional.empty());
        query.set(Optional.empty());
        failed.set(false);
        words.set("");
    }

    private void complain(IllegalArgumentException problem) {
        end();
        failed.set(true);
        words.set(String.valueOf(problem.getMessage()));
    }

    private void look() {
        Query sought = query.get().orElse(null);
        if (sought == null) {
            return;
        }
        try {
            sheet = model.workbook().get().sheet();
            matches = WorkbookSearch.in(model.workbook().get(), sought);
            if (here.get().isPresent() && !matches.contains(here.get().get())) {
                here.set(Optional.empty());
            }
            count();
        } catch (IllegalArgumentException slow) {
            complain(slow);
        }
    }

    private void count() {
        failed.set(false);
        int size = matches.size();
        String places = size == 1 ? "1 place" : size + " places";
        int at = here.get().map(matches::indexOf).orElse(-1);
        words.set(size == 0 ? "nowhere" : at < 0 ? places : (at + 1) + " of " + places);
    }

    /** Goes to the next place after the caret or after where the search is; after the last comes the first. */
    public void next() {
        step(1);
    }

    /** Goes to the place before. */
    public void previous() {
        step(-1);
    }

    private void step(int by) {
        if (matches.isEmpty()) {
            return;
        }
        int at = here.get().map(matches::indexOf).orElse(-1);
        int to = at >= 0 ? Math.floorMod(at + by, matches.size()) : fromCaret(by);
        here.set(Optional.of(matches.get(to)));
        count();
    }

    /** Returns the index of the first place from the caret on, or of the last before it. */
    private int fromCaret(int by) {
        Caret caret = model.caret();
        List<String> order = model.cells().stream().map(CellView::id).toList();
        int cell = order.indexOf(caret.cell());
        int after = 0;
        while (after < matches.size()) {
            Match match = matches.get(after);
            int place = order.indexOf(match.cell());
            if (place > cell || (place == cell && match.from() >= caret.position())) {
                break;
            }
            after++;
        }
        return Math.floorMod(by > 0 ? after : after - 1, matches.size());
    }

    /**
     * Replaces the place at which the search is and goes to the next; goes to the first when it is at none.
     *
     * @param replacement what to put there
     */
    public void replace(String replacement) {
        Query sought = query.get().orElse(null);
        Match place = here.get().orElse(null);
        if (sought == null || place == null) {
            next();
            return;
        }
        try {
            String before = model.cell(place.cell()).orElseThrow().text().get();
            String after = WorkbookSearch.replaced(before, sought, replacement, place.from());
            int end = place.to() + after.length() - before.length();
            model.caretAt(new Caret(place.cell(), end));
            model.replaceTexts(Map.of(place.cell(), after));
            model.caretAt(new Caret(place.cell(), end));
            here.set(Optional.empty());
            next();
        } catch (IllegalArgumentException broken) {
            failed.set(true);
            words.set(String.valueOf(broken.getMessage()));
        }
    }

    /**
     * Replaces every place in one step of the history.
     *
     * @param replacement what to put there
     * @return how many places were replaced
     */
    public int replaceAll(String replacement) {
        Query sought = query.get().orElse(null);
        if (sought == null || matches.isEmpty()) {
            return 0;
        }
        try {
            int count = matches.size();
            here.set(Optional.empty());
            model.replaceTexts(WorkbookSearch.replaced(model.workbook().get(), sought, replacement));
            words.set(count == 1 ? "1 place replaced" : count + " places replaced");
            return count;
        } catch (IllegalArgumentException broken) {
            failed.set(true);
            words.set(String.valueOf(broken.getMessage()));
            return 0;
        }
    }
}

package leverwright.face.desk.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import org.jspecify.annotations.Nullable;

/** Cells and dials as the window sees them, kept in step with the workbook and with what runs bring. */
final class SheetViews {

    final ObservableList<CellView> cells = FXCollections.observableArrayList();
    final ObservableList<DialView> dials = FXCollections.observableArrayList();
    private final Map<String, CellView> byId = new LinkedHashMap<>();
    private Map<String, Set<String>> readers = Map.of();

    /** The version of scripts and dials at which each cell last ceased to be up to date. */
    private final Map<String, Long> staleSince = new LinkedHashMap<>();

    @Nullable
    CellView find(String id) {
        return byId.get(id);
    }

    List<CellView> scripts() {
        return cells.stream().filter(CellView::isScript).toList();
    }

    /** Takes another sheet: the same views for cells of the same id and kind. */
    void take(List<Cell> sheet) {
        List<CellView> next = new ArrayList<>();
        for (Cell cell : sheet) {
            CellView view = byId.get(cell.id());
            if (view == null || view.isScript() != cell instanceof ScriptCell) {
                view = new CellView(cell);
            } else {
                view.take(cell);
            }
            next.add(view);
        }
        if (!next.equals(cells)) {
            byId.clear();
            next.forEach(view -> byId.put(view.id(), view));
            cells.setAll(next);
        }
    }

    /** Shows what the file says about scripts that were not run. */
    void showRecord(Workbook workbook) {
        boolean current = workbook.recordIsCurrent();
        workbook.record()
                .ifPresent(record -> record.cells().forEach((id, cell) -> {
                    CellView view = byId.get(id);
                    if (view != null && view.isScript()) {
                        view.show(CellShown.recorded(cell, current));
                    }
                }));
        takeDials(workbook.dials());
    }

    /** Notes that some cells and all that read from them are no longer up to date. */
    void outdate(Set<String> ids, long version, boolean visibly) {
        Set<String> all = new LinkedHashSet<>(ids);
        ids.forEach(id -> all.addAll(readers.getOrDefault(id, Set.of())));
        for (String id : all) {
            staleSince.put(id, version);
            CellView view = byId.get(id);
            if (visibly && view != null) {
                view.becomeStale();
                view.hold(Optional.empty());
            }
        }
    }

    /** Returns the cells that declare a dial. */
    Set<String> declarers(String dial) {
        Set<String> ids = new LinkedHashSet<>();
        for (CellView view : cells) {
            if (view.shown().get().dials().stream()
                    .anyMatch(declared -> declared.name().equals(dial))) {
                ids.add(view.id());
            }
        }
        return ids;
    }

    void take(Batch batch, Map<String, String> settings) {
        if (!batch.readers().isEmpty()) {
            readers = batch.readers();
        }
        batch.outcomes().forEach((id, outcome) -> {
            CellView view = byId.get(id);
            if (view != null && view.isScript()) {
                view.take(outcome, staleSince.getOrDefault(id, 0L) > batch.version());
            }
        });
        if (!batch.complete()) {
            staleSince.forEach((id, since) -> {
                CellView view = byId.get(id);
                if (view != null
                        && since >= batch.version()
                        && !batch.outcomes().containsKey(id)) {
                    view.becomeStale();
                }
            });
            addDials(batch, settings);
            return;
        }
        staleSince.values().removeIf(since -> since <= batch.version());
        takeDials(settings);
    }

    /** Lets new dials be turned as soon as their script has run, while others still run. */
    private void addDials(Batch batch, Map<String, String> settings) {
        for (String id : batch.outcomes().keySet()) {
            CellView view = byId.get(id);
            if (view != null) {
                view.shown().get().dials().stream()
                        .filter(dial -> dial(dial.name()) == null)
                        .forEach(dial -> dials.add(new DialView(dial, settings.get(dial.name()))));
            }
        }
    }

    private void takeDials(Map<String, String> settings) {
        Map<String, DialDeclared> declared = new LinkedHashMap<>();
        for (CellView view : cells) {
            view.shown().get().dials().forEach(dial -> declared.putIfAbsent(dial.name(), dial));
        }
        List<DialView> next = new ArrayList<>();
        declared.forEach((name, dial) -> {
            DialView view = dial(name);
            if (view == null) {
                view = new DialView(dial, settings.get(name));
            } else {
                view.take(dial, settings.get(name));
            }
            next.add(view);
        });
        boolean failing = cells.stream().anyMatch(view -> view.shown().get().state() == CellState.FAILED);
        if (failing) {
            // A script that fails declares nothing; its dials stay, so that they can be turned back.
            dials.stream().filter(view -> !next.contains(view)).forEach(next::add);
        }
        if (!next.equals(dials)) {
            dials.setAll(next);
        }
    }

    @Nullable
    DialView dial(String name) {
        return dials.stream()
                .filter(view -> view.name().equals(name))
                .findFirst()
                .orElse(null);
    }

    ClaimCount claims() {
        List<ClaimResult> claims = new ArrayList<>();
        for (CellView view : cells) {
            for (Result result : view.shown().get().results()) {
                if (result instanceof ClaimResult claim) {
                    claims.add(claim);
                }
            }
        }
        return ClaimCount.of(claims);
    }

    Map<String, CellShown> shown() {
        Map<String, CellShown> shown = new LinkedHashMap<>();
        scripts().forEach(view -> shown.put(view.id(), view.shown().get()));
        return shown;
    }

    Progress progress() {
        String running = "";
        int done = 0;
        for (CellView view : scripts()) {
            CellState state = view.shown().get().state();
            running = state == CellState.RUNNING ? view.id() : running;
            done += state == CellState.RUNNING || state == CellState.STALE || state == CellState.NOT_RUN ? 0 : 1;
        }
        return new Progress(running, done, scripts().size());
    }
}

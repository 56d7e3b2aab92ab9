package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.face.desk.model.CellView;
import org.jspecify.annotations.Nullable;

/** The places of the strips in a sheet: one for every cell, of a height that is known, or guessed until its strip is built. */
final class Slots {

    private static final double LINE = 17;
    private static final double HEAD = 44;
    private static final double GUESSED_RESULT = 120;

    /** The place of one cell. */
    static final class Slot {
        final CellView cell;

        @Nullable
        Strip strip;

        double height;
        double top;

        Slot(CellView cell) {
            this.cell = cell;
            guess();
        }

        /** Guesses the height of a strip that is not built. */
        private void guess() {
            long lines =
                    cell.text().get().chars().filter(letter -> letter == '\n').count() + 1;
            double results = cell.shown().get().results().size() * GUESSED_RESULT;
            height = HEAD + Math.max(Math.min(lines, 40) * LINE, results);
        }
    }

    private final Map<String, Slot> byId = new LinkedHashMap<>();
    private List<Slot> order = List.of();

    /** Takes another sheet; returns the slots of cells that are gone. */
    List<Slot> take(List<CellView> cells) {
        Map<String, Slot> before = new LinkedHashMap<>(byId);
        byId.clear();
        List<Slot> next = new ArrayList<>();
        for (CellView cell : cells) {
            Slot kept = before.get(cell.id());
            Slot slot = kept != null && kept.cell == cell ? kept : new Slot(cell);
            if (kept == slot) {
                before.remove(cell.id());
            }
            byId.put(cell.id(), slot);
            next.add(slot);
        }
        order = next;
        place();
        return new ArrayList<>(before.values());
    }

    /** Guesses again how high the strips are that are not built. */
    void guess() {
        order.stream().filter(slot -> slot.strip == null).forEach(Slot::guess);
        place();
    }

    List<Slot> all() {
        return order;
    }

    @Nullable
    Slot find(String id) {
        return byId.get(id);
    }

    /** Puts every slot under the one before; returns the height of all. */
    double place() {
        double top = 0;
        for (Slot slot : order) {
            slot.top = top;
            top += slot.height;
        }
        return top;
    }

    /** Returns the place in the order of the last slot that begins at or above a height; −1 when there is none. */
    int at(double y) {
        int low = 0;
        int high = order.size() - 1;
        while (low < high) {
            int middle = (low + high + 1) / 2;
            if (order.get(middle).top <= y) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return order.isEmpty() ? -1 : low;
    }

    /** Returns before which cell of the order something dropped at a height goes. */
    int gap(double y) {
        int index = 0;
        for (Slot slot : order) {
            if (y < slot.top + slot.height / 2) {
                return index;
            }
            index++;
        }
        return index;
    }
}

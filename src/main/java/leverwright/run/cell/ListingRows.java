package leverwright.run.cell;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.working.Listing;
import leverwright.run.result.TableResult;

/** Shows tables that the mechanics made. */
final class ListingRows {

    private ListingRows() {}

    static TableResult result(Listing listing) {
        List<String> notes = new ArrayList<>(listing.notes());
        List<List<TableResult.Entry>> rows = new ArrayList<>();
        for (List<Object> row : listing.rows()) {
            List<TableResult.Entry> entries = new ArrayList<>();
            for (Object entry : row) {
                entries.add(Values.entry(entry, notes));
            }
            rows.add(entries);
        }
        return new TableResult(listing.title(), listing.headings(), rows, notes);
    }
}

package leverwright.face.desk.sheet;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import leverwright.mechanics.working.Working;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import org.jspecify.annotations.Nullable;

/** A table: sorted by its headings, a page at a time; the working of an entry unfolds under it. */
final class TableBody implements ResultBody {

    private final ResultHost host;
    private final VBox all = new VBox();
    private final GridTable grid = new GridTable(this::open);
    private final HBox pages = new HBox();
    private final Label pageWords = new Label();
    private final VBox byHand = new VBox();
    private final Label byHandTitle = new Label();
    private final WorkingView working = new WorkingView();
    private ShownTable table = new ShownTable(List.of(), List.of());
    private @Nullable TableResult shown;
    private @Nullable Result held;
    private int openRow = -1;
    private int openColumn = -1;

    TableBody(ResultHost host) {
        this.host = host;
        all.getStyleClass().add("table-result");
        pages.getStyleClass().add("pages");
        Button back = page("‹", "The rows before", -1);
        Button on = page("›", "The rows after", 1);
        pages.getChildren().addAll(back, pageWords, on);
        byHand.getStyleClass().add("by-hand-of-entry");
        byHandTitle.getStyleClass().add("quiet");
        byHandTitle.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(byHandTitle, Priority.ALWAYS);
        Button copy = new Button("Copy");
        copy.getStyleClass().add("plain");
        copy.setAccessibleText("Copy the calculation as text");
        copy.setOnAction(event -> host.copy(working.text() + leverwright.face.publish.Cautions.SHORT + "\n"));
        Button close = new Button("Fold");
        close.getStyleClass().add("plain");
        close.setAccessibleText("Fold the calculation");
        close.setOnAction(event -> fold());
        byHand.getChildren().addAll(new HBox(byHandTitle, copy, close), working);
        for (Node each : List.of(pages, byHand)) {
            each.managedProperty().bind(each.visibleProperty());
            each.setVisible(false);
        }
        all.getChildren().addAll(grid, pages, byHand);
        all.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE && byHand.isVisible()) {
                fold();
                event.consume();
            } else if (event.isShortcutDown() && event.getCode() == KeyCode.C && grid.isFocused()) {
                host.copy(grid.entryAtFocus());
                event.consume();
            }
        });
    }

    private Button page(String sign, String words, int by) {
        Button button = new Button(sign);
        button.getStyleClass().add("plain");
        button.setAccessibleText(words);
        button.setOnAction(event -> {
            grid.showPage(grid.page() + by);
            tellPage();
        });
        return button;
    }

    private void tellPage() {
        int rows = table.rows().size();
        int first = grid.page() * GridTable.ROWS_A_PAGE;
        pages.setVisible(grid.pages() > 1);
        pageWords.setText(
                "rows " + (first + 1) + " to " + Math.min(rows, first + GridTable.ROWS_A_PAGE) + " of " + rows);
    }

    @Override
    public Node node() {
        return all;
    }

    @Override
    public boolean takes(Result result) {
        return result instanceof TableResult;
    }

    @Override
    public void show(Result result, @Nullable Result before) {
        TableResult now = (TableResult) result;
        if (now.equals(shown) && before == held) {
            return;
        }
        shown = now;
        held = before;
        table = ShownTable.of(now, before instanceof TableResult old ? old : null);
        grid.show(table);
        grid.setAccessibleText("Table: " + now.title());
        tellPage();
        unfold();
    }

    private void open(int row, int column) {
        if (row == openRow && column == openColumn) {
            fold();
            return;
        }
        openRow = row;
        openColumn = column;
        unfold();
    }

    private void fold() {
        openRow = -1;
        openColumn = -1;
        byHand.setVisible(false);
    }

    private void unfold() {
        if (openRow < 0
                || openRow >= table.rows().size()
                || openColumn >= table.columns().size()) {
            byHand.setVisible(false);
            return;
        }
        List<ShownTable.Entry> row = table.rows().get(openRow);
        Working steps = row.get(openColumn).working();
        if (steps != null) {
            byHandTitle.setText(
                    row.get(0).text() + ", " + table.columns().get(openColumn).heading());
            working.show(steps);
            working.setOpacity(1);
            byHand.setVisible(true);
        } else if (byHand.isVisible()) {
            // While a dial turns, workings stay away until it rests; another entry may have none at all.
            boolean turning = table.rows().stream().flatMap(List::stream).allMatch(entry -> entry.working() == null);
            working.setOpacity(0.5);
            byHand.setVisible(turning);
        }
    }

    @Override
    public List<MenuItem> tools(Telling telling) {
        return List.of(
                ResultBody.item("Copy the table", () -> {
                    TableResult now = shown;
                    if (now != null) {
                        host.copy(ResultFiles.values(now, '\t'));
                        telling.tell("Copied, for a spreadsheet.");
                    }
                }),
                ResultBody.item("Copy as text", () -> {
                    TableResult now = shown;
                    if (now != null) {
                        host.copy(ResultFiles.text(now));
                        telling.tell("Copied.");
                    }
                }),
                ResultBody.item("Save as CSV…", () -> {
                    TableResult now = shown;
                    if (now != null) {
                        host.save(all, now, "csv", "Table (CSV)", () -> ResultFiles.csv(now), telling::tell);
                    }
                }));
    }
}

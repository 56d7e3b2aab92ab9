package leverwright.face.desk.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.geometry.Orientation;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;
import org.jspecify.annotations.Nullable;

/**
 * A table on the sheet: as broad as the strip, headings that sort, one entry that has the focus and is gone from by the arrow
 * keys. A long table is shown a page at a time, so that every table is quick.
 */
final class GridTable extends Region {

    static final int ROWS_A_PAGE = 40;
    private static final double GAP = 14;
    private static final double LEAST_COLUMN = 30;

    private final List<Button> heads = new ArrayList<>();
    private final List<List<Label>> cells = new ArrayList<>();
    private final List<Line> rules = new ArrayList<>();
    private final BiConsumer<Integer, Integer> open;
    private ShownTable table = new ShownTable(List.of(), List.of());
    private List<Integer> order = List.of();
    private int sorted = -1;
    private boolean falling;
    private int page;
    private int atRow;
    private int atColumn;
    private double[] widths = {};
    private double[] needed = {};
    private double measuredFor = -1;
    private double least = 60;
    private final Ground body = new Ground();
    private final ScrollBar across = new ScrollBar();
    private final Rectangle clip = new Rectangle();

    /**
     * Makes an empty table.
     *
     * @param open is told which row of the script's order and which column the reader opens
     */
    GridTable(BiConsumer<Integer, Integer> open) {
        this.open = open;
        getStyleClass().add("grid-table");
        setAccessibleRole(AccessibleRole.TABLE_VIEW);
        setFocusTraversable(true);
        setOnKeyPressed(this::key);
        across.setFocusTraversable(false);
        across.setAccessibleText("Position across the table");
        across.valueProperty().addListener((property, before, now) -> requestLayout());
        addEventHandler(ScrollEvent.SCROLL, event -> {
            if (across.isVisible() && event.getDeltaX() != 0) {
                across.setValue(Math.max(0, Math.min(across.getMax(), across.getValue() - event.getDeltaX())));
                event.consume();
            }
        });
        body.setClip(clip);
        getChildren().addAll(body, across);
        focusedProperty().addListener((property, before, now) -> mark());
    }

    /** Shows a table; where only entries changed, only they are set. */
    void show(ShownTable now) {
        boolean same = now.columns().equals(table.columns())
                && now.rows().size() == table.rows().size();
        table = now;
        order = now.order(sorted, falling);
        if (!same) {
            build();
        }
        fill();
    }

    int page() {
        return page;
    }

    int pages() {
        return Math.max(1, (table.rows().size() + ROWS_A_PAGE - 1) / ROWS_A_PAGE);
    }

    void showPage(int wanted) {
        page = Math.max(0, Math.min(pages() - 1, wanted));
        build();
        fill();
    }

    private int rowsShown() {
        return Math.max(0, Math.min(ROWS_A_PAGE, table.rows().size() - page * ROWS_A_PAGE));
    }

    private void build() {
        page = Math.min(page, pages() - 1);
        heads.clear();
        cells.clear();
        rules.clear();
        List<Node> children = new ArrayList<>();
        for (int i = 0; i < table.columns().size(); i++) {
            Button head = head(i, table.columns().get(i));
            heads.add(head);
            children.add(head);
        }
        for (int row = 0; row <= rowsShown(); row++) {
            Line rule = new Line();
            rule.getStyleClass().add("rule");
            rule.setManaged(false);
            rules.add(rule);
            children.add(rule);
        }
        for (int row = 0; row < rowsShown(); row++) {
            List<Label> line = new ArrayList<>();
            for (int i = 0; i < table.columns().size(); i++) {
                line.add(cell(row, i, table.columns().get(i)));
            }
            cells.add(line);
            children.addAll(line);
        }
        body.getChildren().setAll(children);
        needed = new double[table.columns().size()];
        measuredFor = -1;
        atRow = Math.min(atRow, Math.max(0, rowsShown() - 1));
        atColumn = Math.min(atColumn, Math.max(0, table.columns().size() - 1));
    }

    private Button head(int index, ShownTable.Column column) {
        Button head = new Button();
        head.getStyleClass().setAll("column-head");
        head.setWrapText(true);
        head.setFocusTraversable(true);
        if (column.numeric()) {
            head.getStyleClass().add("numeric");
        }
        head.setOnAction(event -> sort(index));
        return head;
    }

    private Label cell(int row, int index, ShownTable.Column column) {
        Label cell = new Label();
        cell.getStyleClass().setAll("entry");
        cell.setAccessibleRole(AccessibleRole.TABLE_CELL);
        cell.setWrapText(!column.numeric());
        if (column.numeric()) {
            cell.getStyleClass().add("numeric");
        }
        if (column.change()) {
            cell.getStyleClass().add("change");
        }
        cell.setOnMouseClicked((MouseEvent event) -> {
            atRow = row;
            atColumn = index;
            requestFocus();
            mark();
            open.accept(order.get(page * ROWS_A_PAGE + row), index);
        });
        return cell;
    }

    /** Sorts by a column: rising, falling, then in the order of the script again. */
    void sort(int column) {
        if (sorted != column) {
            sorted = column;
            falling = table.columns().get(column).numeric();
        } else if (falling == table.columns().get(column).numeric()) {
            falling = !falling;
        } else {
            sorted = -1;
            falling = false;
        }
        order = table.order(sorted, falling);
        fill();
    }

    private void fill() {
        for (int i = 0; i < heads.size(); i++) {
            ShownTable.Column column = table.columns().get(i);
            String sign = i != sorted ? "" : falling ? " ↓" : " ↑";
            String text = column.heading() + sign;
            if (!text.equals(heads.get(i).getText())) {
                heads.get(i).setText(text);
                measuredFor = -1;
            }
            String how = i != sorted ? "not sorted" : falling ? "greatest first" : "least first";
            heads.get(i).setAccessibleText(column.heading() + ", " + how + ", sorts the table");
        }
        for (int row = 0; row < cells.size(); row++) {
            List<ShownTable.Entry> entries = table.rows().get(order.get(page * ROWS_A_PAGE + row));
            for (int i = 0; i < entries.size(); i++) {
                set(cells.get(row).get(i), entries, i);
            }
        }
        mark();
    }

    private void set(Label cell, List<ShownTable.Entry> entries, int column) {
        ShownTable.Entry entry = entries.get(column);
        if (!entry.text().equals(cell.getText())) {
            cell.setText(entry.text());
            cell.setAccessibleText((column > 0 ? entries.get(0).text() + ", " : "")
                    + table.columns().get(column).heading() + ", " + entry.text());
            if (widths.length > column && needed(cell) > widths[column]) {
                measuredFor = -1;
                requestLayout();
            }
        }
        // Turns of a dial come without workings; what had one gets it again when the dial rests.
        if (entry.working() != null && !cell.getStyleClass().contains("has-working")) {
            cell.getStyleClass().add("has-working");
        }
    }

    private void mark() {
        for (int row = 0; row < cells.size(); row++) {
            for (int i = 0; i < cells.get(row).size(); i++) {
                Label cell = cells.get(row).get(i);
                boolean here = isFocused() && row == atRow && i == atColumn;
                if (here != cell.getStyleClass().contains("at")) {
                    if (here) {
                        cell.getStyleClass().add("at");
                    } else {
                        cell.getStyleClass().remove("at");
                    }
                }
            }
        }
        if (!cells.isEmpty() && isFocused()) {
            setAccessibleText(cells.get(atRow).get(atColumn).getAccessibleText());
        }
    }

    private void key(KeyEvent event) {
        if (cells.isEmpty() || event.isAltDown() || event.isShortcutDown()) {
            return;
        }
        switch (event.getCode()) {
            case UP -> go(atRow - 1, atColumn);
            case DOWN -> go(atRow + 1, atColumn);
            case LEFT -> go(atRow, atColumn - 1);
            case RIGHT -> go(atRow, atColumn + 1);
            case HOME -> go(atRow, 0);
            case END -> go(atRow, table.columns().size() - 1);
            case PAGE_UP -> showPage(page - 1);
            case PAGE_DOWN -> showPage(page + 1);
            case ENTER, SPACE -> open.accept(order.get(page * ROWS_A_PAGE + atRow), atColumn);
            default -> {
                return;
            }
        }
        event.consume();
    }

    private void go(int row, int column) {
        if (row >= cells.size() && page < pages() - 1) {
            atRow = 0;
            showPage(page + 1);
        } else if (row < 0 && page > 0) {
            showPage(page - 1);
            atRow = cells.size() - 1;
        } else {
            atRow = Math.max(0, Math.min(cells.size() - 1, row));
        }
        atColumn = Math.max(0, Math.min(table.columns().size() - 1, column));
        mark();
        Label here = cells.get(atRow).get(atColumn);
        double left = here.getLayoutX();
        double right = left + here.getWidth() - getWidth();
        if (across.isVisible()) {
            across.setValue(Math.max(0, Math.min(left, Math.max(right, across.getValue()))));
        }
    }

    /** Returns the entry that has the focus, as text; empty when there is none. */
    String entryAtFocus() {
        return cells.isEmpty() ? "" : cells.get(atRow).get(atColumn).getText();
    }

    private static double needed(Label cell) {
        return Math.ceil(cell.prefWidth(-1));
    }

    @Override
    public @Nullable Orientation getContentBias() {
        return Orientation.HORIZONTAL;
    }

    @Override
    protected double computePrefWidth(double height) {
        return 320;
    }

    @Override
    protected double computeMinWidth(double height) {
        return 100;
    }

    @Override
    protected double computePrefHeight(double width) {
        if (table.columns().isEmpty()) {
            return 0;
        }
        double wide = width > 0 ? width : getWidth() > 0 ? getWidth() : computePrefWidth(-1);
        measure(wide);
        return Math.ceil(bodyHeight() + (least > wide ? across.prefHeight(-1) : 0));
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    private double bodyHeight() {
        double height = headHeight() + 1;
        for (int row = 0; row < cells.size(); row++) {
            height += rowHeight(row) + 1;
        }
        return height;
    }

    private double headHeight() {
        double height = 0;
        for (int i = 0; i < heads.size(); i++) {
            height = Math.max(height, heads.get(i).prefHeight(widths[i]));
        }
        return height;
    }

    private double rowHeight(int row) {
        double height = 0;
        for (int i = 0; i < cells.get(row).size(); i++) {
            Label cell = cells.get(row).get(i);
            height = Math.max(height, cell.isWrapText() ? cell.prefHeight(widths[i]) : cell.prefHeight(-1));
        }
        return height;
    }

    /** Measures anew when an entry or the size of text changes. */
    @Override
    public void requestLayout() {
        measuredFor = -1;
        super.requestLayout();
    }

    private boolean isBare() {
        return cells.get(cells.size() - 1).get(0).getSkin() == null;
    }

    /** Gives every column the width of its numbers, headings as much as is left, and words what then remains. */
    private void measure(double width) {
        if (width == measuredFor || width <= 0) {
            return;
        }
        // Before the style sheets have dressed them, labels have no width that could be kept.
        measuredFor = heads.get(0).getSkin() == null || (!cells.isEmpty() && isBare()) ? -1 : width;
        int columns = table.columns().size();
        double[] narrow = new double[columns];
        double[] wanted = new double[columns];
        for (int i = 0; i < columns; i++) {
            // A column keeps the width it once needed, so that none moves while a dial turns.
            double body = Math.max(LEAST_COLUMN, i < needed.length ? needed[i] : 0);
            for (List<Label> row : cells) {
                body = Math.max(body, needed(row.get(i)));
            }
            if (i < needed.length && measuredFor > 0) {
                needed[i] = body;
            }
            double word = widestWord(heads.get(i));
            boolean numeric = table.columns().get(i).numeric();
            narrow[i] = numeric ? Math.max(body, word) : Math.min(body, Math.max(word, 110));
            wanted[i] = Math.max(body, Math.ceil(heads.get(i).prefWidth(-1)));
        }
        least = GAP * Math.max(0, columns - 1);
        for (double each : narrow) {
            least += each;
        }
        widths = GridWidths.share(narrow, wanted, Math.max(width, least) - GAP * Math.max(0, columns - 1));
    }

    /** The width of a heading's longest word: a heading breaks only between words. */
    private static double widestWord(Button head) {
        String text = head.getText();
        double whole = Math.ceil(head.prefWidth(-1));
        int longest = 1;
        for (String word : text.split(" ")) {
            longest = Math.max(longest, word.length());
        }
        return Math.ceil(whole * Math.min(1, (longest + 1.5) / Math.max(1, text.length())));
    }

    @Override
    protected void layoutChildren() {
        if (table.columns().isEmpty()) {
            return;
        }
        measure(getWidth());
        layoutAcross();
        double head = headHeight();
        double y = 0;
        double x = 0;
        for (int i = 0; i < heads.size(); i++) {
            double height = heads.get(i).prefHeight(widths[i]);
            heads.get(i).resizeRelocate(x, y + head - height, widths[i], height);
            x += widths[i] + GAP;
        }
        double right = Math.max(0, x - GAP);
        y += head;
        rule(0, y, right);
        y += 1;
        for (int row = 0; row < cells.size(); row++) {
            double height = rowHeight(row);
            x = 0;
            for (int i = 0; i < cells.get(row).size(); i++) {
                cells.get(row).get(i).resizeRelocate(x, y, widths[i], height);
                x += widths[i] + GAP;
            }
            y += height;
            rule(row + 1, y, right);
            y += 1;
        }
    }

    /** Shows the bar below when the columns need more width than there is. */
    private void layoutAcross() {
        double more = Math.max(0, least - getWidth());
        across.setVisible(more > 0.5);
        across.setMax(Math.max(more, 1e-9));
        across.setVisibleAmount(more * getWidth() / Math.max(1, least));
        across.setValue(Math.min(more, across.getValue()));
        double high = across.prefHeight(-1);
        across.resizeRelocate(0, getHeight() - high, getWidth(), high);
        double left = more > 0 ? across.getValue() : 0;
        body.resizeRelocate(-left, 0, Math.max(getWidth(), least), getHeight());
        clip.setX(left - 4);
        clip.setY(-2);
        clip.setWidth(getWidth() + 8);
        clip.setHeight(getHeight() + 4 - (more > 0.5 ? high : 0));
    }

    private void rule(int index, double y, double right) {
        Line rule = rules.get(index);
        rule.setStartX(0);
        rule.setEndX(Math.max(0, right - 0.5));
        rule.setStartY(y + 0.5);
        rule.setEndY(y + 0.5);
    }
}

package leverwright.face.desk.dials;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TableResult.Entry;
import leverwright.run.result.TableResult.TextEntry;

/**
 * The muscles of the workbook's first table of shares beside the figure: those that use most of their capacity, each with a bar as
 * wide as its share. The bar is whole where every number behind it was read, hatched where one was not, and has an edge at its end
 * where more than all of capacity is asked. Muscles keep their place while a dial turns, so that the eye can follow one.
 */
final class NowShares extends VBox {
    private static final int MOST = 9;
    private static final double FULL = 100;
    private static final PseudoClass UNREAD = PseudoClass.getPseudoClass("unread");
    private static final PseudoClass BEYOND = PseudoClass.getPseudoClass("beyond");
    /** Below this share, in percent, a muscle is left out when the list is made. */
    private static final double LEAST = 1;

    private final DeskModel model;
    private final InvalidationListener follow = changed -> show();
    private final VBox rows = new VBox();
    private final Label note = new Label();
    private List<String> names = List.of();

    /** A muscle and what it uses. */
    private record Share(String muscle, double percent, boolean read) {}

    /** One muscle's line: its name, the bar in its frame, the number. */
    private static final class Row extends HBox {
        private final Label name = new Label();
        private final Region bar = new Region();
        private final Region frame = new Region();
        private final Label number = new Label();
        private double part;

        Row() {
            getStyleClass().add("share-row");
            name.getStyleClass().addAll("share-name", "small");
            number.getStyleClass().addAll("share-number", "small");
            bar.getStyleClass().add("share-bar");
            frame.getStyleClass().add("share-frame");
            bar.setManaged(false);
            Track track = new Track();
            HBox.setHgrow(track, Priority.ALWAYS);
            getChildren().addAll(name, track, number);
        }

        /** The frame of a whole capacity, and the bar in it. */
        private final class Track extends Region {
            Track() {
                getStyleClass().add("share-track");
                getChildren().addAll(frame, bar);
            }

            @Override
            protected void layoutChildren() {
                frame.resizeRelocate(0, 0, getWidth(), getHeight());
                bar.resizeRelocate(0, 0, Math.rint(getWidth() * part), getHeight());
            }

            void again() {
                requestLayout();
            }
        }

        void show(Share share) {
            name.setText(share.muscle());
            number.setText(String.format(Locale.ROOT, "%.0f %%", share.percent()));
            part = Math.max(0, Math.min(1, share.percent() / FULL));
            bar.pseudoClassStateChanged(UNREAD, !share.read());
            bar.pseudoClassStateChanged(BEYOND, share.percent() > FULL + 0.05);
            ((Track) bar.getParent()).again();
            setAccessibleText(share.muscle() + " uses " + number.getText() + " of its capacity");
        }
    }

    NowShares(DeskModel model) {
        this.model = model;
        getStyleClass().add("now-shares");
        Label heading = new Label("CAPACITY USED");
        heading.getStyleClass().add("heading");
        rows.getStyleClass().add("share-rows");
        note.getStyleClass().addAll("quiet", "small");
        note.setWrapText(true);
        note.setMinHeight(Region.USE_PREF_SIZE);
        note.managedProperty().bind(note.visibleProperty());
        getChildren().addAll(heading, rows, note);
        managedProperty().bind(visibleProperty());
        model.batch().addListener(follow);
        model.cells().addListener(follow);
        show();
    }

    private Optional<TableResult> table() {
        for (CellView cell : model.cells()) {
            for (Result result : cell.shown().get().results()) {
                if (result instanceof TableResult table
                        && table.headings().size() > 2
                        && table.headings().subList(0, 3).equals(List.of("muscle", "share", "used"))) {
                    return Optional.of(table);
                }
            }
        }
        return Optional.empty();
    }

    private static List<Share> shares(TableResult table) {
        List<Share> shares = new ArrayList<>();
        int last = table.headings().size() - 1;
        for (List<Entry> row : table.rows()) {
            if (row.get(0) instanceof TextEntry name
                    && row.get(2) instanceof TextEntry used
                    && row.get(last) instanceof TextEntry numbers) {
                String number = used.text()
                        .substring(0, Math.max(0, used.text().indexOf('%')))
                        .strip();
                try {
                    shares.add(new Share(
                            name.text().replace(", both sides", ""),
                            Double.parseDouble(number),
                            numbers.text().equals("read")));
                } catch (NumberFormatException notANumber) {
                    return List.of();
                }
            }
        }
        return shares;
    }

    private void show() {
        Optional<TableResult> table = table();
        List<Share> all = table.map(NowShares::shares).orElse(List.of());
        setVisible(!all.isEmpty());
        List<String> kept = names;
        boolean known = !kept.isEmpty()
                && kept.stream()
                        .allMatch(name ->
                                all.stream().anyMatch(share -> share.muscle().equals(name)));
        if (!known) {
            names = all.stream()
                    .filter(share -> share.percent() >= LEAST)
                    .sorted(Comparator.comparingDouble(share -> -share.percent()))
                    .limit(MOST)
                    .map(Share::muscle)
                    .toList();
        }
        fill(all);
        Optional<String> beyond = table.flatMap(found -> found.notes().stream()
                .filter(text -> text.startsWith("Beyond this model"))
                .findFirst());
        note.setVisible(!all.isEmpty());
        note.setText((beyond.isPresent() ? "More is asked than this model holds; the table says what lacks. " : "")
                + "Hatched: a number from memory or extrapolated.");
    }

    private void fill(List<Share> all) {
        List<Node> nodes = rows.getChildren();
        while (nodes.size() < names.size()) {
            nodes.add(new Row());
        }
        while (nodes.size() > names.size()) {
            nodes.remove(nodes.size() - 1);
        }
        for (int k = 0; k < names.size(); k++) {
            String name = names.get(k);
            Row row = (Row) nodes.get(k);
            all.stream()
                    .filter(share -> share.muscle().equals(name))
                    .findFirst()
                    .ifPresent(row::show);
        }
    }

    void dispose() {
        model.batch().removeListener(follow);
        model.cells().removeListener(follow);
    }
}

package leverwright.face.desk.editor;

import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;
import javafx.scene.text.TextFlow;
import leverwright.face.desk.style.Hint;
import leverwright.face.draw.FormulaText;
import leverwright.face.draw.Markup;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Heading;
import org.commonmark.node.HtmlBlock;
import org.commonmark.node.HtmlInline;
import org.commonmark.node.IndentedCodeBlock;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.ThematicBreak;
import org.commonmark.parser.Parser;

/** A note as it reads: CommonMark as text, lists, tables, code, links and images. Markup written in a note shows as text. */
final class NoteView extends VBox {

    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private static final double WIDEST_IMAGE = 640;

    /** How far an index stands lower and a power higher, in sizes of the text. */
    private static final double INDEX_LOWER = 0.28;

    private static final double POWER_HIGHER = 0.42;

    private final Consumer<String> follow;

    /**
     * Makes an empty view.
     *
     * @param follow what to do with the address of a link that is pressed
     */
    NoteView(Consumer<String> follow) {
        this.follow = follow;
        getStyleClass().add("note-view");
    }

    /** Shows a note. */
    void show(String note) {
        List<javafx.scene.Node> blocks = blocks(PARSER.parse(Markup.clean(note)));
        if (blocks.isEmpty()) {
            blocks.add(styled(new Label("An empty note. Press Enter to write."), "quiet"));
        }
        getChildren().setAll(blocks);
    }

    private static <N extends javafx.scene.Node> N styled(N node, String... styles) {
        node.getStyleClass().addAll(styles);
        return node;
    }

    private List<javafx.scene.Node> blocks(Node parent) {
        List<javafx.scene.Node> blocks = new ArrayList<>();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            blocks.add(block(child));
        }
        return blocks;
    }

    private javafx.scene.Node block(Node node) {
        if (node instanceof Heading heading) {
            return styled(flow(heading), "note-heading", "note-heading-" + Math.min(4, heading.getLevel()));
        }
        if (node instanceof ListBlock list) {
            return list(list);
        }
        if (node instanceof BlockQuote) {
            VBox quote = styled(new VBox(), "note-quote");
            quote.getChildren().addAll(blocks(node));
            return quote;
        }
        if (node instanceof FencedCodeBlock code) {
            return code(code.getLiteral());
        }
        if (node instanceof IndentedCodeBlock code) {
            return code(code.getLiteral());
        }
        if (node instanceof HtmlBlock html) {
            return styled(literal(html.getLiteral()), "note-paragraph");
        }
        if (node instanceof TableBlock) {
            return table(node);
        }
        if (node instanceof ThematicBreak) {
            return styled(new Region(), "note-rule");
        }
        return styled(flow(node), "note-paragraph");
    }

    private static javafx.scene.Node code(String literal) {
        Label label = styled(new Label(literal.stripTrailing()), "code", "note-code");
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.setMaxWidth(Double.MAX_VALUE);
        return label;
    }

    private javafx.scene.Node list(ListBlock list) {
        VBox items = styled(new VBox(), "note-list");
        int number = list instanceof OrderedList ordered && ordered.getMarkerStartNumber() != null
                ? ordered.getMarkerStartNumber()
                : 1;
        for (Node item = list.getFirstChild(); item != null; item = item.getNext()) {
            Label sign = styled(new Label(list instanceof BulletList ? "•" : number + "."), "note-item-sign");
            sign.setMinWidth(Region.USE_PREF_SIZE);
            VBox words = new VBox();
            words.getChildren().addAll(blocks(item));
            HBox.setHgrow(words, Priority.ALWAYS);
            items.getChildren().add(styled(new HBox(sign, words), "note-item"));
            number++;
        }
        return items;
    }

    private javafx.scene.Node table(Node table) {
        GridPane grid = styled(new GridPane(), "note-table");
        int row = 0;
        for (Node part = table.getFirstChild(); part != null; part = part.getNext()) {
            for (Node line = part.getFirstChild(); line != null; line = line.getNext()) {
                int column = 0;
                for (Node entry = line.getFirstChild(); entry != null; entry = entry.getNext()) {
                    grid.add(entry((TableCell) entry), column++, row);
                }
                row++;
            }
        }
        return grid;
    }

    private javafx.scene.Node entry(TableCell cell) {
        TextFlow words = styled(flow(cell), "note-entry");
        words.setTextAlignment(
                cell.getAlignment() == TableCell.Alignment.RIGHT
                        ? TextAlignment.RIGHT
                        : cell.getAlignment() == TableCell.Alignment.CENTER
                                ? TextAlignment.CENTER
                                : TextAlignment.LEFT);
        if (cell.isHeader()) {
            words.getStyleClass().add("note-entry-head");
        }
        return words;
    }

    private TextFlow flow(Node block) {
        TextFlow flow = new TextFlow();
        add(flow, block, List.of());
        return flow;
    }

    private void add(TextFlow flow, Node parent, List<String> styles) {
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            if (child instanceof org.commonmark.node.Text text) {
                words(flow, text.getLiteral(), styles);
            } else if (child instanceof Code code) {
                part(flow, code.getLiteral(), with(with(styles, "code"), "note-inline-code"));
            } else if (child instanceof Emphasis) {
                add(flow, child, with(styles, "note-emphasis"));
            } else if (child instanceof StrongEmphasis) {
                add(flow, child, with(styles, "note-strong"));
            } else if (child instanceof SoftLineBreak) {
                part(flow, " ", styles);
            } else if (child instanceof HardLineBreak) {
                part(flow, "\n", styles);
            } else if (child instanceof HtmlInline html) {
                part(flow, html.getLiteral(), styles);
            } else if (child instanceof Link link) {
                link(flow, link, styles);
            } else if (child instanceof org.commonmark.node.Image image) {
                image(flow, image);
            } else {
                add(flow, child, styles);
            }
        }
    }

    private static List<String> with(List<String> styles, String more) {
        List<String> all = new ArrayList<>(styles);
        all.add(more);
        return all;
    }

    /** Words as they stand; what stands between dollar signs is a formula, with its indices below and powers above. */
    private static void words(TextFlow flow, String literal, List<String> styles) {
        pieces(flow, FormulaText.pieces(literal), styles);
    }

    private static void pieces(TextFlow flow, List<FormulaText.Piece> pieces, List<String> styles) {
        for (FormulaText.Piece piece : pieces) {
            switch (piece.kind()) {
                case WORDS -> part(flow, piece.text(), styles);
                case LETTERS -> part(flow, piece.text(), with(styles, "formula-letter"));
                case SIGNS -> part(flow, piece.text(), with(styles, "formula-sign"));
                case INDEX -> small(flow, piece.text(), styles, INDEX_LOWER);
                case POWER -> small(flow, piece.text(), styles, -POWER_HIGHER);
                case FRACTION ->
                    flow.getChildren()
                            .add(new FormulaPart.Fraction(piece.text(), row(piece, 0, styles), row(piece, 1, styles)));
                case ROOT -> flow.getChildren().add(new FormulaPart.Root(piece.text(), row(piece, 0, styles)));
            }
        }
    }

    private static TextFlow row(FormulaText.Piece piece, int part, List<String> styles) {
        TextFlow flow = new TextFlow();
        pieces(flow, piece.parts().get(part), styles);
        return flow;
    }

    private static void small(TextFlow flow, String words, List<String> styles, double lower) {
        Text text = part(flow, words, with(styles, "formula-small"));
        text.setTranslateY(lower * text.getFont().getSize());
    }

    private static Text part(TextFlow flow, String words, List<String> styles) {
        Text text = new Text(words);
        text.getStyleClass().addAll("text", "note-text");
        text.getStyleClass().addAll(styles);
        flow.getChildren().add(text);
        return text;
    }

    private static TextFlow literal(String words) {
        TextFlow flow = new TextFlow();
        part(flow, words, List.of());
        return flow;
    }

    private static String plain(Node parent) {
        StringBuilder words = new StringBuilder();
        for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
            if (child instanceof org.commonmark.node.Text text) {
                words.append(text.getLiteral());
            } else if (child instanceof Code code) {
                words.append(code.getLiteral());
            } else {
                words.append(plain(child));
            }
        }
        return words.toString();
    }

    private void link(TextFlow flow, Link link, List<String> styles) {
        String address = link.getDestination();
        if (!NoteAddress.leadsSomewhereAllowed(address)) {
            add(flow, link, styles);
            return;
        }
        Hyperlink shown = new Hyperlink(plain(link));
        shown.setAccessibleText(plain(link) + ", link to " + address);
        Hint.on(shown, address);
        shown.setOnAction(event -> follow.accept(address));
        flow.getChildren().add(shown);
    }

    private static void image(TextFlow flow, org.commonmark.node.Image image) {
        String words = plain(image);
        Optional<Image> picture = NoteAddress.image(image.getDestination())
                .filter(bytes -> bytes.length <= MOST_IMAGE_BYTES)
                .map(bytes -> new Image(new ByteArrayInputStream(bytes), WIDEST_IMAGE, 0, true, true))
                .filter(read -> !read.isError());
        if (picture.isEmpty()) {
            part(flow, "[picture not shown: " + words + "]", List.of("quiet"));
            return;
        }
        ImageView view = new ImageView(picture.get());
        view.setAccessibleText(words.isEmpty() ? "Picture" : words);
        flow.getChildren().add(view);
    }

    /** What another program put into a file may be larger than what may be put in here, but not without end. */
    private static final int MOST_IMAGE_BYTES = 8 * NoteAddress.MOST_BYTES;
}

package leverwright.face.publish;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import leverwright.face.draw.FormulaText;
import leverwright.face.draw.Markup;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;
import org.commonmark.renderer.html.UrlSanitizer;

/**
 * Notes as markup. Markup written in a note shows as text. A link leads to http, https or mailto, or within the page;
 * an image must be in the note itself ({@code data:image/…;base64}); what leads elsewhere shows as words.
 */
final class NoteHtml {
    private static final Pattern LINK = Pattern.compile("(?:https?://|mailto:|#)[^\\s\\p{Cntrl}]*");
    private static final Pattern IMAGE = Pattern.compile("data:image/(?:png|jpeg|gif|webp);base64,[A-Za-z0-9+/=]*");
    private static final int DEEPEST = 6;

    private static final Parser PARSER =
            Parser.builder().extensions(List.of(TablesExtension.create())).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .extensions(List.of(TablesExtension.create()))
            .nodeRendererFactory(Formulas::new)
            .escapeHtml(true)
            .sanitizeUrls(true)
            .urlSanitizer(new Strict())
            .attributeProviderFactory(context -> (node, tag, attributes) -> {
                if (node instanceof Link) {
                    attributes.put("rel", "noopener noreferrer");
                } else if (node instanceof TableCell) {
                    String side = attributes.remove("align");
                    if (side != null) {
                        attributes.put("class", "note-" + side);
                    }
                }
            })
            .build();

    private NoteHtml() {}

    /** Returns the note as markup; its headings begin one level below the page's own. */
    static String of(String note) {
        Node document = PARSER.parse(Markup.clean(note));
        document.accept(new Tame());
        return RENDERER.render(document);
    }

    /** Returns the words of the note's first heading; empty when it has none. */
    static String heading(String note) {
        FirstHeading first = new FirstHeading();
        PARSER.parse(Markup.clean(note)).accept(first);
        return first.words.toString();
    }

    /** Gathers the words of the first heading. */
    private static final class FirstHeading extends AbstractVisitor {
        private final StringBuilder words = new StringBuilder();
        private boolean inside;

        @Override
        public void visit(Heading heading) {
            if (words.length() == 0) {
                inside = true;
                visitChildren(heading);
                inside = false;
            }
        }

        @Override
        public void visit(Text text) {
            words.append(inside ? text.getLiteral() : "");
        }

        @Override
        public void visit(Code code) {
            words.append(inside ? code.getLiteral() : "");
        }
    }

    private static boolean leadsSomewhereAllowed(String address) {
        return LINK.matcher(address.toLowerCase(Locale.ROOT)).matches();
    }

    /** Lowers headings and turns links and images that are not allowed into words. */
    private static final class Tame extends AbstractVisitor {
        @Override
        public void visit(Heading heading) {
            heading.setLevel(Math.min(DEEPEST, heading.getLevel() + 1));
            visitChildren(heading);
        }

        @Override
        public void visit(Link link) {
            visitChildren(link);
            if (!leadsSomewhereAllowed(link.getDestination())) {
                unwrap(link);
            }
        }

        @Override
        public void visit(Image image) {
            visitChildren(image);
            if (!IMAGE.matcher(image.getDestination()).matches()) {
                image.insertBefore(new Text("[picture not shown: "));
                image.insertAfter(new Text("]"));
                unwrap(image);
            }
        }

        private static void unwrap(Node node) {
            for (Node child = node.getFirstChild(); child != null; child = node.getFirstChild()) {
                node.insertBefore(child);
            }
            node.unlink();
        }
    }

    /** Writes text with the formulas in it as MathML; whoever reads the page needs no script and no font for it. */
    private static final class Formulas implements NodeRenderer {
        private final HtmlWriter html;

        Formulas(HtmlNodeRendererContext context) {
            html = context.getWriter();
        }

        @Override
        public Set<Class<? extends Node>> getNodeTypes() {
            return Set.of(Text.class);
        }

        @Override
        public void render(Node node) {
            boolean inside = false;
            List<FormulaText.Piece> pieces = FormulaText.pieces(((Text) node).getLiteral());
            for (int i = 0; i < pieces.size(); i++) {
                FormulaText.Piece piece = pieces.get(i);
                boolean outside = piece.kind() == FormulaText.Kind.WORDS;
                if (inside && (outside || piece.begins())) {
                    html.raw("</math>");
                }
                if (outside) {
                    html.text(piece.text());
                } else {
                    html.raw(piece.begins() ? "<math>" : "");
                    i += part(pieces, i);
                }
                inside = !outside;
            }
            html.raw(inside ? "</math>" : "");
        }

        /** Writes a piece with the index or power that follows it; returns how many pieces that took besides. */
        private int part(List<FormulaText.Piece> pieces, int at) {
            FormulaText.Piece piece = pieces.get(at);
            FormulaText.Kind next = at + 1 < pieces.size()
                            && !pieces.get(at + 1).begins()
                            && piece.kind() != FormulaText.Kind.INDEX
                            && piece.kind() != FormulaText.Kind.POWER
                    ? pieces.get(at + 1).kind()
                    : FormulaText.Kind.WORDS;
            String tag = next == FormulaText.Kind.INDEX ? "msub" : next == FormulaText.Kind.POWER ? "msup" : "";
            if (tag.isEmpty()) {
                atom(piece);
                return 0;
            }
            html.raw("<" + tag + ">");
            atom(piece);
            atom(pieces.get(at + 1));
            html.raw("</" + tag + ">");
            return 1;
        }

        private void row(List<FormulaText.Piece> pieces) {
            html.raw("<mrow>");
            for (int i = 0; i < pieces.size(); i++) {
                i += part(pieces, i);
            }
            html.raw("</mrow>");
        }

        private void atom(FormulaText.Piece piece) {
            if (piece.kind() == FormulaText.Kind.FRACTION || piece.kind() == FormulaText.Kind.ROOT) {
                String tag = piece.kind() == FormulaText.Kind.FRACTION ? "mfrac" : "msqrt";
                html.raw("<" + tag + ">");
                piece.parts().forEach(this::row);
                html.raw("</" + tag + ">");
                return;
            }
            String tag = piece.kind() == FormulaText.Kind.LETTERS
                            || (piece.kind() != FormulaText.Kind.SIGNS
                                    && piece.text().matches("\\p{L}+"))
                    ? "mi"
                    : "mtext";
            // Blanks at the ends of a text count for nothing in MathML.
            html.raw("<" + tag + ">");
            html.text(piece.text().replace(' ', '\u00a0'));
            html.raw("</" + tag + ">");
        }
    }

    /** The last gate for addresses, should one have come past {@link Tame}. */
    private static final class Strict implements UrlSanitizer {
        @Override
        public String sanitizeLinkUrl(String address) {
            return leadsSomewhereAllowed(address) ? address : "";
        }

        @Override
        public String sanitizeImageUrl(String address) {
            return IMAGE.matcher(address).matches() ? address : "";
        }
    }
}

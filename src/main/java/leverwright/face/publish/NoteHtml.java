package leverwright.face.publish;

import java.util.Locale;
import java.util.regex.Pattern;
import leverwright.face.draw.Markup;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Code;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.UrlSanitizer;

/**
 * Notes as markup. Markup written in a note shows as text. A link leads to http, https or mailto, or within the page;
 * an image must be in the note itself ({@code data:image/…;base64}); what leads elsewhere shows as words.
 */
final class NoteHtml {
    private static final Pattern LINK = Pattern.compile("(?:https?://|mailto:|#)[^\\s\\p{Cntrl}]*");
    private static final Pattern IMAGE = Pattern.compile("data:image/(?:png|jpeg|gif|webp);base64,[A-Za-z0-9+/=]*");
    private static final int DEEPEST = 6;

    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder()
            .escapeHtml(true)
            .sanitizeUrls(true)
            .urlSanitizer(new Strict())
            .attributeProviderFactory(context -> (node, tag, attributes) -> {
                if (node instanceof Link) {
                    attributes.put("rel", "noopener noreferrer");
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

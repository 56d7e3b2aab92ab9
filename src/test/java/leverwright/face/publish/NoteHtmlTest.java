package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import leverwright.face.Hostile;
import leverwright.face.Xml;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

class NoteHtmlTest {
    /** Ways to lead a reader into a script or out of the page, collected from memory of what browsers forgive. */
    private static final List<String> FORBIDDEN = List.of(
            "javascript:alert(1)",
            "JaVaScRiPt:alert(1)",
            " javascript:alert(1)",
            "java\tscript:alert(1)",
            "&#x6a;avascript:alert(1)",
            "&#106;avascript&colon;alert(1)",
            "vbscript:x",
            "data:text/html,<script>alert(1)</script>",
            "data:image/svg+xml;base64,PHN2Zz4=",
            "file:///etc/passwd",
            "//example.org/x",
            "/etc/passwd",
            "other.html",
            "blob:x",
            "ftp://example.org",
            "https:/example.org");

    @Test
    void proseBecomesMarkupWithHeadingsBelowThePages() {
        String html = NoteHtml.of("# One\n\n###### Six\n\ntext *slanted* **bold** `code`\n\n- item\n");
        assertEquals(
                "<h2>One</h2>\n<h6>Six</h6>\n<p>text <em>slanted</em> <strong>bold</strong> <code>code</code></p>\n"
                        + "<ul>\n<li>item</li>\n</ul>\n",
                html);
    }

    @Test
    void linksLeadOnlyToKnownPlaces() {
        for (String address :
                List.of("https://example.org/a?b=c&d", "http://example.org", "mailto:a@example.org", "#cell-c1")) {
            String html = NoteHtml.of("[words](" + address + ")");
            assertTrue(html.contains("<a rel=\"noopener noreferrer\" href=\""), html);
        }
        for (String address : FORBIDDEN) {
            for (String form : List.of(
                    "[words](<" + address + ">)",
                    "[words](" + address + ")",
                    "[words][r]\n\n[r]: " + address,
                    "<" + address + ">")) {
                String html = NoteHtml.of(form);
                for (Element element : Xml.elements(Xml.parse("<div>" + html + "</div>"))) {
                    String target = element.getAttribute("href").toLowerCase(Locale.ROOT);
                    assertTrue(
                            target.isEmpty()
                                    || target.startsWith("https://")
                                    || target.startsWith("http://")
                                    || target.startsWith("mailto:"),
                            form + " gave " + html);
                }
            }
        }
    }

    @Test
    void picturesComeOnlyFromTheNoteItself() {
        String own = NoteHtml.of("![a dot](data:image/png;base64,iVBORw0KGgo=)");
        assertTrue(own.contains("src=\"data:image/png;base64,iVBORw0KGgo=\""), own);
        assertTrue(own.contains("alt=\"a dot\""), own);
        for (String address : FORBIDDEN) {
            assertFalse(NoteHtml.of("![words](<" + address + ">)").contains("<img"), address);
        }
        String remote = NoteHtml.of("![a bar](https://example.org/bar.png)");
        assertEquals("<p>[picture not shown: a bar]</p>\n", remote);
    }

    @Test
    void fractionsAndRootsBecomeMath() {
        assertEquals(
                "<p><math><mi>T</mi><mtext>=</mtext><mfrac><mrow><mi>k</mi></mrow><mrow><msup><mi>a</mi><mtext>2</mtext></msup>"
                        + "<msqrt><mrow><msub><mi>l</mi><mtext>0</mtext></msub></mrow></msqrt></mrow></mfrac></math></p>\n",
                NoteHtml.of("$T=\\frac{k}{a^2\\sqrt{l_0}}$"));
    }

    @Test
    void aFormulaBecomesMathWithoutAnythingFromElsewhere() {
        assertEquals(
                "<p>so <math><mi>M</mi><mtext>\u00a0=\u00a0</mtext><mi>W</mi><mtext>·</mtext>"
                        + "<msub><mi>d</mi><mi>hip</mi></msub></math> and <math><msup><mi>v</mi><mtext>2</mtext></msup></math>,"
                        + " but $5 or $6</p>\n",
                NoteHtml.of("so $M = W·d_{hip}$ and $v^2$, but $5 or $6"));
        assertEquals("<p><code>$x$</code></p>\n", NoteHtml.of("`$x$`"));
        assertEquals(
                "<p><math><mi>a</mi><mtext>&lt;</mtext><mi>b</mi></math></p>\n",
                NoteHtml.of("$a<b$"),
                "markup stays text");
    }

    @Test
    void aTableBecomesATable() {
        String html = NoteHtml.of("| joint | moment |\n|---|--:|\n| hip | $M_h$ |\n");
        assertTrue(html.contains("<th class=\"note-right\">moment</th>"), html);
        assertTrue(html.contains("<td class=\"note-right\"><math><msub><mi>M</mi><mi>h</mi></msub></math></td>"), html);
    }

    @Test
    void markupInANoteStaysText() {
        for (String text : Hostile.TEXTS) {
            for (String note : List.of(
                    text,
                    "# " + text,
                    "> " + text,
                    "- " + text,
                    "`" + text + "`",
                    "    " + text,
                    "\n" + text + "\n",
                    "[" + text + "](https://example.org \"" + text + "\")",
                    "```" + text + "\nx\n```")) {
                for (Element element : Xml.elements(Xml.parse("<div>" + NoteHtml.of(note) + "</div>"))) {
                    assertTrue(
                            List.of("div", "p", "h2", "blockquote", "ul", "li", "code", "pre", "a", "strong", "em")
                                    .contains(element.getTagName()),
                            note + " gave " + element.getTagName());
                    for (int i = 0; i < element.getAttributes().getLength(); i++) {
                        assertTrue(
                                List.of("href", "rel", "title", "class")
                                        .contains(
                                                element.getAttributes().item(i).getNodeName()),
                                note);
                    }
                }
            }
        }
    }

    @Test
    void theFirstHeadingNamesTheNote() {
        assertEquals("Who carries it?", NoteHtml.heading("words\n\n## Who *carries* it?\n\n# Later"));
        assertEquals("", NoteHtml.heading("only words"));
    }
}

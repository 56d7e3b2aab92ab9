package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.util.List;
import leverwright.face.Hostile;
import leverwright.face.Xml;
import leverwright.face.draw.Markup;
import org.junit.jupiter.api.Test;

class CodeHtmlTest {
    @Test
    void wordsTextsNumbersAndRemarksAreToldApart() {
        String html = CodeHtml.of("var a = dial(\"Torso lean\", 4.5e1) // HIP\nB2 = HIP");
        assertEquals(
                "<span class=\"line\"><span class=\"language\">var</span> a = dial(<span class=\"text\">&quot;Torso"
                        + " lean&quot;</span>, <span class=\"digits\">4.5e1</span>) <span class=\"remark\">// HIP</span>\n"
                        + "</span><span class=\"line\"><span class=\"constant\">B2</span> = "
                        + "<span class=\"constant\">HIP</span></span>",
                html);
    }

    @Test
    void theTextIsTheScripts() {
        List<String> scripts = List.of(
                "",
                "\n\n",
                "x = \"\"\"\n  two\n  lines\"\"\";\n/* a\n\n remark */ y\n",
                "open \"text\nnext 'c\n/* never closed",
                "a.b().c(1.5).d(.5) x1 = 1_000L + 0x1F",
                "moment(KNEE) // 45° ± 5°\n\tvar größe = 'ß';",
                Hostile.all().replace("\r", ""));
        for (String script : scripts) {
            String html = CodeHtml.of(script);
            String text =
                    Xml.parse("<code>" + html + "</code>").getDocumentElement().getTextContent();
            assertEquals(Markup.clean(script), text);
            assertEquals(script.split("\n", -1).length, html.split("<span class=\"line\">", -1).length - 1);
        }
    }

    @Test
    void longScriptsAreReadInOneGo() {
        String long1 = "\"" + "\\\\".repeat(20_000);
        String long2 = "((((".repeat(20_000) + "1".repeat(20_000) + "_$".repeat(20_000);
        assertTimeoutPreemptively(Duration.ofSeconds(20), () -> {
            assertTrue(CodeHtml.of(long1).length() > 20_000);
            assertTrue(CodeHtml.of(long2).length() > 80_000);
        });
    }
}

package leverwright.face.publish;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leverwright.run.result.Result;
import leverwright.run.result.TextResult;
import org.junit.jupiter.api.Test;

class NoteNumbersTest {
    private static final Result FIRST = new TextResult("", "x", 0, List.of("shared & said once", "own <b>"));
    private static final Result SECOND = new TextResult("", "y", 0, List.of("shared & said once"));

    @Test
    void aSharedNoteIsNumberedAndAnOwnOneStandsInFull() {
        NoteNumbers notes = new NoteNumbers(List.of(List.of(FIRST), List.of(SECOND)));
        assertEquals(
                "<p class=\"note\">Note: own &lt;b&gt;</p>\n<p class=\"note\">Note <a href=\"#note-1\">1</a></p>\n",
                notes.beside(FIRST));
        assertEquals(1, notes.list().split("<li id=\"note-1\">shared &amp; said once</li>", -1).length - 1);
    }

    @Test
    void aNoteOfOneStripStaysThereThoughItsResultsShareIt() {
        NoteNumbers notes = new NoteNumbers(List.of(List.of(FIRST, SECOND)));
        assertEquals("", notes.list());
        assertEquals("<p class=\"note\">Note: shared &amp; said once</p>\n", notes.beside(SECOND));
    }
}

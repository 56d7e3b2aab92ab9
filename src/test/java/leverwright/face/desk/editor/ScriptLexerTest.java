package leverwright.face.desk.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import leverwright.face.desk.model.Match;
import leverwright.face.desk.model.Query;
import leverwright.face.desk.model.WorkbookSearch;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Test;

class ScriptLexerTest {

    private static String kinds(String line, ScriptLexer.State begin) {
        StringBuilder kinds = new StringBuilder();
        for (ScriptLexer.Piece piece : ScriptLexer.line(line, begin).pieces()) {
            kinds.append(piece.kind())
                    .append(':')
                    .append(line, piece.start(), piece.end())
                    .append(' ');
        }
        return kinds.toString().strip();
    }

    @Test
    void partsALineIntoWordsTextsNumbersAndRemarks() {
        assertEquals(
                "LANGUAGE:var NAME:x SIGN:= NAME:deg SIGN:( DIGITS:1.5e-3 SIGN:) SIGN:; REMARK:// var",
                kinds("var x = deg(1.5e-3); // var", ScriptLexer.State.SCRIPT));
        assertEquals("CONSTANT:HIP SIGN:. NAME:x", kinds("HIP.x", ScriptLexer.State.SCRIPT));
        assertEquals("TEXT:\"a \\\" // b\" SIGN:)", kinds("\"a \\\" // b\")", ScriptLexer.State.SCRIPT));
    }

    @Test
    void remarksAndTextsGoOnOverLines() {
        assertEquals(
                ScriptLexer.State.REMARK,
                ScriptLexer.line("a /* b", ScriptLexer.State.SCRIPT).end());
        assertEquals("REMARK:still */ NAME:x", kinds("still */ x", ScriptLexer.State.REMARK));
        assertEquals(
                ScriptLexer.State.TEXT,
                ScriptLexer.line("\"\"\"", ScriptLexer.State.SCRIPT).end());
        assertEquals("TEXT:a \"\"\" SIGN:+", kinds("a \"\"\" +", ScriptLexer.State.TEXT));
    }

    @Test
    void piecesOfAnyTextLieInOrderWithinTheLine() {
        long seed = System.nanoTime();
        Random random = new Random(seed);
        String letters = "a1.\"'/*\\ {}(é𝛼e+-_$\t";
        int[] points = letters.codePoints().toArray();
        for (int i = 0; i < 2000; i++) {
            StringBuilder line = new StringBuilder();
            random.ints(random.nextInt(20), 0, points.length).forEach(at -> line.appendCodePoint(points[at]));
            int done = 0;
            for (ScriptLexer.State state : ScriptLexer.State.values()) {
                done = 0;
                for (ScriptLexer.Piece piece :
                        ScriptLexer.line(line.toString(), state).pieces()) {
                    assertTrue(piece.start() >= done && piece.end() > piece.start(), "seed " + seed + ": " + line);
                    done = piece.end();
                }
                assertTrue(done <= line.length(), "seed " + seed + ": " + line);
            }
        }
    }

    @Test
    void theCallAtTheCaretIsFoundPastTextsAndInnerCalls() {
        assertEquals(Optional.of(new CallAtCaret(1, 1)), CallAtCaret.in("f(g(1, 2), \"(,\" ", 16));
        assertEquals(Optional.empty(), CallAtCaret.in("f(1) ", 5));
    }

    @Test
    void signaturesAreTakenApart() {
        Signature moment =
                Signature.of("Answer<Moment> HeldPosture.moment(Joint joint)").orElseThrow();
        assertEquals(
                List.of("Answer<Moment>", "HeldPosture", "moment", "Joint"),
                List.of(
                        moment.type(),
                        moment.owner(),
                        moment.name(),
                        moment.types().get(0)));
        Signature from = Signature.of(
                        "leverwright.run.cell.DialRange<M> leverwright.run.cell.DialRange<M extends Measure<M>>.from(M least)")
                .orElseThrow();
        assertEquals(
                List.of("DialRange<M>", "DialRange", "from(M least)"), List.of(from.type(), from.owner(), from.call()));
    }

    @Test
    void theIndexKnowsTypesSentencesAndUnitsOfWhatACellSays() {
        ApiIndex index = ApiIndex.get();
        ApiIndex.Member moment = index.of(Signature.of("Answer<Moment> HeldPosture.moment(Joint joint)")
                        .orElseThrow())
                .get(0);
        assertEquals("Answer<Moment>", moment.type());
        assertTrue(moment.sentence().startsWith("Returns the moment"), moment.sentence());
        assertEquals("N·m", ApiIndex.unit(moment.type()));
        assertTrue(index.words().stream().anyMatch(word -> word.name().equals("sweep")));
        List<String> silent = index.words().stream()
                .filter(word -> word.sentence().isEmpty())
                .map(ApiIndex.Member::signature)
                .toList();
        assertEquals(List.of(), silent, "words of a cell about which nothing is said");
    }

    @Test
    void searchTakesWholeWordsCapitalsAndExpressions() {
        String text = "hip HIP hipThrust";
        assertEquals(
                3,
                WorkbookSearch.in("c", text, new Query("hip", false, false, false))
                        .size());
        assertEquals(List.of(new Match("c", 0, 3)), WorkbookSearch.in("c", text, new Query("hip", true, true, false)));
        assertEquals(
                List.of(new Match("c", 8, 17)),
                WorkbookSearch.in("c", text, new Query("hip[A-Z]\\w+", true, false, true)));
        Assertions.assertThrows(
                IllegalArgumentException.class, () -> WorkbookSearch.in("c", text, new Query("(", true, false, true)));
        Assertions.assertThrows(
                IllegalArgumentException.class,
                () -> WorkbookSearch.in("c", "x".repeat(1000), new Query("x*x*x*y", true, false, true)));
    }
}

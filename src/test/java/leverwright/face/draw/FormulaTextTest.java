package leverwright.face.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import leverwright.face.draw.FormulaText.Kind;
import leverwright.face.draw.FormulaText.Piece;
import org.junit.jupiter.api.Test;

class FormulaTextTest {

    @Test
    void formulasStandBetweenDollarSigns() {
        assertEquals(
                List.of(
                        new Piece("so ", Kind.WORDS, false),
                        new Piece("M", Kind.LETTERS, true),
                        new Piece(" = ", Kind.SIGNS, false),
                        new Piece("W", Kind.LETTERS, false),
                        new Piece("·", Kind.SIGNS, false),
                        new Piece("d", Kind.LETTERS, false),
                        new Piece("hip", Kind.INDEX, false),
                        new Piece(" for $5 or $6", Kind.WORDS, false)),
                FormulaText.pieces("so $M = W·d_{hip}$ for $5 or $6"));
    }

    @Test
    void fractionsAndRootsMayHoldOneAnother() {
        List<Piece> pieces = FormulaText.pieces("$x = \\frac{-b + \\sqrt{b^2 - c}}{2}·k$");
        assertEquals(
                List.of(Kind.LETTERS, Kind.SIGNS, Kind.FRACTION, Kind.SIGNS, Kind.LETTERS),
                pieces.stream().map(Piece::kind).toList());
        Piece fraction = pieces.get(2);
        assertEquals("(-b + √(b2 - c))/(2)", fraction.text());
        assertEquals(
                List.of(Kind.SIGNS, Kind.LETTERS, Kind.SIGNS, Kind.ROOT),
                fraction.parts().get(0).stream().map(Piece::kind).toList());
        assertEquals(
                List.of(new Piece("2", Kind.SIGNS, false)), fraction.parts().get(1));
        assertEquals(Kind.ROOT, FormulaText.pieces("$\\sqrt{2}$").get(0).kind());
    }

    @Test
    void whatIsNotFinishedStandsAsWritten() {
        for (String formula : List.of("\\frac{a}", "\\sqrt{a", "\\sqrt", "a\\b", "\\frac{a}{b", "{\\frac}")) {
            StringBuilder text = new StringBuilder();
            FormulaText.pieces("$" + formula + "$").forEach(piece -> text.append(piece.text()));
            assertEquals(formula, text.toString());
        }
        String deep = "\\sqrt{".repeat(5000) + "a" + "}".repeat(5000);
        assertEquals(Kind.ROOT, FormulaText.pieces("$" + deep + "$").get(0).kind());
    }

    @Test
    void twoFormulasSideBySideBeginTwice() {
        List<Piece> pieces = FormulaText.pieces("$v^2$$a$");
        assertEquals(Kind.POWER, pieces.get(1).kind());
        assertEquals(2, pieces.stream().filter(Piece::begins).count());
    }
}

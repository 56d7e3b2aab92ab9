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
    void twoFormulasSideBySideBeginTwice() {
        List<Piece> pieces = FormulaText.pieces("$v^2$$a$");
        assertEquals(Kind.POWER, pieces.get(1).kind());
        assertEquals(2, pieces.stream().filter(Piece::begins).count());
    }
}

package leverwright.mechanics.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.hipparchus.dfp.Dfp;

/** Reads a printed working from its text alone and evaluates every line with 60 digits by another library. */
public final class PrintedWorkings {
    private static final Pattern LINE =
            Pattern.compile("(?:check: )?(\\S+) = (.+) = (.+) = (−?)([\\d.]+)(°?)(?: [^\\[]*)?(?: \\[[^\\]]*\\])?");

    private PrintedWorkings() {}

    /**
     * Checks that every computed line gives its printed value and that the last one gives the answer.
     *
     * @param value the number shown, in SI
     * @return how many lines were evaluated
     */
    public static int check(Working working, double value) {
        int lines = 0;
        List<WorkingLine> all = WorkingText.lines(working);
        for (WorkingLine line : all) {
            boolean computed = (line.kind() == WorkingLine.Kind.STEP || line.kind() == WorkingLine.Kind.CHECK)
                    && !line.formula().isEmpty();
            if (computed) {
                evaluate(line.text());
                lines++;
            }
        }
        assertEquals(value, working.last().value(), 0.0);
        WorkingLine last = all.stream()
                .filter(line -> line.kind() == WorkingLine.Kind.STEP || line.kind() == WorkingLine.Kind.GIVEN)
                .reduce((one, next) -> next)
                .orElseThrow();
        assertEquals(WorkingText.answer(working), last.value(), working.title());
        return lines;
    }

    private static void evaluate(String text) {
        Matcher parts = LINE.matcher(text);
        assertTrue(parts.matches(), text);
        Dfp given = PrintedLineParser.evaluate(parts.group(3));
        Dfp inUnit = parts.group(6).isEmpty() ? given : given.multiply(180).divide(PrintedLineParser.FIELD.getPi());
        BigDecimal shown = new BigDecimal((parts.group(4).isEmpty() ? "" : "-") + parts.group(5));
        BigDecimal half = new BigDecimal("0.499999999").movePointLeft(shown.scale());
        Dfp distance = inUnit.subtract(PrintedLineParser.FIELD.newDfp(shown.toPlainString()))
                .abs();
        assertTrue(distance.lessThan(PrintedLineParser.FIELD.newDfp(half.toPlainString())), text);
    }
}

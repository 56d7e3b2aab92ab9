package leverwright.mechanics.working;

import static leverwright.mechanics.measure.Measures.STANDARD_GRAVITY;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static leverwright.mechanics.measure.Measures.newtonMetres;
import static leverwright.mechanics.measure.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import org.junit.jupiter.api.Test;

class WorkingTextTest {

    private static Working barOnALeaningTrunk() {
        Mass mass = kg(50);
        Force weight = mass.weight();
        Angle lean = deg(45);
        Expression trunk = Expression.symbol("l", m(0.5126), "measured");
        Step first = Step.of(
                "W",
                Expression.symbol("m", mass, "bar")
                        .times(Expression.exact("g", STANDARD_GRAVITY, "standard gravity, CGPM 1901")),
                weight,
                "weight");
        Moment moment = Moment.of(weight.si() * 0.5126 * StrictMath.sin(lean.si()) / 2);
        Step second = Step.of(
                        "M_hip",
                        first.result()
                                .times(trunk)
                                .times(Expression.sine(Expression.symbol("lean", lean, "dial")))
                                .dividedBy(Expression.exact("2")),
                        moment,
                        "half on each side")
                .noted("The trunk's own weight is left out.");
        return Working.of("Moment of the bar about the hip, per side", List.of(first, second));
    }

    @Test
    void printsInputsBeforeTheStepThatUsesThemFirst() {
        assertEquals(
                List.of(
                        "Moment of the bar about the hip, per side",
                        "m = 50 kg [bar]",
                        "g = 9.80665 m/s² [standard gravity, CGPM 1901]",
                        "W = m·g = 50.00·9.80665 = 490.3 N [weight]",
                        "l = 0.5126 m [measured]",
                        "lean = 45° [dial]",
                        "M_hip = W·l·sin(lean)/2 = 490.3·0.5126·sin(45.00°)/2 = 88.86 N·m [half on each side]",
                        "note: The trunk's own weight is left out."),
                WorkingText.plain(barOnALeaningTrunk()));
    }

    @Test
    void answersWithTheNumberOfTheLastLine() {
        assertEquals("88.86 N·m", WorkingText.answer(barOnALeaningTrunk()));
        Answer<Moment> answer = Answer.of(
                "hip moment", Moment.of(barOnALeaningTrunk().last().value()), Sides.PER_SIDE, barOnALeaningTrunk());
        assertEquals("88.86 N·m per side", answer.shown());
    }

    @Test
    void takesMoreInputDigitsOnlyWhereFourGiveAnotherValue() {
        // 3.1234·2.4567 = 7.67325678, with four digits 3.123·2.457 = 7.673211; 1.0006·1.0006 = 1.00120036, with
        // four digits 1.001·1.001 = 1.002001, with five it is right (pencil and paper).
        assertEquals("p = a·b = 3.123·2.457 = 7.673", product(3.1234, 2.4567));
        assertEquals("p = a·b = 1.0006·1.0006 = 1.001", product(1.0006, 1.0006));
    }

    @Test
    void showsOneDigitFewerWhereNineInputDigitsCannotGiveFour() {
        // 12345.6789012 − 12345.6788 = 0.0001012; nine digits: 12345.6789 − 12345.6788 = 0.0001.
        Expression difference = Expression.symbol("a", Ratio.of(12345.6789012), "one")
                .minus(Expression.symbol("b", Ratio.of(12345.6788), "two"));
        Step step = Step.of("d", difference, Ratio.of(12345.6789012 - 12345.6788), "");
        assertEquals("d = a − b = 12345.6789 − 12345.6788 = 0.00010", lastLine(step));
    }

    @Test
    void printsNoiseAroundZeroAsZero() {
        double noise = 0.1 + 0.2 - 0.3;
        Step step = Step.of(
                "r",
                Expression.symbol("a", Ratio.of(0.1), "one")
                        .plus(Expression.symbol("b", Ratio.of(0.2), "two"))
                        .minus(Expression.symbol("c", Ratio.of(0.3), "three")),
                Ratio.of(noise),
                "");
        Working working = Working.given("An angle found by search", "x", deg(12.5), "root finder")
                .checked(List.of(step));
        List<String> lines = WorkingText.plain(working);
        assertEquals("x = 12.50° [root finder]", lines.get(1));
        assertEquals("check: r = a + b − c = 0.1000 + 0.2000 − 0.3000 = 0.000", lines.get(lines.size() - 1));
    }

    @Test
    void whatOnlyTheChecksNeedStandsAmongTheChecks() {
        Expression.Symbol force = Expression.symbol("F", newtons(12), "given");
        Step answer = Step.of("M", force.times(Expression.symbol("d", m(0.5), "given")), newtonMetres(6), "");
        Step check =
                Step.of("r", force.minus(Expression.symbol("F_2", newtons(12), "given again")), newtons(0), "vanishes");
        List<String> lines =
                WorkingText.plain(Working.of("A moment", List.of(answer)).checked(List.of(check)));
        assertEquals("M = F·d = 12.00·0.5000 = 6.000 N·m", lines.get(3));
        assertEquals("check: F_2 = 12 N [given again]", lines.get(4));
        assertTrue(lines.subList(4, lines.size()).stream().allMatch(line -> line.startsWith("check: ")));
    }

    @Test
    void bracketsWhatWouldReadDifferently() {
        Expression a = Expression.symbol("a", Ratio.of(-2), "a");
        Expression b = Expression.symbol("b", Ratio.of(3), "b");
        assertPrinted("a·(a + b) = (−2.000)·(−2.000 + 3.000)", a.times(a.plus(b)));
        assertPrinted("a − (a − b) = −2.000 − (−2.000 − 3.000)", a.minus(a.minus(b)));
        assertPrinted("b/(a/b) = 3.000/((−2.000)/3.000)", b.dividedBy(a.dividedBy(b)));
        assertPrinted("b/a/b = 3.000/(−2.000)/3.000", b.dividedBy(a).dividedBy(b));
        assertPrinted("b/(a·b) = 3.000/((−2.000)·3.000)", b.dividedBy(a.times(b)));
        assertPrinted("a² = (−2.000)²", a.squared());
        assertPrinted("(a²)² = ((−2.000)²)²", a.squared().squared());
        assertPrinted("−(a + b) = −(−2.000 + 3.000)", a.plus(b).negated());
        assertPrinted("b·(−a) = 3.000·(−(−2.000))", b.times(a.negated()));
        assertPrinted(
                "√(b² + a²) = √(3.000² + (−2.000)²)",
                Expression.squareRoot(b.squared().plus(a.squared())));
        assertPrinted("−a·b − b = −(−2.000)·3.000 − 3.000", a.times(b).negated().minus(b));
    }

    @Test
    void printsAnglesInDegreesOnBothSides() {
        Expression.Symbol shank = Expression.symbol("shank", deg(4), "dial");
        Expression.Symbol knee = Expression.symbol("knee", deg(29.97), "balance");
        Step thigh = Step.of("thigh", shank.minus(knee), deg(4).minus(deg(29.97)), "");
        assertEquals("thigh = shank − knee = 4.000° − 29.97° = −25.97°", lastLine(thigh));
        Expression tilt = knee.dividedBy(Expression.exactDegrees(90));
        assertEquals(
                "share = knee/90° = 29.97°/90° = 0.3330",
                lastLine(Step.of("share", tilt, Ratio.of(29.97 / 90), "tilt rule, common practice, no source")
                                .noted(""))
                        .replaceAll(" \\[.*", ""));
    }

    @Test
    void saysWhereTheCellsOwnArithmeticBegins() {
        Answer<Moment> hip = moment("hip moment", 120);
        Answer<Moment> knee = moment("knee moment", 50);
        List<String> lines = WorkingText.plain(hip.dividedBy(knee).working());
        assertEquals("q = a/b = 120.0/50.00 = 2.400", lines.get(3));
        assertEquals("end: " + Working.CELL_BEGINS, lines.get(4));
    }

    @Test
    void refusesAStepWhoseFormulaGivesAnotherValue() {
        for (double wrong : new double[] {5, 4.1, 4.001, 3.9994, -4, 0}) {
            Step step = Step.of("p", Expression.symbol("a", Ratio.of(2), "one").squared(), Ratio.of(wrong), "");
            Working working = Working.of("Square", List.of(step));
            IllegalStateException refusal =
                    assertThrows(IllegalStateException.class, () -> WorkingText.plain(working), () -> "" + wrong);
            assertTrue(
                    String.valueOf(refusal.getMessage()).endsWith("but its formula a² does not give that"),
                    refusal.getMessage());
        }
    }

    @Test
    void takesMoreDigitsWhereADivisorWouldVanishWithFew() {
        Expression a = Expression.symbol("a", Ratio.of(1.00004), "one");
        Expression b = Expression.symbol("b", Ratio.of(1.00001), "two");
        Step step = Step.of("q", a.dividedBy(a.minus(b)), Ratio.of(1.00004 / (1.00004 - 1.00001)), "");
        assertEquals("q = a/(a − b) = 1.00004/(1.00004 − 1.00001) = 33335", lastLine(step));
    }

    @Test
    void showsWhatTheLineGivesWhereDoublesKeepNoDigit() {
        // 0.3 − 0.1 − 0.2 is 2⁻⁵⁴ less in doubles than their exact values give: what is left is rounding alone.
        Expression a = Expression.symbol("a", Ratio.of(0.3), "one");
        Expression b = Expression.symbol("b", Ratio.of(0.1), "two");
        Expression c = Expression.symbol("c", Ratio.of(0.2), "three");
        Expression d = Expression.symbol("d", Ratio.of(1e6), "four");
        Step step = Step.of("q", d.dividedBy(a.minus(b).minus(c)), Ratio.of(1e6 / (0.3 - 0.1 - 0.2)), "");
        String line = lastLine(step);
        String numbers = line.split(" = ")[2];
        assertEquals(
                line.split(" = ")[3],
                new BigDecimal(PrintedLineParser.evaluate(numbers).toString())
                        .setScale(0, RoundingMode.HALF_EVEN)
                        .toPlainString()
                        .replace('-', '−'));
    }

    @Test
    void refusesOneNameForTwoValues() {
        Expression two = Expression.symbol("a", Ratio.of(2), "one").plus(Expression.symbol("a", Ratio.of(3), "two"));
        Step step = Step.of("p", two, Ratio.of(5), "");
        assertThrows(IllegalArgumentException.class, () -> Working.of("Sum", List.of(step)));
    }

    @Test
    void refusesNamesAndSourcesOutsideTheGrammar() {
        for (String name : List.of("", "a b", "1a", "sin", "cos", "a=b", "a·b", "_a")) {
            assertThrows(IllegalArgumentException.class, () -> Expression.symbol(name, Ratio.of(1), "s"), name);
        }
        assertThrows(IllegalArgumentException.class, () -> Expression.symbol("a", Ratio.of(1), "a]b"));
        assertThrows(IllegalArgumentException.class, () -> Expression.symbol("a", Ratio.of(1), "a\nb"));
    }

    private static Answer<Moment> moment(String label, double newtonMetres) {
        Moment value = Moment.of(newtonMetres);
        return Answer.of(label, value, Sides.PER_SIDE, Working.given(label, "M", value, "measured"));
    }

    private static void assertPrinted(String expected, Expression expression) {
        Step step = Step.of("x", expression, Ratio.of(expression.evaluate()), "");
        WorkingLine line = WorkingText.lines(Working.of("Line", List.of(step))).stream()
                .filter(each -> each.kind() == WorkingLine.Kind.STEP)
                .findFirst()
                .orElseThrow();
        assertEquals(expected, line.formula() + " = " + line.numbers());
        double read = PrintedLineParser.evaluate(line.numbers()).toDouble();
        assertEquals(expression.evaluate(), read, 1e-12);
    }

    private static String product(double a, double b) {
        Expression product =
                Expression.symbol("a", Ratio.of(a), "one").times(Expression.symbol("b", Ratio.of(b), "two"));
        return lastLine(Step.of("p", product, Ratio.of(a * b), ""));
    }

    private static String lastLine(Step step) {
        List<String> lines = WorkingText.plain(Working.of("Line", List.of(step)));
        return lines.get(lines.size() - 1);
    }
}

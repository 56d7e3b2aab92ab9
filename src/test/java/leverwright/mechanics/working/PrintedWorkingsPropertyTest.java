package leverwright.mechanics.working;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Unit;
import org.hipparchus.dfp.Dfp;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random workings, printed, read again from their text alone and evaluated with 60 digits by another library. Names,
 * numbers and rounding are taken from the text by this test's own code.
 */
class PrintedWorkingsPropertyTest {
    private static final long SEED = 20261125L;
    private static final int WORKINGS = 2500;
    private static final int MANY_WORKINGS = 200_000;
    private static final Pattern LINE = Pattern.compile("(?:check: )?(\\S+) = (.+) = (.+) = (−?)([\\d.]+)(°?)(?: .*)?");

    private final Random random = new Random(SEED);
    private final Map<String, Double> printedUnits = new LinkedHashMap<>();
    private final Map<String, Boolean> angles = new LinkedHashMap<>();

    @Test
    void everyPrintedLineEvaluatesToItsPrintedValue() {
        everyPrintedLineEvaluates(WORKINGS);
    }

    @Test
    @Tag("soak")
    void everyPrintedLineOfManyWorkingsEvaluatesToItsPrintedValue() {
        everyPrintedLineEvaluates(MANY_WORKINGS);
    }

    private void everyPrintedLineEvaluates(int workings) {
        int lines = 0;
        for (int i = 0; i < workings; i++) {
            for (String line : printedSteps(randomWorking())) {
                Matcher parts = parts(line);
                assertTrue(gives(PrintedLineParser.evaluate(parts.group(3)), parts), () -> message(line));
                lines++;
            }
        }
        assertTrue(lines >= 2 * workings, "lines seen: " + lines);
    }

    /** The random workings reach what the rules of printing are about; without that the tests here would say little. */
    @Test
    void theRandomWorkingsReachEveryRule() {
        Map<String, Integer> seen = new TreeMap<>();
        for (int i = 0; i < WORKINGS / 4; i++) {
            printedUnits.clear();
            for (String line : printedSteps(randomWorking())) {
                Matcher parts = parts(line);
                int digits = digitsUsed(parts);
                seen.merge(digits > 9 ? "all digits" : digits > 4 ? "more digits" : "four digits", 1, Integer::sum);
                double value = printedUnits.getOrDefault(parts.group(1), 0.0);
                seen.merge(
                        scale(parts) < fullDecimals(new BigDecimal(value)) ? "value cut" : "value full",
                        1,
                        Integer::sum);
            }
        }
        assertTrue(seen.values().stream().allMatch(count -> count >= 5) && seen.size() == 5, seen::toString);
    }

    @Test
    void everyLineUsesTheFewestInputDigitsAndTheMostValueDigits() {
        for (int i = 0; i < WORKINGS / 4; i++) {
            printedUnits.clear();
            angles.clear();
            for (String line : printedSteps(randomWorking())) {
                checkMinimal(line);
            }
        }
    }

    private void checkMinimal(String line) {
        Matcher parts = parts(line);
        int used = digitsUsed(parts);
        for (int digits = 4; digits < used; digits++) {
            assertTrue(!gives(withDigits(parts.group(2), digits), parts), () -> message(line));
        }
        int decimals = scale(parts);
        int full = fullDecimals(new BigDecimal(printedUnits.getOrDefault(parts.group(1), 0.0)));
        if (used <= 9 && decimals < full) {
            BigDecimal better = new BigDecimal(printedUnits.getOrDefault(parts.group(1), 0.0))
                    .setScale(decimals + 1, RoundingMode.HALF_EVEN);
            for (int digits = 4; digits <= 9; digits++) {
                Dfp value = withDigits(parts.group(2), digits);
                assertTrue(!near(value, better, parts.group(6)), () -> message(line));
            }
        }
    }

    /** Decimals of four significant digits, at most twelve; three for what twelve decimals show as zero. */
    private static int fullDecimals(BigDecimal value) {
        if (value.setScale(12, RoundingMode.HALF_EVEN).signum() == 0) {
            return 3;
        }
        BigDecimal cut = value.round(new MathContext(4, RoundingMode.HALF_EVEN));
        return Math.min(Math.max(3 - (cut.precision() - cut.scale() - 1), 0), 12);
    }

    /** The count of digits, 4 to 17, with which the formula's names print as the numbers of the line. */
    private int digitsUsed(Matcher parts) {
        String bare = parts.group(3).replaceAll("[()]", "");
        for (int digits = 4; digits <= 17; digits++) {
            StringBuilder text = new StringBuilder();
            Matcher names = Pattern.compile("[a-z]\\w*").matcher(parts.group(2));
            while (names.find()) {
                String name = names.group();
                boolean known = printedUnits.containsKey(name);
                names.appendReplacement(text, Matcher.quoteReplacement(known ? decimal(name, digits) : name));
            }
            names.appendTail(text);
            if (text.toString().replaceAll("[()]", "").equals(bare)) {
                return digits;
            }
        }
        throw new AssertionError("inputs do not all print with one count of digits: " + parts.group());
    }

    private Dfp withDigits(String formula, int digits) {
        Map<String, String> numbers = new LinkedHashMap<>();
        printedUnits.keySet().forEach(name -> numbers.put(name, decimal(name, digits)));
        return PrintedLineParser.evaluate(formula, numbers);
    }

    private String decimal(String name, int digits) {
        BigDecimal exact = new BigDecimal(printedUnits.getOrDefault(name, 0.0));
        String sign = exact.signum() < 0 ? "−" : "";
        BigDecimal cut = exact.abs().round(new MathContext(digits, RoundingMode.HALF_EVEN));
        int places = digits - 1 - (cut.precision() - cut.scale() - 1);
        BigDecimal shown = digits <= 9
                ? exact.abs().setScale(Math.min(Math.max(places, 0), 12), RoundingMode.HALF_EVEN)
                : cut.setScale(Math.max(cut.scale(), 0));
        String number = shown.signum() == 0 ? "0" : sign + shown.toPlainString();
        return angles.getOrDefault(name, false) ? number + "°" : number;
    }

    private static Matcher parts(String line) {
        Matcher parts = LINE.matcher(line);
        assertTrue(parts.matches(), line);
        return parts;
    }

    private static int scale(Matcher parts) {
        return new BigDecimal(parts.group(5)).scale();
    }

    private static boolean gives(Dfp value, Matcher parts) {
        BigDecimal shown = new BigDecimal((parts.group(4).isEmpty() ? "" : "-") + parts.group(5));
        return near(value, shown, parts.group(6));
    }

    private static boolean near(Dfp value, BigDecimal shown, String degreeSign) {
        Dfp inUnit = degreeSign.isEmpty() ? value : value.multiply(180).divide(PrintedLineParser.FIELD.getPi());
        Dfp distance = inUnit.subtract(PrintedLineParser.FIELD.newDfp(shown.toPlainString()))
                .abs();
        BigDecimal half = new BigDecimal("0.499999999").movePointLeft(shown.scale());
        return distance.lessThan(PrintedLineParser.FIELD.newDfp(half.toPlainString()));
    }

    private static String message(String line) {
        return "seed " + SEED + ": " + line;
    }

    private static List<String> printedSteps(Working working) {
        return WorkingText.lines(working).stream()
                .filter(line -> line.kind() == WorkingLine.Kind.STEP)
                .map(WorkingLine::text)
                .toList();
    }

    private Working randomWorking() {
        List<Step> steps = new ArrayList<>();
        List<Expression> known = new ArrayList<>();
        int count = 2 + random.nextInt(3);
        if (random.nextInt(4) == 0) {
            Expression sum = angle().plus(angle()).minus(angle());
            Step step = new Step("turn", sum, rounded(sum), Dimension.ANGLE, "", "");
            remember(step.symbol(), Unit.DEGREE.fromSi(step.value()), true);
            steps.add(step);
            known.add(Expression.sine(step.result()));
        }
        for (int i = 0; i < count; i++) {
            Expression expression = randomExpression(known, i, 3);
            double value = rounded(expression);
            if (!(Math.abs(value) < 1e7)) {
                i--;
                continue;
            }
            Step step = new Step("r" + i, expression, value, Dimension.RATIO, "rule " + i, "");
            remember(step.symbol(), value, false);
            steps.add(step);
            known.add(step.result());
        }
        return Working.of("Random", steps);
    }

    private void remember(String name, double printed, boolean angle) {
        printedUnits.put(name, printed + 0.0);
        angles.put(name, angle);
    }

    private int names;

    private Expression randomExpression(List<Expression> known, int step, int depth) {
        if (depth == 0 || random.nextInt(6) == 0) {
            return leaf(known);
        }
        Expression a = randomExpression(known, step, depth - 1);
        return switch (random.nextInt(9)) {
            case 0 -> a.plus(randomExpression(known, step, depth - 1));
            case 1, 2 -> a.minus(randomExpression(known, step, depth - 1));
            case 3, 4 -> a.times(randomExpression(known, step, depth - 1));
            case 5 -> a.dividedBy(random.nextBoolean() ? leaf(List.of()) : nearlyCancelled());
            case 6 -> a.times(random.nextBoolean() ? Expression.sine(angle()) : Expression.cosine(angle()));
            case 7 -> Expression.squareRoot(a.squared().plus(leaf(known).squared()));
            default -> nearlyCancelled();
        };
    }

    private Expression leaf(List<Expression> known) {
        if (!known.isEmpty() && random.nextInt(3) == 0) {
            return known.get(random.nextInt(known.size()));
        }
        if (random.nextInt(8) == 0) {
            return random.nextBoolean() ? Expression.exact("2") : Expression.exact("9.80665");
        }
        double size = Math.exp(Math.log(1e-4) + random.nextDouble() * Math.log(1e9));
        return named(random.nextInt(4) == 0 ? -size : size);
    }

    private Expression nearlyCancelled() {
        double size = 1000 * random.nextDouble();
        return named(size).minus(named(size * (1 + 1e-7 * random.nextGaussian())));
    }

    private Expression named(double value) {
        String name = "x" + names++;
        remember(name, value, false);
        return Expression.symbol(name, Ratio.of(value), "input");
    }

    private Expression angle() {
        double radians = Unit.DEGREE.toSi(-180 + 360 * random.nextDouble());
        String name = "t" + names++;
        remember(name, Unit.DEGREE.fromSi(radians), true);
        Expression angle = new Expression.Symbol(name, radians, Dimension.ANGLE, "input");
        return random.nextInt(5) == 0 ? Expression.exactDegrees(90).minus(angle) : angle;
    }

    /** The formula in doubles, with the rounding of doubles, as the mechanics computes it. */
    private static double rounded(Expression expression) {
        if (expression instanceof Expression.Symbol symbol) {
            return symbol.si();
        }
        if (expression instanceof Expression.Constant constant) {
            return constant.unit().toSi(constant.number().doubleValue());
        }
        if (expression instanceof Expression.Sum sum) {
            return sum.terms().stream()
                    .mapToDouble(PrintedWorkingsPropertyTest::rounded)
                    .reduce(0, Double::sum);
        }
        if (expression instanceof Expression.Product product) {
            return product.factors().stream()
                    .mapToDouble(PrintedWorkingsPropertyTest::rounded)
                    .reduce(1, (a, b) -> a * b);
        }
        if (expression instanceof Expression.Quotient quotient) {
            return rounded(quotient.numerator()) / rounded(quotient.denominator());
        }
        if (expression instanceof Expression.Negation negation) {
            return -rounded(negation.operand());
        }
        if (expression instanceof Expression.Square square) {
            return rounded(square.operand()) * rounded(square.operand());
        }
        if (expression instanceof Expression.SquareRoot root) {
            return Math.sqrt(rounded(root.operand()));
        }
        if (expression instanceof Expression.Sine sine) {
            return StrictMath.sin(rounded(sine.angle()));
        }
        if (expression instanceof Expression.Cosine cosine) {
            return StrictMath.cos(rounded(cosine.angle()));
        }
        throw new IllegalArgumentException(expression.toString());
    }

    @Test
    void evaluationRoundsTheExactValueOnce() {
        for (int i = 0; i < 500; i++) {
            Expression expression = randomExpression(List.of(), 0, 3);
            double exact = exactly(expression).toDouble();
            assertEquals(exact, expression.evaluate(), Math.ulp(exact), () -> "seed " + SEED + ": " + expression);
        }
    }

    private Dfp exactly(Expression expression) {
        Map<String, String> numbers = new LinkedHashMap<>();
        for (Leaf leaf : Leaf.namedIn(expression)) {
            BigDecimal si = new BigDecimal(leaf.si());
            numbers.put(leaf.name(), (si.signum() < 0 ? "−" : "") + si.abs().toPlainString());
        }
        return PrintedLineParser.evaluate(ExpressionText.withNames(expression), numbers);
    }
}

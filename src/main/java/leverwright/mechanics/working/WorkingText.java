package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;

/**
 * Prints workings so that a reader can check every line by hand.
 *
 * <p>Each step prints with the fewest input digits, 4 to 9, the same for all inputs of the line, for which decimal
 * evaluation of the printed line gives the printed value; where none does, the value shows one digit fewer, and so on.
 * Exact constants print in full. Only where even that fails (sums that cancel almost wholly) inputs take up to 17 digits.
 * The grammar of the lines stands in the package description.
 */
public final class WorkingText {

    /** Significant digits that values show unless asked otherwise. */
    public static final int VALUE_DIGITS = 4;

    private WorkingText() {}

    /** Returns the lines of a working in plain text, its values with four significant digits. */
    public static List<String> plain(Working working) {
        return lines(working, VALUE_DIGITS).stream().map(WorkingLine::text).toList();
    }

    /** Returns the lines of a working in parts, its values with four significant digits. */
    public static List<WorkingLine> lines(Working working) {
        return lines(working, VALUE_DIGITS);
    }

    /**
     * Returns the lines of a working in parts.
     *
     * @param valueDigits significant digits that each value shows if the line can give them, 1 to 9
     * @throws IllegalStateException if a step's value does not follow from its formula
     */
    public static List<WorkingLine> lines(Working working, int valueDigits) {
        checkDigits(valueDigits);
        List<WorkingLine> lines = new ArrayList<>();
        lines.add(sentence(WorkingLine.Kind.TITLE, working.title()));
        Set<String> stated = new LinkedHashSet<>();
        for (Step step : working.steps()) {
            addStep(lines, stated, step, WorkingLine.Kind.STEP, valueDigits);
        }
        for (Step check : working.checks()) {
            addStep(lines, stated, check, WorkingLine.Kind.CHECK, valueDigits);
        }
        if (!working.ending().isEmpty()) {
            lines.add(sentence(WorkingLine.Kind.END, working.ending()));
        }
        return List.copyOf(lines);
    }

    /** Returns the answer of a working exactly as its last step prints it, such as "123.0 N·m". */
    public static String answer(Working working) {
        return answer(working, VALUE_DIGITS);
    }

    /**
     * Returns the answer of a working exactly as its last step prints it.
     *
     * @param valueDigits as in {@link #lines(Working, int)}
     */
    public static String answer(Working working, int valueDigits) {
        checkDigits(valueDigits);
        return line(working.last(), WorkingLine.Kind.STEP, valueDigits).value();
    }

    private static void checkDigits(int valueDigits) {
        if (valueDigits < 1 || valueDigits > 9) {
            throw new IllegalArgumentException("values show 1 to 9 significant digits, not " + valueDigits);
        }
    }

    private static void addStep(
            List<WorkingLine> lines, Set<String> stated, Step step, WorkingLine.Kind kind, int valueDigits) {
        if (step.expression() != null) {
            for (Leaf leaf : Leaf.namedIn(step.expression())) {
                if (stated.add(leaf.name())) {
                    lines.add(given(leaf, kind, valueDigits));
                }
            }
        }
        stated.add(step.symbol());
        lines.add(line(step, kind, valueDigits));
        if (!step.note().isEmpty()) {
            lines.add(sentence(WorkingLine.Kind.NOTE, step.note()));
        }
    }

    private static WorkingLine line(Step step, WorkingLine.Kind kind, int valueDigits) {
        Unit unit = Units.printed(step.dimension());
        Expression expression = step.expression();
        if (expression == null) {
            BigDecimal number = NumberText.rounded(unit.fromSi(step.value()), valueDigits);
            return new WorkingLine(
                    given(kind), step.symbol(), "", "", unit.attach(NumberText.print(number)), step.source());
        }
        PrintedNumbers printed = PrintedNumbers.of(step, expression, valueDigits);
        return new WorkingLine(
                kind,
                step.symbol(),
                ExpressionText.withNames(expression),
                ExpressionText.withNumbers(expression, symbol -> number(symbol, printed.inputDigits())),
                unit.attach(NumberText.print(printed.value())),
                step.source());
    }

    private static String number(Expression.Symbol symbol, int digits) {
        Unit unit = Units.printed(symbol.dimension());
        String number = NumberText.print(Units.number(symbol, digits));
        return unit == Unit.DEGREE ? unit.attach(number) : number;
    }

    /** What only a check needs belongs to the check, so that the last line before the checks is the answer. */
    private static WorkingLine.Kind given(WorkingLine.Kind kind) {
        return kind == WorkingLine.Kind.STEP ? WorkingLine.Kind.GIVEN : kind;
    }

    private static WorkingLine given(Leaf leaf, WorkingLine.Kind kind, int valueDigits) {
        return new WorkingLine(
                given(kind),
                leaf.name(),
                "",
                "",
                leaf.unit().attach(NumberText.print(leaf.number(valueDigits))),
                leaf.source());
    }

    private static WorkingLine sentence(WorkingLine.Kind kind, String words) {
        return new WorkingLine(kind, "", "", "", words, "");
    }
}

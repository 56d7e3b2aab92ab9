package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;

/**
 * A named value in a formula, with the text of the line that states it.
 *
 * @param name its name
 * @param si its value in the SI unit
 * @param unit the unit it is printed in
 * @param number the number of the stating line, in that unit
 * @param source where it comes from
 */
record Leaf(String name, double si, Unit unit, BigDecimal number, String source) {

    /** Every named value of a formula in the order of reading, repeats included. */
    static List<Leaf> namedIn(Expression expression) {
        List<Leaf> leaves = new ArrayList<>();
        collect(expression, leaves);
        return leaves;
    }

    private static void collect(Expression expression, List<Leaf> leaves) {
        if (expression instanceof Expression.Symbol symbol) {
            Unit unit = Units.printed(symbol.dimension());
            BigDecimal number = NumberText.rounded(unit.fromSi(symbol.si()), WorkingText.VALUE_DIGITS);
            leaves.add(new Leaf(symbol.name(), symbol.si(), unit, trimmed(number), symbol.source()));
        } else if (expression instanceof Expression.Constant constant) {
            if (!constant.name().isEmpty()) {
                double si = constant.unit().toSi(constant.number().doubleValue());
                leaves.add(new Leaf(constant.name(), si, constant.unit(), constant.number(), constant.source()));
            }
        } else {
            for (Expression part : parts(expression)) {
                collect(part, leaves);
            }
        }
    }

    private static List<Expression> parts(Expression expression) {
        if (expression instanceof Expression.Sum sum) {
            return sum.terms();
        }
        if (expression instanceof Expression.Product product) {
            return product.factors();
        }
        if (expression instanceof Expression.Quotient quotient) {
            return List.of(quotient.numerator(), quotient.denominator());
        }
        if (expression instanceof Expression.Negation negation) {
            return List.of(negation.operand());
        }
        if (expression instanceof Expression.Square square) {
            return List.of(square.operand());
        }
        if (expression instanceof Expression.SquareRoot root) {
            return List.of(root.operand());
        }
        if (expression instanceof Expression.Sine sine) {
            return List.of(sine.angle());
        }
        if (expression instanceof Expression.Cosine cosine) {
            return List.of(cosine.angle());
        }
        return List.of();
    }

    private static BigDecimal trimmed(BigDecimal number) {
        BigDecimal stripped = number.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}

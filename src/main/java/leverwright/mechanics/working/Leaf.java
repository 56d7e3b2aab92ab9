package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.NumberText;
import leverwright.mechanics.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * A named value in a formula, and what the line that states it needs.
 *
 * @param name its name
 * @param si its value in the SI unit
 * @param unit the unit it is printed in
 * @param exact its decimal in that unit if it is an exact constant, else null
 * @param source where it comes from
 */
record Leaf(String name, double si, Unit unit, @Nullable BigDecimal exact, String source) {

    /** Every named value of a formula in the order of reading, repeats included. */
    static List<Leaf> namedIn(Expression expression) {
        List<Leaf> leaves = new ArrayList<>();
        collect(expression, leaves);
        return leaves;
    }

    private static void collect(Expression expression, List<Leaf> leaves) {
        if (expression instanceof Expression.Symbol symbol) {
            leaves.add(new Leaf(symbol.name(), symbol.si(), Units.printed(symbol.dimension()), null, symbol.source()));
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

    /** The number of the stating line, in the printed unit, without trailing zeros. */
    BigDecimal number(int digits) {
        if (exact != null) {
            return exact;
        }
        BigDecimal stripped = NumberText.rounded(unit.fromSi(si), digits).stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }
}

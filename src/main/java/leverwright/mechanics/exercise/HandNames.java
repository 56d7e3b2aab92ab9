package leverwright.mechanics.exercise;

import java.util.List;
import java.util.function.Consumer;
import leverwright.mechanics.working.Expression;

/** The names in a formula, in the order of reading. */
final class HandNames {
    private HandNames() {}

    static void in(Expression formula, Consumer<String> visitor) {
        if (formula instanceof Expression.Symbol symbol) {
            visitor.accept(symbol.name());
        }
        for (Expression part : parts(formula)) {
            in(part, visitor);
        }
    }

    private static List<Expression> parts(Expression formula) {
        if (formula instanceof Expression.Sum sum) {
            return sum.terms();
        }
        if (formula instanceof Expression.Product product) {
            return product.factors();
        }
        if (formula instanceof Expression.Quotient quotient) {
            return List.of(quotient.numerator(), quotient.denominator());
        }
        return ofOne(formula);
    }

    private static List<Expression> ofOne(Expression formula) {
        if (formula instanceof Expression.Negation negation) {
            return List.of(negation.operand());
        }
        if (formula instanceof Expression.Square square) {
            return List.of(square.operand());
        }
        if (formula instanceof Expression.SquareRoot root) {
            return List.of(root.operand());
        }
        if (formula instanceof Expression.Sine sine) {
            return List.of(sine.angle());
        }
        if (formula instanceof Expression.Cosine cosine) {
            return List.of(cosine.angle());
        }
        return List.of();
    }
}

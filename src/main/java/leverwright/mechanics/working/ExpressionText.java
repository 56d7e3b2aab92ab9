package leverwright.mechanics.working;

import java.util.function.Function;
import leverwright.mechanics.measure.NumberText;

/** Writes an expression by the grammar of the package, with names or with numbers at its leaves. */
final class ExpressionText {

    /** What may stand at a place without brackets around it. */
    private enum Place {
        /** A whole expression: anything. */
        WHOLE,
        /** A term after a plus or minus: no sum, no leading minus. */
        TERM,
        /** A factor, divisor or base of a square: only what is one piece. */
        PIECE
    }

    private final Function<Expression, String> leaf;

    private ExpressionText(Function<Expression, String> leaf) {
        this.leaf = leaf;
    }

    /** The formula with its names. */
    static String withNames(Expression expression) {
        return new ExpressionText(ExpressionText::name).write(expression, Place.WHOLE);
    }

    /** The formula with a number for every name. */
    static String withNumbers(Expression expression, Function<Expression.Symbol, String> numbers) {
        return new ExpressionText(part -> part instanceof Expression.Symbol symbol
                        ? numbers.apply(symbol)
                        : constant((Expression.Constant) part))
                .write(expression, Place.WHOLE);
    }

    private static String name(Expression part) {
        if (part instanceof Expression.Symbol symbol) {
            return symbol.name();
        }
        Expression.Constant constant = (Expression.Constant) part;
        return constant.name().isEmpty() ? constant(constant) : constant.name();
    }

    private static String constant(Expression.Constant constant) {
        String number = NumberText.print(constant.number());
        return constant.unit().symbol().equals("°") ? number + "°" : number;
    }

    private String write(Expression expression, Place place) {
        if (expression instanceof Expression.Symbol || expression instanceof Expression.Constant) {
            String text = leaf.apply(expression);
            return bracketed(text, place != Place.WHOLE && text.startsWith(NumberText.MINUS));
        }
        if (expression instanceof Expression.Sum sum) {
            return bracketed(terms(sum), place != Place.WHOLE);
        }
        if (expression instanceof Expression.Product product) {
            return bracketed(factors(product), place == Place.PIECE);
        }
        if (expression instanceof Expression.Quotient quotient) {
            String text = firstFactor(quotient.numerator()) + "/" + write(quotient.denominator(), Place.PIECE);
            return bracketed(text, place == Place.PIECE);
        }
        if (expression instanceof Expression.Negation negation) {
            String text = NumberText.MINUS + write(negation.operand(), Place.TERM);
            return bracketed(text, place != Place.WHOLE);
        }
        if (expression instanceof Expression.Square square) {
            String base = write(square.operand(), Place.PIECE);
            return bracketed(base, base.endsWith("²")) + "²";
        }
        return function(expression);
    }

    private String function(Expression expression) {
        if (expression instanceof Expression.SquareRoot root) {
            return "√(" + write(root.operand(), Place.WHOLE) + ")";
        }
        if (expression instanceof Expression.Sine sine) {
            return "sin(" + write(sine.angle(), Place.WHOLE) + ")";
        }
        if (expression instanceof Expression.Cosine cosine) {
            return "cos(" + write(cosine.angle(), Place.WHOLE) + ")";
        }
        throw new IllegalArgumentException("an unknown kind of expression: " + expression);
    }

    private String terms(Expression.Sum sum) {
        StringBuilder text = new StringBuilder();
        for (Expression term : sum.terms()) {
            if (text.length() == 0) {
                text.append(write(term, term instanceof Expression.Sum ? Place.TERM : Place.WHOLE));
            } else if (term instanceof Expression.Negation negation) {
                text.append(" " + NumberText.MINUS + " ").append(write(negation.operand(), Place.TERM));
            } else {
                text.append(" + ").append(write(term, Place.TERM));
            }
        }
        return text.toString();
    }

    private String factors(Expression.Product product) {
        StringBuilder text = new StringBuilder();
        for (Expression factor : product.factors()) {
            text.append(text.length() == 0 ? firstFactor(factor) : "·" + write(factor, Place.PIECE));
        }
        return text.toString();
    }

    /** A product or quotient at the left needs no brackets: the row is read from left to right. */
    private String firstFactor(Expression factor) {
        boolean row = factor instanceof Expression.Product || factor instanceof Expression.Quotient;
        return write(factor, row ? Place.TERM : Place.PIECE);
    }

    private static String bracketed(String text, boolean needed) {
        return needed ? "(" + text + ")" : text;
    }
}

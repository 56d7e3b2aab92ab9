package leverwright.mechanics.working;

import java.math.BigDecimal;
import java.util.List;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.Measure;
import leverwright.mechanics.measure.Unit;

/**
 * The right side of a step of a hand calculation, as a tree. All values are in SI units and radians; how they are
 * printed is the matter of {@link WorkingText}.
 *
 * <p>Trees are immutable and small: they say how one number follows from a few others.
 */
public sealed interface Expression {

    /**
     * An exact decimal number, printed in full wherever it stands: 2, 9.80665, 90°.
     *
     * @param name how it is called in the formula, such as {@code g}; empty if it is printed as a number there too
     * @param number the decimal, counted in the unit
     * @param unit the unit it is printed in: no unit, degrees, or the SI unit of its kind
     * @param source where it comes from; empty without a name
     */
    record Constant(String name, BigDecimal number, Unit unit, String source) implements Expression {
        /** Checks the name. */
        public Constant {
            if (!name.isEmpty()) {
                Names.check(name);
            }
            Names.checkSource(source);
            if (unit != Units.printed(unit.dimension())) {
                throw new IllegalArgumentException("a constant is printed in "
                        + Units.printed(unit.dimension()).symbol() + ", not in " + unit.symbol());
            }
        }
    }

    /**
     * A value with a name: an input, or the result of an earlier step.
     *
     * @param name letters, digits and underscores, a letter first, such as {@code M_hip}; not {@code sin} or {@code cos}
     * @param si the value in the SI unit of its kind
     * @param dimension its kind
     * @param source where it comes from, such as "de Leva 1996, table 4"; empty for the result of an earlier step
     */
    record Symbol(String name, double si, Dimension dimension, String source) implements Expression {
        /** Checks name and value; minus zero becomes zero. */
        public Symbol {
            Names.check(name);
            Names.checkSource(source);
            si = dimension.of(si, 0).si();
        }
    }

    /**
     * A sum of one or more terms, from left to right; a {@link Negation} among them prints as a subtraction.
     *
     * @param terms at least one
     */
    record Sum(List<Expression> terms) implements Expression {
        /** Copies the terms. */
        public Sum {
            terms = Names.atLeastOne(terms, "sum");
        }
    }

    /**
     * A product of one or more factors.
     *
     * @param factors at least one
     */
    record Product(List<Expression> factors) implements Expression {
        /** Copies the factors. */
        public Product {
            factors = Names.atLeastOne(factors, "product");
        }
    }

    /**
     * A quotient.
     *
     * @param numerator what is divided
     * @param denominator what it is divided by; not zero
     */
    record Quotient(Expression numerator, Expression denominator) implements Expression {}

    /**
     * A value with its sign turned.
     *
     * @param operand the value
     */
    record Negation(Expression operand) implements Expression {}

    /**
     * A value times itself.
     *
     * @param operand the value
     */
    record Square(Expression operand) implements Expression {}

    /**
     * The non-negative square root.
     *
     * @param operand not negative
     */
    record SquareRoot(Expression operand) implements Expression {}

    /**
     * The sine of an angle in radians.
     *
     * @param angle the angle
     */
    record Sine(Expression angle) implements Expression {}

    /**
     * The cosine of an angle in radians.
     *
     * @param angle the angle
     */
    record Cosine(Expression angle) implements Expression {}

    /** Returns an exact number without name and unit, printed as written: {@code exact("0.5")}, {@code exact("2")}. */
    static Expression exact(String decimal) {
        return new Constant("", new BigDecimal(decimal), Unit.ONE, "");
    }

    /** Returns an exact whole number of degrees, printed as such: {@code exactDegrees(90)}. */
    static Expression exactDegrees(int degrees) {
        return new Constant("", BigDecimal.valueOf(degrees), Unit.DEGREE, "");
    }

    /**
     * Returns a named value that is exact as a decimal and printed in full, such as standard gravity. The decimal is the
     * one with the fewest places that reads back to the same double.
     */
    static Expression exact(String name, Measure<?> value, String source) {
        Unit unit = Units.printed(value.dimension());
        return new Constant(name, unit.decimal(value.si()), unit, source);
    }

    /**
     * Returns an input with its source.
     *
     * @param source where the value comes from; not empty
     */
    static Symbol symbol(String name, Measure<?> value, String source) {
        return new Symbol(name, value.si(), value.dimension(), source);
    }

    /** Returns the sum of the terms. */
    static Expression sum(List<? extends Expression> terms) {
        return new Sum(List.copyOf(terms));
    }

    /** Returns the product of the factors. */
    static Expression product(Expression... factors) {
        return new Product(List.of(factors));
    }

    /** Returns the sine of an angle. */
    static Expression sine(Expression angle) {
        return new Sine(angle);
    }

    /** Returns the cosine of an angle. */
    static Expression cosine(Expression angle) {
        return new Cosine(angle);
    }

    /** Returns the square root of a value that is not negative. */
    static Expression squareRoot(Expression operand) {
        return new SquareRoot(operand);
    }

    /** Returns this plus the other; terms of a sum stay in one row. */
    default Expression plus(Expression other) {
        return new Sum(Names.joined(this instanceof Sum sum ? sum.terms() : List.of(this), other));
    }

    /** Returns this minus the other. */
    default Expression minus(Expression other) {
        return plus(new Negation(other));
    }

    /** Returns this times the other; factors of a product stay in one row. */
    default Expression times(Expression other) {
        return new Product(Names.joined(this instanceof Product product ? product.factors() : List.of(this), other));
    }

    /** Returns this divided by the other. */
    default Expression dividedBy(Expression other) {
        return new Quotient(this, other);
    }

    /** Returns this with its sign turned. */
    default Expression negated() {
        return new Negation(this);
    }

    /** Returns this times itself. */
    default Expression squared() {
        return new Square(this);
    }

    /**
     * Returns the value in SI units, the double nearest to what the tree gives when its symbols' doubles are taken as
     * exact.
     *
     * @throws ArithmeticException if a divisor is zero or a square root is asked of a negative number
     */
    default double evaluate() {
        return DecimalArithmetic.evaluate(this, symbol -> new BigDecimal(symbol.si()))
                .doubleValue();
    }
}

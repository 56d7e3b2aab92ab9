package leverwright.mechanics.measure;

/** Refusals that all measures share. */
final class Checks {
    private Checks() {}

    static double value(double si, Dimension dimension) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException(dimension.withArticle() + " must be a finite number of "
                    + dimension.si().symbol() + ", not " + inWords(si)
                    + "; look for a division by zero or an overflow before it");
        }
        return si + 0.0;
    }

    static double error(double error, Dimension dimension) {
        if (!(error >= 0) || Double.isInfinite(error)) {
            throw new IllegalArgumentException("the error of " + dimension.withArticle()
                    + " must be a finite number of " + dimension.si().symbol() + ", zero or more, not "
                    + inWords(error));
        }
        return error + 0.0;
    }

    static void unit(Unit unit, Dimension dimension) {
        if (unit.dimension() != dimension) {
            throw new IllegalArgumentException(
                    "“" + unit.symbol() + "” is a unit of " + unit.dimension().words() + "; " + dimension.withArticle()
                            + " is given in " + dimension.unitList());
        }
    }

    static void divisor(double divisor) {
        if (divisor == 0 || Double.isNaN(divisor)) {
            throw new IllegalArgumentException(
                    "a value cannot be divided by " + inWords(divisor) + "; divide by a number other than zero");
        }
    }

    static String inWords(double value) {
        if (Double.isNaN(value)) {
            return "NaN (not a number)";
        }
        if (Double.isInfinite(value)) {
            return value > 0 ? "infinity" : "−infinity";
        }
        return value == 0 ? "zero" : NumberText.general(value, 6);
    }
}

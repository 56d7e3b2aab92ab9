package leverwright.mechanics.working;

import java.util.Map;
import org.hipparchus.dfp.Dfp;
import org.hipparchus.dfp.DfpField;

/**
 * Reads expressions by the grammar in the package description and evaluates them with 60 decimal digits. It shares no
 * code with what it checks: arithmetic, sine and cosine are those of Hipparchus (org.hipparchus.dfp).
 */
final class PrintedLineParser {
    static final DfpField FIELD = new DfpField(64);

    private final String text;
    private final Map<String, String> numbersOfNames;
    private int at;

    private PrintedLineParser(String text, Map<String, String> numbersOfNames) {
        this.text = text;
        this.numbersOfNames = numbersOfNames;
    }

    /** Evaluates numbers. */
    static Dfp evaluate(String numbers) {
        return evaluate(numbers, Map.of());
    }

    /** Evaluates a formula with a printed number, perhaps with a degree sign, for each name. */
    static Dfp evaluate(String formula, Map<String, String> numbersOfNames) {
        PrintedLineParser parser = new PrintedLineParser(formula, numbersOfNames);
        Dfp value = parser.expression();
        if (parser.at != formula.length()) {
            throw new IllegalArgumentException("stopped at " + parser.at + " of " + formula);
        }
        return value;
    }

    private boolean take(String sign) {
        if (text.startsWith(sign, at)) {
            at += sign.length();
            return true;
        }
        return false;
    }

    private void expect(String sign) {
        if (!take(sign)) {
            throw new IllegalArgumentException("expected " + sign + " at " + at + " of " + text);
        }
    }

    private Dfp expression() {
        Dfp sum = take("−") ? term().negate() : term();
        while (true) {
            if (take(" + ")) {
                sum = sum.add(term());
            } else if (take(" − ")) {
                sum = sum.subtract(term());
            } else {
                return sum;
            }
        }
    }

    private Dfp term() {
        Dfp product = factor();
        while (true) {
            if (take("·")) {
                product = product.multiply(factor());
            } else if (take("/")) {
                product = product.divide(factor());
            } else {
                return product;
            }
        }
    }

    private Dfp factor() {
        Dfp piece = piece();
        return take("²") ? piece.multiply(piece) : piece;
    }

    private Dfp piece() {
        if (take("√(")) {
            return closed(expression().sqrt());
        }
        if (take("(")) {
            return closed(expression());
        }
        if (Character.isDigit(text.charAt(at))) {
            return degrees(number());
        }
        String name = name();
        if (name.equals("sin") || name.equals("cos")) {
            expect("(");
            Dfp angle = expression();
            return closed(name.equals("sin") ? angle.sin() : angle.cos());
        }
        String number = numbersOfNames.get(name);
        if (number == null) {
            throw new IllegalArgumentException("no number for " + name + " in " + text);
        }
        return evaluate(number);
    }

    private Dfp closed(Dfp value) {
        expect(")");
        return value;
    }

    private Dfp degrees(Dfp number) {
        return take("°") ? number.multiply(FIELD.getPi()).divide(180) : number;
    }

    private Dfp number() {
        int start = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || text.charAt(at) == '.')) {
            at++;
        }
        String digits = text.substring(start, at);
        if (!digits.matches("\\d+(\\.\\d+)?")) {
            throw new IllegalArgumentException("no number: " + digits);
        }
        return FIELD.newDfp(digits);
    }

    private String name() {
        int start = at;
        while (at < text.length() && (Character.isLetterOrDigit(text.charAt(at)) || text.charAt(at) == '_')) {
            at++;
        }
        if (start == at) {
            throw new IllegalArgumentException("no name at " + at + " of " + text);
        }
        return text.substring(start, at);
    }
}

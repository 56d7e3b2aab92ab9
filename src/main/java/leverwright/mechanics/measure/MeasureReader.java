package leverwright.mechanics.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one quantity from one text; made anew for each. */
final class MeasureReader {
    private static final int LONGEST = 100;
    private static final Pattern SPACES = Pattern.compile("[\\s\\u00a0\\u2009\\u202f\\u2007]+");
    private static final Pattern NOT_FINITE = Pattern.compile("(?i)[-+]?(nan|inf|infinity|∞)\\b.*|[-+]?∞.*");
    private static final String NUMBER = "([-+]?(?:\\d++(?:\\.\\d*+)?|\\.\\d++)(?:[eE][-+]?\\d++)?)(?![.\\d])";
    private static final String UNIT = "([^-+\\d,.]*+(?:(?<=[A-Za-z^])[23](?![\\d.A-Za-z'\"]))?)";
    private static final Pattern PART = Pattern.compile("\\s*" + NUMBER + UNIT);
    private static final Pattern DOT_IN_UNIT = Pattern.compile("(?<=[A-Za-z])\\.(?=[A-Za-z])");
    private static final Pattern COMMA = Pattern.compile("\\d,\\d");

    private final String typed;
    private final Dimension wanted;

    MeasureReader(String typed, Dimension wanted) {
        this.typed = typed;
        this.wanted = wanted;
    }

    private record Part(double number, String unit) {}

    Measure<?> read() {
        String text = normalised();
        refuseWhatIsNoNumber(text);
        String[] halves = text.split("±", -1);
        if (halves.length > 2) {
            throw refusal("has more than one ±; write one error, such as " + example(true));
        }
        List<Part> value = parts(halves[0].trim());
        List<Part> error = halves.length == 2 ? parts(halves[1].trim()) : List.of();
        if (value.size() > 2 || error.size() > 1) {
            throw refusal("has more numbers than one quantity takes; write it like " + example(false));
        }
        return value.size() == 2 ? feetAndInches(value, error) : single(value.get(0), error);
    }

    private String normalised() {
        String text = SPACES.matcher(typed).replaceAll(" ").trim();
        if (text.isEmpty()) {
            throw new IllegalArgumentException(
                    wanted.withArticle() + " is needed and nothing was typed; write it like " + example(false));
        }
        if (text.length() > LONGEST) {
            throw refusal("is longer than " + LONGEST + " characters; write it like " + example(false));
        }
        return DOT_IN_UNIT
                .matcher(text.replace('−', '-').replace('–', '-'))
                .replaceAll("·")
                .replace("+/-", "±")
                .replace("+-", "±");
    }

    private void refuseWhatIsNoNumber(String text) {
        if (NOT_FINITE.matcher(text).matches()) {
            throw refusal("is not a finite number; write it like " + example(false));
        }
        if (COMMA.matcher(text).find()) {
            throw refusal("has a comma between digits; write the decimal mark as a point, “"
                    + shortened(text.replaceAll("(\\d),(\\d)", "$1.$2")) + "”, and nothing between thousands");
        }
    }

    private List<Part> parts(String text) {
        List<Part> parts = new ArrayList<>();
        Matcher matcher = PART.matcher(text);
        int end = 0;
        while (end < text.length()) {
            matcher.region(end, text.length());
            if (!matcher.lookingAt()) {
                break;
            }
            parts.add(new Part(number(matcher.group(1)), matcher.group(2).trim()));
            end = matcher.end();
        }
        if (parts.isEmpty() || end < text.length()) {
            throw refusal("cannot be read as a number with a unit; write it like " + example(false));
        }
        return parts;
    }

    private double number(String digits) {
        double value = Double.parseDouble(digits);
        if (Double.isInfinite(value)) {
            throw refusal("holds a number too large to compute with; write it like " + example(false));
        }
        return value;
    }

    private Measure<?> single(Part value, List<Part> error) {
        String spare = error.isEmpty() ? "" : error.get(0).unit();
        Unit unit = unit(value.unit().isEmpty() ? spare : value.unit());
        return finished(unit.toSi(value.number()), halfWidth(error, unit));
    }

    private Measure<?> feetAndInches(List<Part> value, List<Part> error) {
        Unit first = unit(value.get(0).unit());
        String secondWay = value.get(1).unit();
        Unit second = secondWay.isEmpty() && first == Unit.FOOT ? Unit.INCH : unit(secondWay);
        double feet = value.get(0).number();
        double inches = value.get(1).number();
        if (first != Unit.FOOT || second != Unit.INCH) {
            throw refusal("has two numbers; only feet and inches are written so, such as “5 ft 10 in”");
        }
        if (feet != Math.rint(feet) || !(inches >= 0 && inches < 12)) {
            throw refusal("needs whole feet and 0 to less than 12 inches, such as “5 ft 10 in”");
        }
        boolean negative = typed.trim().startsWith("-") || typed.trim().startsWith("−");
        double size = Unit.INCH.toSi(12 * Math.abs(feet) + inches);
        return finished(negative ? -size : size, halfWidth(error, Unit.INCH));
    }

    private double halfWidth(List<Part> error, Unit unit) {
        if (error.isEmpty()) {
            return 0;
        }
        Part part = error.get(0);
        if (part.number() < 0) {
            throw refusal("has a negative error; the error after ± is zero or more");
        }
        return (part.unit().isEmpty() ? unit : unit(part.unit())).toSi(part.number());
    }

    private Measure<?> finished(double si, double error) {
        if (Double.isInfinite(si) || Double.isInfinite(error)) {
            throw refusal("holds a number too large to compute with; write it like " + example(false));
        }
        return wanted.of(si, error);
    }

    private Unit unit(String way) {
        List<Unit> named = MeasureText.named(way);
        for (Unit unit : named) {
            if (unit.dimension() == wanted) {
                return unit;
            }
        }
        for (Unit unit : wanted.units()) {
            if (unit.ways().stream().anyMatch(known -> isWord(known) && known.equalsIgnoreCase(way))) {
                return unit;
            }
        }
        if (way.isEmpty()) {
            throw refusal("has no unit; " + wanted.withArticle() + " is given in " + wanted.unitList());
        }
        if (!named.isEmpty()) {
            throw refusal("is " + named.get(0).dimension().withArticle() + ", but " + wanted.withArticle()
                    + " is wanted, given in " + wanted.unitList());
        }
        throw refusal("has the unknown unit “" + shortened(way) + "”; " + wanted.withArticle() + " is given in "
                + wanted.unitList());
    }

    /** Capitals are forgiven where they cannot turn one unit into another: KG, Deg, CM, but not mpa. */
    private static boolean isWord(String way) {
        return way.length() > 1
                && way.equals(way.toLowerCase(Locale.ROOT))
                && way.chars().allMatch(Character::isLetter);
    }

    private IllegalArgumentException refusal(String fault) {
        return new IllegalArgumentException("“" + shortened(typed.trim()) + "” " + fault);
    }

    private String example(boolean withError) {
        return "“" + (withError ? wanted.exampleWithError() : wanted.example()) + "”";
    }

    private static String shortened(String text) {
        String clean = text.replaceAll("\\p{Cntrl}", "?");
        return clean.length() <= 40 ? clean : clean.substring(0, 40) + "…";
    }
}

package leverwright.workbook.session;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Says in plain words that a method was given other values than it takes. */
final class WrongArguments {

    private static final int MOST_FORMS = 4;

    private static final Pattern ONE =
            Pattern.compile("(method|constructor) (\\S+) in .*?\\R\\s*required:\\s*(.*)\\R\\s*found:\\s*(.*)");
    private static final Pattern SEVERAL =
            Pattern.compile("no suitable (method|constructor) found for (\\w+)\\((.*)\\)");
    private static final Pattern FORM = Pattern.compile(
            "(?m)^\\s*(?:method|constructor) (?:[\\w.]*\\.)?(?:<.*?>)?(\\w+\\(.*\\)) is not applicable");

    private WrongArguments() {}

    /** A method with one form only. */
    static String ofOne(String message) {
        Matcher parts = ONE.matcher(message);
        if (!parts.find()) {
            return message.lines().findFirst().orElse(message);
        }
        String takes = withBounds(bracketed(parts.group(3)));
        return bare(parts.group(2)) + " takes " + takes + ", but here it is given " + bracketed(parts.group(4))
                + hint(parts.group(4));
    }

    /** A method with several forms, none of which fits. */
    static String ofSeveral(String message) {
        Matcher parts = SEVERAL.matcher(message);
        if (!parts.find()) {
            return message.lines().findFirst().orElse(message);
        }
        List<String> forms = FORM.matcher(message)
                .results()
                .map(form -> withBounds(form.group(1)))
                .map(form -> form.replaceAll(",(?! )", ", "))
                .distinct()
                .limit(MOST_FORMS)
                .collect(Collectors.toList());
        String given = bracketed(parts.group(3));
        return "no form of " + bare(parts.group(2)) + " takes " + given
                + (forms.isEmpty() ? "" : "; there is " + String.join(", ", forms))
                + hint(given);
    }

    /** A tolerance is what people forget first. */
    private static String hint(String given) {
        return given.contains("EqualTo") ? "; equalTo(…) needs its tolerance, as in .within(percent(5))" : "";
    }

    private static String bare(String name) {
        return name.replaceAll("<.*>", "");
    }

    private static String bracketed(String types) {
        String inside = types.strip();
        return inside.equals("no arguments") || inside.isEmpty()
                ? "no values"
                : "(" + inside.replaceAll(",(?! )", ", ") + ")";
    }

    /** The letter M stands for any measure in every word of the house; a reader of a cell has not seen it declared. */
    private static String withBounds(String types) {
        return types.replaceAll("#\\d+", "").replaceAll("\\bM\\b", "Measure");
    }
}

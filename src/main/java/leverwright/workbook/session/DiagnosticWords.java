package leverwright.workbook.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.Diagnostic;
import javax.tools.JavaFileObject;
import org.jspecify.annotations.Nullable;

/** Says in plain words, and with its place in the script, what the compiler found. */
final class DiagnosticWords {

    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+(\\w+) (.+)");
    private static final Pattern NAMED = Pattern.compile(
            "(?:symbol:\\s+|no suitable |^)(class|interface|enum|record|method|constructor|variable) (?:found for )?(?:<.*?>)?(\\w+)");
    private static final Pattern GIVEN_ANYWAY = Pattern.compile("(static|public|private|protected)\\b");
    private static final Pattern LOCATION = Pattern.compile("location:\\s+(.+)");
    private static final Pattern OPERANDS =
            Pattern.compile("binary operator '(.+)'\\s+first type:\\s+(\\S.*)\\s+second type:\\s+(\\S.*)");
    private static final Pattern TYPES = Pattern.compile("incompatible types: (.+) cannot be converted to (.+)");

    /** The packages before a type's own name, which say nothing to the author of a cell. */
    private static final String PACKAGES = "\\b(?:[a-z]\\w*\\.)+(?=[A-Z])";

    /** More errors than this in one script say nothing more. */
    private static final int MOST = 50;

    private DiagnosticWords() {}

    /**
     * Returns the errors that pass a test, in the compiler's order, the first of each place.
     *
     * @param names finds names that are near an unknown one; null where none are known
     */
    static List<Fault> faults(
            List<Diagnostic<? extends JavaFileObject>> diagnostics,
            GeneratedSource source,
            @Nullable NearWords names,
            Predicate<Diagnostic<? extends JavaFileObject>> counts) {
        Map<Span, Fault> faults = new LinkedHashMap<>();
        for (Diagnostic<? extends JavaFileObject> diagnostic : diagnostics) {
            if (diagnostic.getKind() == Diagnostic.Kind.ERROR && counts.test(diagnostic) && faults.size() < MOST) {
                Fault fault = fault(diagnostic, source, names);
                faults.putIfAbsent(fault.span(), fault);
            }
        }
        return List.copyOf(faults.values());
    }

    private static Fault fault(
            Diagnostic<? extends JavaFileObject> diagnostic, GeneratedSource source, @Nullable NearWords names) {
        Matcher modifier = GIVEN_ANYWAY.matcher(source.text());
        if (diagnostic.getCode().equals("compiler.err.illegal.start.of.expr")
                && modifier.find((int) Math.max(0, diagnostic.getPosition()))
                && modifier.start() == diagnostic.getPosition()) {
            String words = "a name of a cell needs no static, public or private; leave such words out";
            return new Fault(words, nameSpan(diagnostic, source, modifier.group(1)));
        }
        Matcher named = NAMED.matcher(diagnostic.getMessage(Locale.ENGLISH));
        boolean unknown = diagnostic.getCode().startsWith("compiler.err.cant.resolve");
        boolean misused = diagnostic.getCode().startsWith("compiler.err.cant.apply.symbol");
        if (!(unknown || misused) || !named.find()) {
            return new Fault(words(diagnostic), span(diagnostic, source));
        }
        Span span = nameSpan(diagnostic, source, named.group(2));
        return new Fault(unknown ? words(diagnostic) + hint(diagnostic, names, named) : words(diagnostic), span);
    }

    private static String hint(
            Diagnostic<? extends JavaFileObject> diagnostic, @Nullable NearWords names, Matcher named) {
        List<String> near =
                names == null ? List.of() : names.near(diagnostic.getPosition(), named.group(2), named.group(1));
        if (!near.isEmpty()) {
            return "; did you mean " + String.join(" or ", near) + "?";
        }
        boolean isMember = words(diagnostic).contains(" is not known here in ");
        return isMember ? "; check its spelling" : "; check its spelling, or declare it in this cell or above";
    }

    /** The name itself, which in a chain of calls stands far behind the start of the expression. */
    private static Span nameSpan(Diagnostic<? extends JavaFileObject> diagnostic, GeneratedSource source, String name) {
        int position = (int) diagnostic.getPosition();
        Matcher place = Pattern.compile("\\b" + Pattern.quote(name) + "\\b").matcher(source.text());
        if (position < 0 || !place.find(position) || place.start() > diagnostic.getEndPosition()) {
            return span(diagnostic, source);
        }
        return Span.of(source.script(), source.toScript(place.start()), source.endToScript(place.end()));
    }

    private static Span span(Diagnostic<? extends JavaFileObject> diagnostic, GeneratedSource source) {
        boolean missing = diagnostic.getCode().equals("compiler.err.expected")
                || diagnostic.getCode().equals("compiler.err.premature.eof");
        long from = missing ? diagnostic.getPosition() : diagnostic.getStartPosition();
        int start = source.toScript(from);
        int end = Math.max(
                source.endToScript(diagnostic.getEndPosition()),
                Math.min(start + 1, source.script().length()));
        return Span.of(
                source.script(),
                start,
                missing ? Math.min(start + 1, source.script().length()) : end);
    }

    static String words(Diagnostic<? extends JavaFileObject> diagnostic) {
        String message = diagnostic
                .getMessage(Locale.ENGLISH)
                .replaceAll("REPL\\.Cell_\\w+\\.", "")
                .replaceAll("\\bjava\\.(lang|util|util\\.function|util\\.stream)\\.(?=[A-Z])", "");
        return plain(diagnostic.getCode(), message).replaceAll(PACKAGES, "");
    }

    private static String plain(String code, String message) {
        String firstLine = message.lines().findFirst().orElse(message);
        return switch (code) {
            case "compiler.err.cant.resolve",
                    "compiler.err.cant.resolve.args",
                    "compiler.err.cant.resolve.location",
                    "compiler.err.cant.resolve.location.args" -> unknown(message, firstLine);
            case "compiler.err.doesnt.exist" ->
                firstLine.replaceAll("package (\\S+) does not exist", "the name $1 is not known here")
                        + "; check its spelling, or declare it in this cell or above";
            case "compiler.err.prob.found.req" -> wrongType(firstLine);
            case "compiler.err.cant.apply.symbol" -> WrongArguments.ofOne(message);
            case "compiler.err.cant.apply.symbols" -> WrongArguments.ofSeveral(message);
            case "compiler.err.operator.cant.be.applied.1" -> wrongOperator(firstLine, message);
            case "compiler.err.expected" ->
                firstLine.startsWith("';'")
                        ? "a semicolon is missing here; put ; at the end of every line but the last"
                        : firstLine;
            case "compiler.err.not.stmt" ->
                "this value goes nowhere; give it a name with var, or put it last in the cell to show it";
            case "compiler.err.premature.eof" -> "the cell ends too early; a bracket is still open";
            case "compiler.err.unclosed.str.lit" -> "this text has no closing quote";
            case "compiler.err.already.defined" ->
                "this name is declared twice in the cell; give the second one another";
            case "compiler.err.unreported.exception.need.to.catch.or.throw" ->
                firstLine + "; put the call in try { … } catch (Exception e) { … }";
            default -> firstLine;
        };
    }

    private static String unknown(String message, String firstLine) {
        Matcher symbol = SYMBOL.matcher(message);
        if (!symbol.find()) {
            return firstLine;
        }
        String kind = symbol.group(1);
        Matcher location = LOCATION.matcher(message);
        String place = location.find() && !location.group(1).contains("Cell_") ? " in " + location.group(1) : "";
        String what = kind.equals("variable") ? "name" : kind;
        return "the " + what + " " + symbol.group(2).strip() + " is not known here" + place;
    }

    private static String wrongOperator(String firstLine, String message) {
        Matcher types = OPERANDS.matcher(message);
        if (!types.find()) {
            return firstLine;
        }
        return types.group(1) + " does not work between " + types.group(2) + " and " + types.group(3)
                + "; measures have words for it: a.plus(b), a.minus(b), a.times(2), a.dividedBy(b), a.compareTo(b) > 0";
    }

    private static String wrongType(String firstLine) {
        if (firstLine.endsWith("unexpected return value")) {
            return "a cell gives nothing back with return; put the value last in the cell to show it";
        }
        Matcher types = TYPES.matcher(firstLine);
        return types.matches()
                ? "a value of type " + types.group(1) + " stands where " + types.group(2) + " is needed"
                : firstLine;
    }
}

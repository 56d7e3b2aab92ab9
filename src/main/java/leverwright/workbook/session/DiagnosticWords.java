package leverwright.workbook.session;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.tools.Diagnostic;
import javax.tools.JavaFileObject;
import org.jspecify.annotations.Nullable;

/** Says in plain words, and with its place in the script, what the compiler found. */
final class DiagnosticWords {

    private static final Pattern SYMBOL = Pattern.compile("symbol:\\s+(\\w+) (.+)");
    private static final Pattern LOCATION = Pattern.compile("location:\\s+(.+)");
    private static final Pattern TYPES = Pattern.compile("incompatible types: (.+) cannot be converted to (.+)");

    /** The packages before a type's own name, which say nothing to the author of a cell. */
    private static final String PACKAGES = "\\b(?:[a-z]\\w*\\.)+(?=[A-Z])";

    private DiagnosticWords() {}

    /** Returns the first error that passes a test, or null when there is none. */
    static ParsedCell.@Nullable Problem first(
            List<Diagnostic<? extends JavaFileObject>> diagnostics,
            GeneratedSource source,
            Predicate<Diagnostic<? extends JavaFileObject>> counts) {
        for (Diagnostic<? extends JavaFileObject> diagnostic : diagnostics) {
            if (diagnostic.getKind() == Diagnostic.Kind.ERROR && counts.test(diagnostic)) {
                return new ParsedCell.Problem(words(diagnostic), span(diagnostic, source));
            }
        }
        return null;
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
        String firstLine = message.lines().findFirst().orElse(message);
        return switch (diagnostic.getCode()) {
            case "compiler.err.cant.resolve",
                    "compiler.err.cant.resolve.args",
                    "compiler.err.cant.resolve.location",
                    "compiler.err.cant.resolve.location.args" -> unknown(message, firstLine);
            case "compiler.err.prob.found.req" -> wrongType(firstLine);
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
        return ("the " + what + " " + symbol.group(2).strip() + " is not known here" + place).replaceAll(PACKAGES, "")
                + "; check its spelling, or declare it in this cell or above";
    }

    private static String wrongType(String firstLine) {
        Matcher types = TYPES.matcher(firstLine);
        return types.matches()
                ? "a value of type " + types.group(1) + " stands where " + types.group(2) + " is needed"
                : firstLine;
    }
}

package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import jdk.jshell.Diag;
import jdk.jshell.JShell;
import jdk.jshell.Snippet;
import jdk.jshell.SnippetEvent;
import jdk.jshell.SourceCodeAnalysis;
import jdk.jshell.spi.ExecutionControl;
import jdk.jshell.spi.ExecutionControlProvider;
import jdk.jshell.spi.ExecutionEnv;
import org.jspecify.annotations.Nullable;

/**
 * JShell as the engine that compiles and loads cells. Each version of a cell is one snippet, a class with a name of its own;
 * its classes arrive in the load pass of our own execution control, from where they go through the gate into the worker. The
 * snippet is dropped at once, so that JShell never has anything to redefine: cells above are classes in its files, not
 * snippets.
 */
final class Shell implements AutoCloseable {

    /** What compiling came to: the classes of the cell, or why JShell refused its source. */
    record Compiled(Map<String, byte[]> classes, @Nullable Diag refusal) {}

    /** Names of ours that no script should say. */
    private static final Pattern HIDDEN =
            Pattern.compile("(\\$.*|Above\\d+|Caret|Inner|Cell_\\w+|REPL.*|Version\\d+|finalize.*)");

    private static final Pattern OURS = Pattern.compile("\\b(REPL|Above\\d+|Caret|Inner|Cell_\\w+)\\.");

    private final JShell shell;
    private final Map<String, byte[]> loaded = new LinkedHashMap<>();
    private final Map<String, Snippet> imports = new LinkedHashMap<>();

    /**
     * Starts JShell.
     *
     * @param files the compiler's files, which hold the classes of the cells above
     * @param options the compiler's options
     */
    Shell(CellFiles files, List<String> options) {
        shell = JShell.builder()
                .executionEngine(new Provider(), Map.of())
                .fileManager(files::over)
                .compilerOptions(options.toArray(String[]::new))
                .build();
        CellImports.STANDARD.forEach(this::bring);
    }

    private void bring(String text) {
        for (SnippetEvent event : shell.eval(text)) {
            if (event.status() == Snippet.Status.VALID) {
                imports.put(text, event.snippet());
            }
        }
    }

    /**
     * Compiles a cell.
     *
     * @param source the snippet: the cell's class inside the classes that bind its names from above
     * @param simpleName the simple name of the cell's class
     * @param wraps the simple names of the classes around the cell's from the outermost in, each with the class it extends
     * @param wanted the imports that hold for the cell; those of other cells are taken away
     */
    synchronized Compiled compile(
            GeneratedSource source, String simpleName, Map<String, String> wraps, Set<String> wanted) {
        importOnly(wanted);
        loaded.clear();
        List<SnippetEvent> events = shell.eval(source.text());
        Diag refusal = null;
        for (SnippetEvent event : events) {
            if (event.status() == Snippet.Status.VALID) {
                continue;
            }
            refusal = shell.diagnostics(event.snippet())
                    .filter(Diag::isError)
                    .findFirst()
                    .orElse(null);
        }
        boolean complete =
                !events.isEmpty() && events.stream().allMatch(event -> event.status() == Snippet.Status.VALID);
        Map<String, byte[]> classes = complete ? ShellClasses.of(loaded, simpleName, wraps) : Map.of();
        events.forEach(event -> shell.drop(event.snippet()));
        return new Compiled(classes, refusal);
    }

    /**
     * Returns what may be written at the caret; waits for the cell that is being compiled, if one is.
     *
     * @param source the script up to the caret
     */
    synchronized List<Suggestion> suggestions(CaretSource source) {
        int[] anchor = new int[1];
        List<Suggestion> found = new ArrayList<>();
        for (SourceCodeAnalysis.Suggestion each : shell.sourceCodeAnalysis()
                .completionSuggestions(source.text(), source.text().length(), anchor)) {
            String text = each.continuation();
            if (!HIDDEN.matcher(text).matches()) {
                found.add(Suggestion.of(source.toScript(anchor[0]), text, each.matchesType()));
            }
        }
        return found.stream().distinct().toList();
    }

    /**
     * Returns the signatures of the method that is being called at the caret, of what stands there otherwise.
     *
     * @param source the script up to the caret
     */
    synchronized List<String> signatures(CaretSource source) {
        return shell
                .sourceCodeAnalysis()
                .documentation(source.text(), source.text().length(), false)
                .stream()
                .map(each -> OURS.matcher(each.signature()).replaceAll(""))
                .distinct()
                .toList();
    }

    private void importOnly(Set<String> wanted) {
        Set<String> needed = new LinkedHashSet<>(CellImports.STANDARD);
        needed.addAll(wanted);
        for (String text : new ArrayList<>(imports.keySet())) {
            if (!needed.contains(text)) {
                shell.drop(imports.remove(text));
            }
        }
        needed.stream().filter(text -> !imports.containsKey(text)).forEach(this::bring);
    }

    /** Returns the words of a refusal. */
    static String words(Diag refusal) {
        return refusal.getMessage(Locale.ENGLISH);
    }

    @Override
    public void close() {
        shell.close();
    }

    /** Makes the execution control of the one JShell that it is given to. */
    private final class Provider implements ExecutionControlProvider {
        @Override
        public String name() {
            return "leverwright";
        }

        @Override
        public ExecutionControl generate(ExecutionEnv environment, Map<String, String> parameters) {
            return new LoadPass();
        }
    }

    /** Takes the classes that JShell would load, and runs nothing: cells run in the worker. */
    private final class LoadPass implements ExecutionControl {
        @Override
        public void load(ClassBytecodes[] classes) {
            for (ClassBytecodes each : classes) {
                loaded.put(each.name().replace('.', '/'), each.bytecodes());
            }
        }

        @Override
        public void redefine(ClassBytecodes[] classes) {
            load(classes);
        }

        @Override
        public String invoke(String className, String methodName) {
            return "";
        }

        @Override
        public String varValue(String className, String varName) {
            return "";
        }

        @Override
        public void addToClasspath(String path) {
            // the class path is fixed when JShell starts
        }

        @Override
        public void stop() {
            // nothing runs here
        }

        @Override
        public Object extensionCommand(String command, Object argument) {
            return "";
        }

        @Override
        public void close() {
            // nothing is open
        }
    }
}

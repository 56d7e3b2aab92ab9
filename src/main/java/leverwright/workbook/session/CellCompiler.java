package leverwright.workbook.session;

import com.sun.source.tree.BlockTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.ExpressionStatementTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import javax.lang.model.element.Element;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.ElementFilter;
import javax.tools.Diagnostic;
import javax.tools.JavaFileObject;
import jdk.jshell.Diag;
import leverwright.run.gate.Gate;
import leverwright.run.gate.GateResult;
import leverwright.run.gate.Refusal;
import leverwright.run.result.CellState;
import org.jspecify.annotations.Nullable;

/**
 * Compiles one cell into classes: once to find the types of variables declared with {@code var}, if there are any, and
 * once for good. Then the classes pass the gate.
 */
final class CellCompiler {

    /** What compiling came to: the classes, or why there are none. */
    record Outcome(
            @Nullable CompiledCell compiled, @Nullable CellOutcome failed) {}

    private final Compilers compilers;
    private final Supplier<Shell> shell;
    private final Gate gate;
    private final ImmutableTypes immutableTypes = new ImmutableTypes();
    private long versions;

    /**
     * Makes a compiler of cells.
     *
     * @param compilers the compiler's own API, which finds names, types and faults
     * @param shell gives JShell, which makes the classes; asked when it is needed first
     * @param gate checks and rewrites the classes
     */
    CellCompiler(Compilers compilers, Supplier<Shell> shell, Gate gate) {
        this.compilers = compilers;
        this.shell = shell;
        this.gate = gate;
    }

    /** What the compiler said to one source. */
    private static final class Pass {
        final List<Diagnostic<? extends JavaFileObject>> diagnostics = new ArrayList<>();
        final GeneratedSource source;

        Pass(GeneratedSource source) {
            this.source = source;
        }

        /** Returns what is wrong; to be asked while the compiler that found it still knows the names around it. */
        List<Fault> faults(@Nullable NearWords names) {
            List<Fault> inScript =
                    DiagnosticWords.faults(diagnostics, source, names, each -> source.isFromScript(each.getPosition()));
            return inScript.isEmpty()
                    ? DiagnosticWords.faults(diagnostics, source, names, each -> true).stream()
                            .limit(1)
                            .toList()
                    : inScript;
        }
    }

    /**
     * Compiles a cell whose script parsed without a problem.
     *
     * @param cell the cell
     * @param imports the imports that hold for it: the standard ones, those of cells above, and one for each name that
     *     it reads from above
     * @param own those of the imports that cells wrote
     * @param above the classes of the cells that it reads from, in order of the sheet
     */
    Outcome compile(ParsedCell cell, List<String> imports, Set<String> own, List<String> above) {
        if (!cell.names().tooEarly().isEmpty()) {
            return failed(cell, tooEarly(cell));
        }
        Map<CellNames.Variable, String> types = new LinkedHashMap<>();
        boolean inferred = cell.names().variables().stream().anyMatch(variable -> variable.type() == null);
        ParsedCell.Value value = cell.value();
        boolean hasValue = value != null;
        if (inferred || (value != null && value.mayBeVoid())) {
            Pass pass = new Pass(CellSources.toInfer(cell, imports));
            Inference inference = infer(cell, pass);
            if (!inference.faults.isEmpty()) {
                return failed(cell, inference.faults);
            }
            types.putAll(inference.types);
            hasValue &= !(value != null && value.mayBeVoid() && inference.valueIsVoid);
        }
        cell.names().variables().stream()
                .filter(variable -> variable.type() != null)
                .forEach(variable -> types.put(variable, String.valueOf(variable.type())));
        Pass pass = new Pass(CellSources.toCompile(cell, imports, types, hasValue));
        Analysed analysed = analyse(cell, pass);
        if (!analysed.faults.isEmpty()) {
            return failed(cell, analysed.faults);
        }
        Map<String, String> wraps = new LinkedHashMap<>();
        versions++;
        wraps.put("Version" + versions, "Object");
        above.forEach(each -> wraps.put("Above" + wraps.size(), each));
        return load(cell, CellSources.toShell(cell, wraps, types, hasValue), own, wraps, types, analysed.immutable);
    }

    /** Takes a cell that was compiled earlier through the gate; null when the gate has something against it. */
    @Nullable
    CompiledCell admit(KeptCell kept) {
        GateResult passed = gate.pass(kept.parsed().script().id(), kept.raw(), line -> line);
        return passed.refusals().isEmpty()
                ? new CompiledCell(
                        kept.parsed(), kept.raw(), passed.classes(), kept.immutable(), kept.shape(), kept.imports())
                : null;
    }

    private static List<Fault> tooEarly(ParsedCell cell) {
        List<Fault> faults = new ArrayList<>();
        for (Map.Entry<String, Integer> early : cell.names().tooEarly().entrySet()) {
            int start = early.getValue();
            faults.add(new Fault(
                    early.getKey() + " is used before the line that gives it a value; move that line up",
                    Span.of(cell.script().text(), start, start + early.getKey().length())));
        }
        return faults;
    }

    private static Outcome failed(ParsedCell cell, List<Fault> faults) {
        return new Outcome(null, CellOutcome.failed(cell.script().id(), faults));
    }

    /** The types that the compiler found. */
    private static final class Inference {
        final Map<CellNames.Variable, String> types = new LinkedHashMap<>();
        boolean valueIsVoid;
        List<Fault> faults = List.of();
    }

    private Inference infer(ParsedCell cell, Pass pass) {
        JavacTask task = compilers.task(cell.className(), pass.source.text(), pass.diagnostics::add);
        Inference inference = new Inference();
        CompilationUnitTree unit;
        try {
            unit = task.parse().iterator().next();
            task.analyze();
            Trees trees = Trees.instance(task);
            BlockTree body = runBody(unit);
            if (body != null) {
                read(cell, inference, body, statement -> trees.getTypeMirror(TreePath.getPath(unit, statement)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        long wanted = cell.names().variables().stream()
                .filter(variable -> variable.type() == null)
                .count();
        if (inference.types.size() < wanted) {
            inference.faults = pass.faults(new NearWords(task, unit));
        }
        return inference;
    }

    private static @Nullable BlockTree runBody(CompilationUnitTree unit) {
        for (Tree type : unit.getTypeDecls()) {
            for (Tree member : ((ClassTree) type).getMembers()) {
                if (member instanceof MethodTree method && method.getName().contentEquals(CellParser.RUN)) {
                    return method.getBody();
                }
            }
        }
        return null;
    }

    private interface TypeFinder {
        @Nullable
        TypeMirror of(Tree tree);
    }

    private static void read(ParsedCell cell, Inference inference, BlockTree body, TypeFinder finder) {
        StatementTree last = null;
        for (StatementTree statement : body.getStatements()) {
            last = statement;
            if (statement instanceof VariableTree variable) {
                TypeMirror type = finder.of(variable);
                if (type != null && type.getKind() != TypeKind.ERROR) {
                    String name = variable.getName().toString();
                    cell.names().variables().stream()
                            .filter(each -> each.type() == null && each.name().equals(name))
                            .forEach(each -> inference.types.put(each, TypeText.of(type)));
                }
            }
        }
        if (last instanceof ExpressionStatementTree call) {
            TypeMirror type = finder.of(call.getExpression());
            inference.valueIsVoid = type != null && type.getKind() == TypeKind.VOID;
        }
    }

    /** What the compiler found in a cell without making classes. */
    private record Analysed(Set<String> immutable, List<Fault> faults) {}

    private Analysed analyse(ParsedCell cell, Pass pass) {
        JavacTask task = compilers.task(cell.className(), pass.source.text(), pass.diagnostics::add);
        Set<String> immutable = new LinkedHashSet<>();
        CompilationUnitTree unit;
        try {
            unit = task.parse().iterator().next();
            for (Element analysed : task.analyze()) {
                if (analysed instanceof TypeElement type
                        && type.getQualifiedName().contentEquals(cell.className())) {
                    immutable.addAll(immutable(type));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Analysed(immutable, pass.diagnostics.isEmpty() ? List.of() : pass.faults(new NearWords(task, unit)));
    }

    /** Lets JShell compile a cell that is known to be sound, and takes the classes of its load pass to the gate. */
    private Outcome load(
            ParsedCell cell,
            GeneratedSource source,
            Set<String> own,
            Map<String, String> wraps,
            Map<CellNames.Variable, String> types,
            Set<String> immutable) {
        Shell.Compiled compiled = shell.get().compile(source, cell.simpleName(), wraps, own);
        Diag refusal = compiled.refusal();
        if (compiled.classes().isEmpty()) {
            String words = refusal == null ? "this cell could not be compiled; make it simpler" : Shell.words(refusal);
            int start = refusal == null ? 0 : source.toScript(refusal.getStartPosition());
            int end = refusal == null ? 0 : source.endToScript(refusal.getEndPosition());
            return failed(cell, List.of(new Fault(words, Span.of(cell.script().text(), start, end))));
        }
        return throughGate(cell, compiled.classes(), source, types, immutable);
    }

    private Set<String> immutable(TypeElement type) {
        immutableTypes.forgetCells();
        return ElementFilter.fieldsIn(type.getEnclosedElements()).stream()
                .filter(field -> immutableTypes.holds(field.asType()))
                .map(field -> field.getSimpleName().toString())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Outcome throughGate(
            ParsedCell cell,
            Map<String, byte[]> raw,
            GeneratedSource source,
            Map<CellNames.Variable, String> types,
            Set<String> immutable) {
        GateResult passed = gate.pass(cell.script().id(), raw, source::scriptLine);
        if (!passed.refusals().isEmpty()) {
            return new Outcome(null, refused(cell, passed.refusals()));
        }
        String shape = shape(cell, types, immutable);
        return new Outcome(
                new CompiledCell(cell, raw, passed.classes(), immutable, shape, WrittenImports.of(cell)), null);
    }

    private static CellOutcome refused(ParsedCell cell, List<Refusal> all) {
        List<Refusal> refusals =
                all.stream().filter(each -> !isToldBy(all, each)).toList();
        String words = refusals.stream().limit(5).map(Refusal::message).collect(Collectors.joining("\n"));
        int line = refusals.get(0).line();
        Span span = line > 0 ? Span.ofLine(cell.script().text(), line) : null;
        return CellOutcome.without(cell.script().id(), CellState.REFUSED, words, span);
    }

    /** A class that is refused stands for its members in the same line, and one with a line for one without. */
    private static boolean isToldBy(List<Refusal> all, Refusal refusal) {
        return all.stream()
                .anyMatch(other -> (other.line() > 0
                                && refusal.line() == 0
                                && other.subject().equals(refusal.subject()))
                        || (other.line() == refusal.line() && refusal.subject().startsWith(other.subject() + ".")));
    }

    private static String shape(ParsedCell cell, Map<CellNames.Variable, String> types, Set<String> immutable) {
        StringBuilder shape = new StringBuilder(cell.className());
        types.forEach(
                (variable, type) -> shape.append('\n').append(type).append(' ').append(variable.name()));
        shape.append('\n').append(immutable);
        for (Part element : cell.elements()) {
            if (element.isMember()) {
                shape.append('\n').append(cell.script().text(), element.start(), element.end());
            }
        }
        return shape.toString();
    }
}

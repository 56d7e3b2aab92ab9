package leverwright.workbook.session;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.NewArrayTree;
import com.sun.source.tree.StatementTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.Trees;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.tools.Diagnostic;
import javax.tools.JavaFileObject;
import org.jspecify.annotations.Nullable;

/** Parses one script: elements, names, the value at its end. Types are not looked at yet. */
final class CellParser {

    /** The method of a cell's class that holds the statements. */
    static final String RUN = "$run";

    private final CellScript script;
    private final List<Part> elements;
    private final GeneratedSource source;
    private final String className;
    private final List<Diagnostic<? extends JavaFileObject>> diagnostics = new ArrayList<>();
    private final List<CellNames.Variable> variables = new ArrayList<>();
    private final Set<String> methods = new LinkedHashSet<>();
    private final Set<String> types = new LinkedHashSet<>();
    private final NameScan scan = new NameScan(this::start);
    private ParsedCell.@Nullable Value value;
    private @Nullable SourcePositions positions;
    private @Nullable CompilationUnitTree unit;

    private CellParser(CellScript script, String className) {
        this.script = script;
        this.className = className;
        this.elements = CellSplitter.split(script.text());
        this.source = CellSources.toParse(script.text(), elements);
    }

    static ParsedCell parse(CellScript script, String className, Compilers compilers) {
        return new CellParser(script, className).parse(compilers);
    }

    private ParsedCell parse(Compilers compilers) {
        JavacTask task = compilers.task(CellSources.PARSED, source.text(), diagnostics::add);
        try {
            CompilationUnitTree parsed = task.parse().iterator().next();
            positions = Trees.instance(task).getSourcePositions();
            unit = parsed;
            for (Tree type : parsed.getTypeDecls()) {
                if (type instanceof ClassTree cell) {
                    cell.getMembers().forEach(this::member);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Fault> faults = DiagnosticWords.faults(diagnostics, source, null, each -> true);
        return new ParsedCell(script, className, elements, names(), value, faults);
    }

    private int start(Tree tree) {
        return positions == null || unit == null ? 0 : source.toScript(positions.getStartPosition(unit, tree));
    }

    private int end(Tree tree) {
        return positions == null || unit == null ? 0 : source.toScript(positions.getEndPosition(unit, tree));
    }

    private void member(Tree tree) {
        if (tree instanceof MethodTree method && method.getName().contentEquals(RUN)) {
            if (method.getBody() != null) {
                method.getBody().getStatements().forEach(this::statement);
            }
        } else if (tree instanceof MethodTree method) {
            methods.add(method.getName().toString());
            scan.member(method);
        } else if (tree instanceof ClassTree type) {
            types.add(type.getSimpleName().toString());
            scan.member(type);
        }
    }

    private void statement(StatementTree statement) {
        if (statement instanceof VariableTree variable && variable.getName().contentEquals(CellSources.VALUE)) {
            value = valueOf(variable.getInitializer(), elements.size() - 1);
            scan.statement(variable.getInitializer());
            return;
        }
        int element = elementAt(start(statement));
        if (element >= 0 && statement instanceof VariableTree variable) {
            declare(variable, element);
        } else {
            scan.statement(statement);
        }
    }

    private int elementAt(int offset) {
        for (int i = 0; i < elements.size(); i++) {
            if (elements.get(i).start() <= offset && offset <= elements.get(i).end()) {
                return i;
            }
        }
        return -1;
    }

    private void declare(VariableTree variable, int element) {
        Tree type = variable.getType();
        Tree first = variable.getInitializer();
        boolean inferred = type == null || isVar(variable);
        if (!inferred) {
            scan.statement(type);
        }
        scan.statement(first);
        variables.add(new CellNames.Variable(
                variable.getName().toString(),
                inferred ? null : String.valueOf(type),
                element,
                start(variable),
                first == null ? -1 : start(first),
                first == null ? -1 : end(first),
                first instanceof NewArrayTree array && array.getType() == null));
    }

    /** The compiler leaves out the type of a variable declared with var, or gives it no place of its own. */
    private boolean isVar(VariableTree variable) {
        int at = elements.get(elementAt(start(variable))).start();
        String text = script.text().substring(at);
        return text.matches("(?s)(final\\s+)?var\\b.*");
    }

    /** With a semicolon, an expression that can stand as a statement is one; any other shows its value. */
    private ParsedCell.@Nullable Value valueOf(@Nullable Tree expression, int place) {
        if (expression == null) {
            return null;
        }
        Part element = elements.get(place);
        boolean canBeStatement = switch (expression.getKind()) {
            case METHOD_INVOCATION,
                    NEW_CLASS,
                    PREFIX_INCREMENT,
                    PREFIX_DECREMENT,
                    POSTFIX_INCREMENT,
                    POSTFIX_DECREMENT -> true;
            default -> expression instanceof AssignmentTree || expression instanceof CompoundAssignmentTree;
        };
        if (canBeStatement && element.kind() != Part.Kind.OPEN) {
            return null;
        }
        boolean call = expression.getKind() == Tree.Kind.METHOD_INVOCATION;
        return new ParsedCell.Value(place, element.start(), element.endOfExpression(), call);
    }

    private CellNames names() {
        Set<String> own = new LinkedHashSet<>(types);
        variables.forEach(variable -> own.add(variable.name()));
        Set<String> reads = new LinkedHashSet<>(scan.read());
        reads.removeAll(own);
        Set<String> calls = new LinkedHashSet<>(scan.called());
        calls.removeAll(methods);
        calls.forEach(method -> reads.add(CellNames.call(method)));
        Set<String> assigns = new LinkedHashSet<>(scan.assigned());
        assigns.removeAll(own);
        Set<String> inBodies = new LinkedHashSet<>(scan.inBodies());
        inBodies.retainAll(own);
        boolean keepsState = scan.hasStaticState() || !scan.assignedInBodies().isEmpty() || !assigns.isEmpty();
        return new CellNames(variables, methods, types, reads, inBodies, assigns, keepsState, tooEarly());
    }

    private Map<String, Integer> tooEarly() {
        Map<String, Integer> early = new LinkedHashMap<>();
        for (CellNames.Variable variable : variables) {
            Integer use = scan.firstAtTop().get(variable.name());
            int known = Math.max(variable.start(), variable.valueEnd());
            if (use != null && use < known) {
                early.put(variable.name(), use);
            }
        }
        return early;
    }
}

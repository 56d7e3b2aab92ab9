package leverwright.workbook.session;

import com.sun.source.tree.AssignmentTree;
import com.sun.source.tree.BlockTree;
import com.sun.source.tree.CaseTree;
import com.sun.source.tree.CatchTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompoundAssignmentTree;
import com.sun.source.tree.EnhancedForLoopTree;
import com.sun.source.tree.ExpressionTree;
import com.sun.source.tree.ForLoopTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.LambdaExpressionTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.MethodInvocationTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.TryTree;
import com.sun.source.tree.UnaryTree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.TreeScanner;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import javax.lang.model.element.Modifier;
import org.jspecify.annotations.Nullable;

/**
 * Collects the free names of a cell's declarations and statements: what they read and assign that is not local to them.
 * Locals, parameters and members of local classes hide names of the cell and of the cells above.
 */
final class NameScan extends TreeScanner<@Nullable Void, @Nullable Void> {

    private final ToIntFunction<Tree> offset;
    private final Deque<Set<String>> scopes = new ArrayDeque<>();
    private final Deque<Set<String>> methods = new ArrayDeque<>();
    private final Set<String> inBodies = new LinkedHashSet<>();
    private final Set<String> assigned = new LinkedHashSet<>();
    private final Set<String> assignedInBodies = new LinkedHashSet<>();
    private final Map<String, Integer> firstAtTop = new LinkedHashMap<>();
    private final Set<String> read = new LinkedHashSet<>();
    private final Set<String> called = new LinkedHashSet<>();
    private int bodies;
    private boolean staticState;

    /** Makes a scan; the function gives the offset of a tree in the script. */
    NameScan(ToIntFunction<Tree> offset) {
        this.offset = offset;
        scopes.push(new LinkedHashSet<>());
    }

    Set<String> read() {
        return read;
    }

    /** The methods that are called without naming an object or class. */
    Set<String> called() {
        return called;
    }

    Set<String> inBodies() {
        return inBodies;
    }

    Set<String> assigned() {
        return assigned;
    }

    Set<String> assignedInBodies() {
        return assignedInBodies;
    }

    Map<String, Integer> firstAtTop() {
        return firstAtTop;
    }

    boolean hasStaticState() {
        return staticState;
    }

    /** Scans a method or type at the top level of the cell. */
    void member(Tree tree) {
        scan(tree, null);
    }

    /** Scans the value of a top-level variable, or a statement. */
    void statement(@Nullable Tree tree) {
        inScope(() -> scan(tree, null));
    }

    private void inScope(Runnable inner) {
        scopes.push(new LinkedHashSet<>());
        inner.run();
        scopes.pop();
    }

    private void inBody(Runnable inner) {
        bodies++;
        inScope(inner);
        bodies--;
    }

    private boolean isLocal(String name) {
        return scopes.stream().anyMatch(scope -> scope.contains(name));
    }

    private void use(String name, Tree place) {
        read.add(name);
        if (bodies > 0) {
            inBodies.add(name);
        } else {
            firstAtTop.putIfAbsent(name, offset.applyAsInt(place));
        }
    }

    private void assign(ExpressionTree target) {
        Tree place = target;
        while (place instanceof com.sun.source.tree.ParenthesizedTree inner) {
            place = inner.getExpression();
        }
        if (place instanceof IdentifierTree identifier
                && !isLocal(identifier.getName().toString())) {
            assigned.add(identifier.getName().toString());
            if (bodies > 0) {
                assignedInBodies.add(identifier.getName().toString());
            }
        }
    }

    @Override
    public @Nullable Void visitIdentifier(IdentifierTree tree, @Nullable Void unused) {
        String name = tree.getName().toString();
        if (!isLocal(name)) {
            use(name, tree);
        }
        return null;
    }

    @Override
    public @Nullable Void visitMethodInvocation(MethodInvocationTree tree, @Nullable Void unused) {
        if (tree.getMethodSelect() instanceof IdentifierTree identifier) {
            String name = identifier.getName().toString();
            if (methods.stream().noneMatch(names -> names.contains(name))) {
                called.add(name);
            }
        } else {
            scan(tree.getMethodSelect(), null);
        }
        scan(tree.getTypeArguments(), null);
        return scan(tree.getArguments(), null);
    }

    @Override
    public @Nullable Void visitMemberSelect(MemberSelectTree tree, @Nullable Void unused) {
        return scan(tree.getExpression(), null);
    }

    @Override
    public @Nullable Void visitVariable(VariableTree tree, @Nullable Void unused) {
        scan(tree.getModifiers(), null);
        scan(tree.getType(), null);
        scopes.getFirst().add(tree.getName().toString());
        return scan(tree.getInitializer(), null);
    }

    @Override
    public @Nullable Void visitAssignment(AssignmentTree tree, @Nullable Void unused) {
        assign(tree.getVariable());
        return super.visitAssignment(tree, null);
    }

    @Override
    public @Nullable Void visitCompoundAssignment(CompoundAssignmentTree tree, @Nullable Void unused) {
        assign(tree.getVariable());
        return super.visitCompoundAssignment(tree, null);
    }

    @Override
    public @Nullable Void visitUnary(UnaryTree tree, @Nullable Void unused) {
        switch (tree.getKind()) {
            case PREFIX_INCREMENT, PREFIX_DECREMENT, POSTFIX_INCREMENT, POSTFIX_DECREMENT ->
                assign(tree.getExpression());
            default -> {}
        }
        return super.visitUnary(tree, null);
    }

    @Override
    public @Nullable Void visitBlock(BlockTree tree, @Nullable Void unused) {
        inScope(() -> super.visitBlock(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitForLoop(ForLoopTree tree, @Nullable Void unused) {
        inScope(() -> super.visitForLoop(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitEnhancedForLoop(EnhancedForLoopTree tree, @Nullable Void unused) {
        inScope(() -> {
            scan(tree.getExpression(), null);
            scan(tree.getVariable(), null);
            scan(tree.getStatement(), null);
        });
        return null;
    }

    @Override
    public @Nullable Void visitTry(TryTree tree, @Nullable Void unused) {
        inScope(() -> super.visitTry(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitCatch(CatchTree tree, @Nullable Void unused) {
        inScope(() -> super.visitCatch(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitCase(CaseTree tree, @Nullable Void unused) {
        inScope(() -> super.visitCase(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitLambdaExpression(LambdaExpressionTree tree, @Nullable Void unused) {
        inBody(() -> super.visitLambdaExpression(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitMethod(MethodTree tree, @Nullable Void unused) {
        inBody(() -> super.visitMethod(tree, null));
        return null;
    }

    @Override
    public @Nullable Void visitClass(ClassTree tree, @Nullable Void unused) {
        Set<String> declared = new LinkedHashSet<>();
        scopes.getFirst().add(tree.getSimpleName().toString());
        inBody(() -> {
            for (Tree member : tree.getMembers()) {
                if (member instanceof MethodTree method) {
                    declared.add(method.getName().toString());
                } else if (member instanceof VariableTree field) {
                    scopes.getFirst().add(field.getName().toString());
                    staticState |= isStaticState(tree, field);
                } else if (member instanceof ClassTree nested) {
                    scopes.getFirst().add(nested.getSimpleName().toString());
                } else if (member instanceof BlockTree block && block.isStatic()) {
                    staticState = true;
                }
            }
            methods.push(declared);
            super.visitClass(tree, null);
            methods.pop();
        });
        return null;
    }

    /** Static fields keep state between runs, but for constants of primitive numbers and text. */
    private static boolean isStaticState(ClassTree owner, VariableTree field) {
        boolean enumConstant = owner.getKind() == Tree.Kind.ENUM
                && field.getType() instanceof IdentifierTree type
                && type.getName().equals(owner.getSimpleName());
        boolean isStatic =
                field.getModifiers().getFlags().contains(Modifier.STATIC) || owner.getKind() == Tree.Kind.INTERFACE;
        boolean constant = field.getModifiers().getFlags().contains(Modifier.FINAL)
                && (field.getType() instanceof com.sun.source.tree.PrimitiveTypeTree
                        || String.valueOf(field.getType()).equals("String"));
        return isStatic && !enumConstant && !constant;
    }
}

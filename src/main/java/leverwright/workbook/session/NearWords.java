package leverwright.workbook.session;

import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.IdentifierTree;
import com.sun.source.tree.MemberSelectTree;
import com.sun.source.tree.Scope;
import com.sun.source.tree.Tree;
import com.sun.source.util.JavacTask;
import com.sun.source.util.SourcePositions;
import com.sun.source.util.TreePath;
import com.sun.source.util.TreePathScanner;
import com.sun.source.util.Trees;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeMirror;
import org.jspecify.annotations.Nullable;

/** Finds names that are spelt much like one that the compiler does not know, among those that could stand there. */
final class NearWords {

    private static final int MOST = 3;

    private final JavacTask task;
    private final Trees trees;
    private final CompilationUnitTree unit;

    /** Takes a unit that was analysed. */
    NearWords(JavacTask task, CompilationUnitTree unit) {
        this.task = task;
        this.trees = Trees.instance(task);
        this.unit = unit;
    }

    /**
     * Returns the nearest names, best first; empty when nothing is near.
     *
     * @param position an offset in the unit's source inside or just before the unknown name
     * @param name the unknown name
     * @param kind what the compiler took it for: class, method, variable
     */
    List<String> near(long position, String name, String kind) {
        TreePath path = find(position, name);
        if (path == null) {
            return List.of();
        }
        Map<String, Integer> distances = new LinkedHashMap<>();
        for (Element element : candidates(path)) {
            String other = element.getSimpleName().toString();
            boolean fits = fits(element.getKind(), kind);
            if (fits && !other.contains("$") && !other.equals(name)) {
                int distance = distance(name.toLowerCase(Locale.ROOT), other.toLowerCase(Locale.ROOT));
                if (distance <= Math.max(1, name.length() / 3)) {
                    distances.merge(other, distance, Math::min);
                }
            }
        }
        return distances.entrySet().stream()
                .sorted(Map.Entry.<String, Integer>comparingByValue()
                        .thenComparing(each -> distance(name, each.getKey()))
                        .thenComparing(each -> !letters(name).equals(letters(each.getKey())))
                        .thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST)
                .map(Map.Entry::getKey)
                .toList();
    }

    private static boolean fits(ElementKind found, String wanted) {
        boolean isType = found.isClass() || found.isInterface();
        return switch (wanted) {
            case "method" -> found == ElementKind.METHOD;
            case "variable" ->
                isType || found.isField() || found == ElementKind.LOCAL_VARIABLE || found == ElementKind.PARAMETER;
            default -> isType;
        };
    }

    private @Nullable TreePath find(long position, String name) {
        SourcePositions positions = trees.getSourcePositions();
        TreePath[] found = new TreePath[1];
        new TreePathScanner<@Nullable Void, @Nullable Void>() {
            private void look(Tree tree, String here) {
                if (here.equals(name)
                        && positions.getStartPosition(unit, tree) <= position
                        && position <= positions.getEndPosition(unit, tree)) {
                    found[0] = getCurrentPath();
                }
            }

            @Override
            public @Nullable Void visitIdentifier(IdentifierTree tree, @Nullable Void unused) {
                look(tree, tree.getName().toString());
                return super.visitIdentifier(tree, null);
            }

            @Override
            public @Nullable Void visitMemberSelect(MemberSelectTree tree, @Nullable Void unused) {
                look(tree, tree.getIdentifier().toString());
                return super.visitMemberSelect(tree, null);
            }
        }.scan(unit, null);
        return found[0];
    }

    private Iterable<? extends Element> candidates(TreePath path) {
        if (path.getLeaf() instanceof MemberSelectTree select) {
            TypeMirror type = trees.getTypeMirror(new TreePath(path, select.getExpression()));
            if (!(type instanceof DeclaredType declared) || !(declared.asElement() instanceof TypeElement owner)) {
                return List.of();
            }
            return task.getElements().getAllMembers(owner).stream()
                    .filter(member -> member.getModifiers().contains(Modifier.PUBLIC))
                    .toList();
        }
        return inScopes(trees.getScope(path));
    }

    private static List<Element> inScopes(Scope innermost) {
        List<Element> all = new ArrayList<>();
        for (Scope scope = innermost; scope != null; scope = scope.getEnclosingScope()) {
            for (Element element : scope.getLocalElements()) {
                all.add(element);
            }
            TypeElement around = scope.getEnclosingClass();
            if (around != null) {
                all.addAll(around.getEnclosedElements());
            }
        }
        return all;
    }

    private static List<Integer> letters(String name) {
        return name.chars().sorted().boxed().toList();
    }

    /** How many letters must be put in, left out, changed or swapped with their neighbour. */
    static int distance(String one, String other) {
        int[][] rows = new int[one.length() + 1][other.length() + 1];
        for (int i = 0; i <= one.length(); i++) {
            for (int j = 0; j <= other.length(); j++) {
                rows[i][j] = i == 0 || j == 0 ? i + j : step(rows, one, other, i, j);
            }
        }
        return rows[one.length()][other.length()];
    }

    private static int step(int[][] rows, String one, String other, int i, int j) {
        int same = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
        int least = Math.min(Math.min(rows[i - 1][j], rows[i][j - 1]) + 1, rows[i - 1][j - 1] + same);
        boolean swapped =
                i > 1 && j > 1 && one.charAt(i - 1) == other.charAt(j - 2) && one.charAt(i - 2) == other.charAt(j - 1);
        return swapped ? Math.min(least, rows[i - 2][j - 2] + 1) : least;
    }
}

import com.sun.source.doctree.DocCommentTree;
import com.sun.source.doctree.DocTree;
import com.sun.source.doctree.LinkTree;
import com.sun.source.doctree.LiteralTree;
import com.sun.source.doctree.ParamTree;
import com.sun.source.doctree.ReturnTree;
import com.sun.source.doctree.TextTree;
import com.sun.source.tree.ClassTree;
import com.sun.source.tree.CompilationUnitTree;
import com.sun.source.tree.MethodTree;
import com.sun.source.tree.ModifiersTree;
import com.sun.source.tree.Tree;
import com.sun.source.tree.VariableTree;
import com.sun.source.util.DocTrees;
import com.sun.source.util.JavacTask;
import com.sun.source.util.TreePath;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.lang.model.element.Modifier;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;

/**
 * Writes the index of what a cell may say: every public member of the packages that the gate allows, with signature and the
 * sentences of its Javadoc. Run by the build before the classes are packed; does nothing when the index is newer than all it
 * is made of.
 *
 * <p>Arguments: the folder of the sources, the folder of the resources, the file to write. One line for each type and member,
 * fields parted by tabs:
 *
 * <pre>
 * type    package  name  kind  supertypes, parted by blanks  sentence
 * method  owner  name  return type  parameters: type name, parted by ";"  static  word  sentence  what it returns  name=sentence, parted by "|"
 * field   owner  name  type  static  word  sentence
 * </pre>
 */
final class MakeIndex {

    private static final Pattern IMPORT = Pattern.compile("\"import (static )?(leverwright[\\w.]+)\\.(\\w+|\\*);\"");

    private final DocTrees docs;
    private final Map<String, Set<String>> words;
    private final Map<String, String> lines = new TreeMap<>();

    private MakeIndex(DocTrees docs, Map<String, Set<String>> words) {
        this.docs = docs;
        this.words = words;
    }

    public static void main(String[] arguments) throws IOException {
        Path sources = Path.of(arguments[0]);
        Path target = Path.of(arguments[2]);
        Path allowed = Path.of(arguments[1], "leverwright", "run", "gate", "allowed.txt");
        Path imports = sources.resolve(Path.of("leverwright", "workbook", "session", "CellImports.java"));
        List<Path> files = files(sources, allowed);
        List<Path> inputs = new ArrayList<>(files);
        inputs.add(allowed);
        inputs.add(imports);
        inputs.add(Path.of("src", "build", "MakeIndex.java"));
        if (isNewer(target, inputs)) {
            return;
        }
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        try (StandardJavaFileManager manager =
                compiler.getStandardFileManager(null, Locale.ROOT, StandardCharsets.UTF_8)) {
            JavacTask task = (JavacTask) compiler.getTask(
                    null, manager, null, List.of("-proc:none"), null, manager.getJavaFileObjectsFromPaths(files));
            MakeIndex index = new MakeIndex(DocTrees.instance(task), words(imports));
            for (CompilationUnitTree unit : task.parse()) {
                for (Tree type : unit.getTypeDecls()) {
                    if (type instanceof ClassTree each) {
                        index.type(new TreePath(new TreePath(unit), each), "");
                    }
                }
            }
            Files.createDirectories(target.toAbsolutePath().getParent());
            Files.writeString(target, String.join("\n", index.lines.values()) + "\n");
        }
    }

    private static boolean isNewer(Path target, List<Path> inputs) throws IOException {
        if (!Files.exists(target)) {
            return false;
        }
        FileTime made = Files.getLastModifiedTime(target);
        for (Path input : inputs) {
            if (Files.getLastModifiedTime(input).compareTo(made) >= 0) {
                return false;
            }
        }
        return true;
    }

    /** Returns the sources of the packages that the gate allows, less the classes that it does not. */
    private static List<Path> files(Path sources, Path allowed) throws IOException {
        List<Path> files = new ArrayList<>();
        Set<String> not = new LinkedHashSet<>();
        List<String> rules = Files.readAllLines(allowed);
        rules.stream().filter(rule -> rule.startsWith("not leverwright.")).forEach(rule -> not.add(rule.substring(4)));
        for (String rule : rules) {
            if (rule.startsWith("package leverwright.")) {
                String name = rule.substring("package ".length()).strip();
                Path folder = sources.resolve(name.replace('.', '/'));
                if (!Files.isDirectory(folder)) {
                    continue;
                }
                try (Stream<Path> all = Files.list(folder)) {
                    all.filter(file -> file.toString().endsWith(".java"))
                            .filter(file -> !file.endsWith("package-info.java"))
                            .filter(file -> !not.contains(
                                    name + "." + file.getFileName().toString().replace(".java", "")))
                            .sorted()
                            .forEach(files::add);
                }
            }
        }
        return files;
    }

    /** Returns the static members that a cell says without their class: class to names, an asterisk for all. */
    private static Map<String, Set<String>> words(Path imports) throws IOException {
        Map<String, Set<String>> words = new LinkedHashMap<>();
        Matcher each = IMPORT.matcher(Files.readString(imports));
        while (each.find()) {
            if (each.group(1) != null) {
                String type = each.group(2).substring(each.group(2).lastIndexOf('.') + 1);
                words.computeIfAbsent(type, name -> new LinkedHashSet<>()).add(each.group(3));
            }
        }
        return words;
    }

    private boolean isWord(String owner, String name) {
        Set<String> names = words.getOrDefault(owner, Set.of());
        return names.contains("*") || names.contains(name);
    }

    private void type(TreePath path, String outer) {
        ClassTree type = (ClassTree) path.getLeaf();
        if (!type.getModifiers().getFlags().contains(Modifier.PUBLIC) && outer.isEmpty()) {
            // What is public in a hidden class is inherited by those that extend it.
            if (type.getKind() != Tree.Kind.CLASS && type.getKind() != Tree.Kind.INTERFACE) {
                return;
            }
        }
        String name = outer + type.getSimpleName();
        List<String> supertypes = new ArrayList<>();
        if (type.getExtendsClause() != null) {
            supertypes.add(plain(type.getExtendsClause()));
        }
        type.getImplementsClause().forEach(each -> supertypes.add(plain(each)));
        String home = String.valueOf(path.getCompilationUnit().getPackageName());
        DocCommentTree doc = docs.getDocCommentTree(path);
        put(
                name + " ",
                "type",
                home,
                name,
                type.getKind().name().toLowerCase(Locale.ROOT),
                String.join(" ", supertypes),
                sentence(doc));
        boolean everyMember = type.getKind() == Tree.Kind.INTERFACE;
        int number = 0;
        for (Tree member : type.getMembers()) {
            TreePath place = new TreePath(path, member);
            number++;
            if (member instanceof MethodTree method && isPublic(method.getModifiers(), everyMember)) {
                method(place, name, method, number);
            } else if (member instanceof VariableTree field) {
                field(place, name, type, field, everyMember, doc, number);
            } else if (member instanceof ClassTree nested && isPublic(nested.getModifiers(), everyMember)) {
                type(place, name + ".");
            }
        }
    }

    private static boolean isPublic(ModifiersTree modifiers, boolean everyMember) {
        return modifiers.getFlags().contains(Modifier.PUBLIC)
                || (everyMember && !modifiers.getFlags().contains(Modifier.PRIVATE));
    }

    private void method(TreePath place, String owner, MethodTree method, int number) {
        boolean constructor = method.getReturnType() == null;
        String name = constructor
                ? owner.substring(owner.lastIndexOf('.') + 1)
                : method.getName().toString();
        DocCommentTree doc = docs.getDocCommentTree(place);
        String returns = constructor ? name : text(method.getReturnType());
        String parameters =
                method.getParameters().stream().map(MakeIndex::parameter).collect(Collectors.joining(";"));
        boolean isStatic = constructor || method.getModifiers().getFlags().contains(Modifier.STATIC);
        boolean word = !constructor && isStatic && isWord(owner, name);
        String returned = "";
        List<String> told = new ArrayList<>();
        if (doc != null) {
            for (DocTree tag : doc.getBlockTags()) {
                if (tag instanceof ReturnTree result) {
                    returned = words(result.getDescription());
                } else if (tag instanceof ParamTree parameter && !parameter.isTypeParameter()) {
                    told.add(parameter.getName() + "="
                            + words(parameter.getDescription()).replace('|', '/'));
                }
            }
        }
        put(
                owner + " " + name + " " + String.format(Locale.ROOT, "%04d", number),
                "method",
                owner,
                name,
                returns,
                parameters,
                isStatic ? "static" : "",
                word ? "word" : "",
                sentence(doc),
                returned,
                String.join("|", told));
    }

    private static String parameter(VariableTree parameter) {
        String type = text(parameter.getType());
        boolean many = parameter.toString().contains("...") && type.endsWith("[]");
        return (many ? type.substring(0, type.length() - 2) + "..." : type) + " " + parameter.getName();
    }

    private void field(
            TreePath place,
            String owner,
            ClassTree type,
            VariableTree field,
            boolean everyMember,
            DocCommentTree typeDoc,
            int number) {
        String name = field.getName().toString();
        boolean component = type.getKind() == Tree.Kind.RECORD
                && !field.getModifiers().getFlags().contains(Modifier.STATIC);
        boolean constant = type.getKind() == Tree.Kind.ENUM
                && field.getType() != null
                && text(field.getType()).equals(type.getSimpleName().toString())
                && field.getModifiers().getFlags().contains(Modifier.PUBLIC);
        String key = owner + " " + name + " " + String.format(Locale.ROOT, "%04d", number);
        if (component) {
            String sentence = typeDoc == null
                    ? ""
                    : typeDoc.getBlockTags().stream()
                            .filter(tag -> tag instanceof ParamTree parameter
                                    && parameter.getName().toString().equals(name))
                            .map(tag -> words(((ParamTree) tag).getDescription()))
                            .findFirst()
                            .orElse("");
            put(key, "method", owner, name, text(field.getType()), "", "", "", sentence, "", "");
        } else if (constant || isPublic(field.getModifiers(), everyMember)) {
            boolean isStatic =
                    constant || everyMember || field.getModifiers().getFlags().contains(Modifier.STATIC);
            put(
                    key,
                    "field",
                    owner,
                    name,
                    text(field.getType()),
                    isStatic ? "static" : "",
                    isStatic && isWord(owner, name) ? "word" : "",
                    sentence(docs.getDocCommentTree(place)));
        }
    }

    private void put(String key, String... fields) {
        lines.put(
                key,
                Stream.of(fields)
                        .map(field -> field.replaceAll("[\\t\\n\\r]+", " "))
                        .collect(Collectors.joining("\t")));
    }

    /** Returns a type as a reader writes it: without annotations and packages. */
    private static String text(Tree type) {
        return type == null
                ? ""
                : type.toString()
                        .replaceAll("@\\w+(\\([^)]*\\))?\\s*", "")
                        .replaceAll("\\b(?:[a-z]\\w*\\.)+(?=[A-Z])", "")
                        .replaceAll("\\s+", " ")
                        .strip();
    }

    private static String plain(Tree type) {
        return text(type).replaceAll("<.*", "");
    }

    private static String sentence(DocCommentTree doc) {
        return doc == null ? "" : words(doc.getFirstSentence());
    }

    private static String words(List<? extends DocTree> parts) {
        StringBuilder words = new StringBuilder();
        for (DocTree part : parts) {
            if (part instanceof TextTree text) {
                words.append(text.getBody());
            } else if (part instanceof LiteralTree literal) {
                words.append(literal.getBody().getBody());
            } else if (part instanceof LinkTree link) {
                words.append(
                        link.getLabel().isEmpty()
                                ? link.getReference()
                                        .getSignature()
                                        .replaceAll("^.*#", "")
                                        .replaceAll("\\(.*", "")
                                : words(link.getLabel()));
            } else if (part.getKind() == DocTree.Kind.ENTITY) {
                words.append(part.toString()
                        .replace("&lt;", "<")
                        .replace("&gt;", ">")
                        .replace("&amp;", "&"));
            }
        }
        return words.toString().replaceAll("\\s+", " ").strip();
    }
}

package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.commons.ClassRemapper;
import org.objectweb.asm.commons.Remapper;

/**
 * Takes a cell's class out of the classes that JShell wrapped around it. JShell compiles {@code REPL.$JShell$7$B1$B2$Cell_c}:
 * a class of its own, the classes that bind names from above, and inside them the cell. Here the cell becomes {@code
 * REPL.Cell_c}, the binding classes become the cells that they extend, and lines count from the source that was handed to
 * JShell.
 */
final class ShellClasses {

    private final String wrapper;
    private final String inside;
    private final String cell;
    private final int lineShift;
    private final Map<String, byte[]> wrapped;
    private final Remapper names;

    private ShellClasses(
            Map<String, byte[]> wrapped, String wrapper, String inside, String cell, Map<String, String> wraps) {
        this.wrapped = wrapped;
        this.wrapper = wrapper;
        this.inside = inside;
        this.cell = cell;
        this.names = new Remapper(Opcodes.ASM9) {
            @Override
            public String map(String name) {
                return renamed(name, wraps);
            }
        };
        this.lineShift = firstLine(wrapped.get(inside)) - 1;
    }

    /**
     * Returns the classes of a cell by their names with dots.
     *
     * @param wrapped the classes as JShell compiled them, by their names with slashes
     * @param simpleName the simple name of the cell's class
     * @param wraps the simple names of the binding classes, from the outermost in, each with the class it extends
     * @throws IllegalStateException when the cell's class is not among them
     */
    static Map<String, byte[]> of(Map<String, byte[]> wrapped, String simpleName, Map<String, String> wraps) {
        String inside = wrapped.keySet().stream()
                .filter(name -> name.endsWith("$" + simpleName) && isWrapped(name, wraps))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("JShell compiled no class " + simpleName));
        Map<String, String> full = new LinkedHashMap<>();
        String wrapper = inside.substring(0, inside.indexOf('$', inside.indexOf("$JShell$") + 8));
        String prefix = wrapper;
        for (Map.Entry<String, String> wrap : wraps.entrySet()) {
            prefix = prefix + "$" + wrap.getKey();
            full.put(prefix, wrap.getValue().replace('.', '/'));
        }
        ShellClasses classes = new ShellClasses(wrapped, wrapper, inside, "REPL/" + simpleName, full);
        return classes.all();
    }

    private static boolean isWrapped(String name, Map<String, String> wraps) {
        return name.startsWith("REPL/$JShell$")
                && name.chars().filter(each -> each == '$').count() == 3L + wraps.size();
    }

    private String renamed(String name, Map<String, String> wraps) {
        // JShell's own class is asked whether assertions are on
        if (name.equals(inside) || name.equals(wrapper)) {
            return cell;
        }
        if (isHelper(name)) {
            return cell + "$outer" + name.substring(wrapper.length() + 1);
        }
        if (name.startsWith(inside + "$")) {
            return cell + name.substring(inside.length());
        }
        return wraps.getOrDefault(name, name);
    }

    /** Tells whether the compiler made a class for the cell and put it into JShell's own, as for switches over enums. */
    private boolean isHelper(String name) {
        return name.startsWith(wrapper + "$")
                && name.substring(wrapper.length() + 1).matches("\\d+");
    }

    private Map<String, byte[]> all() {
        Map<String, byte[]> result = new LinkedHashMap<>();
        List<String> members = new ArrayList<>();
        wrapped.keySet().stream()
                .filter(name -> name.startsWith(inside + "$") || isHelper(name))
                .forEach(members::add);
        for (Map.Entry<String, byte[]> each : wrapped.entrySet()) {
            if (each.getKey().equals(inside) || members.contains(each.getKey())) {
                result.put(names.map(each.getKey()).replace('/', '.'), renamed(each.getValue(), members));
            }
        }
        return result;
    }

    private byte[] renamed(byte[] bytes, List<String> members) {
        ClassReader reader = new ClassReader(bytes);
        ClassWriter writer = new ClassWriter(0);
        reader.accept(new ClassRemapper(Opcodes.ASM9, new Own(writer, members), names) {}, 0);
        return writer.toByteArray();
    }

    /** The line of the cell's class at which its first method stands: that method is the first line handed to JShell. */
    private static int firstLine(byte @Nullable [] bytes) {
        int[] line = {1};
        new ClassReader(bytes)
                .accept(
                        new ClassVisitor(Opcodes.ASM9) {
                            @Override
                            public @Nullable MethodVisitor visitMethod(
                                    int access, String name, String type, String signature, String[] thrown) {
                                return name.equals(CellSources.FIRST_LINE)
                                        ? new MethodVisitor(Opcodes.ASM9) {
                                            @Override
                                            public void visitLineNumber(int number, Label start) {
                                                line[0] = number;
                                            }
                                        }
                                        : null;
                            }
                        },
                        0);
        return line[0];
    }

    /** Writes a class as if it had never been wrapped; names are those after the renaming. */
    private final class Own extends ClassVisitor {
        private final List<String> members;
        private String name = "";

        Own(ClassVisitor next, List<String> members) {
            super(Opcodes.ASM9, next);
            this.members = members;
        }

        @Override
        public void visit(int version, int access, String own, String signature, String parent, String[] interfaces) {
            name = own;
            super.visit(version, access, own, signature, parent, interfaces);
            if (own.equals(cell)) {
                members.forEach(member -> super.visitNestMember(names.map(member)));
            }
        }

        @Override
        public void visitNestHost(String host) {
            if (!name.equals(cell)) {
                super.visitNestHost(cell);
            }
        }

        @Override
        public void visitNestMember(String member) {
            // told from the list of members, since JShell's own class is the host of its nest
        }

        @Override
        public void visitOuterClass(String owner, @Nullable String method, @Nullable String type) {
            if (!owner.startsWith("REPL/$JShell$")) {
                super.visitOuterClass(owner, method, type);
            }
        }

        @Override
        public void visitInnerClass(String inner, @Nullable String outer, @Nullable String simple, int access) {
            if (!inner.equals(cell) && !inner.startsWith("REPL/$JShell$")) {
                super.visitInnerClass(inner, outer, simple, access);
            }
        }

        @Override
        public @Nullable MethodVisitor visitMethod(
                int access, String method, String type, String signature, String[] thrown) {
            if (name.equals(cell) && method.equals(CellSources.FIRST_LINE)) {
                return null;
            }
            MethodVisitor next = super.visitMethod(access, method, type, signature, thrown);
            return new MethodVisitor(Opcodes.ASM9, next) {
                @Override
                public void visitLineNumber(int line, Label start) {
                    super.visitLineNumber(Math.max(1, line - lineShift), start);
                }
            };
        }
    }
}

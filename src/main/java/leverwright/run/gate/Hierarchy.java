package leverwright.run.gate;

import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/**
 * Finds the class that declares a member. Classes of cells are known by their bytes and never loaded here; the house's
 * and Java's own are looked at without running them.
 */
final class Hierarchy {

    /** What is known of a class: what it extends and declares. Members are name and descriptor in one text. */
    private record Known(@Nullable String parent, List<String> interfaces, Set<String> members) {}

    private static final Known UNKNOWN = new Known(null, List.of(), Set.of());

    private final Map<String, Known> cells = new LinkedHashMap<>();
    private final Map<String, Known> others = new LinkedHashMap<>();

    /** Takes note of a cell's class, in place of one of the same name. */
    void learn(byte[] bytes) {
        ClassReader reader = new ClassReader(bytes);
        Set<String> members = new LinkedHashSet<>();
        reader.accept(
                new ClassVisitor(Opcodes.ASM9) {
                    @Override
                    public @Nullable FieldVisitor visitField(
                            int access, String name, String descriptor, String signature, Object value) {
                        members.add(name + descriptor);
                        return null;
                    }

                    @Override
                    public @Nullable MethodVisitor visitMethod(
                            int access, String name, String descriptor, String signature, String[] exceptions) {
                        members.add(name + descriptor);
                        return null;
                    }
                },
                ClassReader.SKIP_CODE | ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
        cells.put(reader.getClassName(), new Known(reader.getSuperName(), List.of(reader.getInterfaces()), members));
    }

    /** Returns the class, with slashes, that declares the member; the class itself when none is found to do so. */
    String declaring(String owner, String name, String descriptor) {
        String found = find(owner, name + descriptor, new LinkedHashSet<>());
        if (found == null && !name.equals("<init>") && declares("java/lang/Object", name + descriptor)) {
            return "java/lang/Object";
        }
        return found == null ? owner : found;
    }

    private @Nullable String find(String type, String member, Set<String> seen) {
        if (!seen.add(type)) {
            return null;
        }
        Known known = known(type);
        if (known.members().contains(member)) {
            return type;
        }
        String parent = known.parent();
        String found = parent == null ? null : find(parent, member, seen);
        for (String each : known.interfaces()) {
            if (found == null) {
                found = find(each, member, seen);
            }
        }
        return found;
    }

    private boolean declares(String type, String member) {
        return known(type).members().contains(member);
    }

    private Known known(String type) {
        Known cell = cells.get(type);
        return cell != null ? cell : others.computeIfAbsent(type, Hierarchy::look);
    }

    private static Known look(String type) {
        try {
            Class<?> loaded = Class.forName(type.replace('/', '.'), false, Hierarchy.class.getClassLoader());
            Set<String> members = new LinkedHashSet<>();
            for (Method method : loaded.getDeclaredMethods()) {
                members.add(method.getName() + Type.getMethodDescriptor(method));
            }
            for (Constructor<?> constructor : loaded.getDeclaredConstructors()) {
                members.add("<init>" + Type.getConstructorDescriptor(constructor));
            }
            for (Field field : loaded.getDeclaredFields()) {
                members.add(field.getName() + Type.getDescriptor(field.getType()));
            }
            Class<?> parent = loaded.getSuperclass();
            List<String> interfaces = List.of(loaded.getInterfaces()).stream()
                    .map(Type::getInternalName)
                    .toList();
            return new Known(parent == null ? null : Type.getInternalName(parent), interfaces, members);
        } catch (ClassNotFoundException | LinkageError e) {
            return UNKNOWN;
        }
    }
}

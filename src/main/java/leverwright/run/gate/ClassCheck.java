package leverwright.run.gate;

import java.util.Set;
import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Shows everything a class uses to the rules, then passes the class on. */
final class ClassCheck extends ClassVisitor {

    private static final Set<String> STREAM_HOOKS =
            Set.of("readObject", "writeObject", "readResolve", "writeReplace", "readObjectNoData", "readExternal");

    private final Rules rules;
    private final IntUnaryOperator lines;

    ClassCheck(Rules rules, IntUnaryOperator lines, ClassVisitor next) {
        super(Opcodes.ASM9, next);
        this.rules = rules;
        this.lines = lines;
    }

    @Override
    public void visit(
            int version, int access, String name, @Nullable String signature, String parent, String[] interfaces) {
        rules.at(0);
        if (!name.startsWith(Gate.CELLS)) {
            rules.refuse("a class outside the cell", "declare it in the cell");
        }
        rules.subclassOf(parent);
        for (String each : interfaces) {
            rules.subclassOf(each);
        }
        super.visit(version, access, name, signature, parent, interfaces);
    }

    @Override
    public @Nullable AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
        rules.type(Type.getType(descriptor));
        return super.visitAnnotation(descriptor, visible);
    }

    @Override
    public @Nullable FieldVisitor visitField(
            int access, String name, String descriptor, @Nullable String signature, @Nullable Object value) {
        rules.type(Type.getType(descriptor));
        return super.visitField(access, name, descriptor, signature, value);
    }

    @Override
    public @Nullable MethodVisitor visitMethod(
            int access, String name, String descriptor, @Nullable String signature, String @Nullable [] exceptions) {
        rules.at(0);
        rules.methodType(descriptor);
        if ((access & Opcodes.ACC_NATIVE) != 0) {
            rules.refuse("native methods", "write the method in Java");
        }
        if ((access & Opcodes.ACC_SYNCHRONIZED) != 0) {
            rules.refuse("synchronized", "leave it out; a cell runs on one thread");
        }
        if (name.equals("finalize") && descriptor.equals("()V")) {
            rules.refuse("finalize", "leave it out");
        }
        if (STREAM_HOOKS.contains(name)) {
            rules.refuse("the method name " + name, "give the method another name");
        }
        MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
        return next == null ? null : new MethodCheck(rules, lines, next);
    }
}

package leverwright.run.gate;

import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** Rewrites a class: stop checks in every method, and Java's members whose digits or order vary replaced by ours. */
final class ClassWeaver extends ClassVisitor {

    ClassWeaver(ClassVisitor next) {
        super(Opcodes.ASM9, next);
    }

    @Override
    public void visit(
            int version, int access, String name, @Nullable String signature, String parent, String[] interfaces) {
        super.visit(version, access, name, signature, Replacements.type(parent), interfaces);
    }

    @Override
    public @Nullable MethodVisitor visitMethod(
            int access, String name, String descriptor, @Nullable String signature, String @Nullable [] exceptions) {
        MethodVisitor next = super.visitMethod(access, name, descriptor, signature, exceptions);
        return next == null ? null : new MethodWeaver(next, !name.equals("<init>"));
    }
}

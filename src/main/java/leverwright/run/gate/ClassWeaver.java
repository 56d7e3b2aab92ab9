package leverwright.run.gate;

import org.jspecify.annotations.Nullable;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.FieldVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Rewrites a class: stop checks in every method, and Java's members whose digits or order vary replaced by ours. What is
 * not private becomes public, since cells that share a package in the script may be loaded by different class loaders.
 */
final class ClassWeaver extends ClassVisitor {

    ClassWeaver(ClassVisitor next) {
        super(Opcodes.ASM9, next);
    }

    @Override
    public void visit(
            int version, int access, String name, @Nullable String signature, String parent, String[] interfaces) {
        super.visit(version, opened(access), name, signature, Replacements.type(parent), interfaces);
    }

    private static int opened(int access) {
        return (access & Opcodes.ACC_PRIVATE) != 0 ? access : (access & ~Opcodes.ACC_PROTECTED) | Opcodes.ACC_PUBLIC;
    }

    @Override
    public @Nullable FieldVisitor visitField(
            int access, String name, String descriptor, @Nullable String signature, @Nullable Object value) {
        return super.visitField(opened(access), name, descriptor, signature, value);
    }

    @Override
    public @Nullable MethodVisitor visitMethod(
            int access, String name, String descriptor, @Nullable String signature, String @Nullable [] exceptions) {
        MethodVisitor next = super.visitMethod(
                name.equals("<clinit>") ? access : opened(access), name, descriptor, signature, exceptions);
        return next == null ? null : new MethodWeaver(next, !name.equals("<init>"));
    }
}

package leverwright.run.gate;

import java.util.LinkedHashSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Rewrites one method. A stop check stands at its start, before every jump backward, and at the start of every catch
 * that could swallow the stop; a size check stands before every array.
 */
final class MethodWeaver extends MethodVisitor {

    private static final Set<String> CATCHES_STOP = Set.of("java/lang/Throwable", "java/lang/Error");

    private final boolean checkAtStart;
    private final Set<Label> seen = new LinkedHashSet<>();
    private final Set<Label> handlers = new LinkedHashSet<>();
    private boolean checkDue;

    MethodWeaver(MethodVisitor next, boolean checkAtStart) {
        super(Opcodes.ASM9, next);
        this.checkAtStart = checkAtStart;
    }

    private void check() {
        super.visitMethodInsn(Opcodes.INVOKESTATIC, Replacements.STOP_CHECK, "check", "()V", false);
    }

    /** Comes before every instruction: writes the check that a catch owes. */
    private void due() {
        if (checkDue) {
            checkDue = false;
            check();
        }
    }

    @Override
    public void visitCode() {
        super.visitCode();
        if (checkAtStart) {
            check();
        }
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, @Nullable String type) {
        if (type == null || CATCHES_STOP.contains(type)) {
            handlers.add(handler);
        }
        super.visitTryCatchBlock(start, end, handler, type);
    }

    @Override
    public void visitLabel(Label label) {
        seen.add(label);
        if (handlers.contains(label)) {
            checkDue = true;
        }
        super.visitLabel(label);
    }

    @Override
    public void visitJumpInsn(int opcode, Label label) {
        due();
        if (seen.contains(label)) {
            check();
        }
        super.visitJumpInsn(opcode, label);
    }

    @Override
    public void visitTableSwitchInsn(int min, int max, Label standard, Label... labels) {
        due();
        check();
        super.visitTableSwitchInsn(min, max, standard, labels);
    }

    @Override
    public void visitLookupSwitchInsn(Label standard, int[] keys, Label[] labels) {
        due();
        check();
        super.visitLookupSwitchInsn(standard, keys, labels);
    }

    @Override
    public void visitInsn(int opcode) {
        due();
        super.visitInsn(opcode);
    }

    @Override
    public void visitIntInsn(int opcode, int operand) {
        due();
        if (opcode == Opcodes.NEWARRAY) {
            checkSize();
        }
        super.visitIntInsn(opcode, operand);
    }

    private void checkSize() {
        super.visitMethodInsn(Opcodes.INVOKESTATIC, Replacements.STOP_CHECK, "size", "(I)I", false);
    }

    @Override
    public void visitVarInsn(int opcode, int variable) {
        due();
        super.visitVarInsn(opcode, variable);
    }

    @Override
    public void visitIincInsn(int variable, int increment) {
        due();
        super.visitIincInsn(variable, increment);
    }

    @Override
    public void visitLdcInsn(Object value) {
        due();
        super.visitLdcInsn(value);
    }

    @Override
    public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
        due();
        super.visitMultiANewArrayInsn(descriptor, dimensions);
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
        due();
        super.visitFieldInsn(opcode, owner, name, descriptor);
    }

    @Override
    public void visitTypeInsn(int opcode, String type) {
        due();
        if (opcode == Opcodes.ANEWARRAY) {
            checkSize();
        }
        super.visitTypeInsn(opcode, opcode == Opcodes.NEW ? Replacements.type(type) : type);
    }

    @Override
    public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
        due();
        switch (opcode) {
            case Opcodes.INVOKESTATIC -> callStatic(owner, name, descriptor, isInterface);
            case Opcodes.INVOKESPECIAL -> callSpecial(owner, name, descriptor, isInterface);
            default -> callInstance(opcode, owner, name, descriptor, isInterface);
        }
    }

    private void callStatic(String owner, String name, String descriptor, boolean isInterface) {
        Replacements.Target target = Replacements.ofStatic(owner, name, descriptor);
        if (target == null) {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, owner, name, descriptor, isInterface);
        } else {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, target.owner(), target.name(), descriptor, false);
        }
    }

    private void callSpecial(String owner, String name, String descriptor, boolean isInterface) {
        if (name.equals("<init>") && descriptor.equals("()V") && SeededCalls.isGenerator(owner)) {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, Replacements.SEEDED, "nextSeed", "()J", false);
            super.visitMethodInsn(Opcodes.INVOKESPECIAL, owner, name, "(J)V", false);
        } else if (owner.equals("java/lang/Object") && name.equals("toString")) {
            Replacements.Target target = Replacements.plainName();
            super.visitMethodInsn(
                    Opcodes.INVOKESTATIC,
                    target.owner(),
                    target.name(),
                    "(Ljava/lang/Object;)Ljava/lang/String;",
                    false);
        } else {
            super.visitMethodInsn(Opcodes.INVOKESPECIAL, Replacements.type(owner), name, descriptor, isInterface);
        }
    }

    private void callInstance(int opcode, String owner, String name, String descriptor, boolean isInterface) {
        Replacements.Target target = Replacements.ofInstance(owner, name, descriptor);
        if (target == null) {
            super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
        } else {
            super.visitMethodInsn(
                    Opcodes.INVOKESTATIC,
                    target.owner(),
                    target.name(),
                    Replacements.withObject(owner, name, descriptor),
                    false);
        }
    }

    @Override
    public void visitInvokeDynamicInsn(String name, String descriptor, Handle bootstrap, Object... arguments) {
        due();
        if (bootstrap.getOwner().equals("java/lang/runtime/ObjectMethods") && name.equals("toString")) {
            Replacements.Target target = Replacements.recordText();
            super.visitMethodInsn(
                    Opcodes.INVOKESTATIC,
                    target.owner(),
                    target.name(),
                    "(Ljava/lang/Object;)Ljava/lang/String;",
                    false);
            return;
        }
        Object[] replaced = arguments.clone();
        for (int i = 0; i < replaced.length; i++) {
            if (replaced[i] instanceof Handle handle) {
                replaced[i] = replace(handle);
            }
        }
        super.visitInvokeDynamicInsn(name, descriptor, bootstrap, replaced);
    }

    private static Handle replace(Handle handle) {
        String owner = handle.getOwner();
        Replacements.Target target = switch (handle.getTag()) {
            case Opcodes.H_INVOKESTATIC -> Replacements.ofStatic(owner, handle.getName(), handle.getDesc());
            case Opcodes.H_INVOKEVIRTUAL, Opcodes.H_INVOKEINTERFACE ->
                Replacements.ofInstance(owner, handle.getName(), handle.getDesc());
            default -> null;
        };
        if (target != null) {
            boolean wasStatic = handle.getTag() == Opcodes.H_INVOKESTATIC;
            String descriptor =
                    wasStatic ? handle.getDesc() : Replacements.withObject(owner, handle.getName(), handle.getDesc());
            return new Handle(Opcodes.H_INVOKESTATIC, target.owner(), target.name(), descriptor, false);
        }
        if (handle.getTag() == Opcodes.H_NEWINVOKESPECIAL) {
            return new Handle(
                    handle.getTag(),
                    Replacements.type(owner),
                    handle.getName(),
                    handle.getDesc(),
                    handle.isInterface());
        }
        return handle;
    }
}

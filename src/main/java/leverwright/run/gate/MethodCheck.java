package leverwright.run.gate;

import java.util.function.IntUnaryOperator;
import org.jspecify.annotations.Nullable;
import org.objectweb.asm.AnnotationVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Shows everything a method uses to the rules, gives its lines the numbers of the script, and passes it on. */
final class MethodCheck extends MethodVisitor {

    private final Rules rules;
    private final IntUnaryOperator lines;

    MethodCheck(Rules rules, IntUnaryOperator lines, MethodVisitor next) {
        super(Opcodes.ASM9, next);
        this.rules = rules;
        this.lines = lines;
    }

    @Override
    public void visitLineNumber(int line, Label start) {
        int scriptLine = lines.applyAsInt(line);
        rules.at(scriptLine);
        if (scriptLine > 0) {
            super.visitLineNumber(scriptLine, start);
        }
    }

    @Override
    public @Nullable AnnotationVisitor visitAnnotation(String descriptor, boolean visible) {
        rules.type(Type.getType(descriptor));
        return super.visitAnnotation(descriptor, visible);
    }

    @Override
    public void visitTypeInsn(int opcode, String type) {
        rules.typeNamed(type);
        super.visitTypeInsn(opcode, type);
    }

    @Override
    public void visitMultiANewArrayInsn(String descriptor, int dimensions) {
        rules.type(Type.getType(descriptor));
        super.visitMultiANewArrayInsn(descriptor, dimensions);
    }

    @Override
    public void visitFieldInsn(int opcode, String owner, String name, String descriptor) {
        rules.field(owner, name, descriptor);
        super.visitFieldInsn(opcode, owner, name, descriptor);
    }

    @Override
    public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
        rules.method(opcode, owner, name, descriptor);
        super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
    }

    @Override
    public void visitInvokeDynamicInsn(String name, String descriptor, Handle bootstrap, Object... arguments) {
        rules.methodType(descriptor);
        rules.bootstrap(bootstrap, arguments);
        super.visitInvokeDynamicInsn(name, descriptor, bootstrap, arguments);
    }

    @Override
    public void visitLdcInsn(Object value) {
        rules.constant(value);
        super.visitLdcInsn(value);
    }

    @Override
    public void visitTryCatchBlock(Label start, Label end, Label handler, @Nullable String type) {
        if (type != null) {
            rules.typeNamed(type);
        }
        super.visitTryCatchBlock(start, end, handler, type);
    }

    @Override
    public void visitInsn(int opcode) {
        if (opcode == Opcodes.MONITORENTER) {
            rules.refuse("synchronized", "leave it out; a cell runs on one thread");
        }
        super.visitInsn(opcode);
    }
}

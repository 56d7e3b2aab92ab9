package leverwright.run.gate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.ConstantDynamic;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** What no Java source can say, but a class file can. */
class GateTest {

    private final Gate stranger = new Gate(AllowList.standard(), false);
    private final Gate trusted = new Gate(AllowList.standard(), true);

    private interface Body {
        void write(MethodVisitor method);
    }

    private static Map<String, byte[]> classWith(String name, Body body) {
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_MAXS);
        writer.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, name, null, "java/lang/Object", null);
        MethodVisitor method = writer.visitMethod(Opcodes.ACC_STATIC, "run", "()V", null, null);
        method.visitCode();
        body.write(method);
        method.visitInsn(Opcodes.RETURN);
        method.visitMaxs(0, 0);
        method.visitEnd();
        writer.visitEnd();
        Map<String, byte[]> classes = new LinkedHashMap<>();
        classes.put(name.replace('/', '.'), writer.toByteArray());
        return classes;
    }

    private static String refusals(Gate gate, Map<String, byte[]> classes) {
        StringBuilder words = new StringBuilder();
        gate.pass("a", classes, line -> line)
                .refusals()
                .forEach(each -> words.append(each.message()).append('\n'));
        return words.toString();
    }

    @Test
    void classOutsideTheCellsIsRefusedEvenWhenTrusted() {
        assertTrue(refusals(trusted, classWith("java/util/Mine", method -> {})).contains("outside the cell"));
    }

    @Test
    void computedConstantIsRefusedEvenWhenTrusted() {
        Handle bootstrap = new Handle(
                Opcodes.H_INVOKESTATIC,
                "java/lang/invoke/ConstantBootstraps",
                "nullConstant",
                "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/Class;)Ljava/lang/Object;",
                false);
        Map<String, byte[]> classes = classWith("REPL/A", method -> {
            method.visitLdcInsn(new ConstantDynamic("x", "Ljava/lang/Object;", bootstrap));
            method.visitInsn(Opcodes.POP);
        });
        assertTrue(refusals(trusted, classes).contains("the computed constant x"));
    }

    @Test
    void otherBootstrapIsRefused() {
        Handle bootstrap = new Handle(
                Opcodes.H_INVOKESTATIC,
                "REPL/A",
                "make",
                "(Ljava/lang/invoke/MethodHandles$Lookup;Ljava/lang/String;Ljava/lang/invoke/MethodType;)"
                        + "Ljava/lang/invoke/CallSite;",
                false);
        Map<String, byte[]> classes =
                classWith("REPL/A", method -> method.visitInvokeDynamicInsn("x", "()V", bootstrap));
        assertTrue(refusals(trusted, classes).contains("bootstrap"));
    }

    @Test
    void handleToARefusedMethodIsRefused() {
        Map<String, byte[]> classes = classWith("REPL/A", method -> {
            method.visitLdcInsn(new Handle(Opcodes.H_INVOKESTATIC, "java/lang/System", "exit", "(I)V", false));
            method.visitInsn(Opcodes.POP);
        });
        assertTrue(refusals(stranger, classes).contains("java.lang.System.exit"), refusals(stranger, classes));
    }

    @Test
    void ownStopCheckCannotBeNamed() {
        Map<String, byte[]> classes = classWith(
                "REPL/A",
                method -> method.visitMethodInsn(
                        Opcodes.INVOKESTATIC, "leverwright/run/gate/woven/StopCheck", "clear", "()V", false));
        assertTrue(refusals(stranger, classes).contains("StopCheck"), refusals(stranger, classes));
    }

    @Test
    void monitorIsRefusedEvenWhenTrusted() {
        Map<String, byte[]> classes = classWith("REPL/A", method -> {
            method.visitLdcInsn("lock");
            method.visitInsn(Opcodes.MONITORENTER);
        });
        assertTrue(refusals(trusted, classes).contains("synchronized"));
    }

    @Test
    void memberIsJudgedWhereItIsDeclared() {
        ClassWriter writer = new ClassWriter(0);
        writer.visit(Opcodes.V17, Opcodes.ACC_PUBLIC, "REPL/Y", null, "java/lang/Exception", null);
        writer.visitEnd();
        stranger.pass("a", Map.of("REPL.Y", writer.toByteArray()), line -> line);
        Map<String, byte[]> classes = classWith("REPL/B", method -> {
            method.visitInsn(Opcodes.ACONST_NULL);
            method.visitMethodInsn(Opcodes.INVOKEVIRTUAL, "REPL/Y", "printStackTrace", "()V", false);
        });
        String words = refusals(stranger, classes);
        assertTrue(words.contains("printStackTrace") && words.contains("getMessage()"), words);
        assertEquals("", refusals(trusted, classes));
    }
}

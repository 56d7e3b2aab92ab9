package leverwright.run.gate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassWriter;

/**
 * Checks and rewrites the classes of cells. A gate remembers the cells it has seen, so that a class of one cell that
 * extends a class of another is looked through.
 */
public final class Gate {

    /** The package, with slashes, that every class of a cell lives in: the one in which JShell compiles. */
    public static final String CELLS = "REPL/";

    private final AllowList allowed;
    private final boolean trusted;
    private final Hierarchy hierarchy = new Hierarchy();

    /**
     * Makes a gate.
     *
     * @param allowed what a cell may use
     * @param trusted whether the reader trusts the workbook: then the allow-list is lifted, and everything else stays
     */
    public Gate(AllowList allowed, boolean trusted) {
        this.allowed = allowed;
        this.trusted = trusted;
    }

    /**
     * Checks and rewrites the classes of one cell.
     *
     * @param cell the cell's id, for refusals
     * @param classes the compiled classes by name with dots
     * @param lines gives the line of the script for a line of the compiled source; 0 where the script has none
     * @return the refusals, or the rewritten classes
     */
    public GateResult pass(String cell, Map<String, byte[]> classes, IntUnaryOperator lines) {
        classes.values().forEach(hierarchy::learn);
        Rules rules = new Rules(cell, allowed, trusted, hierarchy);
        Map<String, byte[]> rewritten = new LinkedHashMap<>();
        classes.forEach((name, bytes) -> {
            ClassReader reader = new ClassReader(bytes);
            ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
            reader.accept(new ClassCheck(rules, lines, new ClassWeaver(writer)), 0);
            rewritten.put(name, writer.toByteArray());
        });
        List<Refusal> refusals = rules.refusals();
        return refusals.isEmpty() ? new GateResult(List.of(), rewritten) : new GateResult(refusals, Map.of());
    }
}

package leverwright.workbook.session;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A cell that compiled and passed the gate.
 *
 * @param parsed the script with its names
 * @param raw its classes as compiled, for the cells below to compile against
 * @param woven its classes as rewritten by the gate, for the worker
 * @param immutable those of its top-level variables whose types cannot change
 * @param shape what the cells below compile against; while it stays they need no compiling
 * @param imports the imports it wrote, which hold for the cells below too
 */
record CompiledCell(
        ParsedCell parsed,
        Map<String, byte[]> raw,
        Map<String, byte[]> woven,
        Set<String> immutable,
        String shape,
        List<String> imports) {}

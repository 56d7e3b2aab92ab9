package leverwright.workbook.session;

import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What compiling a cell came to, as it is kept between starts of the program: everything but what the gate makes of it.
 *
 * @param parsed the script with its names
 * @param key what the cell was compiled from: its text, its imports, and the shapes of the cells that it reads from
 * @param raw its classes as compiled, by name with dots
 * @param immutable those of its top-level variables whose types cannot change
 * @param shape what the cells below compile against
 * @param imports the imports it wrote
 */
record KeptCell(
        ParsedCell parsed,
        String key,
        Map<String, byte[]> raw,
        Set<String> immutable,
        String shape,
        List<String> imports) {

    static KeptCell of(String key, CompiledCell compiled) {
        return new KeptCell(
                compiled.parsed(), key, compiled.raw(), compiled.immutable(), compiled.shape(), compiled.imports());
    }

    /** Returns whether compiling the cell again came to the same. */
    boolean isSame(CompiledCell again) {
        if (!again.parsed().equals(parsed)
                || !again.immutable().equals(immutable)
                || !again.shape().equals(shape)
                || !again.imports().equals(imports)
                || !again.raw().keySet().equals(raw.keySet())) {
            return false;
        }
        return raw.entrySet().stream()
                .allMatch(each ->
                        java.util.Arrays.equals(each.getValue(), again.raw().get(each.getKey())));
    }
}

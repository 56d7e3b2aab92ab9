package leverwright.run.worker;

import java.util.Map;
import leverwright.run.gate.AllowList;
import org.jspecify.annotations.Nullable;

/**
 * Defines the classes of some cells. Which loader has another cell's class stands in a register that loaders share, and
 * in which the newest has the word; Java's and the house's classes come from the worker, by the gate's own list again,
 * as a second line.
 */
final class CellLoader extends ClassLoader {

    private static final String CELLS = "REPL.";

    private final Map<String, byte[]> bytes;
    private final Map<String, CellLoader> register;
    private final @Nullable AllowList allowed;

    CellLoader(Map<String, byte[]> bytes, Map<String, CellLoader> register, @Nullable AllowList allowed) {
        super(CellLoader.class.getClassLoader());
        this.bytes = bytes;
        this.register = register;
        this.allowed = allowed;
    }

    /** Gives this loader the word on its classes. */
    void register() {
        bytes.keySet().forEach(name -> register.put(name, this));
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        if (name.startsWith(CELLS)) {
            return loadCell(name);
        }
        if (!isAllowed(name.replace('.', '/'))) {
            throw new ClassNotFoundException("a cell may not use " + name);
        }
        return super.loadClass(name, resolve);
    }

    private synchronized Class<?> loadCell(String name) throws ClassNotFoundException {
        Class<?> loaded = findLoadedClass(name);
        if (loaded != null) {
            return loaded;
        }
        byte[] own = bytes.get(name);
        if (own != null) {
            return defineClass(name, own, 0, own.length);
        }
        CellLoader other = register.get(name);
        if (other == null) {
            throw new ClassNotFoundException(name);
        }
        return other.loadClass(name, false);
    }

    /** Beside what a cell may name, what the gate weaves in and what Java itself needs to call a cell. */
    private boolean isAllowed(String name) {
        return allowed == null
                || allowed.allowsClass(name)
                || name.startsWith("leverwright/run/gate/woven/")
                || name.startsWith("leverwright/mechanics/numeric/")
                || name.startsWith("jdk/internal/reflect/")
                || name.startsWith("java/lang/invoke/")
                || name.startsWith("java/lang/runtime/");
    }
}

package leverwright.workbook.session;

import com.sun.source.util.JavacTask;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import javax.tools.DiagnosticListener;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;
import org.jspecify.annotations.Nullable;

/** Starts the Java compiler on sources in memory. A workbook whose cells were compiled before may never need it. */
final class Compilers {

    /** Java 17 whatever runs, so that a workbook means the same everywhere; concatenation inline, for the gate to see. */
    private static final List<String> FLAGS = List.of(
            "-proc:none",
            "-source",
            "17",
            "-target",
            "17",
            "-Xlint:none",
            "-Xlint:-options",
            "-XDstringConcat=inline",
            "-g:source,lines",
            "-implicit:none");

    private static final String NONE = "this Java has no compiler; install a JDK of version 17 or newer";

    private final List<String> options;

    /** The classes of cells that are compiled already, by name with dots. */
    private final Map<String, byte[]> known = Collections.synchronizedMap(new LinkedHashMap<>());

    private @Nullable CellFiles files;

    /**
     * Makes ready to compile.
     *
     * @throws IllegalStateException when this Java comes without a compiler
     */
    Compilers() {
        if (ModuleLayer.boot().findModule("jdk.compiler").isEmpty()) {
            throw new IllegalStateException(NONE);
        }
        options = new ArrayList<>(FLAGS);
        options.add("-classpath");
        options.add(classPath());
    }

    /** Finds the compiler; its classes are loaded by the first call and not before. */
    private static JavaCompiler compiler() {
        JavaCompiler found = ToolProvider.getSystemJavaCompiler();
        if (found == null) {
            throw new IllegalStateException(NONE);
        }
        return found;
    }

    /** Returns the class path of this process with every entry absolute. */
    static String classPath() {
        return Arrays.stream(System.getProperty("java.class.path", "").split(File.pathSeparator))
                .filter(entry -> !entry.isEmpty())
                .map(entry -> Path.of(entry).toAbsolutePath().toString())
                .collect(Collectors.joining(File.pathSeparator));
    }

    /** Returns the options that hold for JShell as for the compiler. */
    List<String> options() {
        return List.copyOf(options);
    }

    /** Returns the compiler's files, made when they are first asked for. */
    synchronized CellFiles files() {
        CellFiles made = files;
        if (made == null) {
            made = new CellFiles(compiler().getStandardFileManager(null, Locale.ENGLISH, null), known);
            files = made;
        }
        return made;
    }

    /** Makes classes of cells visible to the cells that are compiled next, in place of those of the same name. */
    void know(Map<String, byte[]> classes) {
        known.putAll(classes);
    }

    /** Hides a cell's classes. */
    void forget(String cellClass) {
        synchronized (known) {
            known.keySet().removeIf(name -> name.equals(cellClass) || name.startsWith(cellClass + "$"));
        }
    }

    JavacTask task(String className, String source, DiagnosticListener<JavaFileObject> listener) {
        return (JavacTask) compiler()
                .getTask(null, files(), listener, options, null, List.of(new CellFiles.Source(className, source)));
    }
}

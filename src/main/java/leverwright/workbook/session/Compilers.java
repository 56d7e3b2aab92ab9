package leverwright.workbook.session;

import com.sun.source.util.JavacTask;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.tools.DiagnosticListener;
import javax.tools.JavaCompiler;
import javax.tools.JavaFileObject;
import javax.tools.ToolProvider;

/** Starts the Java compiler on sources in memory. */
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

    private final JavaCompiler compiler;
    private final CellFiles files;
    private final List<String> options;

    /**
     * Finds the compiler.
     *
     * @throws IllegalStateException when this Java comes without one
     */
    Compilers() {
        JavaCompiler found = ToolProvider.getSystemJavaCompiler();
        if (found == null) {
            throw new IllegalStateException("this Java has no compiler; install a JDK of version 17 or newer");
        }
        compiler = found;
        files = new CellFiles(found.getStandardFileManager(null, Locale.ENGLISH, null));
        options = new ArrayList<>(FLAGS);
        options.add("-classpath");
        options.add(classPath());
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

    CellFiles files() {
        return files;
    }

    JavacTask task(String className, String source, DiagnosticListener<JavaFileObject> listener) {
        return (JavacTask) compiler.getTask(
                null, files, listener, options, null, List.of(new CellFiles.Source(className, source)));
    }
}

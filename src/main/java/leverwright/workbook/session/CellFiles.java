package leverwright.workbook.session;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.tools.FileObject;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;

/** The compiler's files: sources and classes of cells in memory, Java's and the house's classes from the class path. */
final class CellFiles extends ForwardingJavaFileManager<StandardJavaFileManager> {

    private static final String CELLS = "cells";

    private final Map<String, byte[]> known = new LinkedHashMap<>();
    private final Map<String, byte[]> written = new LinkedHashMap<>();
    private final Map<String, List<JavaFileObject>> listings = new LinkedHashMap<>();

    CellFiles(StandardJavaFileManager files) {
        super(files);
    }

    /** Makes classes of cells visible to the cells that are compiled next, in place of those of the same name. */
    void know(Map<String, byte[]> classes) {
        known.putAll(classes);
    }

    /** Hides a cell's classes. */
    void forget(String cellClass) {
        known.keySet().removeIf(name -> name.equals(cellClass) || name.startsWith(cellClass + "$"));
    }

    /** Returns and forgets the classes written since the last call. */
    Map<String, byte[]> takeWritten() {
        Map<String, byte[]> taken = new LinkedHashMap<>(written);
        written.clear();
        return taken;
    }

    @Override
    public Iterable<JavaFileObject> list(
            JavaFileManager.Location location, String packageName, Set<JavaFileObject.Kind> kinds, boolean recurse)
            throws IOException {
        if (packageName.equals(CELLS)) {
            List<JavaFileObject> classes = new ArrayList<>();
            if (location == StandardLocation.CLASS_PATH && kinds.contains(JavaFileObject.Kind.CLASS)) {
                known.forEach((name, bytes) -> classes.add(new KnownClass(name, bytes)));
            }
            return classes;
        }
        String key = location.getName() + " " + packageName + " " + kinds + " " + recurse;
        List<JavaFileObject> listed = listings.get(key);
        if (listed == null) {
            listed = new ArrayList<>();
            super.list(location, packageName, kinds, recurse).forEach(listed::add);
            listings.put(key, listed);
        }
        return listed;
    }

    @Override
    public String inferBinaryName(JavaFileManager.Location location, JavaFileObject file) {
        return file instanceof KnownClass cell ? cell.name : super.inferBinaryName(location, file);
    }

    @Override
    public JavaFileObject getJavaFileForOutput(
            JavaFileManager.Location location, String className, JavaFileObject.Kind kind, FileObject sibling) {
        return new SimpleJavaFileObject(uri(className, kind), kind) {
            @Override
            public OutputStream openOutputStream() {
                return new ByteArrayOutputStream() {
                    @Override
                    public void close() {
                        written.put(className, toByteArray());
                    }
                };
            }
        };
    }

    private static URI uri(String name, JavaFileObject.Kind kind) {
        return URI.create("memory:///" + name.replace('.', '/') + kind.extension);
    }

    /** The source of a cell. */
    static final class Source extends SimpleJavaFileObject {
        private final String text;

        Source(String className, String text) {
            super(uri(className, JavaFileObject.Kind.SOURCE), JavaFileObject.Kind.SOURCE);
            this.text = text;
        }

        @Override
        public CharSequence getCharContent(boolean ignoreEncodingErrors) {
            return text;
        }
    }

    /** A class of a cell that is compiled already. */
    private static final class KnownClass extends SimpleJavaFileObject {
        private final String name;
        private final byte[] bytes;

        KnownClass(String name, byte[] bytes) {
            super(uri(name, JavaFileObject.Kind.CLASS), JavaFileObject.Kind.CLASS);
            this.name = name;
            this.bytes = bytes;
        }

        @Override
        public InputStream openInputStream() {
            return new ByteArrayInputStream(bytes);
        }
    }
}

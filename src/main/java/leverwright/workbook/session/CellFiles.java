package leverwright.workbook.session;

import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.net.URI;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import javax.tools.ForwardingJavaFileManager;
import javax.tools.JavaFileManager;
import javax.tools.JavaFileObject;
import javax.tools.SimpleJavaFileObject;
import javax.tools.StandardJavaFileManager;
import javax.tools.StandardLocation;

/** The compiler's files: sources and classes of cells in memory, Java's and the house's classes from the class path. */
final class CellFiles extends ForwardingJavaFileManager<StandardJavaFileManager> implements StandardJavaFileManager {

    private static final String CELLS = "REPL";

    private final Map<String, byte[]> known;
    private final Map<String, List<JavaFileObject>> listings;

    /** The names of listed classes: the compiler asks for all of them again with every source. */
    private final Map<JavaFileObject, String> names;

    /**
     * Makes files.
     *
     * @param files the compiler's own
     * @param known the classes of cells by name with dots, as they are compiled; a map that synchronizes on itself
     */
    CellFiles(StandardJavaFileManager files, Map<String, byte[]> known) {
        super(files);
        this.known = known;
        listings = new ConcurrentHashMap<>();
        names = new ConcurrentHashMap<>();
    }

    private CellFiles(StandardJavaFileManager files, CellFiles shared) {
        super(files);
        known = shared.known;
        listings = shared.listings;
        names = shared.names;
    }

    /** Returns files that know the same classes, for a compiler that runs on another thread. */
    CellFiles over(StandardJavaFileManager files) {
        return new CellFiles(files, this);
    }

    @Override
    public Iterable<JavaFileObject> list(
            JavaFileManager.Location location, String packageName, Set<JavaFileObject.Kind> kinds, boolean recurse)
            throws IOException {
        if (packageName.equals(CELLS)) {
            List<JavaFileObject> classes = new ArrayList<>();
            if (location == StandardLocation.CLASS_PATH && kinds.contains(JavaFileObject.Kind.CLASS)) {
                synchronized (known) {
                    known.forEach((name, bytes) -> classes.add(new KnownClass(name, bytes)));
                }
            }
            return classes;
        }
        String key = location.getName() + " " + packageName + " " + kinds + " " + recurse;
        List<JavaFileObject> listed = listings.get(key);
        if (listed == null) {
            listed = new ArrayList<>();
            for (JavaFileObject file : super.list(location, packageName, kinds, recurse)) {
                listed.add(file);
                String name = super.inferBinaryName(location, file);
                if (name != null) {
                    names.put(file, name);
                }
            }
            listings.put(key, listed);
        }
        return listed;
    }

    @Override
    public String inferBinaryName(JavaFileManager.Location location, JavaFileObject file) {
        if (file instanceof KnownClass cell) {
            return cell.name;
        }
        String name = names.get(file);
        return name == null ? super.inferBinaryName(location, file) : name;
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjectsFromFiles(Iterable<? extends File> files) {
        return fileManager.getJavaFileObjectsFromFiles(files);
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjects(File... files) {
        return fileManager.getJavaFileObjects(files);
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjectsFromStrings(Iterable<String> names) {
        return fileManager.getJavaFileObjectsFromStrings(names);
    }

    @Override
    public Iterable<? extends JavaFileObject> getJavaFileObjects(String... names) {
        return fileManager.getJavaFileObjects(names);
    }

    @Override
    public void setLocation(JavaFileManager.Location location, Iterable<? extends File> files) throws IOException {
        fileManager.setLocation(location, files);
    }

    @Override
    public Iterable<? extends File> getLocation(JavaFileManager.Location location) {
        return fileManager.getLocation(location);
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

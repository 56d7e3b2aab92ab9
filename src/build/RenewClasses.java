import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Collections;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Opcodes;

/**
 * Gives the classes of old jars the class-file version of Java 8 and the stack maps it asks for. What they do is
 * unchanged; but a class of a version before 50 is passed over by every class-data archive, and is read and verified anew at
 * each start. The program works without this too, so whatever goes wrong costs one line and never the build. Run by the package step with the packaged jars on the class path; a jar that is new enough is left alone.
 *
 * <p>Argument: the packaged folder of jars.
 */
final class RenewClasses {

    private static final int OLDEST_ARCHIVED = 50;

    private RenewClasses() {}

    public static void main(String[] arguments) throws IOException {
        Path lib = Path.of(arguments[0]);
        try (Stream<Path> files = Files.list(lib)) {
            List<Path> jars = files.filter(file -> file.toString().endsWith(".jar"))
                    .sorted()
                    .toList();
            for (Path jar : jars) {
                try {
                    if (isOld(jar)) {
                        renew(jar);
                    }
                } catch (IOException failure) {
                    System.out.println("The classes of " + jar + " stay old, it will start slower: " + failure);
                }
            }
        }
    }

    private static boolean isOld(Path file) throws IOException {
        try (JarFile jar = new JarFile(file.toFile(), false)) {
            for (JarEntry entry : Collections.list(jar.entries())) {
                if (isClass(entry) && version(bytes(jar, entry)) < OLDEST_ARCHIVED) {
                    return true;
                }
            }
            return false;
        }
    }

    private static void renew(Path file) throws IOException {
        Path renewed = file.resolveSibling(file.getFileName() + ".part");
        try (JarFile jar = new JarFile(file.toFile(), false);
                OutputStream stream = Files.newOutputStream(renewed);
                JarOutputStream out = new JarOutputStream(stream)) {
            for (JarEntry entry : Collections.list(jar.entries())) {
                byte[] bytes = bytes(jar, entry);
                JarEntry copy = new JarEntry(entry.getName());
                copy.setTime(entry.getTime());
                out.putNextEntry(copy);
                out.write(isClass(entry) && version(bytes) < OLDEST_ARCHIVED ? renewed(bytes) : bytes);
            }
        }
        Files.move(renewed, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static byte[] renewed(byte[] old) {
        ClassReader reader = new ClassReader(old);
        ClassWriter writer = new ClassWriter(ClassWriter.COMPUTE_FRAMES);
        reader.accept(
                new ClassVisitor(Opcodes.ASM9, writer) {
                    @Override
                    public void visit(
                            int version, int access, String name, String signature, String above, String[] interfaces) {
                        super.visit(Opcodes.V1_8, access, name, signature, above, interfaces);
                    }
                },
                ClassReader.SKIP_FRAMES);
        return writer.toByteArray();
    }

    private static boolean isClass(JarEntry entry) {
        return entry.getName().endsWith(".class") && !entry.getName().endsWith("module-info.class");
    }

    private static int version(byte[] bytes) {
        return ((bytes[6] & 0xff) << 8) | (bytes[7] & 0xff);
    }

    private static byte[] bytes(JarFile jar, JarEntry entry) throws IOException {
        try (InputStream stream = jar.getInputStream(entry)) {
            return stream.readAllBytes();
        }
    }
}

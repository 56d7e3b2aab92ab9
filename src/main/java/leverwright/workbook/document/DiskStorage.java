package leverwright.workbook.document;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.time.Duration;
import java.util.Collections;
import java.util.Set;

/** The file system of this computer. */
public final class DiskStorage implements Storage {

    private static final int MOST_LINKS = 40;

    @Override
    public Path target(Path path) throws IOException {
        Path current = path.toAbsolutePath().normalize();
        for (int followed = 0; Files.isSymbolicLink(current); followed++) {
            if (followed == MOST_LINKS) {
                throw new IOException("the link leads in a circle; name the file itself");
            }
            current = current.resolveSibling(Files.readSymbolicLink(current)).normalize();
        }
        return current;
    }

    @Override
    public boolean exists(Path path) {
        return Files.exists(path, LinkOption.NOFOLLOW_LINKS);
    }

    @Override
    public byte[] read(Path path, int mostBytes) throws IOException {
        if (Files.isDirectory(path)) {
            throw new IOException("this is a folder; name a workbook file");
        }
        long size = Files.size(path);
        if (size > mostBytes) {
            throw new FileTooLargeException(size, mostBytes);
        }
        try (InputStream stream = Files.newInputStream(path)) {
            byte[] bytes = stream.readNBytes(mostBytes);
            if (stream.read() >= 0) {
                throw new FileTooLargeException(mostBytes + 1L, mostBytes);
            }
            return bytes;
        }
    }

    @Override
    public OutputStream create(Path path, Path pattern) throws IOException {
        if (Files.exists(pattern) && isProtected(pattern)) {
            throw new IOException("the file is write-protected; save under another name or lift the protection");
        }
        OutputStream stream = Files.newOutputStream(path, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        try {
            takeOverPermissions(pattern, path);
            return stream;
        } catch (IOException failure) {
            stream.close();
            Files.deleteIfExists(path);
            throw failure;
        }
    }

    /** Tells whether nobody may write a file; a superuser could, and is still kept from it. */
    private static boolean isProtected(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        boolean noneMayWrite = view != null
                && Collections.disjoint(
                        view.readAttributes().permissions(),
                        Set.of(
                                PosixFilePermission.OWNER_WRITE,
                                PosixFilePermission.GROUP_WRITE,
                                PosixFilePermission.OTHERS_WRITE));
        return noneMayWrite || !Files.isWritable(file);
    }

    private static void takeOverPermissions(Path pattern, Path path) throws IOException {
        PosixFileAttributeView from = Files.getFileAttributeView(pattern, PosixFileAttributeView.class);
        PosixFileAttributeView to = Files.getFileAttributeView(path, PosixFileAttributeView.class);
        if (from != null && to != null && Files.exists(pattern)) {
            to.setPermissions(from.readAttributes().permissions());
        }
    }

    @Override
    public void force(Path path) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.WRITE)) {
            channel.force(true);
        }
    }

    @Override
    public void replace(Path from, Path to) throws IOException {
        Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
        forceFolder(to);
    }

    /** Makes the rename last through a power cut, where the system can; the rename itself has happened. */
    private static void forceFolder(Path file) {
        Path folder = file.getParent();
        if (folder == null) {
            return;
        }
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException unsupported) {
            // Some systems cannot open a folder (Windows); there the rename is on the disk when the system says so.
            return;
        }
    }

    @Override
    public void delete(Path path) throws IOException {
        Files.deleteIfExists(path);
    }

    @Override
    public void deleteStale(Path folder, String prefix, String suffix, Duration untouched) throws IOException {
        FileTime limit = FileTime.fromMillis(System.currentTimeMillis() - untouched.toMillis());
        DirectoryStream.Filter<Path> stale = file -> {
            String name = String.valueOf(file.getFileName());
            return name.startsWith(prefix)
                    && name.endsWith(suffix)
                    && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)
                    && Files.getLastModifiedTime(file).compareTo(limit) < 0;
        };
        try (DirectoryStream<Path> files = Files.newDirectoryStream(folder, stale)) {
            for (Path file : files) {
                Files.deleteIfExists(file);
            }
        } catch (DirectoryIteratorException broken) {
            throw broken.getCause();
        }
    }
}

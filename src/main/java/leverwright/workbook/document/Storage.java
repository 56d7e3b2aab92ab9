package leverwright.workbook.document;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.time.Duration;

/** The few things that a workbook needs of a file system. Everything that can fail in saving goes through here. */
public interface Storage {

    /**
     * Returns the file itself, with symbolic links followed; the path as it stands when it is no link. A link that leads
     * nowhere is followed to where the file would be.
     *
     * @param path the file as the user named it
     * @throws IOException when links cannot be followed
     */
    Path target(Path path) throws IOException;

    /**
     * Returns whether there is something at a path.
     *
     * @param path a path without links
     */
    boolean exists(Path path);

    /**
     * Returns the whole of a file.
     *
     * @param path a path without links
     * @param mostBytes how many bytes it may have; a larger one is refused before it is read
     * @throws FileTooLargeException when the file is larger
     * @throws IOException when the file cannot be read
     */
    byte[] read(Path path, int mostBytes) throws IOException;

    /**
     * Opens a new file that is to take another's place, with the same permissions where there are any to take over.
     *
     * @param path the new file; must not exist
     * @param pattern the file whose permissions are taken over when it exists
     * @throws IOException when the file cannot be made, or the other file is write-protected
     */
    OutputStream create(Path path, Path pattern) throws IOException;

    /**
     * Waits until a file is on the disk.
     *
     * @param path a file that was written and closed
     * @throws IOException when the disk refuses
     */
    void force(Path path) throws IOException;

    /**
     * Puts a file in another's place in one step: whoever looks sees the old one or the new one.
     *
     * @param from the new file
     * @param to the place; in the same folder
     * @throws IOException when the step did not happen
     */
    void replace(Path from, Path to) throws IOException;

    /**
     * Removes a file if it is there.
     *
     * @param path the file
     * @throws IOException when it cannot be removed
     */
    void delete(Path path) throws IOException;

    /**
     * Removes files that nobody has written to for a while.
     *
     * @param folder where
     * @param prefix how the names of such files begin
     * @param suffix how they end
     * @param untouched how long nobody has written to them
     * @throws IOException when the folder cannot be read or a file cannot be removed
     */
    void deleteStale(Path folder, String prefix, String suffix, Duration untouched) throws IOException;
}

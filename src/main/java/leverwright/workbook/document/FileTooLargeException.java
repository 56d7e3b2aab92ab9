package leverwright.workbook.document;

import java.io.IOException;

/** A file has more bytes than may be read. */
public final class FileTooLargeException extends IOException {

    private static final long serialVersionUID = 1L;

    /**
     * Makes the message.
     *
     * @param size the size of the file in bytes
     * @param most the greatest allowed size in bytes
     */
    public FileTooLargeException(long size, long most) {
        super("the file has " + size + " bytes; allowed are " + most
                + "; split the workbook or record fewer results; the file was left as it is");
    }
}

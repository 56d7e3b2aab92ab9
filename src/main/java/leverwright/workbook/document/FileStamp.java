package leverwright.workbook.document;

/**
 * The content of a file at one moment, so that a change by somebody else is noticed.
 *
 * @param digest the SHA-256 digest of the file's bytes, 64 hexadecimal digits
 */
public record FileStamp(String digest) {

    /**
     * Returns the stamp of some bytes.
     *
     * @param bytes the content of a file
     */
    public static FileStamp of(byte[] bytes) {
        return new FileStamp(Seal.sha256(bytes));
    }
}

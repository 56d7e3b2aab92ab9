package leverwright.workbook.session;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.net.URISyntaxException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.HexFormat;
import java.util.Optional;

/** Tells one build of the program from another. */
final class ProgramDigest {

    private static final int END = 22;
    private static final int END_SIGNATURE = 0x06054b50;
    private static final int SIZE_OF_TABLE = 12;

    private ProgramDigest() {}

    /**
     * Returns the digest of the table of contents of the program's jar, in which every class stands with its checksum; empty
     * when the program does not run from a jar.
     */
    static Optional<String> ofJar() {
        CodeSource source = ProgramDigest.class.getProtectionDomain().getCodeSource();
        if (source == null) {
            return Optional.empty();
        }
        try {
            Path jar = Path.of(source.getLocation().toURI());
            return jar.toString().endsWith(".jar") ? Optional.of(of(jar)) : Optional.empty();
        } catch (URISyntaxException | IOException | IllegalArgumentException unknown) {
            return Optional.empty();
        }
    }

    /** Returns the digest of a jar without a comment at its end, as the build makes it. */
    static String of(Path jar) throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(jar.toFile(), "r")) {
            byte[] end = new byte[END];
            file.seek(Math.max(0, file.length() - END));
            file.readFully(end);
            ByteBuffer numbers = ByteBuffer.wrap(end).order(ByteOrder.LITTLE_ENDIAN);
            long size = Integer.toUnsignedLong(numbers.getInt(SIZE_OF_TABLE));
            long start = file.length() - END - size;
            if (numbers.getInt(0) != END_SIGNATURE || start < 0 || size > Integer.MAX_VALUE) {
                throw new IOException("no table of contents at the end of " + jar);
            }
            byte[] table = new byte[(int) size];
            file.seek(start);
            file.readFully(table);
            return HexFormat.of().formatHex(CompiledCells.sha256(table));
        }
    }
}

package leverwright.run.wire;

import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.util.Arrays;
import org.jspecify.annotations.Nullable;

/** Reads messages from frames. For one thread. */
public final class FrameInput {

    private static final int CHUNK = 64 * 1024;

    private final InputStream in;
    private final Codec codec = new Codec();

    /**
     * Makes the input.
     *
     * @param in where the frames come from
     */
    public FrameInput(InputStream in) {
        this.in = in;
    }

    /**
     * Reads the next message.
     *
     * @return the message, or null when the other side has closed between two frames
     * @throws WireException when the bytes are no frame of the closed set, or end inside one
     * @throws IOException when reading fails
     */
    public @Nullable Message read() throws IOException {
        int first = in.read();
        if (first < 0) {
            return null;
        }
        byte[] rest = in.readNBytes(3);
        if (rest.length < 3) {
            throw new WireException("the stream ends inside the length of a frame");
        }
        int size = first << 24 | (rest[0] & 0xFF) << 16 | (rest[1] & 0xFF) << 8 | (rest[2] & 0xFF);
        if (size < 1 || size > WireLimits.FRAME_BYTES) {
            throw new WireException("a frame of " + size + " bytes is outside 1 to " + WireLimits.FRAME_BYTES);
        }
        return codec.read(new WireReader(readExactly(size), size));
    }

    /** Reads in steps, so that a length that lies costs no more memory than the bytes that came. */
    private byte[] readExactly(int size) throws IOException {
        byte[] bytes = new byte[Math.min(size, CHUNK)];
        int have = 0;
        while (have < size) {
            if (have == bytes.length) {
                bytes = Arrays.copyOf(bytes, (int) Math.min(size, 2L * bytes.length));
            }
            int count = in.read(bytes, have, bytes.length - have);
            if (count < 0) {
                throw new WireException("the stream ends inside a frame", new EOFException());
            }
            have += count;
        }
        return bytes;
    }
}

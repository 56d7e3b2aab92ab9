package leverwright.run.wire;

import java.io.IOException;
import java.io.OutputStream;

/** Writes messages as frames. Safe for several threads. */
public final class FrameOutput {

    private final OutputStream out;
    private final Codec codec = new Codec();
    private final WireWriter frame = new WireWriter();
    private boolean waiting;

    /**
     * Makes the output.
     *
     * @param out where the frames go; buffered for speed
     */
    public FrameOutput(OutputStream out) {
        this.out = out;
    }

    /**
     * Writes one message; it may wait in the buffer until {@link #flush()}.
     *
     * @param message the message
     * @throws WireException when the message is beyond the limits; nothing was written then
     * @throws IOException when the other side is gone
     */
    public synchronized void write(Message message) throws IOException {
        frame.clear();
        codec.write(frame, message);
        int size = frame.size();
        out.write(new byte[] {(byte) (size >>> 24), (byte) (size >>> 16), (byte) (size >>> 8), (byte) size});
        out.write(frame.array(), 0, size);
        waiting = true;
    }

    /**
     * Sends what waits.
     *
     * @throws IOException when the other side is gone
     */
    public synchronized void flush() throws IOException {
        if (waiting) {
            out.flush();
            waiting = false;
        }
    }
}

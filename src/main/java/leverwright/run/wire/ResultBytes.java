package leverwright.run.wire;

import java.util.Arrays;
import leverwright.run.result.Result;

/** The bytes of a result: equal exactly when the results are, doubles by their raw bits. */
public final class ResultBytes {

    private static final Shape RESULTS = new Shapes().of(Result.class);

    private ResultBytes() {}

    /**
     * Returns the bytes of a result.
     *
     * @param result the result
     * @throws IllegalArgumentException when it is beyond the limits of a frame
     */
    public static byte[] of(Result result) {
        WireWriter out = new WireWriter();
        try {
            RESULTS.write(out, result, 0);
        } catch (WireException e) {
            throw new IllegalArgumentException(e.getMessage(), e);
        }
        return Arrays.copyOf(out.array(), out.size());
    }

    /**
     * Returns the result that some bytes stand for.
     *
     * @param bytes the bytes
     * @throws WireException when they are no result
     */
    public static Result read(byte[] bytes) throws WireException {
        WireReader in = new WireReader(bytes, bytes.length);
        Result result = (Result) RESULTS.read(in, 0);
        if (in.left() > 0) {
            throw new WireException(in.left() + " bytes are left over after a result");
        }
        return result;
    }
}

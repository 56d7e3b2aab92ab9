package leverwright.run.wire;

import java.io.IOException;

/** A frame that is cut off, too large or not of the closed set. The process that sent it can no longer be trusted. */
public final class WireException extends IOException {
    private static final long serialVersionUID = 1;

    /**
     * Makes the exception.
     *
     * @param message what was wrong, with the value and the limit
     */
    public WireException(String message) {
        super(message);
    }

    /**
     * Makes the exception.
     *
     * @param message what was wrong
     * @param cause what was thrown inside
     */
    public WireException(String message, Throwable cause) {
        super(message, cause);
    }
}

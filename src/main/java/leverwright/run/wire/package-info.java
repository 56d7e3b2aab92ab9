/**
 * Frames between the session and the worker: length first, then one record of a closed set.
 *
 * <p>A frame is a four-byte length and that many bytes. Inside, a record is a tag and its components in their order;
 * doubles travel as raw bits, text as its characters, lists and arrays with their count first. There is no reflection
 * on names that arrive, no Java serialisation and no JSON: what arrives can only become one of the records that
 * {@link leverwright.run.wire.Message} and {@link leverwright.run.result.Result} list. Size, depth and count are
 * limited, and anything out of order is a {@link leverwright.run.wire.WireException}.
 *
 * <p>Units, frames and signs are those of the records; nothing is converted on the way.
 */
@NullMarked
package leverwright.run.wire;

import org.jspecify.annotations.NullMarked;

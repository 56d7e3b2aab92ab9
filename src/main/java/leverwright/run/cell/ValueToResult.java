package leverwright.run.cell;

import leverwright.run.result.Result;
import org.jspecify.annotations.Nullable;

/** Turns the value of a cell's last expression into a result. */
@FunctionalInterface
public interface ValueToResult {

    /**
     * Returns the result that shows a value, or null when there is nothing to show.
     *
     * @param value the value of the expression; may be null
     * @throws IllegalArgumentException when the value cannot be a result, for example because it is not finite
     */
    @Nullable
    Result toResult(@Nullable Object value);

    /** Returns the way every worker shows values: result builders show themselves, anything else is shown as text. */
    static ValueToResult standard() {
        return StandardValues::toResult;
    }
}

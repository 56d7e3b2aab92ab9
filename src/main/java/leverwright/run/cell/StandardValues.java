package leverwright.run.cell;

import leverwright.run.gate.woven.SameText;
import leverwright.run.result.Result;
import leverwright.run.result.TextResult;
import org.jspecify.annotations.Nullable;

/** Shows plain values as text. */
final class StandardValues {

    private StandardValues() {}

    static @Nullable Result toResult(@Nullable Object value) {
        if (value instanceof ResultBuilder) {
            return null;
        }
        return TextResult.of(SameText.of(value));
    }
}

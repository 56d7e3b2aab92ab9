package leverwright.workbook.session;

import java.util.List;

/** What every cell may say without an import of its own. */
final class CellImports {

    /** The imports, in the order in which the compiler sees them. */
    static final List<String> STANDARD =
            List.of("import java.util.*;", "import java.util.function.*;", "import java.util.stream.*;");

    private CellImports() {}
}

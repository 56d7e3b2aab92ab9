package leverwright.workbook.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Answers about the scripts of a sheet, as they last compiled. */
final class SheetAdvisor implements ScriptAdvisor, AutoCloseable {

    private final Sheet sheet;
    private final Compilers compilers;
    private volatile @Nullable Shell reader;

    SheetAdvisor(Sheet sheet, Compilers compilers) {
        this.sheet = sheet;
        this.compilers = compilers;
    }

    @Override
    public List<Suggestion> completions(String id, String text, int caret) {
        NamesAbove above = sheet.namesAbove(id);
        List<Suggestion> own = reader().suggestions(CaretSource.of(text, caret, above.classes()));
        Map<String, Suggestion> all = new LinkedHashMap<>();
        own.forEach(each -> all.put(each.text(), each));
        above.suggestions(text.substring(0, caret)).forEach(each -> all.putIfAbsent(each.text(), each));
        return List.copyOf(all.values());
    }

    @Override
    public List<String> signatures(String id, String text, int caret) {
        NamesAbove above = sheet.namesAbove(id);
        List<String> own = reader().signatures(CaretSource.of(text, caret, above.classes()));
        return own.isEmpty() ? above.signatures(text.substring(0, caret)) : own;
    }

    /**
     * Returns the JShell that is asked about scripts as they are written. It is another one than that which compiles: after a
     * snippet was dropped, JShell on newer JDKs tells no signatures any more.
     */
    private synchronized Shell reader() {
        Shell known = reader;
        if (known == null) {
            known = new Shell(compilers.files(), compilers.options());
            reader = known;
        }
        return known;
    }

    @Override
    public void close() {
        Shell asked = reader;
        if (asked != null) {
            asked.close();
        }
    }
}

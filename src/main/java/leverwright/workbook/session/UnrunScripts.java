package leverwright.workbook.session;

import java.util.List;
import leverwright.run.gate.AllowList;
import leverwright.run.gate.Gate;

/**
 * The scripts of a workbook that were not run: compiled, so that what they declare is known, and never loaded. There is no
 * worker, and nothing of them runs anywhere.
 */
public final class UnrunScripts implements ScriptAdvisor, AutoCloseable {

    private final Compilers compilers = new Compilers();
    private final ShellLater shell = new ShellLater(compilers);
    private final Sheet sheet = new Sheet(
            compilers,
            new CellCompiler(compilers, shell::get, new Gate(AllowList.standard(), false)),
            CompiledCells.none());
    private final SheetAdvisor advisor = new SheetAdvisor(sheet, compilers);

    /**
     * Makes the compiler ready.
     *
     * @throws IllegalStateException when this Java has no compiler
     */
    public UnrunScripts() {}

    /**
     * Compiles scripts, those that changed since the last time alone.
     *
     * @param scripts the script cells in order of the sheet
     * @throws IllegalArgumentException when two cells have the same id
     */
    public synchronized void take(List<CellScript> scripts) {
        if (!sheet.scripts().equals(scripts)) {
            sheet.take(scripts, (cell, changed) -> true);
        }
    }

    @Override
    public List<Suggestion> completions(String id, String text, int caret) {
        return advisor.completions(id, text, caret);
    }

    @Override
    public List<String> signatures(String id, String text, int caret) {
        return advisor.signatures(id, text, caret);
    }

    @Override
    public synchronized void close() {
        advisor.close();
        shell.close();
    }
}

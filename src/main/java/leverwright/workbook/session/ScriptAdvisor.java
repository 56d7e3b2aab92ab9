package leverwright.workbook.session;

import java.util.List;

/** Knows what may be written in the scripts of a workbook. From any thread. */
public interface ScriptAdvisor {

    /**
     * Returns what may be written at the caret of a cell that is being edited: names of the cell before the caret, of the
     * cells above as they last compiled, words and imports. Waits for one cell's compilation at most.
     *
     * @param id the cell's id; one that is not in the sheet stands below all
     * @param text the script as it is being written
     * @param caret the caret's offset in it
     * @throws IndexOutOfBoundsException when the caret lies outside the text
     */
    List<Suggestion> completions(String id, String text, int caret);

    /**
     * Returns the signatures of the method whose brackets the caret stands in, or of the name it stands behind; empty
     * when there is none. Waits for one cell's compilation at most.
     *
     * @param id the cell's id; one that is not in the sheet stands below all
     * @param text the script as it is being written
     * @param caret the caret's offset in it
     * @throws IndexOutOfBoundsException when the caret lies outside the text
     */
    List<String> signatures(String id, String text, int caret);
}

package leverwright.face.desk.editor;

import static javafx.scene.input.KeyCode.BACK_SPACE;
import static javafx.scene.input.KeyCode.ENTER;
import static javafx.scene.input.KeyCode.SLASH;
import static javafx.scene.input.KeyCode.TAB;
import static javafx.scene.input.KeyCombination.SHIFT_DOWN;
import static javafx.scene.input.KeyCombination.SHORTCUT_DOWN;
import static org.fxmisc.wellbehaved.event.EventPattern.keyPressed;
import static org.fxmisc.wellbehaved.event.EventPattern.keyTyped;
import static org.fxmisc.wellbehaved.event.InputMap.consume;
import static org.fxmisc.wellbehaved.event.InputMap.consumeWhen;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import javafx.scene.control.IndexRange;
import org.fxmisc.richtext.model.TwoDimensional.Bias;
import org.fxmisc.wellbehaved.event.Nodes;

/** What keys do in a script besides writing: indent, outdent, remarks, brackets that end a block. */
final class ScriptKeys {

    private final SourceArea area;

    private ScriptKeys(SourceArea area) {
        this.area = area;
    }

    static void on(SourceArea area) {
        ScriptKeys keys = new ScriptKeys(area);
        Nodes.addInputMap(area, consume(keyPressed(ENTER), key -> keys.breakLine()));
        Nodes.addInputMap(area, consume(keyPressed(TAB), key -> keys.indent()));
        Nodes.addInputMap(area, consume(keyPressed(TAB, SHIFT_DOWN), key -> keys.change(Lines::outdented)));
        Nodes.addInputMap(area, consume(keyPressed(SLASH, SHORTCUT_DOWN), key -> keys.change(Lines::toggled)));
        Nodes.addInputMap(
                area, consumeWhen(keyPressed(BACK_SPACE), keys::isInIndentation, key -> keys.deleteIndentation()));
        Nodes.addInputMap(area, consumeWhen(keyTyped("}"), keys::isOnBlankLine, key -> keys.closeBlock()));
    }

    private void breakLine() {
        IndexRange selection = area.getSelection();
        var start = area.offsetToPosition(selection.getStart(), Bias.Forward);
        var end = area.offsetToPosition(selection.getEnd(), Bias.Forward);
        String before = area.getText(start.getMajor()).substring(0, start.getMinor());
        String after = area.getText(end.getMajor()).substring(end.getMinor());
        Lines.Break made = Lines.lineBreak(before, after);
        area.replaceText(selection.getStart(), selection.getEnd(), made.text());
        area.moveTo(selection.getStart() + made.caret());
        area.requestFollowCaret();
    }

    private void indent() {
        IndexRange selection = area.getSelection();
        if (selection.getLength() > 0 && area.getSelectedText().contains("\n")) {
            change(Lines::indented);
            return;
        }
        int column = area.getCaretColumn();
        area.replaceSelection(" ".repeat(Lines.STEP - column % Lines.STEP));
    }

    /** Changes the lines that the selection touches and keeps them selected. */
    private void change(UnaryOperator<List<String>> how) {
        IndexRange selection = area.getSelection();
        int first = area.offsetToPosition(selection.getStart(), Bias.Forward).getMajor();
        var end = area.offsetToPosition(selection.getEnd(), Bias.Forward);
        boolean several = selection.getLength() > 0 && end.getMajor() > first;
        int last = several && end.getMinor() == 0 ? end.getMajor() - 1 : end.getMajor();
        List<String> lines = new ArrayList<>();
        for (int line = first; line <= last; line++) {
            lines.add(area.getText(line));
        }
        List<String> changed = how.apply(lines);
        if (changed.equals(lines)) {
            return;
        }
        int from = area.getAbsolutePosition(first, 0);
        int to = area.getAbsolutePosition(last, area.getParagraphLength(last));
        String text = String.join("\n", changed);
        int caret =
                area.getCaretPosition() + changed.get(0).length() - lines.get(0).length();
        area.replaceText(from, to, text);
        if (several) {
            area.selectRange(from, from + text.length());
        } else {
            area.moveTo(Math.max(from, Math.min(caret, from + text.length())));
        }
    }

    private boolean isInIndentation() {
        int column = area.getCaretColumn();
        String line = area.getText(area.getCurrentParagraph());
        return area.getSelection().getLength() == 0
                && column > 0
                && column % Lines.STEP == 0
                && line.substring(0, column).isBlank()
                && line.substring(column - Lines.STEP, column).equals(" ".repeat(Lines.STEP));
    }

    private void deleteIndentation() {
        int caret = area.getCaretPosition();
        area.deleteText(caret - Lines.STEP, caret);
    }

    private boolean isOnBlankLine() {
        String line = area.getText(area.getCurrentParagraph());
        return area.getSelection().getLength() == 0
                && line.isBlank()
                && line.length() >= Lines.STEP
                && area.getCaretColumn() == line.length();
    }

    private void closeBlock() {
        int caret = area.getCaretPosition();
        area.replaceText(caret - Lines.STEP, caret, "}");
    }
}

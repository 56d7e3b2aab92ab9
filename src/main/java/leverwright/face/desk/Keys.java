package leverwright.face.desk;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCombination;

/**
 * The keyboard map: every command of the window with its key. Keys for text are those that every program of the system
 * has. No key runs a script and goes on: scripts compute by themselves.
 */
enum Keys {
    NEW("Workbook", "New workbook", "Shortcut+N"),
    OPEN("Workbook", "Open…", "Shortcut+O"),
    SAVE("Workbook", "Save", "Shortcut+S"),
    SAVE_AS("Workbook", "Save as…", "Shortcut+Shift+S"),
    PUBLISH("Workbook", "Publish as a page…", "Shortcut+P"),
    CLOSE("Workbook", "Close", "Shortcut+W"),
    QUIT("Workbook", "Close all windows", "Shortcut+Q"),
    UNDO("Edit", "Undo", "Shortcut+Z"),
    REDO("Edit", "Do again", "Shortcut+Shift+Z"),
    FIND("Edit", "Find and replace…", "Shortcut+F"),
    ADD_SCRIPT("Edit", "New script below", "Shortcut+Shift+N"),
    ADD_NOTE("Edit", "New note below", "Shortcut+Shift+M"),
    MOVE_UP("Edit", "Move the cell up", "Shortcut+Shift+UP"),
    MOVE_DOWN("Edit", "Move the cell down", "Shortcut+Shift+DOWN"),
    DELETE_CELL("Edit", "Delete the cell", "Shortcut+Shift+DELETE"),
    FROM_THE_TOP("Compute", "Compute from the top", "Shortcut+Shift+T"),
    STOP("Compute", "Stop", "Shortcut+PERIOD"),
    RECHECK("Compute", "Recheck", "Shortcut+Shift+R"),
    HOLD("Compute", "Before / after: hold or let go", "Shortcut+Shift+B"),
    SWAP("Compute", "Swap before and after", "Shortcut+Shift+A"),
    RESET_DIALS("Compute", "Reset every dial", "Shortcut+Shift+D"),
    OUTLINE("View", "Go to the outline", "Shortcut+1"),
    SHEET("View", "Go to the sheet", "Shortcut+2"),
    DIALS("View", "Go to the dials", "Shortcut+3"),
    NEXT_PART("View", "Go to the next part of the window", "F6"),
    LARGER("View", "Larger text", "Shortcut+PLUS"),
    SMALLER("View", "Smaller text", "Shortcut+MINUS"),
    USUAL_SIZE("View", "Text of the usual size", "Shortcut+0"),
    BY_TASK("Help", "What do you want to compute?", "F1"),
    EXERCISES("Help", "Pick an exercise", "F2"),
    KEYS("Help", "Keys", "Shift+F1");

    private final String menu;
    private final String words;
    private final KeyCombination keys;

    Keys(String menu, String words, String keys) {
        this.menu = menu;
        this.words = words;
        this.keys = KeyCombination.keyCombination(keys);
    }

    /** The menu in which the command stands. */
    String menu() {
        return menu;
    }

    String words() {
        return words;
    }

    KeyCombination keys() {
        return keys;
    }

    /** Keys that belong to no menu: what, and which key. */
    record Other(String keys, String words) {}

    static List<Other> others() {
        List<Other> all = new ArrayList<>();
        all.add(new Other("F10 or Alt", "the menus"));
        all.add(new Other("Tab, Shift+Tab", "the next and the previous control"));
        all.add(new Other(
                "Ctrl+Tab, Ctrl+Shift+Tab",
                "the same, also out of a script or note, where Tab indents; or Escape, then Tab"));
        all.add(new Other("Ctrl+Space", "in a script: what could stand here, with its types"));
        all.add(new Other("F8", "in a script: to the error that is marked, with what is wrong"));
        all.add(new Other("F1", "in a script: what the word at the caret means; elsewhere, what to compute"));
        all.add(new Other("Ctrl+/", "in a script: make the lines a comment, or code again"));
        all.add(new Other("Left and Right", "on a dial: one step"));
        all.add(new Other("Page Up and Page Down", "on a dial: ten steps"));
        all.add(new Other("Home and End", "on a dial: the ends of its range"));
        all.add(new Other("Enter or Space", "in the outline: go to the cell"));
        all.add(new Other("Escape", "closes a list, find and replace, or what stands in place of the outline"));
        return all;
    }
}

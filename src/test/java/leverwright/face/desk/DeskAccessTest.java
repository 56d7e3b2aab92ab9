package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Everything can be reached by keyboard and has a role and a name for assistive technology. */
class DeskAccessTest extends AtTheWindow {

    private DeskWindow window;

    @BeforeEach
    void open() throws Exception {
        window = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(window.model());
    }

    @Test
    void everythingThatTakesTheFocusHasARoleAndAName() throws Exception {
        List<String> nameless = new ArrayList<>(nameless());
        for (Runnable pane : List.<Runnable>of(
                window::showTasks, window::showGlossary, window::showKeys, window::showWords, window::showTour)) {
            bench.doing(pane);
            Thread.sleep(100);
            nameless.addAll(nameless());
        }
        assertEquals(List.of(), nameless);
    }

    private List<String> nameless() throws Exception {
        // In one go: a script that wakes gives its place in the order of the focus and its role to the text within it.
        return bench.at(() -> {
            List<Node> controls = WindowThread.all(window.stage().getScene().getRoot())
                    .filter(node -> node.isFocusTraversable() && WindowThread.isShown(node))
                    .toList();
            assertTrue(controls.size() > 10, "only " + controls.size() + " controls");
            return controls.stream()
                    .filter(node -> hasNoRole(node) || name(node).isBlank())
                    .map(node -> node.getClass().getSimpleName() + " " + node.getStyleClass() + " "
                            + node.getAccessibleRole())
                    .toList();
        });
    }

    private static boolean hasNoRole(Node node) {
        AccessibleRole role = node.getAccessibleRole();
        return role == null || role == AccessibleRole.NODE || role == AccessibleRole.PARENT;
    }

    private static String name(Node node) {
        if (node.getAccessibleText() != null) {
            return node.getAccessibleText();
        }
        if (node instanceof Labeled labeled && labeled.getText() != null) {
            return labeled.getText();
        }
        Object label = node.queryAccessibleAttribute(AccessibleAttribute.LABELED_BY);
        if (label instanceof Label labelled) {
            return labelled.getText();
        }
        Object text = node.queryAccessibleAttribute(AccessibleAttribute.TEXT);
        return text == null ? "" : text.toString();
    }

    @Test
    @Tag("minute")
    void tabGoesThroughTheWholeWindowAndComesBack() throws Exception {
        bench.doing(() -> window.goToOutline());
        Set<Node> reached = new LinkedHashSet<>();
        for (int i = 0; i < 400; i++) {
            bench.robot.push(KeyCode.CONTROL, KeyCode.TAB);
            if (!reached.add(bench.at(() -> window.stage().getScene().getFocusOwner()))) {
                break;
            }
        }
        for (Tour.Place place : List.of(Tour.Place.SHEET, Tour.Place.SIDE)) {
            Node part = bench.at(() -> window.part(place));
            assertTrue(
                    bench.at(() -> reached.stream().anyMatch(node -> inside(node, part))),
                    () -> "Tab never came into " + place + ", only to " + reached);
        }
    }

    private static boolean inside(Node node, Node part) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at == part) {
                return true;
            }
        }
        return false;
    }

    @Test
    void noTwoCommandsHaveTheSameKeyAndNoneRunsAScriptAndGoesOn() {
        Set<KeyCombination> seen = new LinkedHashSet<>();
        for (Keys key : Keys.values()) {
            assertTrue(seen.add(key.keys()), () -> key + " has the key of another command");
            assertTrue(!key.keys().getName().contains("Enter"), () -> key + " takes Enter from the editor");
        }
    }
}

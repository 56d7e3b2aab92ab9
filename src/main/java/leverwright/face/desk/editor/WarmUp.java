package leverwright.face.desk.editor;

import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import leverwright.face.desk.model.Looks;
import leverwright.face.desk.style.DeskStyle;

/** Makes a text area that nobody sees, so that the one of the first window is made at once. */
public final class WarmUp {

    private WarmUp() {}

    /** Loads and links what a text area needs. On any thread, while no other makes controls. */
    public static void run() {
        SourceArea area = new SourceArea();
        area.replaceText("var n = 1;\n");
        SourceFrame frame = new SourceFrame(area);
        Scene scene = new Scene(new StackPane(frame), 200, 100);
        DeskStyle.dress(scene, new ReadOnlyObjectWrapper<>(Looks.STANDARD).getReadOnlyProperty());
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        frame.dispose();
    }
}

package leverwright.face.desk.style;

import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.value.ChangeListener;
import javafx.beans.value.WeakChangeListener;
import javafx.scene.Parent;
import javafx.scene.Scene;
import leverwright.face.desk.model.Colours;
import leverwright.face.desk.model.Looks;

/** Dresses the scenes of the desk. */
public final class DeskStyle {

    /** The usual size of text in pixels. */
    private static final double TEXT = 13;

    /** Every style sheet of the desk, the general one first. */
    private static final List<String> SHEETS = List.of(
            "/leverwright/face/desk/style/desk.css",
            "/leverwright/face/desk/editor/editor.css",
            "/leverwright/face/desk/sheet/sheet.css",
            "/leverwright/face/desk/dials/dials.css",
            "/leverwright/face/desk/catalogue/catalogue.css");

    /** All of them as one, in the binary form that the build makes of them. */
    private static final String BOUND = "/leverwright/face/desk/style/bound.bss";

    private static final String KEY = "leverwright.looks";

    private DeskStyle() {}

    /**
     * Gives a scene the style sheets of the desk and lets it follow the looks as long as it lives.
     *
     * @param scene a scene of the desk
     * @param looks the looks to follow
     */
    public static void dress(Scene scene, ReadOnlyObjectProperty<Looks> looks) {
        scene.getStylesheets().setAll(sheets());
        wear(scene.getRoot(), looks.get());
        ChangeListener<Looks> follow = (property, before, now) -> wear(scene.getRoot(), now);
        // The scene holds the listener, the looks hold it weakly: a closed window is not kept by them.
        scene.getProperties().put(KEY, follow);
        looks.addListener(new WeakChangeListener<>(follow));
    }

    private static List<String> sheets() {
        URL bound = DeskStyle.class.getResource(BOUND);
        if (bound != null) {
            return List.of(bound.toExternalForm());
        }
        List<String> found = new ArrayList<>();
        for (String sheet : SHEETS) {
            URL place = DeskStyle.class.getResource(sheet);
            if (place != null) {
                found.add(place.toExternalForm());
            }
        }
        return found;
    }

    private static void wear(Parent root, Looks looks) {
        for (Colours colours : Colours.values()) {
            root.getStyleClass().remove(colours.styleClass());
        }
        if (!root.getStyleClass().contains("desk")) {
            root.getStyleClass().add("desk");
        }
        root.getStyleClass().add(looks.colours().styleClass());
        // Hundredths of a pixel, without a formatter, which would be among the slowest things of a start.
        long hundredths = Math.round(TEXT * looks.textScale() * 100);
        root.setStyle("-fx-font-size: " + hundredths / 100.0 + "px;");
    }
}

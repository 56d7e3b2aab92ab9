package leverwright.face.desk.sheet;

import javafx.scene.layout.Pane;

/** A pane whose owner lays its children out: it leaves their sizes alone, and tells the owner when one of them changes. */
final class Ground extends Pane {
    @Override
    protected void layoutChildren() {
        // The owner has done it.
    }
}

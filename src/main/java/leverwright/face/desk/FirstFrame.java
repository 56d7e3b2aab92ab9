package leverwright.face.desk;

import javafx.application.Platform;
import javafx.scene.Scene;

/** Waits until a scene has been painted once. */
final class FirstFrame {

    private FirstFrame() {}

    /**
     * Does something when a scene has been laid out and handed to the painter.
     *
     * @param scene a scene that is shown
     * @param then what to do, on the window's thread
     */
    static void of(Scene scene, Runnable then) {
        scene.addPostLayoutPulseListener(new Runnable() {
            @Override
            public void run() {
                scene.removePostLayoutPulseListener(this);
                // The painter gets the frame after this listener, in the same pulse.
                Platform.runLater(then);
            }
        });
        Platform.requestNextPulse();
    }
}

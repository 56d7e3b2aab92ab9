package leverwright.bench.launch;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.fxmisc.richtext.CodeArea;

/** The least that a window for text needs: one area, no workbook, nothing that computes. */
public final class EmptyWindow extends Application {

    /** Called by the toolkit. */
    public EmptyWindow() {}

    /** Shows the window and says when the first typed key has appeared. */
    public static void main(String[] arguments) {
        LaunchProbe.watch(false, arguments.length > 0);
        Application.launch(EmptyWindow.class);
    }

    @Override
    public void start(Stage stage) {
        stage.setScene(new Scene(new CodeArea("var n = 1;"), 1440, 900));
        stage.show();
    }
}

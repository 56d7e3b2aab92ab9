package leverwright.face.desk;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskTiming;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;

/** A desk in a process of its own, at the waits of the real one: types into a workbook, says so, and goes on standing there. */
public final class DeskToKill {

    /** What it says once everything is typed. */
    static final String TYPED = "typed";

    private DeskToKill() {}

    /**
     * Opens a workbook and types.
     *
     * @param arguments the folder of the desk, the workbook, and what to type at the end of its first script
     */
    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[0]);
        FxToolkit.registerPrimaryStage();
        Platform.setImplicitExit(false);
        DeskWindow window = WindowThread.at(() -> {
            DeskHome home = new DeskHome(
                    DeskFolders.under(folder.resolve("user")), null, DeskTiming.standard(), Platform::runLater);
            Desk desk = new Desk(home, new SystemChooser(), address -> {});
            return desk.show(home.open(Path.of(arguments[1])), new Stage());
        });
        FxRobot robot = new FxRobot();
        WindowThread.until("a script to write in", () -> source(window) != null);
        WindowThread.doing(() -> source(window).requestFocus());
        robot.push(KeyCode.CONTROL, KeyCode.END);
        robot.write(arguments[2], 0);
        WindowThread.until(
                "it stands in the workbook",
                () -> window.model().cells().get(0).text().get().endsWith(arguments[2]));
        System.out.println(TYPED);
        System.out.flush();
        TimeUnit.MINUTES.sleep(2);
        Runtime.getRuntime().halt(3);
    }

    private static Node source(DeskWindow window) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(node -> node.getStyleClass().contains("source"))
                .findFirst()
                .orElse(null);
    }
}

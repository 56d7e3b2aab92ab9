package leverwright.face.desk;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.application.Platform;
import javafx.stage.Stage;
import leverwright.face.desk.model.DeskFolders;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DeskTiming;

/** A start without a window on the screen: everything is laid out, computed, drawn and turned once, and then it ends. */
final class Rehearsal {

    private static final int TURNS = 3;

    private final DeskHome home;
    private final DeskWindow window;
    private final DeskModel model;
    private int turned;

    private Rehearsal(Path workbook, DeskHome home, Stage stage) throws IOException {
        this.home = home;
        Desk desk = new Desk(home, new SystemChooser(), address -> {});
        model = home.open(workbook);
        window = new DeskWindow(desk, model, stage);
    }

    static void of(Path workbook, Stage stage) {
        try {
            DeskFolders folders = DeskFolders.under(Files.createTempDirectory("leverwright-rehearsal"));
            DeskHome home = new DeskHome(folders, null, DeskTiming.standard(), Platform::runLater);
            Rehearsal rehearsal = new Rehearsal(workbook, home, stage);
            rehearsal.draw();
            rehearsal.model.batch().addListener((property, before, now) -> rehearsal.arrived());
            rehearsal.model.computeFromTheTop();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private void draw() {
        var root = window.stage().getScene().getRoot();
        root.applyCss();
        root.layout();
        window.stage().getScene().snapshot(null);
    }

    private void arrived() {
        if (model.busy().get()) {
            return;
        }
        draw();
        if (turned < TURNS && !model.dials().isEmpty()) {
            turned++;
            var dial = model.dials().get(0);
            model.turn(dial.name(), dial.value().get() + dial.declared().get().step());
            return;
        }
        model.close();
        home.close();
        Platform.exit();
    }
}

package leverwright.face.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.application.Application;
import javafx.stage.Stage;
import leverwright.face.desk.model.DeskHome;
import org.jspecify.annotations.Nullable;

/** The desk as a program: starts the toolkit and lays out the first windows. */
public final class DeskApp extends Application {

    /** What was asked for on the command line; the toolkit makes the application itself, so it is handed over here. */
    private static volatile Request asked = new Request(List.of(), Optional.empty(), false);

    private static volatile @Nullable Launching launching;

    /**
     * What the first windows are to show.
     *
     * @param files the workbooks to open; none for the page of beginnings
     * @param page where the first workbook is also to be written as a page
     * @param rehearsal whether nobody is to see it: the first workbook is shown in a window that lets everything shine
     *     through, written in, computed and its first dial turned, and then everything ends, so that a class-data archive
     *     sees the classes that a real start needs
     */
    public record Request(List<Path> files, Optional<Path> page, boolean rehearsal) {

        /** Copies the list. */
        public Request {
            files = List.copyOf(files);
        }
    }

    /** Called by the toolkit. */
    public DeskApp() {}

    /**
     * Shows the desk and returns when its last window is closed.
     *
     * @param request what the first windows are to show
     * @throws UnsupportedOperationException when the system gives the toolkit no window after all; nothing was shown then
     */
    public static void show(Request request) {
        asked = request;
        launching = Launching.begin(request);
        Application.launch(DeskApp.class);
    }

    @Override
    public void start(Stage first) {
        Launching ready = launching == null ? Launching.begin(asked) : launching;
        Desk desk = ready.desk(getHostServices()::showDocument);
        DeskHome home = desk.home();
        Thread.setDefaultUncaughtExceptionHandler(
                (thread, failure) -> home.log().failure("unexpected, on " + thread.getName(), failure));
        if (asked.rehearsal()) {
            Rehearsal.prepare(first);
        }
        desk.begin(asked, ready, first);
        Executor afterPicture = task -> FirstFrame.of(first.getScene(), task);
        // A key that was pressed while the window came up is drawn before all else.
        afterPicture.execute(() -> afterPicture.execute(() -> afterPicture.execute(() -> home.goOn(afterPicture))));
        if (asked.rehearsal()) {
            Rehearsal.of(desk, asked.files().get(0));
        }
    }
}

package leverwright.face.desk;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.stage.Stage;
import leverwright.face.desk.model.DeskHome;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Starter;
import leverwright.workbook.json.JsonProblem;
import org.jspecify.annotations.Nullable;

/** All windows of this process. Every method is called on the window's thread. */
final class Desk {

    private static final String DEMO = "the-torso-leans.leverwright.json";
    private static final String TOURED = "toured";

    private final DeskHome home;
    private final Chooser chooser;
    private final Consumer<String> browser;
    private final List<DeskWindow> windows = new ArrayList<>();
    private @Nullable StartWindow start;

    /**
     * Makes a desk without windows.
     *
     * @param home the user's desk
     * @param chooser asks for files
     * @param browser shows a web address or a file in the user's browser
     */
    Desk(DeskHome home, Chooser chooser, Consumer<String> browser) {
        this.home = home;
        this.chooser = chooser;
        this.browser = browser;
    }

    DeskHome home() {
        return home;
    }

    Chooser chooser() {
        return chooser;
    }

    void browse(String address) {
        browser.accept(address);
    }

    List<DeskWindow> windows() {
        return List.copyOf(windows);
    }

    Optional<StartWindow> startWindow() {
        return Optional.ofNullable(start);
    }

    /** Lays out the first windows; the first stage is the toolkit's own. */
    void begin(DeskApp.Request request, Launching ready, Stage first) {
        if (request.files().isEmpty()) {
            showStart(first);
            return;
        }
        Iterator<Path> files = request.files().iterator();
        Path file = files.next();
        try {
            DeskWindow window = ready.first();
            show(window, first);
            window.model().whole().exceptionally(problem -> {
                window.closeUnread();
                showStart(new Stage()).tell(naming(file, problem));
                return null;
            });
            request.page().ifPresent(window::publishWhenComputed);
            lookRoundOnce(window, file);
        } catch (IOException | JsonProblem unreadable) {
            showStart(first).tell(naming(file, unreadable));
        }
        files.forEachRemaining(other -> open(other, message -> {}));
        offerLeftBehind();
    }

    /** Begins the tour with the first demo that this user ever opens. */
    private void lookRoundOnce(DeskWindow window, Path file) {
        if (file.getFileName().toString().equals(DEMO)
                && home.setting(TOURED, "").isEmpty()) {
            home.set(TOURED, "yes");
            home.afterFirstFrame(window::showTour);
        }
    }

    private StartWindow showStart(Stage stage) {
        StartWindow shown = new StartWindow(this, stage);
        start = shown;
        stage.setOnHidden(event -> start = null);
        stage.show();
        offerLeftBehind();
        return shown;
    }

    /** Shows the page of beginnings, of which there is only one. */
    void showStart() {
        StartWindow shown = start;
        if (shown == null) {
            showStart(new Stage());
        } else {
            shown.stage().toFront();
        }
    }

    /** Looks for text that windows without a file left behind, and offers it on the page of beginnings. */
    private void offerLeftBehind() {
        CompletableFuture.supplyAsync(home::leftBehind)
                .thenAccept(found -> Platform.runLater(() -> {
                    if (!found.isEmpty()) {
                        showStart();
                        StartWindow shown = start;
                        if (shown != null) {
                            shown.offer(found);
                        }
                    }
                }));
    }

    /**
     * Opens a workbook in a window of its own.
     *
     * @param file the workbook's file
     * @param refused takes what is wrong with it, in words
     */
    void open(Path file, Consumer<String> refused) {
        CompletableFuture.supplyAsync(() -> reading(file))
                .thenAccept(read -> Platform.runLater(() -> {
                    if (read.problem().isEmpty() && read.value() != null) {
                        show(home.open(read.value()), new Stage());
                        closeStart();
                    } else {
                        refused.accept(read.problem());
                    }
                }));
    }

    private record Reading(DeskHome.@Nullable Read value, String problem) {}

    private Reading reading(Path file) {
        try {
            return new Reading(home.read(file), "");
        } catch (IOException | JsonProblem unreadable) {
            return new Reading(null, naming(file, unreadable));
        }
    }

    private static String naming(Path file, Throwable problem) {
        String message = String.valueOf(problem.getMessage());
        return message.contains(file.getFileName().toString()) ? message : file + ": " + message;
    }

    /** Begins a new workbook in a window of its own. */
    void begin(Starter starter) {
        show(home.begin(starter), new Stage());
        closeStart();
    }

    /** Shows a workbook that is open. */
    DeskWindow show(DeskModel model, Stage stage) {
        DeskWindow window = new DeskWindow(this, model);
        show(window, stage);
        return window;
    }

    private void show(DeskWindow window, Stage stage) {
        windows.add(window);
        window.attach(stage);
        window.show();
    }

    private void closeStart() {
        StartWindow shown = start;
        if (shown != null && shown.hasNothingToOffer()) {
            shown.stage().close();
            start = null;
        }
    }

    void closed(DeskWindow window) {
        windows.remove(window);
    }

    /** Closes every window; one that would lose something asks, and what is answered there may end this. */
    void quit() {
        StartWindow shown = start;
        if (shown != null) {
            shown.stage().close();
        }
        closeNext();
    }

    private void closeNext() {
        if (!windows.isEmpty()) {
            windows.get(windows.size() - 1).close(this::closeNext);
        }
    }
}

package leverwright.face.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.MenuBar;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Screen;
import javafx.stage.Stage;
import leverwright.face.desk.catalogue.CataloguePane;
import leverwright.face.desk.dials.SidePane;
import leverwright.face.desk.editor.ApiHelp;
import leverwright.face.desk.editor.FindBar;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Looks;
import leverwright.face.desk.model.Recheck;
import leverwright.face.desk.model.SaveOutcome;
import leverwright.face.desk.sheet.SheetPane;
import leverwright.face.desk.style.DeskStyle;
import leverwright.face.desk.style.Words;
import org.jspecify.annotations.Nullable;

/** One window with one workbook. */
final class DeskWindow implements NoticeBars.Deeds {

    private static final double WIDTH = 1440;
    private static final double HEIGHT = 900;
    private static final double TEXT = 13;

    /** How high what stands over and under the sheet is, in em of the text. */
    private static final double TOP = 5.6;

    private static final double BOTTOM = 2.3;

    private final Desk desk;
    private final DeskModel model;
    private final Scene scene;
    private @Nullable Stage own;
    private final SheetPane sheet;
    private final StackPane side = new StackPane();
    private @Nullable SidePane dials;
    private @Nullable Outline outline;
    private final Edge edge;
    private final Layout layout;
    private final NoticeBars notices;
    private final Question question;
    private final VBox top = new VBox();
    private final StackPane bottom = new StackPane();
    private @Nullable MenuBar menus;
    private final BorderPane middle = new BorderPane();
    private final ChangeListener<Looks> textSize = (property, before, now) -> follow(now);
    private @Nullable FindBar findBar;
    private @Nullable Recheck checking;
    private boolean closed;

    /**
     * Makes what a window holds; {@link #attach} gives it to a stage. On any thread, while no other makes controls.
     *
     * @param desk all windows
     * @param model the workbook
     */
    DeskWindow(Desk desk, DeskModel model) {
        this.desk = desk;
        this.model = model;
        sheet = new SheetPane(model);
        edge = new Edge();
        middle.setCenter(sheet);
        layout = new Layout(edge, middle, side);
        notices = new NoticeBars(model, this);
        BorderPane frame = new BorderPane(layout);
        frame.setTop(top);
        frame.setBottom(bottom);
        StackPane root = new StackPane(frame);
        question = new Question(root, frame);
        scene = new Scene(root, WIDTH, HEIGHT);
        DeskStyle.dress(scene, model.looks());
        takeFiles(scene);
        model.looks().addListener(textSize);
        follow(model.looks().get());
        sheet.begin();
        desk.home().afterFirstFrame(this::fillFrame);
        desk.home().afterFirstFrame(this::fillSide);
        desk.home().afterFirstFrame(this::fillEdge);
        desk.home().afterFirstFrame(this::fillMenus);
    }

    /** Lays out the first picture ahead of time. */
    void layOut() {
        Parent root = scene.getRoot();
        root.resize(WIDTH, HEIGHT);
        root.applyCss();
        root.layout();
    }

    /** Gives the window to a stage. */
    void attach(Stage stage) {
        own = stage;
        stage.setScene(scene);
        stage.titleProperty().bind(new WindowTitle(model));
        stage.setMinWidth(420);
        stage.setMinHeight(320);
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        if (screen.getWidth() < WIDTH) {
            stage.setWidth(screen.getWidth());
        }
        if (screen.getHeight() < HEIGHT) {
            stage.setHeight(screen.getHeight());
        }
        stage.setOnCloseRequest(event -> {
            event.consume();
            close(() -> {});
        });
    }

    /** Puts in what stands over and under the sheet. Until then its room is kept free. */
    private void fillFrame() {
        if (!closed) {
            menus = Menus.bar();
            top.setMinHeight(Region.USE_COMPUTED_SIZE);
            bottom.setMinHeight(Region.USE_COMPUTED_SIZE);
            top.getChildren().setAll(menus, new TopBar(model, this::publish, this::showWords), notices);
            bottom.getChildren().setAll(new StatusBar(model));
        }
    }

    private void fillEdge() {
        if (!closed) {
            Outline made = new Outline(sheet::read);
            made.fill(model);
            outline = made;
            edge.begin(made);
        }
    }

    private void fillMenus() {
        MenuBar bar = menus;
        if (bar != null) {
            new Menus(this, desk, model).fill(bar);
            moreKeys(scene);
        }
    }

    private void fillSide() {
        if (!closed) {
            SidePane made = new SidePane(model);
            dials = made;
            side.getChildren().setAll(made);
        }
    }

    private void follow(Looks looks) {
        layout.textSize(TEXT * looks.textScale());
        if (menus == null) {
            top.setMinHeight(TOP * TEXT * looks.textScale());
            bottom.setMinHeight(BOTTOM * TEXT * looks.textScale());
        }
    }

    private void takeFiles(Scene scene) {
        scene.setOnDragOver((DragEvent event) -> {
            if (event.getDragboard().hasFiles()) {
                event.acceptTransferModes(TransferMode.COPY);
                event.consume();
            }
        });
        scene.setOnDragDropped(event -> {
            event.getDragboard().getFiles().forEach(file -> open(file.toPath()));
            event.setDropCompleted(true);
            event.consume();
        });
    }

    /** Keys beside those in the menus, for the same commands on other keyboards. */
    private void moreKeys(Scene scene) {
        scene.getAccelerators()
                .put(
                        KeyCombination.keyCombination("Shortcut+EQUALS"),
                        () -> show(desk.home().looks().get().larger()));
        scene.getAccelerators()
                .put(
                        KeyCombination.keyCombination("Shortcut+Shift+EQUALS"),
                        () -> show(desk.home().looks().get().larger()));
        scene.getAccelerators()
                .put(
                        KeyCombination.keyCombination("Shortcut+ADD"),
                        () -> show(desk.home().looks().get().larger()));
        scene.getAccelerators()
                .put(
                        KeyCombination.keyCombination("Shortcut+SUBTRACT"),
                        () -> show(desk.home().looks().get().smaller()));
        scene.getAccelerators().put(KeyCombination.keyCombination("Shortcut+Y"), this::redo);
        scene.addEventHandler(KeyEvent.KEY_PRESSED, event -> {
            if (event.getCode() == KeyCode.TAB && event.isControlDown() && !question.isAsking()) {
                Parts.step(scene, !event.isShiftDown());
                event.consume();
            }
        });
    }

    private void show(Looks looks) {
        desk.home().show(looks);
    }

    void show() {
        stage().show();
    }

    Stage stage() {
        Stage stage = own;
        if (stage == null) {
            throw new IllegalStateException("this window has no stage");
        }
        return stage;
    }

    DeskModel model() {
        return model;
    }

    void open(Path file) {
        desk.open(file, message -> notices.tell(message, false, List.of()));
    }

    void chooseAndOpen() {
        desk.chooser().toOpen(stage()).forEach(this::open);
    }

    void reveal(String cell) {
        sheet.reveal(cell);
    }

    private void go(Optional<Caret> place) {
        place.filter(caret -> !caret.cell().isEmpty()).ifPresent(caret -> reveal(caret.cell()));
    }

    void undo() {
        go(model.undo());
    }

    void redo() {
        go(model.redo());
    }

    void find() {
        FindBar bar = findBar;
        if (bar == null) {
            bar = new FindBar(model);
            bar.onDone(this::closeFind);
            findBar = bar;
            middle.setTop(bar);
        }
        bar.requestFocus();
    }

    private void closeFind() {
        FindBar bar = findBar;
        if (bar != null) {
            bar.dispose();
            middle.setTop(null);
            findBar = null;
            goToSheet();
        }
    }

    private int caretIndex() {
        String id = model.caret().cell();
        for (int i = 0; i < model.cells().size(); i++) {
            if (model.cells().get(i).id().equals(id)) {
                return i;
            }
        }
        return -1;
    }

    void add(boolean script) {
        int at = caretIndex();
        int index = at < 0 ? model.cells().size() : at + 1;
        reveal(script ? model.addScript(index, "") : model.addNote(index, ""));
    }

    void move(int by) {
        int at = caretIndex();
        int to = at + by;
        if (at >= 0 && to >= 0 && to < model.cells().size()) {
            CellView cell = model.cells().get(at);
            model.move(cell.id(), to);
            reveal(cell.id());
        }
    }

    void delete() {
        int at = caretIndex();
        if (at >= 0) {
            model.delete(model.cells().get(at).id());
        }
    }

    void holdOrLetGo() {
        if (model.held().get().isPresent()) {
            model.letGo();
        } else {
            model.hold();
        }
    }

    void save() {
        model.save().thenAccept(outcome -> afterSaving(outcome, () -> {}));
    }

    @Override
    public void saveAs() {
        saveAs(() -> {});
    }

    private void saveAs(Runnable then) {
        desk.chooser()
                .toSave(stage(), suggestedName())
                .ifPresent(file -> model.saveAs(file).thenAccept(outcome -> afterSaving(outcome, then)));
    }

    private String suggestedName() {
        Optional<Path> file = model.file().get();
        if (file.isPresent()) {
            return file.get().getFileName().toString().replace(".leverwright.json", "");
        }
        String name = TopBar.titleOf(model)
                .toLowerCase(java.util.Locale.ROOT)
                .replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return name.isEmpty() ? "workbook" : name;
    }

    @Override
    public void saveReplacing() {
        model.saveReplacing().thenAccept(outcome -> afterSaving(outcome, () -> {}));
    }

    private void afterSaving(SaveOutcome outcome, Runnable then) {
        switch (outcome.kind()) {
            case SAVED -> {
                notices.dismissOwn();
                then.run();
            }
            case NEEDS_NAME -> saveAs(then);
            case CHANGED_ON_DISK, OPEN_ELSEWHERE, FAILED ->
                notices.tell(outcome.words(), false, List.of(new NoticeBars.Action("Save as…", () -> saveAs(then))));
        }
    }

    @Override
    public void readAgain() {
        model.readAgain().thenAccept(problem -> {
            if (!problem.isEmpty()) {
                notices.tell(problem, false, List.of());
            }
        });
    }

    void publish() {
        desk.chooser().forPage(stage(), suggestedName()).ifPresent(this::publish);
    }

    private void publish(Path page) {
        model.publish(page).thenAccept(problem -> {
            if (problem.isEmpty()) {
                notices.tell(
                        "The page is in " + page + ".",
                        true,
                        List.of(new NoticeBars.Action(
                                "Show it", () -> desk.browse(page.toUri().toString()))));
            } else {
                notices.tell(problem, false, List.of());
            }
        });
    }

    /** Writes the page once the first run has come to its end. */
    void publishWhenComputed(Path page) {
        ChangeListener<Number> once = new ChangeListener<>() {
            @Override
            public void changed(
                    javafx.beans.value.ObservableValue<? extends Number> property, Number before, Number now) {
                if (!model.busy().get()) {
                    model.batch().removeListener(this);
                    publish(page);
                }
            }
        };
        model.batch().addListener(once);
    }

    @Override
    public void recheck() {
        model.whole().thenRun(this::recheckWhole);
    }

    private void recheckWhole() {
        Recheck begun = model.recheck();
        checking = begun;
        edge.show("Recheck", RecheckPane.running(begun, model));
        begun.report().whenComplete((report, failure) -> {
            if (closed || checking != begun) {
                return;
            }
            if (report != null) {
                edge.show("Recheck", RecheckPane.of(report, this::reveal));
            } else {
                String words = failure == null ? "" : String.valueOf(failure.getMessage());
                edge.show("Recheck", Words.pane("Recheck", List.of(Words.paragraph(words))));
            }
        });
    }

    @Override
    public void trust() {
        question.ask(
                "Trust this workbook?",
                "Its scripts may then use any class of Java: they can read, change and delete your files and use the"
                        + " network, as any program you start. Trust it only if you know who wrote it. Behind the gate"
                        + " it computes without that.",
                List.of(
                        new Question.Answer("Not now", () -> {}),
                        new Question.Answer("Trust it", model::trust),
                        new Question.Answer("Compute behind the gate", model::computeFromTheTop)));
    }

    /** Closes the window; asks first when something would be lost. */
    void close(Runnable then) {
        Optional<String> lost = model.wouldBeLost();
        if (lost.isEmpty()) {
            closeNow();
            then.run();
            return;
        }
        Runnable closing = () -> {
            closeNow();
            then.run();
        };
        stage().toFront();
        question.ask(
                "Save before closing?",
                lost.get(),
                List.of(
                        new Question.Answer(
                                "Save", () -> model.save().thenAccept(outcome -> afterSaving(outcome, closing))),
                        new Question.Answer("Close without saving", closing),
                        new Question.Answer("Stay", () -> {})));
    }

    /** Closes a window whose file turned out not to be readable to its end. */
    void closeUnread() {
        closeNow();
    }

    private void closeNow() {
        if (closed) {
            return;
        }
        closed = true;
        model.looks().removeListener(textSize);
        stage().titleProperty().unbind();
        closeFind();
        sheet.dispose();
        SidePane shown = dials;
        if (shown != null) {
            shown.dispose();
        }
        model.close();
        desk.closed(this);
        stage().close();
    }

    boolean isEdgeShown() {
        return layout.isEdgeShown();
    }

    boolean isSideShown() {
        return layout.isSideShown();
    }

    void showEdge(boolean wanted) {
        layout.showEdge(wanted);
    }

    void showSide(boolean wanted) {
        layout.showSide(wanted);
    }

    void goToOutline() {
        layout.showEdge(true);
        edge.showOutline();
        Outline shown = outline;
        if (shown != null) {
            shown.requestFocus();
        }
    }

    void goToSheet() {
        Parts.focusIn(sheet);
    }

    void goToDials() {
        layout.showSide(true);
        Parts.focusIn(side);
    }

    void goToNextPart() {
        Parts.next(scene, List.of(edge, middle, side));
    }

    void showWords() {
        edge.show("About this workbook", AboutWorkbookPane.of(model));
    }

    void showTasks() {
        edge.show("What do you want to compute?", new TasksPane(this::insert));
    }

    private void insert(ApiHelp.Task task) {
        insert(ApiHelp.toInsert(task, model));
    }

    private void insert(String lines) {
        Caret end = model.insertLine(lines);
        reveal(end.cell());
    }

    void showExercises() {
        edge.show("Pick an exercise", new CataloguePane(model, this::insert));
    }

    void showGlossary() {
        edge.show("Glossary", HelpPanes.glossary());
    }

    void showCautions() {
        edge.show("Cautions", HelpPanes.cautions());
    }

    void showKeys() {
        edge.show("Keys", HelpPanes.keys());
    }

    void showAbout() {
        edge.show("About Leverwright", HelpPanes.about());
    }

    void showTour() {
        edge.showNarrow("Look round", new Tour(this, edge::showOutline));
    }

    /** The parts that the tour points at. */
    Node part(Tour.Place place) {
        return switch (place) {
            case SHEET -> middle;
            case SIDE -> side;
            case MENUS -> menus == null ? top : menus;
            case EDGE -> edge;
        };
    }
}

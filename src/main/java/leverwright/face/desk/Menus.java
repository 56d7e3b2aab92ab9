package leverwright.face.desk;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.control.ToggleGroup;
import leverwright.face.desk.model.Colours;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Permission;
import leverwright.face.desk.model.Starter;

/** The menus of a window: every command, with its key. */
final class Menus {

    private final DeskWindow window;
    private final Desk desk;
    private final DeskModel model;
    private final Map<Keys, MenuItem> items = new EnumMap<>(Keys.class);

    Menus(DeskWindow window, Desk desk, DeskModel model) {
        this.window = window;
        this.desk = desk;
        this.model = model;
    }

    /** Returns the menus by their names; their entries come with {@link #fill}. */
    static MenuBar bar() {
        MenuBar bar = new MenuBar(
                new Menu("_Workbook"), new Menu("_Edit"), new Menu("_Compute"), new Menu("_View"), new Menu("_Help"));
        bar.setUseSystemMenuBar(true);
        return bar;
    }

    /** Puts the entries, and with them their keys, into the menus of a bar. */
    void fill(MenuBar bar) {
        workbook(bar.getMenus().get(0));
        edit(bar.getMenus().get(1));
        compute(bar.getMenus().get(2));
        view(bar.getMenus().get(3));
        help(bar.getMenus().get(4));
    }

    private MenuItem item(Keys key, Runnable action) {
        MenuItem item = new MenuItem(key.words());
        item.setAccelerator(key.keys());
        item.setOnAction(event -> action.run());
        items.put(key, item);
        return item;
    }

    private static MenuItem plain(String words, Runnable action) {
        MenuItem item = new MenuItem(words);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> action.run());
        return item;
    }

    private void workbook(Menu menu) {
        Menu fresh = new Menu("New");
        for (Starter starter : Starter.values()) {
            fresh.getItems().add(plain(starter.title(), () -> desk.begin(starter)));
        }
        Menu recent = new Menu("Open recent");
        Menu shelf = new Menu("From the shelf");
        menu.setOnShowing(event -> {
            recent.getItems()
                    .setAll(desk.home().recent().stream()
                            .map(file -> plain(shortName(file), () -> window.open(file)))
                            .toList());
            recent.setDisable(recent.getItems().isEmpty());
            shelf.getItems()
                    .setAll(desk.home().shelf().stream()
                            .map(file -> plain(shortName(file), () -> window.open(file)))
                            .toList());
            shelf.setDisable(shelf.getItems().isEmpty());
        });
        menu.getItems()
                .addAll(
                        item(Keys.NEW, () -> desk.begin(Starter.EMPTY)),
                        fresh,
                        item(Keys.OPEN, window::chooseAndOpen),
                        recent,
                        shelf,
                        new SeparatorMenuItem(),
                        item(Keys.SAVE, window::save),
                        item(Keys.SAVE_AS, window::saveAs),
                        item(Keys.PUBLISH, window::publish),
                        plain("Title, author, purpose…", window::showWords),
                        new SeparatorMenuItem(),
                        item(Keys.CLOSE, () -> window.close(() -> {})),
                        item(Keys.QUIT, desk::quit));
    }

    private static String shortName(Path file) {
        Path folder = file.getParent();
        String name = file.getFileName().toString().replace(".leverwright.json", "");
        return folder == null || folder.getFileName() == null ? name : name + "   (" + folder.getFileName() + ")";
    }

    private void edit(Menu menu) {
        MenuItem undo = item(Keys.UNDO, window::undo);
        undo.disableProperty().bind(model.undoable().not());
        MenuItem redo = item(Keys.REDO, window::redo);
        redo.disableProperty().bind(model.redoable().not());
        menu.getItems()
                .addAll(
                        undo,
                        redo,
                        new SeparatorMenuItem(),
                        item(Keys.FIND, window::find),
                        new SeparatorMenuItem(),
                        item(Keys.ADD_SCRIPT, () -> window.add(true)),
                        item(Keys.ADD_NOTE, () -> window.add(false)),
                        item(Keys.MOVE_UP, () -> window.move(-1)),
                        item(Keys.MOVE_DOWN, () -> window.move(1)),
                        item(Keys.DELETE_CELL, window::delete));
    }

    private void compute(Menu menu) {
        MenuItem stop = item(Keys.STOP, model::stop);
        MenuItem swap = item(Keys.SWAP, model::swapHeld);
        MenuItem trust = plain("Trust this workbook…", window::trust);
        menu.setOnShowing(event -> {
            stop.setDisable(!model.canStop());
            swap.setDisable(model.held().get().isEmpty());
            trust.setDisable(model.permission().get() == Permission.TRUSTED);
        });
        // A disabled item would not hear its key: it is told again whenever the menu closes.
        menu.setOnHidden(event -> {
            stop.setDisable(false);
            swap.setDisable(false);
        });
        menu.getItems()
                .addAll(
                        item(Keys.FROM_THE_TOP, model::computeFromTheTop),
                        stop,
                        item(Keys.RECHECK, window::recheck),
                        trust,
                        new SeparatorMenuItem(),
                        item(Keys.HOLD, window::holdOrLetGo),
                        swap,
                        item(Keys.RESET_DIALS, model::resetDials));
    }

    private void view(Menu menu) {
        Menu colours = new Menu("Colours");
        ToggleGroup group = new ToggleGroup();
        for (Colours each : Colours.values()) {
            RadioMenuItem item = new RadioMenuItem(each.title());
            item.setToggleGroup(group);
            item.setOnAction(event -> desk.home().show(desk.home().looks().get().in(each)));
            colours.getItems().add(item);
        }
        CheckMenuItem edge = new CheckMenuItem("Outline");
        edge.setOnAction(event -> window.showEdge(edge.isSelected()));
        CheckMenuItem side = new CheckMenuItem("Figure and dials");
        side.setOnAction(event -> window.showSide(side.isSelected()));
        menu.setOnShowing(event -> {
            int chosen = desk.home().looks().get().colours().ordinal();
            group.selectToggle(group.getToggles().get(chosen));
            edge.setSelected(window.isEdgeShown());
            side.setSelected(window.isSideShown());
        });
        menu.getItems()
                .addAll(
                        colours,
                        item(
                                Keys.LARGER,
                                () -> desk.home().show(desk.home().looks().get().larger())),
                        item(
                                Keys.SMALLER,
                                () -> desk.home().show(desk.home().looks().get().smaller())),
                        item(
                                Keys.USUAL_SIZE,
                                () -> desk.home().show(desk.home().looks().get().usualSize())),
                        new SeparatorMenuItem(),
                        edge,
                        side,
                        item(Keys.OUTLINE, window::goToOutline),
                        item(Keys.SHEET, window::goToSheet),
                        item(Keys.DIALS, window::goToDials),
                        item(Keys.NEXT_PART, window::goToNextPart));
    }

    private void help(Menu menu) {
        menu.getItems()
                .addAll(
                        item(Keys.BY_TASK, window::showTasks),
                        item(Keys.EXERCISES, window::showExercises),
                        plain("Glossary", window::showGlossary),
                        plain("Cautions", window::showCautions),
                        item(Keys.KEYS, window::showKeys),
                        plain("A first look round", window::showTour),
                        new SeparatorMenuItem(),
                        plain("About Leverwright", window::showAbout));
    }
}

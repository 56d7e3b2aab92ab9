package leverwright.face.desk.editor;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.InvalidationListener;
import javafx.beans.WeakInvalidationListener;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DragEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import leverwright.face.desk.model.Caret;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.Match;
import org.jspecify.annotations.Nullable;

/**
 * One note: as it reads, until it is clicked or Enter is pressed on it; then its source, with the way it reads below,
 * following what is typed. Leaving the source by Escape, or going elsewhere, shows it as it reads again.
 */
public final class NoteEditor extends VBox {

    private final DeskModel model;
    private final CellView cell;
    private final NoteView view = new NoteView(NoteEditor::browse);
    private final InvalidationListener follow = changed -> refresh();
    private final WeakInvalidationListener weakly = new WeakInvalidationListener(follow);
    private final InvalidationListener sought = changed -> showSought();
    private final WeakInvalidationListener weakSought = new WeakInvalidationListener(sought);
    private @Nullable Source source;

    /** The parts that are there while the source is shown. */
    private static final class Source {
        final SourceArea area = new SourceArea() {
            @Override
            public void paste() {
                Image picture = Clipboard.getSystemClipboard().getImage();
                if (picture != null && !Clipboard.getSystemClipboard().hasString()) {
                    problem.setText("");
                    put("picture", PictureBytes.png(picture));
                } else {
                    super.paste();
                }
            }
        };
        final CellText text;
        final Colouring colouring;
        final SourceFrame frame;
        final FoundMarks found;
        final Label problem = new Label();
        final HBox tools = new HBox();

        Source(DeskModel model, CellView cell) {
            area.setAccessibleText("Note, source");
            area.setAccessibleHelp("CommonMark. Escape shows the note as it reads.");
            text = new CellText(model, cell, area);
            colouring = new Colouring(area, false);
            frame = new SourceFrame(area);
            found = new FoundMarks(model.finding(), cell, area, colouring);
            problem.getStyleClass().add("script-problem");
            problem.setWrapText(true);
            tools.getStyleClass().add("note-tools");
        }

        /** Tells whether a picture is too large for a note, and says so. */
        boolean isTooLarge(String name, long size) {
            if (size <= NoteAddress.MOST_BYTES) {
                return false;
            }
            problem.setText(name + " has " + size / 1000 + " kB; a picture in a note may have "
                    + NoteAddress.MOST_BYTES / 1000 + " kB. Make it smaller.");
            return true;
        }

        /** Puts a picture into the note itself; says why where it cannot stand there. */
        void put(String name, byte[] bytes) {
            if (isTooLarge(name, bytes.length)) {
                return;
            }
            Optional<String> address = NoteAddress.of(bytes);
            if (address.isEmpty()) {
                problem.setText(name + " is no PNG, JPEG or GIF; save it as one of these.");
                return;
            }
            String words = name.replaceAll("\\.\\w+$", "").replaceAll("[\\[\\]]", "");
            area.replaceSelection("![" + words + "](" + address.get() + ")");
        }

        void dispose() {
            found.dispose();
            colouring.dispose();
            text.dispose();
            frame.dispose();
        }
    }

    /**
     * Shows a note.
     *
     * @param model the workbook
     * @param cellId the note's id
     * @throws java.util.NoSuchElementException when the workbook has no such cell
     */
    public NoteEditor(DeskModel model, String cellId) {
        this.model = model;
        cell = model.cell(cellId).orElseThrow();
        getStyleClass().add("note-editor");
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleHelp("Press Enter to write.");
        setFocusTraversable(true);
        getChildren().add(view);
        view.setOnMouseClicked(event -> {
            if (event.getButton() == MouseButton.PRIMARY && !event.isConsumed() && event.isStillSincePress()) {
                open().area.requestFocus();
            }
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
        cell.text().addListener(weakly);
        model.finding().here().addListener(weakSought);
        refresh();
    }

    private static void browse(String address) {
        if (!NoteAddress.leadsSomewhereAllowed(address)) {
            return;
        }
        String system = System.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        List<String> command = system.contains("win")
                ? List.of("rundll32", "url.dll,FileProtocolHandler", address)
                : List.of(system.contains("mac") ? "open" : "xdg-open", address);
        try {
            new ProcessBuilder(command)
                    .redirectErrorStream(true)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException none) {
            // No browser here: the address stands in the note and in the link's tooltip.
            return;
        }
    }

    private void key(KeyEvent key) {
        if (source == null && key.getTarget() == this && key.getCode() == KeyCode.ENTER) {
            key.consume();
            open().area.requestFocus();
        } else if (source != null && key.getCode() == KeyCode.ESCAPE) {
            key.consume();
            close();
            super.requestFocus();
        }
    }

    private void refresh() {
        String text = cell.text().get();
        view.show(text);
        setAccessibleText("Note: "
                + text.lines().filter(line -> !line.isBlank()).findFirst().orElse("empty"));
    }

    private Source open() {
        Source opened = source;
        if (opened == null) {
            Source made = new Source(model, cell);
            source = made;
            Button picture = new Button("Picture…");
            picture.setOnAction(event -> choosePicture(made));
            Button done = new Button("Done");
            done.setOnAction(event -> {
                close();
                super.requestFocus();
            });
            made.tools.getChildren().addAll(picture, done, made.problem);
            getChildren().setAll(made.frame, made.tools, view);
            getStyleClass().add("writing");
            setFocusTraversable(false);
            made.frame.addEventHandler(DragEvent.DRAG_OVER, this::offer);
            made.frame.addEventHandler(DragEvent.DRAG_DROPPED, event -> drop(made, event));
            opened = made;
        }
        return opened;
    }

    private void close() {
        Source opened = source;
        if (opened != null) {
            source = null;
            opened.dispose();
            getStyleClass().remove("writing");
            getChildren().setAll(view);
            setFocusTraversable(true);
        }
    }

    private void offer(DragEvent event) {
        if (event.getDragboard().hasFiles()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
        }
    }

    private void drop(Source opened, DragEvent event) {
        for (File file : event.getDragboard().getFiles()) {
            put(opened, file.toPath());
        }
        event.setDropCompleted(true);
        event.consume();
    }

    private void choosePicture(Source opened) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("A picture for the note");
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter("Pictures", "*.png", "*.jpg", "*.jpeg", "*.gif"));
        try {
            File file = chooser.showOpenDialog(getScene().getWindow());
            if (file != null) {
                put(opened, file.toPath());
            }
        } catch (UnsupportedOperationException noFileWindow) {
            opened.problem.setText(
                    "This display has no window to choose a file; drop the picture on the note instead.");
        }
    }

    private static void put(Source opened, Path file) {
        opened.problem.setText("");
        String name = file.getFileName().toString();
        try {
            if (!opened.isTooLarge(name, Files.size(file))) {
                opened.put(name, Files.readAllBytes(file));
            }
        } catch (IOException unreadable) {
            opened.problem.setText(name + " cannot be read; choose another file.");
        }
    }

    private void showSought() {
        Optional<Match> here = model.finding().here().get();
        if (here.filter(match -> match.cell().equals(cell.id())).isPresent()) {
            open();
        }
    }

    /** Gives the focus to the note; to its source while that is shown. */
    @Override
    public void requestFocus() {
        Source opened = source;
        if (opened == null) {
            super.requestFocus();
        } else {
            opened.area.requestFocus();
        }
    }

    /**
     * Gives the focus to the note's source at a place.
     *
     * @param caret the place; one beyond the text is its end
     */
    public void focusAt(Caret caret) {
        SourceArea area = open().area;
        area.moveTo(Math.min(Math.max(0, caret.position()), area.getLength()));
        area.requestFocus();
        area.requestFollowCaret();
    }

    /** Stops following the workbook. */
    public void dispose() {
        cell.text().removeListener(weakly);
        model.finding().here().removeListener(weakSought);
        close();
    }
}

package leverwright.face.desk;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import leverwright.workbook.document.WorkbookFormat;
import org.jspecify.annotations.Nullable;

/** Asks by the system's own file windows. */
final class SystemChooser implements Chooser {

    private static final String PAGE = ".html";

    private @Nullable Path last;

    @Override
    public List<Path> toOpen(Window owner) {
        FileChooser chooser = chooser("Open a workbook", "Workbooks", "*" + WorkbookFormat.EXTENSION);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("All files", "*"));
        List<File> chosen = chooser.showOpenMultipleDialog(owner);
        List<Path> files =
                chosen == null ? List.of() : chosen.stream().map(File::toPath).toList();
        files.forEach(this::remember);
        return files;
    }

    @Override
    public Optional<Path> toSave(Window owner, String suggested) {
        return save(owner, "Save the workbook as", "Workbooks", WorkbookFormat.EXTENSION, suggested);
    }

    @Override
    public Optional<Path> forPage(Window owner, String suggested) {
        return save(owner, "Publish the workbook as a page", "Pages", PAGE, suggested);
    }

    private Optional<Path> save(Window owner, String title, String kind, String ending, String suggested) {
        FileChooser chooser = chooser(title, kind, "*" + ending);
        chooser.setInitialFileName(suggested + ending);
        File chosen = chooser.showSaveDialog(owner);
        if (chosen == null) {
            return Optional.empty();
        }
        Path file = chosen.toPath();
        if (!file.toString().endsWith(ending)) {
            // The system has asked about replacing the name without the ending, not about this one.
            String name = file.getFileName().toString();
            file = file.resolveSibling(name + ending);
            for (int number = 2; Files.exists(file); number++) {
                file = file.resolveSibling(name + " " + number + ending);
            }
        }
        remember(file);
        return Optional.of(file);
    }

    private FileChooser chooser(String title, String kind, String pattern) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(title);
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, pattern));
        Path folder = last;
        if (folder != null && Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        return chooser;
    }

    private void remember(Path file) {
        last = file.toAbsolutePath().getParent();
    }
}

package leverwright.face.desk.sheet;

import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import javafx.stage.FileChooser;
import javafx.stage.Window;
import org.jspecify.annotations.Nullable;

/** Asks where something is to be saved. */
interface SavePlace {

    /**
     * Asks the reader.
     *
     * @param owner the window that asks, or null when there is none
     * @param name the suggested name without ending
     * @param ending the ending of the file's name without a dot
     * @param kind what such files are called
     * @return the file; empty when the reader gave it up
     */
    Optional<Path> ask(@Nullable Window owner, String name, String ending, String kind);

    /** Returns the dialog of the system. */
    static SavePlace ofSystem() {
        return (owner, name, ending, kind) -> {
            FileChooser chooser = new FileChooser();
            chooser.setInitialFileName(name + "." + ending);
            chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(kind, "*." + ending));
            File chosen;
            try {
                chosen = chooser.showSaveDialog(owner);
            } catch (UnsupportedOperationException noFileWindow) {
                // A display without windows for files, as in tests without a screen: nothing was chosen.
                return Optional.empty();
            }
            if (chosen == null) {
                return Optional.empty();
            }
            Path path = chosen.toPath();
            boolean ended = path.getFileName().toString().contains(".");
            return Optional.of(ended ? path : path.resolveSibling(path.getFileName() + "." + ending));
        };
    }
}

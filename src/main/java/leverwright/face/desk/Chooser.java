package leverwright.face.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javafx.stage.Window;

/** Asks the user for files. */
interface Chooser {

    /** Returns workbooks to open; none when the user thought better of it. */
    List<Path> toOpen(Window owner);

    /** Returns the file to save a workbook in; the user has agreed to replace what is there. */
    Optional<Path> toSave(Window owner, String suggested);

    /** Returns the file to write a page to; the user has agreed to replace what is there. */
    Optional<Path> forPage(Window owner, String suggested);
}

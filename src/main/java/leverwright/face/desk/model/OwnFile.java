package leverwright.face.desk.model;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Optional;
import leverwright.workbook.document.FileStamp;
import leverwright.workbook.document.Journal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.json.JsonProblem;
import org.jspecify.annotations.Nullable;

/**
 * The file of one open workbook: the right to save over it, its content as last seen, and the journal of what is not in
 * it. Every method that touches the disk runs on the files' thread.
 */
final class OwnFile {

    private final DeskHome home;
    private Optional<Path> path;
    private Optional<FileStamp> stamp;
    private String name;
    private Journal journal;
    private @Nullable FileClaim claim;
    private @Nullable FileTime seenTime;
    private long seenSize;

    OwnFile(DeskHome home, Optional<Path> path, Optional<FileStamp> stamp) {
        this.home = home;
        this.path = path;
        this.stamp = stamp;
        name = path.map(OwnFile::nameOf).orElseGet(DeskHome::newName);
        journal = Journal.of(home.journals(), name);
        claimIt();
        lookAt();
    }

    /** The name of a file whatever links lead to it. */
    private static String nameOf(Path file) {
        try {
            return file.toRealPath().toString();
        } catch (IOException gone) {
            return file.toAbsolutePath().normalize().toString();
        }
    }

    private void claimIt() {
        try {
            claim = FileClaim.on(home.state(), name).orElse(null);
        } catch (IOException failure) {
            home.log().failure("a file could not be claimed", failure);
        }
    }

    synchronized Optional<Path> path() {
        return path;
    }

    synchronized Optional<FileStamp> stamp() {
        return stamp;
    }

    synchronized boolean isOwned() {
        return claim != null;
    }

    private void lookAt() {
        try {
            if (path.isPresent()) {
                seenTime = Files.getLastModifiedTime(path.get());
                seenSize = Files.size(path.get());
            }
        } catch (IOException gone) {
            seenTime = null;
        }
    }

    /** Returns what somebody else did to the file since it was last seen, in words; empty when nothing. */
    synchronized String changeOnDisk() {
        Path file = path.orElse(null);
        FileStamp known = stamp.orElse(null);
        if (file == null || known == null) {
            return "";
        }
        try {
            if (!Files.exists(file)) {
                return "The file " + file + " is no longer there; saving makes it again.";
            }
            FileTime time = Files.getLastModifiedTime(file);
            if (time.equals(seenTime) && Files.size(file) == seenSize) {
                return "";
            }
            if (home.files().stamp(file).equals(known)) {
                lookAt();
                return "";
            }
            return "The file " + file
                    + " was changed by somebody else. Read it again, or save yours under another name.";
        } catch (IOException unreadable) {
            return "The file " + file + " cannot be read at the moment.";
        }
    }

    /** Reads the file again. */
    synchronized Workbook read() throws IOException {
        var opened = home.files().read(path.orElseThrow());
        stamp = Optional.of(opened.stamp());
        lookAt();
        return opened.workbook();
    }

    synchronized SaveOutcome save(Workbook workbook, boolean replace) {
        Path file = path.orElse(null);
        FileStamp known = stamp.orElse(null);
        if (file == null || known == null || home.isOnShelf(file)) {
            return new SaveOutcome(SaveOutcome.Kind.NEEDS_NAME, "The workbook has no file of its own; choose a name.");
        }
        if (claim == null) {
            claimIt();
        }
        if (claim == null) {
            return elsewhere(file);
        }
        try {
            if (!replace && Files.exists(file) && !home.files().stamp(file).equals(known)) {
                return new SaveOutcome(SaveOutcome.Kind.CHANGED_ON_DISK, changeOnDisk());
            }
            stamp = Optional.of(
                    replace
                            ? home.files().replace(file, workbook)
                            : home.files().save(file, workbook, known));
            return saved(file);
        } catch (IOException | JsonProblem failure) {
            return failed(failure);
        }
    }

    private SaveOutcome saved(Path file) throws IOException {
        lookAt();
        journal.clear();
        return new SaveOutcome(SaveOutcome.Kind.SAVED, "Saved as " + file + ".");
    }

    private static SaveOutcome failed(Exception failure) {
        return new SaveOutcome(SaveOutcome.Kind.FAILED, String.valueOf(failure.getMessage()));
    }

    private static SaveOutcome elsewhere(Path file) {
        return new SaveOutcome(
                SaveOutcome.Kind.OPEN_ELSEWHERE,
                file + " is open in another window; close it there, or save under another name.");
    }

    /** Saves under another name, which the user has agreed to replace where it is taken. */
    synchronized SaveOutcome saveAs(Path target, Workbook workbook) {
        Path file = target.toAbsolutePath().normalize();
        if (home.isOnShelf(file)) {
            return new SaveOutcome(
                    SaveOutcome.Kind.NEEDS_NAME, "That is the program's own folder; choose another one.");
        }
        String newName = nameOf(file);
        FileClaim taken = null;
        try {
            if (!newName.equals(name)) {
                taken = FileClaim.on(home.state(), newName).orElse(null);
                if (taken == null) {
                    return elsewhere(file);
                }
            } else if (claim == null) {
                return elsewhere(file);
            }
            FileStamp now = home.files().replace(file, workbook);
            journal.clear();
            if (taken != null) {
                release();
                claim = taken;
                taken = null;
            }
            path = Optional.of(file);
            stamp = Optional.of(now);
            name = newName;
            journal = Journal.of(home.journals(), name);
            return saved(file);
        } catch (IOException | JsonProblem failure) {
            return failed(failure);
        } finally {
            letGo(taken);
        }
    }

    private void letGo(@Nullable FileClaim given) {
        try {
            if (given != null) {
                given.close();
            }
        } catch (IOException failure) {
            home.log().failure("a claim could not be given back", failure);
        }
    }

    /** Returns text of this workbook that was typed and never saved, by a window that is gone. */
    synchronized Optional<Workbook> unsaved() {
        if (claim == null) {
            return Optional.empty();
        }
        try {
            return journal.unsaved().map(Journal.Unsaved::workbook);
        } catch (IOException unreadable) {
            home.log().failure("a journal could not be read", unreadable);
            return Optional.empty();
        }
    }

    /** Keeps unsaved text; returns what went wrong in words, empty when nothing did. */
    synchronized String keep(Workbook workbook) {
        if (claim == null) {
            return "";
        }
        try {
            journal.keep(workbook, stamp);
            return "";
        } catch (IOException failure) {
            home.log().failure("unsaved text could not be kept", failure);
            return "Unsaved text cannot be kept safe in " + home.journals() + "; save often.";
        }
    }

    /** Forgets unsaved text, after it was saved or given up. */
    synchronized void forget() {
        try {
            if (claim != null) {
                journal.clear();
            }
        } catch (IOException failure) {
            home.log().failure("a journal could not be removed", failure);
        }
    }

    synchronized void release() {
        letGo(claim);
        claim = null;
    }
}

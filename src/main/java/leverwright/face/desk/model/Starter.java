package leverwright.face.desk.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFormat;

/** What a new workbook begins with. */
public enum Starter {
    /** One empty script. */
    EMPTY("Empty", "one empty script", "empty"),
    /** Two exercises side by side at the same bar. */
    COMPARE("Compare two exercises", "the same lifter and bar in two exercises, joint by joint", "compare"),
    /** One exercise looked at from every side. */
    IN_DEPTH("One exercise in depth", "figure, moments, sweep and hand calculation of one exercise", "in-depth"),
    /** Somebody's numbers, each against the model. */
    CHECK("Check somebody's numbers", "sentences with a number and a tolerance, each with its verdict", "check");

    private final String title;
    private final String words;
    private final String resource;

    Starter(String title, String words, String resource) {
        this.title = title;
        this.words = words;
        this.resource = resource;
    }

    /** Returns the starter's name as a reader sees it. */
    public String title() {
        return title;
    }

    /** Returns what it holds, in a few words. */
    public String words() {
        return words;
    }

    /** Returns a new workbook of this kind. */
    public Workbook workbook() {
        try (InputStream stream = Starter.class.getResourceAsStream(resource + ".leverwright.json")) {
            if (stream == null) {
                throw new IllegalStateException("the program's file " + resource + ".leverwright.json is missing");
            }
            return WorkbookFormat.read(stream.readAllBytes());
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}

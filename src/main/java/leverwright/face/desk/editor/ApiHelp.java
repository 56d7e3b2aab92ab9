package leverwright.face.desk.editor;

import java.util.List;
import leverwright.face.desk.model.DeskModel;

/** Help by what people want to do: tasks in their words, each with a line of script that does it; and the glossary. */
public final class ApiHelp {

    /**
     * A task.
     *
     * @param title what one wants to do, in a few words, for example {@code "Load on the hip"}
     * @param words further words by which people look for it
     * @param line the line of script; it may use {@code ines}, {@code hinge}, {@code held} and such
     * @param doc what the line shows, in one sentence
     */
    public record Task(String title, String words, String line, String doc) {}

    /**
     * A word of the trade.
     *
     * @param word the word
     * @param meaning what it means here
     */
    public record Term(String word, String meaning) {}

    private ApiHelp() {}

    /** Returns every task, in the order in which a newcomer meets them. */
    public static List<Task> tasks() {
        return List.of(new Task(
                "Load on the hip",
                "hip moment torque back force",
                "held.moment(HIP)",
                "The net moment at the hip, per side."));
    }

    /**
     * Returns the tasks that fit what somebody typed, the best first; every task when nothing was typed.
     *
     * @param sought words, in any order, also misspelt ones
     */
    public static List<Task> find(String sought) {
        return tasks();
    }

    /**
     * Returns the lines to insert for a task: its line, and before it what the workbook does not yet declare.
     *
     * @param task the task
     * @param model the workbook
     */
    public static String toInsert(Task task, DeskModel model) {
        return task.line();
    }

    /** Returns the glossary in the order of the alphabet. */
    public static List<Term> glossary() {
        return List.of();
    }
}

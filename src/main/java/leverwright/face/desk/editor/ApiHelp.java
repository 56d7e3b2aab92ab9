package leverwright.face.desk.editor;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import leverwright.face.desk.model.CellView;
import leverwright.face.desk.model.DeskModel;

/** Help by what people want to do: tasks in their words, each with a line of script that does it; and the glossary. */
public final class ApiHelp {

    private static final Pattern TERM = Pattern.compile("- \\*\\*(.+?)\\*\\*: (.+)");

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

    private static final class Holder {
        static final Map<String, String> STANDARD = new LinkedHashMap<>();
        static final List<Task> TASKS = new ArrayList<>();

        static {
            String head = "";
            for (String line : resource("tasks.txt").lines().toList()) {
                if (line.startsWith("let ")) {
                    int sign = line.indexOf(" = ");
                    STANDARD.put(line.substring(4, sign), line.substring(sign + 3));
                } else if (line.startsWith("  ")) {
                    String[] told = head.split("\\s*\\|\\s*");
                    TASKS.add(new Task(told[0], told[1], line.strip(), told[2]));
                } else if (!line.isBlank() && !line.startsWith("#")) {
                    head = line;
                }
            }
        }
    }

    private ApiHelp() {}

    private static String resource(String name) {
        try (InputStream stream = ApiHelp.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("the program's file " + name + " is missing");
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Returns every task, in the order in which a newcomer meets them. */
    public static List<Task> tasks() {
        return List.copyOf(Holder.TASKS);
    }

    /**
     * Returns the tasks that fit what somebody typed, the best first; every task when nothing was typed.
     *
     * @param sought words, in any order, also misspelt ones
     */
    public static List<Task> find(String sought) {
        List<String> words = NearWords.of(sought);
        if (words.isEmpty()) {
            return tasks();
        }
        Map<Task, Double> fits = new LinkedHashMap<>();
        for (Task task : tasks()) {
            double fit = NearWords.fit(words, NearWords.of(task.title()), 3)
                    + NearWords.fit(words, NearWords.of(task.words()), 2)
                    + NearWords.fit(words, NearWords.of(task.doc() + " " + task.line()), 1);
            if (fit > 0) {
                fits.put(task, fit);
            }
        }
        double best =
                fits.values().stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return fits.entrySet().stream()
                .filter(entry -> entry.getValue() >= best / 4)
                .sorted(Comparator.comparingDouble((Map.Entry<Task, Double> entry) -> -entry.getValue()))
                .map(Map.Entry::getKey)
                .toList();
    }

    /**
     * Returns the lines to insert for a task: its line, and before it what the workbook does not yet declare.
     *
     * @param task the task
     * @param model the workbook
     */
    public static String toInsert(Task task, DeskModel model) {
        String script = model.cells().stream()
                .filter(CellView::isScript)
                .map(cell -> cell.text().get())
                .collect(Collectors.joining("\n"));
        return toInsert(task, script);
    }

    /** Returns the lines to insert into a workbook with these scripts. */
    static String toInsert(Task task, String script) {
        List<String> lines = new ArrayList<>();
        require(task.line(), script, lines);
        lines.add(task.line().replace("; ", ";\n"));
        return String.join("\n", lines);
    }

    private static void require(String line, String script, List<String> lines) {
        Holder.STANDARD.forEach((name, value) -> {
            String declaration = "var " + name + " = " + value + ";";
            if (says(line, name) && !declares(script, name) && !lines.contains(declaration)) {
                require(value, script, lines);
                if (!lines.contains(declaration)) {
                    lines.add(declaration);
                }
            }
        });
    }

    private static boolean says(String line, String name) {
        return Pattern.compile("(?<![\\w.\"])" + name + "\\b(?!\")")
                .matcher(line)
                .find();
    }

    private static boolean declares(String script, String name) {
        return Pattern.compile("\\b[\\w>\\]]+\\s+" + name + "\\s*=")
                .matcher(script)
                .find();
    }

    /** Returns the glossary in the order of the alphabet, as the docs have it. */
    public static List<Term> glossary() {
        List<Term> terms = new ArrayList<>();
        boolean inside = false;
        for (String line : resource("words.md").lines().toList()) {
            if (line.startsWith("## ")) {
                inside = line.equals("## Glossary");
            }
            Matcher term = TERM.matcher(line);
            if (inside && term.matches()) {
                terms.add(new Term(term.group(1), term.group(2)));
            }
        }
        return terms;
    }
}

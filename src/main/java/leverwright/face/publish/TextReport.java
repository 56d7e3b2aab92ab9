package leverwright.face.publish;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import leverwright.face.draw.FigureWords;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.working.Working;
import leverwright.mechanics.working.WorkingText;
import leverwright.run.result.CellState;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import leverwright.run.result.Verdict;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;
import org.jspecify.annotations.Nullable;

/**
 * Results as plain text for a terminal. Nothing in a result can steer the terminal. Every text returned ends with a line
 * feed unless it is empty. A report numbers its notes and says each once: make a new one for every run.
 */
public final class TextReport {
    /** The width of lines unless asked otherwise. */
    public static final int WIDTH = 100;

    private static final int NARROWEST = 40;

    private static final Parser NOTE_PARSER = Parser.builder().build();
    private static final TextContentRenderer NOTE_TEXT = TextContentRenderer.builder()
            .lineBreakRendering(LineBreakRendering.SEPARATE_BLOCKS)
            .build();

    private final int width;
    private final PlainText form;
    private final boolean ascii;
    private final boolean bold;
    private final boolean everyWorking;
    private final Map<String, Integer> said = new LinkedHashMap<>();

    /**
     * A report in a form.
     *
     * @param width the longest line, at least 40 columns; lines of hand calculations may be longer, since a broken line is
     *     hard to check
     * @param ascii whether only ASCII may be used, for terminals that know no other characters
     * @param bold whether titles may be made bold by the escape sequences of ECMA-48
     * @param everyWorking whether the hand calculation of every number is printed, and not only those that a cell asked for
     *     with {@code working}
     * @throws IllegalArgumentException when the width is too small to be read
     */
    public TextReport(int width, boolean ascii, boolean bold, boolean everyWorking) {
        if (width < NARROWEST) {
            throw new IllegalArgumentException(
                    "a report needs lines of at least " + NARROWEST + " columns, not " + width + "; give more");
        }
        this.width = width;
        this.ascii = ascii;
        this.form = new PlainText(ascii);
        this.bold = bold;
        this.everyWorking = everyWorking;
    }

    /** Returns a report of 100 columns with all characters and nothing bold. */
    public static TextReport standard() {
        return new TextReport(WIDTH, false, false, false);
    }

    /** Returns the title of a workbook with who wrote it and what it is for; empty parts are left out. */
    public String heading(String title, String author, String about) {
        List<String> lines = new ArrayList<>();
        lines.addAll(wrap(title, "", ""));
        lines.replaceAll(this::strong);
        if (!author.isEmpty()) {
            lines.addAll(wrap(author, "", ""));
        }
        if (!about.isEmpty()) {
            lines.add("");
            lines.addAll(wrap(about, "", ""));
        }
        return text(lines);
    }

    /** Returns the dials with their settings and ranges; empty when there are none. */
    public String dials(List<DialDeclared> dials) {
        List<String> lines = new ArrayList<>();
        for (DialDeclared dial : dials) {
            lines.addAll(wrap(
                    "dial " + dial.name() + " at " + ValueText.setting(dial.setting()) + " (" + ValueText.range(dial)
                            + ", script says " + ValueText.setting(dial.standard()) + ")",
                    "",
                    "  "));
        }
        return text(lines);
    }

    /**
     * Returns a cell: its title and state over a rule, what went wrong, and its results.
     *
     * @param title the cell's title, or its id when it has none
     * @param state its state
     * @param problem what went wrong, in words; empty when nothing did
     * @param results the results in the order they were shown
     */
    public String cell(String title, CellState state, String problem, List<Result> results) {
        List<String> lines = new ArrayList<>();
        String shown = clip(form.line(title), width - 12);
        lines.add(strong(shown) + PlainText.padLeft(state.words(), width - PlainText.columns(shown)));
        lines.add((ascii ? "-" : "─").repeat(width));
        if (!problem.isEmpty()) {
            for (String line : form.of(problem).split("\n", -1)) {
                lines.addAll(PlainText.wrap(line, width, "! ", "  "));
            }
        }
        return text(lines) + results(results);
    }

    /**
     * Returns a note as plain text.
     *
     * @param commonMark the note's prose as written
     */
    public String note(String commonMark) {
        String plain = NOTE_TEXT.render(NOTE_PARSER.parse(commonMark));
        List<String> lines = new ArrayList<>();
        for (String line : form.of(plain).split("\n", -1)) {
            lines.addAll(line.isEmpty() ? List.of("") : wrap(line, "", ""));
        }
        return text(lines);
    }

    /** Returns results in the order given, parted by empty lines. */
    public String results(List<Result> results) {
        StringBuilder all = new StringBuilder();
        for (Result result : results) {
            String one = result(result);
            all.append(all.length() > 0 && !one.isEmpty() ? "\n" : "").append(one);
        }
        return all.toString();
    }

    /** Returns one result. */
    public String result(Result result) {
        List<String> lines = new ArrayList<>();
        if (result instanceof NumberResult number) {
            addNumber(lines, number);
        } else if (result instanceof TableResult table) {
            addTable(lines, table);
        } else if (result instanceof CurvesResult curves) {
            addTitle(lines, curves.title().isEmpty() ? curves.curves().title() : curves.title());
            lines.addAll(TextChart.of(curves.curves(), width, form));
        } else if (result instanceof MapResult map) {
            addTitle(lines, map.title().isEmpty() ? map.map().title() : map.title());
            lines.addAll(TextMap.of(map.map(), width, form));
        } else if (result instanceof FigureResult figure) {
            String title = figure.title().isEmpty() ? figure.sketch().title() : figure.title();
            String words = FigureWords.of(figure);
            addTitle(lines, words.startsWith(title) ? "" : title);
            lines.addAll(wrap(words, "", ""));
        } else if (result instanceof ClaimResult claim) {
            addClaim(lines, claim);
        } else if (result instanceof TextResult text) {
            addText(lines, text);
        }
        addNotes(lines, Notes.of(result));
        return text(lines);
    }

    /** Returns the caution that ends every report. */
    public String caution() {
        return text(wrap(Cautions.SHORT, "", ""));
    }

    private void addNumber(List<String> lines, NumberResult number) {
        String value = ValueText.full(number.quantity(), number.sides(), number.working());
        lines.addAll(wrap((number.title().isEmpty() ? "" : number.title() + ": ") + value, "", "  "));
        if (everyWorking || number.workingOpen()) {
            addWorking(lines, number.working());
        }
    }

    private void addTable(List<String> lines, TableResult table) {
        addTitle(lines, table.title());
        lines.addAll(TextTable.of(table, width, form));
        for (List<TableResult.Entry> row : table.rows()) {
            for (TableResult.Entry entry : row) {
                if (everyWorking && entry instanceof TableResult.NumberEntry number) {
                    addWorking(lines, number.working());
                }
            }
        }
    }

    private void addClaim(List<String> lines, ClaimResult claim) {
        lines.addAll(wrap("claim: " + claim.title(), "", "  "));
        String where = claim.verdict() == Verdict.OUTSIDE_THIS_MODEL ? "" : " in this model";
        lines.add("  " + strong(claim.verdict().words()) + where);
        if (claim.computed() != null) {
            String value = ValueText.full(claim.computed(), claim.sides(), claim.working());
            lines.addAll(wrap(claim.computedLabel() + ": " + value, "  ", "    "));
        }
        String asked = claim.test().isBlank() ? "" : "asked: " + claim.test() + "; ";
        lines.addAll(wrap(asked + claim.reason(), "  ", "    "));
        if (claim.forReader()) {
            lines.addAll(wrap("for the reader: change the line until the claim holds", "  ", "    "));
        }
        if (claim.doubted()) {
            lines.add("  doubted by the author");
        }
        if (!claim.source().isEmpty()) {
            lines.addAll(wrap("claimed in: " + claim.source(), "  ", "    "));
        }
        if (!claim.settings().isEmpty()) {
            lines.addAll(wrap("at its own settings: " + String.join("; ", claim.settings()), "  ", "    "));
        }
        if (everyWorking) {
            addWorking(lines, claim.working());
        }
    }

    private void addText(List<String> lines, TextResult text) {
        addTitle(lines, text.title());
        String shown = form.of(text.text()).stripTrailing();
        if (!shown.isEmpty()) {
            lines.addAll(List.of(shown.split("\n", -1)));
        }
        if (text.leftOut() > 0) {
            lines.add("(" + text.leftOut() + " more characters are left out)");
        }
    }

    private void addWorking(List<String> lines, @Nullable Working working) {
        if (working != null) {
            WorkingText.plain(working).forEach(line -> lines.add("    " + form.line(line)));
        }
    }

    private void addTitle(List<String> lines, String title) {
        if (!title.isEmpty()) {
            wrap(title, "", "").forEach(line -> lines.add(strong(line)));
        }
    }

    private void addNotes(List<String> lines, List<String> notes) {
        Set<Integer> again = new TreeSet<>();
        for (String note : notes) {
            Integer number = said.get(note);
            if (number == null) {
                said.put(note, said.size() + 1);
                lines.addAll(wrap("note " + said.size() + ": " + note, "", "  "));
            } else {
                again.add(number);
            }
        }
        if (!again.isEmpty()) {
            lines.addAll(wrap(
                    "as above: note " + again.stream().map(String::valueOf).collect(Collectors.joining(", ")),
                    "",
                    "  "));
        }
    }

    private List<String> wrap(String text, String first, String next) {
        return new ArrayList<>(PlainText.wrap(form.line(text), width, first, next));
    }

    private static String clip(String text, int columns) {
        if (PlainText.columns(text) <= columns) {
            return text;
        }
        return text.substring(0, text.offsetByCodePoints(0, columns - 3)) + "...";
    }

    private String strong(String line) {
        return bold ? "\u001b[1m" + line + "\u001b[0m" : line;
    }

    private String text(List<String> lines) {
        String joined = String.join("\n", lines);
        if (lines.isEmpty()) {
            return "";
        }
        return joined + "\n";
    }
}

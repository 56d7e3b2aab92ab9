package leverwright.face.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import leverwright.face.draw.Markup;
import leverwright.face.draw.ValueText;
import leverwright.run.result.CellState;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.workbook.document.Cell;
import leverwright.workbook.document.CellRecord;
import leverwright.workbook.document.NoteCell;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Seal;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookRecord;

/** Writes a workbook and its record as one page that stands for itself. */
public final class Publisher {
    private static final String SECURITY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

    private final Workbook workbook;
    private final boolean current;
    private final NoteNumbers notes;
    private final StringBuilder html = new StringBuilder();

    private Publisher(Workbook workbook) {
        this.workbook = workbook;
        this.current = workbook.recordIsCurrent();
        this.notes = new NoteNumbers(workbook.scripts().stream()
                .map(script -> record(script).map(CellRecord::results).orElse(List.of()))
                .toList());
    }

    /**
     * Returns the page as HTML, in UTF-8 once written. The same workbook always gives the same text.
     *
     * @param workbook the workbook with its record; without one the page shows its notes and scripts as not run
     */
    public static String page(Workbook workbook) {
        Publisher publisher = new Publisher(workbook);
        publisher.writeHead();
        publisher.writeHeader();
        publisher.writeSheet();
        publisher.writeFooter();
        return publisher.html.toString();
    }

    private void writeHead() {
        html.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n");
        html.append("<meta http-equiv=\"Content-Security-Policy\" content=\"" + SECURITY + "\"/>\n");
        html.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n");
        html.append("<meta name=\"color-scheme\" content=\"light dark\"/>\n");
        html.append("<meta name=\"referrer\" content=\"no-referrer\"/>\n");
        html.append("<title>" + Markup.text(workbook.title()) + "</title>\n");
        html.append("<style>\n" + PageStyle.css() + "</style>\n</head>\n<body>\n");
        html.append("<a class=\"skip\" href=\"#sheet\">To the workbook</a>\n");
    }

    private void writeHeader() {
        html.append("<header>\n<h1>" + Markup.text(workbook.title()) + "</h1>\n");
        if (!workbook.author().isEmpty()) {
            html.append("<p class=\"author\">" + Markup.text(workbook.author()) + "</p>\n");
        }
        if (!workbook.about().isEmpty()) {
            html.append("<p class=\"about\">" + Markup.text(workbook.about()) + "</p>\n");
        }
        html.append("<p class=\"caution\"><b>" + Markup.text(Cautions.SHORT) + "</b> <a href=\"#cautions\">All cautions"
                + "</a></p>\n");
        if (workbook.record().isEmpty()) {
            html.append("<p class=\"warning\">This workbook has not been computed: there are no results yet.</p>\n");
        } else if (!current) {
            html.append("<p class=\"warning\">The results below were computed from other scripts or dials than those"
                    + " shown: they are stale until the workbook is computed again.</p>\n");
        }
        html.append("</header>\n");
        writeDials();
        writeContents();
    }

    private void writeDials() {
        List<DialDeclared> dials = new ArrayList<>();
        workbook.record().ifPresent(record -> record.cells().values().forEach(cell -> dials.addAll(cell.dials())));
        if (dials.isEmpty()) {
            return;
        }
        html.append(
                "<section class=\"dials\" aria-labelledby=\"dials\">\n<h2 id=\"dials\">Dials</h2>\n<div class=\"wide\""
                        + " tabindex=\"0\" role=\"group\" aria-label=\"Dials\"><table>\n<thead><tr><th scope=\"col\">dial</th>"
                        + "<th scope=\"col\" class=\"right\">set to</th><th scope=\"col\" class=\"right\">script says</th>"
                        + "<th scope=\"col\" class=\"right\">range</th></tr></thead>\n<tbody>\n");
        for (DialDeclared dial : dials) {
            html.append("<tr><th scope=\"row\">" + Markup.text(dial.name()) + "</th><td class=\"right\"><b>"
                    + Markup.text(ValueText.setting(dial.setting())) + "</b></td><td class=\"right\">"
                    + Markup.text(ValueText.setting(dial.standard())) + "</td><td class=\"right\">"
                    + Markup.text(ValueText.range(dial)) + "</td></tr>\n");
        }
        html.append("</tbody></table></div>\n</section>\n");
    }

    private void writeContents() {
        List<String> entries = new ArrayList<>();
        for (Cell cell : workbook.sheet()) {
            String name = cell instanceof ScriptCell script ? script.title() : NoteHtml.heading(cell.text());
            if (!name.isBlank()) {
                entries.add("<li><a href=\"#cell-" + cell.id() + "\">" + Markup.text(name) + "</a></li>\n");
            }
        }
        if (entries.size() > 2) {
            html.append("<nav aria-label=\"In this workbook\">\n<ol>\n" + String.join("", entries) + "</ol>\n</nav>\n");
        }
    }

    private void writeSheet() {
        html.append("<main id=\"sheet\">\n");
        for (Cell cell : workbook.sheet()) {
            if (cell instanceof NoteCell note) {
                html.append("<section class=\"prose\" id=\"cell-" + note.id() + "\">\n" + NoteHtml.of(note.text())
                        + "</section>\n");
            } else if (cell instanceof ScriptCell script) {
                writeStrip(script);
            }
        }
        html.append("</main>\n");
    }

    private void writeStrip(ScriptCell script) {
        Optional<CellRecord> record = record(script);
        String title = script.title().isBlank() ? "" : Markup.text(script.title());
        String shape = record.stream().anyMatch(Publisher::isBroad) ? "strip stacked" : "strip";
        html.append("<section class=\"" + shape + "\" id=\"cell-" + script.id() + "\" aria-label=\""
                + (title.isEmpty() ? "Script " + script.id() : title)
                + "\">\n<div class=\"script\">\n<div class=\"head\">");
        html.append(title.isEmpty() ? "" : "<h2>" + title + "</h2>");
        html.append(state(record) + "</div>\n<pre><code>" + CodeHtml.of(script.text())
                + "</code></pre>\n</div>\n<div class=\"results\">\n");
        record.ifPresent(kept -> writeResults(script.id(), kept));
        html.append("</div>\n</section>\n");
    }

    /** Tells whether a cell shows a table that needs the whole width of the page. */
    private static boolean isBroad(CellRecord record) {
        return record.results().stream()
                .anyMatch(result -> result instanceof TableResult table && TableHtml.isBroad(table));
    }

    private Optional<CellRecord> record(ScriptCell script) {
        return workbook.record().map(kept -> kept.cells().get(script.id()));
    }

    private String state(Optional<CellRecord> record) {
        CellState state = record.map(CellRecord::state).orElse(CellState.NOT_RUN);
        if (state == CellState.FRESH && !current) {
            state = CellState.STALE;
        }
        String kind = state.name().toLowerCase(Locale.ROOT);
        return "<span class=\"state " + kind + "\">" + Markup.text(state.words())
                + (state == CellState.FRESH ? " ✓" : "") + "</span>";
    }

    private void writeResults(String id, CellRecord record) {
        if (!record.problem().isEmpty()) {
            html.append(
                    "<div class=\"problem\"><p><b>" + Markup.text(record.state().words()) + "</b></p><pre>"
                            + Markup.text(record.problem()) + "</pre></div>\n");
        }
        List<Result> results = record.results();
        for (int i = 0; i < results.size(); i++) {
            html.append(ResultHtml.of(results.get(i), "d-" + id.replace('_', '-') + "-" + i, notes));
        }
    }

    private void writeFooter() {
        html.append("<footer>\n" + notes.list() + "<section id=\"cautions\" aria-labelledby=\"cautions-title\">\n"
                + "<h2 id=\"cautions-title\">Cautions</h2>\n<p><b>" + Markup.text(Cautions.SHORT) + "</b></p>\n<ul>\n");
        Cautions.FULL.forEach(caution -> html.append("<li>" + Markup.text(caution) + "</li>\n"));
        html.append(
                "</ul>\n</section>\n<section aria-labelledby=\"made\">\n<h2 id=\"made\">How this was made</h2>\n<dl>\n");
        workbook.record().ifPresent(this::writeRecord);
        writeFact("Seal", Seal.state(workbook).words());
        workbook.seal().ifPresent(seal -> writeFact("Digest", seal));
        html.append(
                "</dl>\n<p>Check it yourself: <code>leverwright recheck FILE</code> computes the workbook file again"
                        + " and compares every number with this record, bit by bit.</p>\n</section>\n</footer>\n</body>\n</html>\n");
    }

    private void writeRecord(WorkbookRecord record) {
        writeFact("Computed by", "Leverwright " + record.engine());
        writeFact("On Java", record.java());
        writeFact("Seed", Long.toString(record.seed()));
        writeFact("Scripts", record.sheet());
    }

    private void writeFact(String name, String value) {
        html.append("<dt>" + Markup.text(name) + "</dt><dd>" + Markup.text(value) + "</dd>\n");
    }
}

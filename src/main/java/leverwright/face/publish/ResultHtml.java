package leverwright.face.publish;

import java.util.Locale;
import leverwright.face.draw.ChartDrawing;
import leverwright.face.draw.FigureDrawing;
import leverwright.face.draw.MapDrawing;
import leverwright.face.draw.Markup;
import leverwright.face.draw.Picture;
import leverwright.face.draw.SvgText;
import leverwright.face.draw.ValueText;
import leverwright.mechanics.working.Working;
import leverwright.mechanics.working.WorkingLine;
import leverwright.mechanics.working.WorkingText;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.run.result.MapResult;
import leverwright.run.result.NumberResult;
import leverwright.run.result.Quantity;
import leverwright.run.result.Result;
import leverwright.run.result.TableResult;
import leverwright.run.result.TextResult;
import org.jspecify.annotations.Nullable;

/** Results as markup: every word of a result goes through {@link Markup}, so that none becomes markup itself. */
final class ResultHtml {
    private static final int PHONE_WIDTH = 360;
    private static final int PHONE_HEIGHT = 260;

    private ResultHtml() {}

    /**
     * Returns a result as markup.
     *
     * @param result the result
     * @param id a name that no other element of the page has: letters, digits and hyphens
     * @param notes the notes of the page
     */
    static String of(Result result, String id, NoteNumbers notes) {
        String body = body(result, id);
        String kind = result.getClass().getSimpleName().replace("Result", "").toLowerCase(Locale.ROOT);
        return "<div class=\"result " + kind + "\">\n" + body + notes.beside(result) + "</div>\n";
    }

    private static String body(Result result, String id) {
        if (result instanceof NumberResult number) {
            return number(number);
        }
        if (result instanceof TableResult table) {
            return TableHtml.of(table);
        }
        if (result instanceof CurvesResult curves) {
            return curves(curves, id);
        }
        if (result instanceof MapResult map) {
            return map(map, id);
        }
        if (result instanceof FigureResult figure) {
            return figure(figure, id);
        }
        if (result instanceof ClaimResult claim) {
            return ClaimHtml.of(claim);
        }
        return text((TextResult) result);
    }

    private static String number(NumberResult number) {
        StringBuilder html = new StringBuilder();
        html.append("<p class=\"name\">" + Markup.text(number.title()) + "</p>\n");
        html.append(
                "<p class=\"value\">" + value(number.quantity(), number.sides().words(), number.working()) + "</p>\n");
        if (number.working() != null) {
            html.append(working(number.working(), "By hand", number.workingOpen()));
        }
        return html.toString();
    }

    /** Returns value, unit, side and band; a value with a working is printed as its last step prints it. */
    static String value(Quantity quantity, String side, @Nullable Working working) {
        String html = "<b>" + Markup.text(ValueText.value(quantity, working)) + "</b>";
        if (!side.isEmpty()) {
            html += " <span class=\"side\">" + side + "</span>";
        }
        if (quantity.hasBand()) {
            html += " <span class=\"band\">(" + ValueText.band(quantity) + ")</span>";
        }
        return html;
    }

    /** Returns a hand calculation that unfolds. */
    static String working(Working working, String summary, boolean open) {
        StringBuilder html = new StringBuilder();
        html.append("<details class=\"working\"" + (open ? " open=\"\"" : "") + "><summary>" + Markup.text(summary)
                + "</summary>\n<ul class=\"steps\">\n");
        for (WorkingLine line : WorkingText.lines(working)) {
            html.append("<li class=\"" + line.kind().name().toLowerCase(Locale.ROOT) + "\">" + step(line) + "</li>\n");
        }
        return html.append("</ul></details>\n").toString();
    }

    /** The line in plain text; only its source is set apart. */
    private static String step(WorkingLine line) {
        String text = line.text();
        if (line.source().isEmpty()) {
            return Markup.text(text);
        }
        String source = "[" + line.source() + "]";
        return Markup.text(text.substring(0, text.length() - source.length())) + "<span class=\"source\">"
                + Markup.text(source) + "</span>";
    }

    private static String curves(CurvesResult curves, String id) {
        return plot(
                curves.title().isEmpty() ? curves.curves().title() : curves.title(),
                ChartDrawing.of(curves),
                ChartDrawing.of(curves, PHONE_WIDTH, PHONE_HEIGHT),
                id,
                TableHtml.numbers(curves.curves()));
    }

    private static String map(MapResult map, String id) {
        return plot(
                map.title().isEmpty() ? map.map().title() : map.title(),
                MapDrawing.of(map),
                MapDrawing.of(map, PHONE_WIDTH, PHONE_WIDTH),
                id,
                TableHtml.numbers(map.map()));
    }

    /** A drawing in a broad and a narrow form, of which the page shows the one that fits, and its numbers. */
    private static String plot(String title, Picture broad, Picture narrow, String id, String numbers) {
        return "<figure>\n" + caption(title) + "<div class=\"broad\">" + SvgText.element(broad, id)
                + "</div>\n<div class=\"narrow\">" + SvgText.element(narrow, id + "-narrow") + "</div>\n</figure>\n"
                + numbers;
    }

    private static String figure(FigureResult figure, String id) {
        return "<figure>\n" + caption(figure.title().isEmpty() ? figure.sketch().title() : figure.title())
                + SvgText.element(FigureDrawing.of(figure), id) + "</figure>\n";
    }

    private static String caption(String title) {
        return title.isEmpty() ? "" : "<figcaption>" + Markup.text(title) + "</figcaption>\n";
    }

    private static String text(TextResult text) {
        StringBuilder html = new StringBuilder();
        if (!text.title().isEmpty()) {
            html.append("<p class=\"name\">" + Markup.text(text.title()) + "</p>\n");
        }
        html.append("<pre>" + Markup.text(text.text().stripTrailing()) + "</pre>\n");
        if (text.leftOut() > 0) {
            html.append("<p class=\"note\">" + text.leftOut() + " more characters are left out.</p>\n");
        }
        return html.toString();
    }
}

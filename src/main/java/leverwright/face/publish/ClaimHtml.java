package leverwright.face.publish;

import java.util.Locale;
import leverwright.face.draw.Markup;
import leverwright.run.result.ClaimResult;
import leverwright.run.result.Verdict;

/** Claims as markup: the verdict in words and as a shape, so that no colour is needed to tell it. */
final class ClaimHtml {
    private static final String RING = "<circle cx=\"11\" cy=\"11\" r=\"9\"/>";

    private ClaimHtml() {}

    static String of(ClaimResult claim) {
        StringBuilder html = new StringBuilder();
        html.append("<p class=\"sentence\">" + Markup.text(claim.title()) + "</p>\n");
        html.append("<p class=\"verdict " + claim.verdict().name().toLowerCase(Locale.ROOT) + "\">"
                + shape(claim.verdict()) + "<span><b>"
                + Markup.text(claim.verdict().words())
                + (claim.verdict() == Verdict.OUTSIDE_THIS_MODEL ? "</b>" : "</b> in this model")
                + "</span></p>\n");
        if (claim.computed() != null) {
            html.append("<p>" + Markup.text(claim.computedLabel()) + ": "
                    + ResultHtml.value(claim.computed(), claim.sides().words(), claim.working()) + "</p>\n");
        }
        String asked = claim.test().isBlank() ? "" : "Asked: " + claim.test() + "; ";
        html.append("<p class=\"reason\">" + Markup.text(capital(asked + claim.reason())) + "</p>\n");
        if (claim.forReader()) {
            html.append("<p class=\"mark\">For the reader: change the line until the claim holds.</p>\n");
        }
        if (claim.doubted()) {
            html.append("<p class=\"mark\">The author doubts this claim.</p>\n");
        }
        if (!claim.source().isEmpty()) {
            html.append("<p class=\"mark\">Claimed in: " + Markup.text(claim.source()) + "</p>\n");
        }
        if (!claim.settings().isEmpty()) {
            html.append("<p class=\"mark\">At its own settings: " + Markup.text(String.join("; ", claim.settings()))
                    + "</p>\n");
        }
        if (claim.working() != null) {
            html.append("<div class=\"aside\">" + ResultHtml.working(claim.working(), "By hand", false) + "</div>\n");
        }
        return html.toString();
    }

    /** A full ring with a tick, a ring with a bar across, a half-filled ring, an open broken ring. */
    private static String shape(Verdict verdict) {
        String inside = switch (verdict) {
            case HOLDS -> RING + "<path d=\"M6.5 11.5l3.2 3.2 6-7\"/>";
            case DOES_NOT_HOLD -> RING + "<path d=\"M5 17L17 5\"/>";
            case CANNOT_TELL -> RING + "<path class=\"solid\" d=\"M11 2a9 9 0 0 1 0 18z\"/>";
            case OUTSIDE_THIS_MODEL -> "<circle cx=\"11\" cy=\"11\" r=\"9\" stroke-dasharray=\"4 3\"/>";
        };
        return "<svg class=\"sign\" viewBox=\"0 0 22 22\" width=\"22\" height=\"22\" aria-hidden=\"true\">" + inside
                + "</svg>";
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? "" : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }
}

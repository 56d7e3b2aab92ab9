package leverwright.face.desk.model;

import java.util.List;

/**
 * How every window of the desk looks.
 *
 * @param colours the colours
 * @param textScale the size of text over its usual size, one of {@link #SCALES}
 */
public record Looks(Colours colours, double textScale) {

    /** The scales of text, from small to large. */
    public static final List<Double> SCALES = List.of(0.8, 0.9, 1.0, 1.1, 1.25, 1.5, 1.75, 2.0, 2.5);

    /** What a desk begins with. */
    public static final Looks STANDARD = new Looks(Colours.LIGHT, 1);

    /** Takes the nearest scale that there is. */
    public Looks {
        double wanted = textScale;
        textScale = SCALES.stream()
                .min((one, other) -> Double.compare(Math.abs(one - wanted), Math.abs(other - wanted)))
                .orElse(1.0);
    }

    /** Returns these looks with text one step larger. */
    public Looks larger() {
        return stepped(1);
    }

    /** Returns these looks with text one step smaller. */
    public Looks smaller() {
        return stepped(-1);
    }

    private Looks stepped(int steps) {
        int at = SCALES.indexOf(textScale) + steps;
        return new Looks(colours, SCALES.get(Math.min(SCALES.size() - 1, Math.max(0, at))));
    }

    /**
     * Returns these looks in other colours.
     *
     * @param other the colours
     */
    public Looks in(Colours other) {
        return new Looks(other, textScale);
    }

    /** Returns these looks with text of its usual size. */
    public Looks usualSize() {
        return new Looks(colours, 1);
    }

    static Looks read(String colours, String scale) {
        Colours chosen = Colours.LIGHT;
        for (Colours each : Colours.values()) {
            chosen = each.styleClass().equals(colours) ? each : chosen;
        }
        try {
            double size = Double.parseDouble(scale);
            return Double.isFinite(size) ? new Looks(chosen, size) : new Looks(chosen, 1);
        } catch (NumberFormatException unreadable) {
            return new Looks(chosen, 1);
        }
    }
}

package leverwright.face.draw;

/**
 * The colours of a drawing by their task, not by their shade: a {@link Palette} gives each a shade, so that one drawing
 * serves light and dark.
 */
public enum Ink {
    /** The page. */
    PAPER("paper"),
    /** The ground on which results stand, slightly warmer than the page. */
    WARM("warm"),
    /** Words and the lines that matter. */
    TEXT("ink"),
    /** Words and lines of second rank. */
    QUIET("quiet"),
    /** Grid lines and hairlines between things. */
    RULE("rule"),
    /** The one accent: load arms, lines of action, links. */
    ACCENT("accent"),
    /** The lifter's body. */
    BODY("body"),
    /** What the lifter carries: bars, plates, machines. */
    GEAR("gear"),
    /** Forces that load the body. */
    LOAD("load"),
    /** Forces with which ground or bench carries the body. */
    SUPPORT("support"),
    /** First curve of a chart. */
    CURVE_1("c1"),
    /** Second curve of a chart. */
    CURVE_2("c2"),
    /** Third curve of a chart. */
    CURVE_3("c3"),
    /** Fourth curve of a chart. */
    CURVE_4("c4"),
    /** Fifth curve of a chart. */
    CURVE_5("c5"),
    /** Words that belong to the first curve. */
    WORDS_1("t1"),
    /** Words that belong to the second curve. */
    WORDS_2("t2"),
    /** Words that belong to the third curve. */
    WORDS_3("t3"),
    /** Words that belong to the fourth curve. */
    WORDS_4("t4"),
    /** Words that belong to the fifth curve. */
    WORDS_5("t5"),
    /** What stood before, pale behind what stands now. */
    GHOST("ghost");

    /** How many curve inks there are; curves beyond that begin again with another dash. */
    static final int CURVES = 5;

    private final String key;

    Ink(String key) {
        this.key = key;
    }

    /** Returns the short name that the style sheet uses, for example {@code "c1"} in {@code var(--lw-c1)}. */
    public String key() {
        return key;
    }

    /** Returns the ink of a chart's curve, counted from 0. */
    static Ink curve(int index) {
        return values()[CURVE_1.ordinal() + index % CURVES];
    }

    /** Returns the ink of words that belong to a chart's curve, counted from 0. */
    static Ink curveWords(int index) {
        return values()[WORDS_1.ordinal() + index % CURVES];
    }
}

package leverwright.face.publish;

import java.util.List;

/** What every reader of results must know, in the words used wherever results leave the program. */
public final class Cautions {
    /** The caution that travels with every exported thing. */
    public static final String SHORT =
            "A model's estimate, not medical or training advice." + " Licensed practice and local rules come first.";

    /** The cautions in full, one statement each. */
    public static final List<String> FULL = List.of(
            "Everything here is a model's estimate: rigid segments in a plane, masses from published tables, still or"
                    + " with the stated motion. A verdict on a claim holds in this model only.",
            "It is not medical, training or engineering advice. Licensed practice and local rules come first.",
            "A greatest load, an equal load, a plan or a search result is not a load to attempt: a qualified coach,"
                    + " a spotter and safety bars come first.",
            "Loads on the spine are static estimates. Limits drawn beside them are design criteria for lifting at work,"
                    + " neither a safe limit nor an injury threshold.",
            "Forces on knee and shoulder are not for rehabilitation: after an injury or surgery ask a clinician.",
            "The segment tables were measured on certain adults. For someone under 18, pregnant, in pain, with a"
                    + " prosthesis or outside the table's sample the numbers may be far off.",
            "Bands, cables and machines of one's own: strength and anchors are not checked here.",
            "Without tests of the lifter, muscle capacities are population estimates.");

    private Cautions() {}
}

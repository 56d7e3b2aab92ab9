package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads table 4.1 of Winter (after Dempster 1955) and the lengths of Drillis and Contini, and makes from them the seven
 * segments of the model.
 *
 * <p>The trunk with head is the table's own row (0.578 of body mass, centre 0.660 of the way from hip to shoulder). The foot's
 * row runs from the ankle bone to the second metatarsal's head; here it is laid along the sole, with that head taken at the
 * ball of the foot. The hand's row ends at the knuckle, half way along the hand (from memory).
 */
final class WinterTable {
    private static final double KNUCKLE = 0.5;
    private static final String HIP_SHOULDER = "greater trochanter - glenohumeral";

    private final DataFile masses = DataFile.read("winter_4_1.csv");
    private final DataFile lengths = DataFile.read("drillis_contini_1966.csv");
    private final Sex sex;
    private final Landmarks places;

    private WinterTable(Sex sex) {
        this.sex = sex;
        this.places = new Landmarks(sex);
    }

    static SegmentTable load() {
        TableChecks.winter(DataFile.read("winter_4_1.csv"));
        List<Note> notes = List.of(
                new Note(
                        Note.Kind.TABLE,
                        "Segments after Winter, table 4.1, from Dempster 1955: cadavers of a few old men; young and"
                                + " trained people carry more mass in the legs."),
                new Note(
                        Note.Kind.FROM_MEMORY,
                        "Segment lengths beside Winter's table are those of Drillis and Contini 1966, from memory; measure"
                                + " them where you can."));
        return new SegmentTable(
                "Winter after Dempster",
                DataFile.read("winter_4_1.csv").header().getOrDefault("publication", "") + ", table 4.1",
                new WinterTable(Sex.FEMALE).proportions(),
                new WinterTable(Sex.MALE).proportions(),
                notes);
    }

    /** Puts the parts of the trunk and the landmarks of this table around rows of one's own. */
    static Proportions around(List<SegmentRow> rows, Sex sex) {
        WinterTable winter = new WinterTable(sex);
        return winter.proportions(rows);
    }

    private Proportions proportions() {
        List<SegmentRow> rows = new ArrayList<>();
        rows.add(foot());
        rows.add(row(Segment.SHANK, "leg_shank", "femoral condyles - medial malleolus", "shank_length"));
        rows.add(row(Segment.THIGH, "thigh", "greater trochanter - femoral condyles", "thigh_length"));
        rows.add(row(Segment.TRUNK, "trunk_head_neck", HIP_SHOULDER, "trunk_hip_to_shoulder"));
        rows.add(row(Segment.UPPER_ARM, "upper_arm", "glenohumeral - elbow axis", "upper_arm"));
        rows.add(row(Segment.FOREARM, "forearm", "elbow axis - ulnar styloid", "forearm"));
        rows.add(hand());
        return proportions(rows);
    }

    private Proportions proportions(List<SegmentRow> rows) {
        SourcedValue foot = length("foot_length");
        SourcedValue hand = length("hand");
        for (SegmentRow row : rows) {
            foot = row.segment() == Segment.FOOT ? row.length() : foot;
            hand = row.segment() == Segment.HAND ? row.length() : hand;
        }
        return new Proportions(rows, parts(), places.beside(foot, hand, length("ankle_height")));
    }

    private SourcedValue length(String quantity) {
        return lengths.value(quantity, "-", sex, "length");
    }

    private SegmentRow row(Segment segment, String name, String ends, String lengthName) {
        return new SegmentRow(
                segment,
                length(lengthName),
                masses.value(name, ends, sex, "mass"),
                masses.value(name, ends, sex, "centre"),
                masses.value(name, ends, sex, "radius"));
    }

    private SegmentRow foot() {
        String ends = "lateral malleolus - head metatarsal II";
        SourcedValue centre = masses.value("foot", ends, sex, "centre");
        SourcedValue radius = masses.value("foot", ends, sex, "radius");
        double ankle = Landmarks.ANKLE_OF_FOOT;
        double span = places.ballOfFoot() - ankle;
        String how = ", laid along the sole from the ankle to the ball of the foot";
        return new SegmentRow(
                Segment.FOOT,
                length("foot_length"),
                masses.value("foot", ends, sex, "mass"),
                fromMemory("foot centre ratio", ankle + centre.value() * span, centre.source() + how),
                fromMemory("foot radius ratio", radius.value() * span, radius.source() + how));
    }

    private SegmentRow hand() {
        String ends = "wrist axis - knuckle II middle finger";
        SourcedValue centre = masses.value("hand", ends, sex, "centre");
        SourcedValue radius = masses.value("hand", ends, sex, "radius");
        String how = ", knuckle taken half way along the hand";
        return new SegmentRow(
                Segment.HAND,
                length("hand"),
                masses.value("hand", ends, sex, "mass"),
                fromMemory("hand centre ratio", centre.value() * KNUCKLE, centre.source() + how),
                fromMemory("hand radius ratio", radius.value() * KNUCKLE, radius.source() + how));
    }

    private static SourcedValue fromMemory(String name, double value, String source) {
        return new SourcedValue(name, value, "1", source, ReadingStatus.FROM_MEMORY);
    }

    private TrunkParts parts() {
        double trunk = length("trunk_hip_to_shoulder").value();
        double hip = length("hip_height").value();
        double border = Landmarks.LOW_BACK_OF_STATURE / trunk;
        SourcedValue centre = masses.value("pelvis", "L4-L5 - greater trochanter", sex, "centre");
        String pelvis = centre.source() + ", its upper border taken at the low back";
        String ear = "ear canal taken at the height of the eye, Drillis and Contini 1966";
        double eye = (length("eye_height").value() - hip) / trunk;
        double neck = (places.neckOfStature().value() - hip) / trunk;
        return new TrunkParts(
                masses.value("pelvis", "L4-L5 - greater trochanter", sex, "mass"),
                fromMemory("centre of the pelvis above the hip", (1 - centre.value()) * border, pelvis),
                fromMemory("upper border of the pelvis above the hip", border, pelvis),
                masses.value("head_neck", "C7-T1 and 1st rib - ear canal", sex, "mass"),
                fromMemory("centre of head and neck above the hip", eye, ear),
                fromMemory(
                        "neck above the hip",
                        neck,
                        places.neckOfStature().source() + ", over the hip height of Drillis and Contini"));
    }
}

package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.List;

/**
 * Reads table 4 of de Leva 1996 and makes from it the seven segments of the model.
 *
 * <p>Choices among the table's alternatives: shank to the ankle joint centre (KJC-AJC), hand to the tip of the middle finger
 * (WJC-DAC3), trunk from the middle of the hips to the middle of the shoulders (MIDS-MIDH), so that segments run from joint
 * to joint. The head (VERT-CERV) stands on the trunk (CERV-MIDH) in line with it: its mass centre lies at the length of
 * CERV-MIDH plus (1 − centre) of VERT-CERV above the hip. For men the standing chain of the table so drawn is 2 % taller than
 * their mean stature, because C7 lies behind the line and the back is curved.
 */
final class DeLevaTable {
    private static final String MASS = "mass";
    private static final String LENGTH = "length";
    private static final String CENTRE = "centre";
    private static final String RADIUS = "radius_transverse";

    private final DataFile file;
    private final Sex sex;
    private final SourcedValue stature;

    private DeLevaTable(DataFile file, Sex sex) {
        this.file = file;
        this.sex = sex;
        this.stature = file.value("sample", "stature", sex, LENGTH);
    }

    static SegmentTable load() {
        DataFile file = DataFile.read("de_leva_1996.csv");
        TableChecks.deLeva(file);
        Note note = new Note(
                Note.Kind.TABLE,
                "Segments after " + file.citation()
                        + ": scans of 100 young men (mean 1.741 m, 73.0 kg) and 15 young women"
                        + " (mean 1.735 m, 61.9 kg); lengths scale with stature, masses with body mass.");
        return new SegmentTable(
                "de Leva 1996",
                file.header().getOrDefault("publication", "") + ", table 4",
                new DeLevaTable(file, Sex.FEMALE).proportions(),
                new DeLevaTable(file, Sex.MALE).proportions(),
                List.of(note));
    }

    private Proportions proportions() {
        List<SegmentRow> rows = new ArrayList<>();
        rows.add(row(Segment.FOOT, "foot", "HEEL-TTIP", "HEEL-TTIP"));
        rows.add(row(Segment.SHANK, "shank", "KJC-LMAL", "KJC-AJC"));
        rows.add(row(Segment.THIGH, "thigh", "HJC-KJC", "HJC-KJC"));
        rows.add(trunk());
        rows.add(row(Segment.UPPER_ARM, "upper_arm", "SJC-EJC", "SJC-EJC"));
        rows.add(row(Segment.FOREARM, "forearm", "EJC-WJC", "EJC-WJC"));
        rows.add(row(Segment.HAND, "hand", "WJC-MET3", "WJC-DAC3"));
        Landmarks places = new Landmarks(sex);
        SourcedValue foot = rows.get(0).length();
        SourcedValue hand = rows.get(6).length();
        return new Proportions(rows, parts(), places.beside(foot, hand, places.measuredAnkleHeight()));
    }

    private SegmentRow row(Segment segment, String name, String massEnds, String ends) {
        SourcedValue mass = file.value(name, massEnds, sex, MASS);
        SourcedValue centre = file.value(name, ends, sex, CENTRE);
        SourcedValue radius = file.value(name, ends, sex, RADIUS);
        return new SegmentRow(
                segment, ofStature(file.value(name, ends, sex, LENGTH)), share(mass), share(centre), share(radius));
    }

    private SourcedValue share(SourcedValue percent) {
        return percent.made(percent.name() + " ratio", percent.value() / 100, "1", "");
    }

    private SourcedValue ofStature(SourcedValue length) {
        return new SourcedValue(
                length.name() + " over stature",
                length.value() / stature.value(),
                "1",
                length.source() + ", over the sample's mean stature",
                length.status().worse(stature.status()));
    }

    /** Millimetres from the middle of the hips, in line. */
    private double headCentre() {
        return get("trunk", "CERV-MIDH", LENGTH)
                + (1 - get("head", "VERT-CERV", CENTRE) / 100) * get("head", "VERT-CERV", LENGTH);
    }

    private double get(String name, String ends, String quantity) {
        return file.value(name, ends, sex, quantity).value();
    }

    private SegmentRow trunk() {
        double length = get("trunk", "MIDS-MIDH", LENGTH);
        double m1 = get("trunk", "SUPR-MIDH", MASS);
        double m2 = get("head", "VERT-MIDG", MASS);
        double c1 = (1 - get("trunk", "MIDS-MIDH", CENTRE) / 100) * length;
        double c2 = headCentre();
        double c = (m1 * c1 + m2 * c2) / (m1 + m2);
        double r1 = get("trunk", "MIDS-MIDH", RADIUS) / 100 * length;
        double r2 = get("head", "VERT-CERV", RADIUS) / 100 * get("head", "VERT-CERV", LENGTH);
        double i = m1 * (r1 * r1 + (c1 - c) * (c1 - c)) + m2 * (r2 * r2 + (c2 - c) * (c2 - c));
        String from = ", rows trunk MIDS-MIDH and CERV-MIDH with head VERT-CERV in line";
        ReadingStatus status = ReadingStatus.DERIVED;
        return new SegmentRow(
                Segment.TRUNK,
                ofStature(file.value("trunk", "MIDS-MIDH", sex, LENGTH)),
                derived("mass ratio of trunk with head", (m1 + m2) / 100, from, status),
                derived("centre ratio of trunk with head", c / length, from, status),
                derived("radius ratio of trunk with head", Math.sqrt(i / (m1 + m2)) / length, from, status));
    }

    private SourcedValue derived(String name, double value, String from, ReadingStatus status) {
        return new SourcedValue(name, value, "1", file.citation() + from, status);
    }

    private TrunkParts parts() {
        double length = get("trunk", "MIDS-MIDH", LENGTH);
        double top = get("lower_trunk", "OMPH-MIDH", LENGTH);
        double centre = (1 - get("lower_trunk", "OMPH-MIDH", CENTRE) / 100) * top;
        String lower = ", row lower trunk OMPH-MIDH";
        ReadingStatus d = ReadingStatus.DERIVED;
        return new TrunkParts(
                share(file.value("lower_trunk", "OMPH-MIDH", sex, MASS)),
                derived("centre of the lower trunk above the hip", centre / length, lower, d),
                derived("upper border of the lower trunk (navel) above the hip", top / length, lower, d),
                share(file.value("head", "VERT-MIDG", sex, MASS)),
                derived("centre of the head above the hip", headCentre() / length, ", head in line with the trunk", d),
                derived("neck above the hip", get("trunk", "CERV-MIDH", LENGTH) / length, ", row trunk CERV-MIDH", d));
    }
}

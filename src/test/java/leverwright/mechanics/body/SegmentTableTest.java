package leverwright.mechanics.body;

import static leverwright.mechanics.body.Lifter.lifter;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.m;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** The shipped tables against separate transcriptions, against themselves, and against textbook values. */
class SegmentTableTest {

    /** Reads a test table: a header line of column names, then rows; lines that begin with # are left out. */
    private static List<Map<String, String>> reference(String name) throws IOException {
        try (InputStream in = SegmentTableTest.class.getResourceAsStream("/reference/" + name)) {
            assertNotNull(in, name);
            List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#") && !line.isBlank())
                    .toList();
            String[] columns = lines.get(0).split(",", -1);
            List<Map<String, String>> rows = new ArrayList<>();
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", columns.length);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < columns.length; i++) {
                    row.put(columns[i], cells[i]);
                }
                rows.add(row);
            }
            return rows;
        }
    }

    private static double number(Map<String, String> row, String column) {
        return Double.parseDouble(row.get(column));
    }

    private static String text(Map<String, String> row, String column) {
        return row.get(column);
    }

    /** De Leva 1996, table 4: a second transcription, all lengths, centres and radii. */
    @Test
    void deLevaMatchesASecondTranscription() throws IOException {
        DataFile file = DataFile.read("de_leva_1996.csv");
        int compared = 0;
        for (String name : List.of("de_leva_1996.csv", "de_leva_1996_alternatives.csv")) {
            for (Map<String, String> row : reference(name)) {
                for (Sex sex : Sex.values()) {
                    String s = sex == Sex.FEMALE ? "f" : "m";
                    String segment = text(row, "segment");
                    String ends = text(row, "endpoints");
                    assertEquals(
                            number(row, "len_" + s + "_mm"),
                            file.value(segment, ends, sex, "length").value());
                    assertEquals(
                            number(row, "com_" + s + "_pct"),
                            file.value(segment, ends, sex, "centre").value());
                    assertEquals(
                            number(row, "rsag_" + s),
                            file.value(segment, ends, sex, "radius_sagittal").value());
                    assertEquals(
                            number(row, "rtrans_" + s),
                            file.value(segment, ends, sex, "radius_transverse").value());
                    assertEquals(
                            number(row, "rlong_" + s),
                            file.value(segment, ends, sex, "radius_longitudinal")
                                    .value());
                    compared += 5;
                }
            }
        }
        assertEquals(160, compared);
    }

    /**
     * Zatsiorsky, Kinetics of Human Motion, table 4.4 and A2.5: mean segment masses in percent, printed to 0.001 for men. They
     * round to de Leva's, but for the male hand pair sum; tolerance half a unit of the second decimal plus rounding.
     */
    @Test
    void massesMatchTheOriginalSample() throws IOException {
        DataFile file = DataFile.read("de_leva_1996.csv");
        Map<String, String> ends = new LinkedHashMap<>();
        ends.put("foot", "HEEL-TTIP");
        ends.put("shank", "KJC-LMAL");
        ends.put("thigh", "HJC-KJC");
        ends.put("hand", "WJC-MET3");
        ends.put("forearm", "EJC-WJC");
        ends.put("upper_arm", "SJC-EJC");
        ends.put("upper_trunk", "SUPR-XYPH");
        ends.put("mid_trunk", "XYPH-OMPH");
        ends.put("lower_trunk", "OMPH-MIDH");
        int compared = 0;
        for (Map<String, String> row : reference("zatsiorsky_mean_bsp.csv")) {
            String segment = text(row, "segment");
            Sex sex = text(row, "sex").equals("F") ? Sex.FEMALE : Sex.MALE;
            String end = segment.equals("head_neck") ? "VERT-MIDG" : text(ends, segment);
            String ours = segment.equals("head_neck") ? "head" : segment;
            assertEquals(
                    number(row, "mass_pct"), file.value(ours, end, sex, "mass").value(), 0.0051, segment + sex);
            compared++;
        }
        assertEquals(20, compared);
    }

    /** Winter, table 4.1: every cell of a separate transcription. */
    @Test
    void winterMatchesItsTranscription() throws IOException {
        DataFile file = DataFile.read("winter_4_1.csv");
        Map<String, String> columns = new LinkedHashMap<>();
        columns.put("mass_frac", "mass");
        columns.put("com_p", "centre");
        columns.put("com_d", "centre_from_end");
        columns.put("rg0", "radius");
        columns.put("rgp", "radius_start");
        columns.put("rgd", "radius_end");
        int compared = 0;
        for (Map<String, String> row : reference("winter_table_4_1.csv")) {
            for (Map.Entry<String, String> column : columns.entrySet()) {
                String cell = text(row, column.getKey());
                if (!cell.isEmpty()) {
                    assertEquals(
                            Double.parseDouble(cell),
                            file.value(text(row, "segment"), text(row, "endpoints"), Sex.MALE, column.getValue())
                                    .value());
                    compared++;
                }
            }
        }
        assertEquals(file.rows().size(), compared);
    }

    /** Sums: Winter exactly 1; de Leva men 100.00 %, women 99.99 % as published (two-digit masses). */
    @Test
    void bodiesSumToOneWithinTheTablesRounding() {
        assertEquals(1, SegmentTable.WINTER.proportions(Sex.MALE).massSum(), 1e-12);
        assertEquals(1.0000, SegmentTable.DE_LEVA.proportions(Sex.MALE).massSum(), 1e-12);
        assertEquals(0.9999, SegmentTable.DE_LEVA.proportions(Sex.FEMALE).massSum(), 1e-12);
    }

    /** The three cells of Winter's table that contradict the theorem of parallel axes, and no others. */
    @Test
    void winterHasItsThreeKnownMisprintsOnly() {
        DataFile file = DataFile.read("winter_4_1.csv");
        assertEquals(
                List.of(
                        "upper_arm radius_end 0.645: parallel axes give 0.649",
                        "total_leg radius_start 0.560: parallel axes give 0.553",
                        "total_leg radius_end 0.650: parallel axes give 0.642"),
                TableChecks.winterFaults(file));
    }

    private static String changed(String name, String before, String after) throws IOException {
        try (InputStream in = DataFile.class.getResourceAsStream(name)) {
            assertNotNull(in);
            String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            assertTrue(text.contains(before), before);
            return text.replace(before, after);
        }
    }

    /** The circulating misprint 0.116 for head and neck. */
    @Test
    void aMistypedRadiusIsRefused() throws IOException {
        DataFile file = DataFile.parse(
                "mistyped", changed("winter_4_1.csv", "BOTH,radius_start,1.116", "BOTH,radius_start,0.116"));
        String message = assertThrows(IllegalArgumentException.class, () -> TableChecks.winter(file))
                .getMessage();
        assertTrue(message.contains("head_neck radius_start 0.116: parallel axes give 1.116"), message);
    }

    /** The open file's 423.3 mm for the female shank: both alternatives put the centre 190.9 mm below the knee. */
    @Test
    void theFemaleShankFollowsFromItsAlternatives() throws IOException {
        DataFile good = DataFile.read("de_leva_1996.csv");
        double length = good.value("shank", "KJC-LMAL", Sex.FEMALE, "length").value();
        assertEquals(432.3, length);
        assertEquals(190.9, 0.4416 * length, 0.05);
        assertEquals(
                190.9,
                0.4352 * good.value("shank", "KJC-AJC", Sex.FEMALE, "length").value(),
                0.05);
        assertEquals(
                190.9,
                0.4481 * good.value("shank", "KJC-SPHY", Sex.FEMALE, "length").value(),
                0.05);
        DataFile bad = DataFile.parse("mistyped", changed("de_leva_1996.csv", ",432.3,", ",423.3,"));
        String message = assertThrows(IllegalArgumentException.class, () -> TableChecks.deLeva(bad))
                .getMessage();
        assertTrue(message.contains("186.9 mm by KJC-LMAL, 190.9 mm by KJC-AJC"), message);
    }

    @Test
    void aTableThatDoesNotSumIsRefused() {
        List<SegmentRow> rows =
                new ArrayList<>(SegmentTable.WINTER.proportions(Sex.MALE).rows());
        SegmentTable same = SegmentTable.own("copy", "Winter", rows);
        assertEquals(1, same.proportions(Sex.FEMALE).massSum(), 1e-12);
        rows.set(2, SegmentRow.of(Segment.THIGH, 0.245, 0.11, 0.433, 0.323, "a slip", ReadingStatus.FROM_MEMORY));
        String message = assertThrows(IllegalArgumentException.class, () -> SegmentTable.own("slip", "x", rows))
                .getMessage();
        assertTrue(message.contains("sum to 102.000 % of body mass"), message);
        assertTrue(message.contains("allowed: 99.98 % to 100.02 %"), message);
        assertThrows(IllegalArgumentException.class, () -> SegmentTable.own("short", "x", rows.subList(0, 5)));
        assertThrows(
                IllegalArgumentException.class,
                () -> SegmentRow.of(Segment.THIGH, 0, 0.1, 0.433, 0.323, "zero length", ReadingStatus.FROM_MEMORY));
    }

    private static double centreHeight(Lifter lifter) {
        Body body = lifter.body();
        double ankle = body.place(Landmark.ANKLE_HEIGHT).si();
        double knee = ankle + body.segment(Segment.SHANK).length();
        double hip = knee + body.segment(Segment.THIGH).length();
        double shoulder = hip + body.segment(Segment.TRUNK).length();
        double elbow = shoulder - body.segment(Segment.UPPER_ARM).length();
        double wrist = elbow - body.segment(Segment.FOREARM).length();
        double moment = body.segment(Segment.FOOT).mass()
                        * body.place(Landmark.FOOT_CENTRE_HEIGHT).si()
                + below(body, Segment.SHANK, knee)
                + below(body, Segment.THIGH, hip)
                + body.segment(Segment.TRUNK).mass()
                        * (hip + body.segment(Segment.TRUNK).centre())
                + below(body, Segment.UPPER_ARM, shoulder)
                + below(body, Segment.FOREARM, elbow)
                + below(body, Segment.HAND, wrist);
        return moment / body.mass();
    }

    private static double below(Body body, Segment segment, double start) {
        BodySegment part = body.segment(segment);
        return part.mass() * (start - part.centre());
    }

    /**
     * Davidovits 1975, as quoted by A. T. Johnson, Biomechanics and Exercise Physiology, table 2.2.1: the mass centre of a
     * standing body at 56 % of stature. A round textbook figure without sex or sample: 3 points of tolerance.
     */
    @Test
    void theStandingMassCentreLiesWhereTextbooksPutIt() {
        for (SegmentTable table : List.of(SegmentTable.DE_LEVA, SegmentTable.WINTER)) {
            for (Sex sex : Sex.values()) {
                double height = centreHeight(lifter("A").of(sex, m(1.7), kg(65)).segments(table)) / 1.7;
                assertEquals(0.56, height, 0.03, table.name() + " " + sex.group() + " " + height);
            }
        }
    }

    @Test
    void aDamagedDataFileIsRefusedWithItsLine() {
        String columns = "segment,end_points,sex,quantity,value,unit,status,source\n";
        assertTrue(assertThrows(IllegalArgumentException.class, () -> DataFile.parse("t.csv", "wrong\n"))
                .getMessage()
                .startsWith("line 1 of t.csv"));
        for (String row : List.of(
                "foot,-,BOTH,mass,abc,1,DATA,A",
                "foot,-,BOTH,mass,NaN,1,DATA,A",
                "foot,-,BOTH,mass,1,1,HEARD,A",
                "foot,-,BOTH,mass,1,1,DATA,Z",
                "foot,-,BOTH")) {
            String message = assertThrows(
                            IllegalArgumentException.class,
                            () -> DataFile.parse("t.csv", "# source A: a\n" + columns + row + "\n"))
                    .getMessage();
            assertTrue(message.startsWith("line 3 of t.csv"), message);
        }
        assertThrows(IllegalArgumentException.class, () -> DataFile.read("no_such.csv"));
    }
}

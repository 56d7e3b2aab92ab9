package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a published table must satisfy in itself; run each time one is loaded. */
final class TableChecks {
    private static final double RADIUS_TOLERANCE = 0.002;
    private static final double LENGTH_TOLERANCE = 0.6;
    private static final double SUM_TOLERANCE = 0.015;

    private TableChecks() {}

    /**
     * Checks Winter's rows: the two centre ratios sum to 1, and the radii about both ends follow from the radius about the
     * mass centre (parallel axes), but for the misprints that the file names.
     *
     * @throws IllegalArgumentException if a row fails; the message lists the cells
     */
    static void winter(DataFile file) {
        List<String> faults = winterFaults(file);
        faults.removeIf(fault -> misprints(file).stream().anyMatch(fault::startsWith));
        refuse(file, faults);
    }

    /** Returns "segment quantity value" of the misprints named in the file's header. */
    static List<String> misprints(DataFile file) {
        List<String> cells = new ArrayList<>();
        for (String line : file.header().getOrDefault("misprint", "").lines().toList()) {
            cells.add(line.substring(0, line.indexOf(" (")));
        }
        return cells;
    }

    /** Returns the cells that fail, each as "segment quantity value: why"; misprints included. */
    static List<String> winterFaults(DataFile file) {
        List<String> faults = new ArrayList<>();
        for (DataFile.Row row : file.rows()) {
            switch (row.quantity()) {
                case "centre_from_end" -> {
                    double sum = row.value() + get(file, row, "centre");
                    if (Math.abs(sum - 1) > 1e-9) {
                        faults.add(cell(row) + ": centre ratios sum to " + sum);
                    }
                }
                case "radius_start" -> parallelAxes(file, row, "centre", faults);
                case "radius_end" -> parallelAxes(file, row, "centre_from_end", faults);
                default -> {}
            }
        }
        return faults;
    }

    private static void parallelAxes(DataFile file, DataFile.Row row, String centre, List<String> faults) {
        double radius = get(file, row, "radius");
        double distance = get(file, row, centre);
        double expected = Math.sqrt(radius * radius + distance * distance);
        if (Math.abs(row.value() - expected) > RADIUS_TOLERANCE) {
            faults.add(String.format(Locale.ROOT, "%s: parallel axes give %.3f", cell(row), expected));
        }
    }

    private static String cell(DataFile.Row row) {
        return String.format(Locale.ROOT, "%s %s %.3f", row.segment(), row.quantity(), row.value());
    }

    private static double get(DataFile file, DataFile.Row row, String quantity) {
        return file.value(row.segment(), row.endPoints(), Sex.MALE, quantity).value();
    }

    /**
     * Checks de Leva's rows: the parts of the trunk sum to the trunk, and alternatives of one segment that share its upper
     * end put the mass centre at the same distance from it, those that share the lower end likewise; all have the same radius
     * of gyration in millimetres.
     *
     * @throws IllegalArgumentException if a row fails; the message lists the cells
     */
    static void deLeva(DataFile file) {
        List<String> faults = new ArrayList<>();
        for (Sex sex : Sex.values()) {
            double parts = mass(file, sex, "upper_trunk", "SUPR-XYPH")
                    + mass(file, sex, "mid_trunk", "XYPH-OMPH")
                    + mass(file, sex, "lower_trunk", "OMPH-MIDH");
            double trunk = mass(file, sex, "trunk", "SUPR-MIDH");
            if (Math.abs(parts - trunk) > SUM_TOLERANCE) {
                faults.add("trunk mass " + trunk + " %, but its parts sum to " + parts + " % for " + sex.group());
            }
            alternatives(file, sex, faults);
        }
        refuse(file, faults);
    }

    private static double mass(DataFile file, Sex sex, String segment, String ends) {
        return file.value(segment, ends, sex, "mass").value();
    }

    private static void alternatives(DataFile file, Sex sex, List<String> faults) {
        List<DataFile.Row> lengths = file.rows().stream()
                .filter(row -> row.quantity().equals("length") && row.sex().equals(sex.name()))
                .filter(row -> row.endPoints().contains("-"))
                .toList();
        for (int a = 0; a < lengths.size(); a++) {
            for (int b = a + 1; b < lengths.size(); b++) {
                if (lengths.get(a).segment().equals(lengths.get(b).segment())) {
                    compare(file, sex, lengths.get(a), lengths.get(b), faults);
                }
            }
        }
    }

    private static void compare(DataFile file, Sex sex, DataFile.Row a, DataFile.Row b, List<String> faults) {
        String[] endsA = a.endPoints().split("-");
        String[] endsB = b.endPoints().split("-");
        double fromTopA = a.value()
                * file.value(a.segment(), a.endPoints(), sex, "centre").value()
                / 100;
        double fromTopB = b.value()
                * file.value(b.segment(), b.endPoints(), sex, "centre").value()
                / 100;
        if (endsA[0].equals(endsB[0]) && Math.abs(fromTopA - fromTopB) > LENGTH_TOLERANCE) {
            faults.add(differ(a, b, sex, "mass centre from the upper end", fromTopA, fromTopB));
        }
        double fromEndA = a.value() - fromTopA;
        double fromEndB = b.value() - fromTopB;
        if (endsA[1].equals(endsB[1]) && Math.abs(fromEndA - fromEndB) > LENGTH_TOLERANCE) {
            faults.add(differ(a, b, sex, "mass centre from the lower end", fromEndA, fromEndB));
        }
    }

    private static String differ(DataFile.Row a, DataFile.Row b, Sex sex, String what, double one, double other) {
        return String.format(
                Locale.ROOT,
                "%s of %s (%s): %.1f mm by %s, %.1f mm by %s",
                what,
                a.segment(),
                sex.group(),
                one,
                a.endPoints(),
                other,
                b.endPoints());
    }

    private static void refuse(DataFile file, List<String> faults) {
        if (!faults.isEmpty()) {
            throw new IllegalArgumentException("the segment table " + file.name()
                    + " contradicts itself: " + String.join("; ", faults)
                    + ". Correct the file, or name a misprint of the"
                    + " publication in its header");
        }
    }
}

package leverwright.workbook.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Random workbooks with traps: lists that are changed below, statics, aliases, names declared twice, exceptions on a
 * second run, random numbers. After every turn of a dial and every edit the live bits must be those of a clean run in a
 * fresh worker. With the safety rule switched off, the same test must find a difference.
 */
class TrapTest {

    private static final long SEED = 17;
    private static final int WORKBOOKS = 12;
    private static final int MANY_WORKBOOKS = 300;
    private static final int TURNS = 4;
    private static final int WORKBOOKS_WITHOUT_RULE = 100;

    @Test
    void liveBitsAreThoseOfACleanRun() {
        liveBitsAreThoseOfACleanRun(WORKBOOKS);
    }

    @Test
    @Tag("soak")
    void liveBitsOfManyWorkbooksAreThoseOfACleanRun() {
        liveBitsAreThoseOfACleanRun(MANY_WORKBOOKS);
    }

    private static void liveBitsAreThoseOfACleanRun(int workbooks) {
        Set<RunReport.Way> ways = EnumSet.noneOf(RunReport.Way.class);
        try (Session live = Session.open(SessionOptions.standard());
                Session clean = Session.open(SessionOptions.standard())) {
            for (int i = 0; i < workbooks; i++) {
                String difference = firstDifference(live, clean, new TrapWorkbook(SEED + i), ways);
                assertEquals("", difference, "workbook of seed " + (SEED + i));
            }
        }
        assertTrue(ways.containsAll(EnumSet.allOf(RunReport.Way.class)), () -> "only these ways were taken: " + ways);
    }

    @Test
    void withoutTheRuleTheTrapsAreFound() {
        try (Session live = Session.open(SessionOptions.standard());
                Session clean = Session.open(SessionOptions.standard())) {
            live.ignoreSafetyRule();
            for (int i = 0; i < WORKBOOKS_WITHOUT_RULE; i++) {
                String difference =
                        firstDifference(live, clean, new TrapWorkbook(SEED + i), EnumSet.noneOf(RunReport.Way.class));
                if (!difference.isEmpty()) {
                    return;
                }
            }
        }
        throw new AssertionError("no trap was found in " + WORKBOOKS_WITHOUT_RULE + " workbooks");
    }

    /** Turns and edits a workbook live, and compares each time with a clean run; returns the first difference. */
    private static String firstDifference(Session live, Session clean, TrapWorkbook workbook, Set<RunReport.Way> ways) {
        live.presetDial(TrapWorkbook.DIAL, null);
        RunReport report = live.run(workbook.scripts());
        String setting = null;
        for (int turn = 0; turn < TURNS; turn++) {
            if (workbook.random().nextInt(3) > 0) {
                setting = workbook.random().nextInt(9) + 1 + " kg";
                report = live.setDial(TrapWorkbook.DIAL, setting);
            } else {
                CellScript edited = workbook.edit();
                report = live.edit(edited.id(), edited.text());
            }
            ways.add(report.way());
            RunReport expected = inAFreshWorker(clean, setting, workbook.scripts());
            for (CellScript script : workbook.scripts()) {
                CellOutcome is = report.outcome(script.id());
                CellOutcome should = expected.outcome(script.id());
                if (!Outcomes.same(is, should)) {
                    return "turn " + turn + " by " + report.way() + ", cell " + script + ": live " + is + ", clean "
                            + should + "\n" + workbook.scripts();
                }
            }
        }
        return "";
    }

    private static RunReport inAFreshWorker(Session clean, @Nullable String setting, List<CellScript> scripts) {
        clean.workerHandle().destroyForcibly();
        clean.workerHandle().onExit().join();
        clean.presetDial(TrapWorkbook.DIAL, setting);
        return clean.run(scripts);
    }

    /** A workbook that grows from a seed. */
    static final class TrapWorkbook {
        static final String DIAL = "Lean";

        /** Kinds of cells without a trap, or with one that the seeded stream and the ordered sets take away. */
        private static final int[] CALM = {0, 1, 7, 9, 12, 13};

        private final Random random;
        private final boolean calm;
        private final List<CellScript> scripts = new ArrayList<>();

        TrapWorkbook(long seed) {
            random = new Random(seed);
            calm = random.nextInt(3) == 0;
            scripts.add(new CellScript("dial", DIAL_CELL));
            scripts.add(new CellScript("list", "var list = new ArrayList<Double>();\nlist.add(1.0);"));
            scripts.add(new CellScript("statics", "class K { static int n; static int up() { return ++n; } }"));
            scripts.add(new CellScript(
                    "safe", "double k = 2.5;\nrecord P(double a, String b) {}\nvar p = new P(k, \"x\");"));
            scripts.add(new CellScript("counter", "int count = 0;\nint bump() { return ++count; }"));
            int cells = 4 + random.nextInt(6);
            for (int i = 0; i < cells; i++) {
                scripts.add(new CellScript("c" + i, script(i)));
            }
        }

        Random random() {
            return random;
        }

        List<CellScript> scripts() {
            return List.copyOf(scripts);
        }

        /** Changes one of the random cells, or the dial's own, or a value that many read. */
        CellScript edit() {
            int place = random.nextInt(scripts.size());
            CellScript old = scripts.get(place);
            String text = old.id().startsWith("c") && !old.id().equals("counter")
                    ? script(place - 5)
                    : old.text() + "\n// " + random.nextInt();
            if (old.id().equals("safe")) {
                text = old.text().replaceFirst("k = [0-9.]+", "k = " + random.nextInt(50) / 4.0);
            }
            CellScript edited = new CellScript(old.id(), text);
            scripts.set(place, edited);
            return edited;
        }

        private String script(int i) {
            String own = "v" + i;
            String other = i == 0 ? "lean" : "v" + random.nextInt(i);
            int kind = calm ? CALM[random.nextInt(CALM.length)] : random.nextInt(14);
            return switch (kind) {
                case 0 -> "double " + own + " = lean * " + random.nextInt(9) + ";\n" + own;
                case 1 -> "double " + own + " = " + other + " + k;\n" + own;
                case 2 -> "list.add(lean);\ndouble " + own + " = list.size() + " + other + ";\n" + own;
                case 3 -> "double " + own + " = K.up() * lean;\n" + own;
                case 4 -> "double " + own + " = bump() + lean;\n" + own;
                case 5 -> "count += 1;\ndouble " + own + " = count + lean;\n" + own;
                case 6 ->
                    "var alias = list;\nalias.add(lean);\ndouble " + own + " = alias.get(alias.size() - 1);\n" + own;
                case 7 -> "double lean = " + random.nextInt(5) + ";\ndouble " + own + " = lean;\n" + own;
                case 8 ->
                    "double " + own + " = 3;\nif (list.size() > 2) throw new IllegalStateException(\"again\");\n" + own
                            + " = lean;";
                case 9 -> "double " + own + " = new Random().nextInt(100) + Math.random() + lean;\n" + own;
                case 10 ->
                    "var seen = new double[] {" + other + "};\nDoubleUnaryOperator f = x -> seen[0] += x;\n" + "double "
                            + own + " = f.applyAsDouble(lean);\n" + own;
                case 11 -> "double " + own + " = p.a() + lean;\nk = k + 0;\n" + own;
                case 12 ->
                    "double " + own + " = Set.of(\"b\", \"a\", \"c\").iterator().next().length() + " + other + ";\n"
                            + own + " + p.b() + new P(lean, \"y\")";
                default -> "double " + own + " = 100 / (int) " + other + ";\n" + own;
            };
        }

        private static final String DIAL_CELL =
                "var lean = dial(\"" + DIAL + "\", kg(3)).from(kg(0)).to(kg(20)).si();\nlean";
    }
}

package leverwright.workbook.scenario;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.SegmentTable;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Measures;

/**
 * The lifters that a workbook's scripts declare with plain numbers, so that the catalogue can show exercises by them. What a
 * line says in words not known here is left out of the figures, never of the script.
 */
public final class LifterLines {
    private static final String NUMBER = "\\s*(-?[\\d.]+)\\s*";
    private static final String LENGTH =
            "(?:(?:cm|m|mm|inches)\\(" + NUMBER.replace("(", "(?:") + "\\)|feetInches\\([^)]*\\))";
    private static final String MASS = "(?:kg|lb)\\(" + NUMBER.replace("(", "(?:") + "\\)";
    private static final Pattern LINE =
            Pattern.compile("\\b(?:var|Lifter)\\s+(\\w+)\\s*=\\s*lifter\\(\\s*\"([^\"]+)\"\\s*\\)"
                    + "\\s*\\.of\\(\\s*(FEMALE|MALE)\\s*,\\s*(" + LENGTH + ")\\s*,\\s*(" + MASS + ")\\s*\\)([^;]*)");
    private static final Pattern CHANGE = Pattern.compile("\\.(\\w+)\\(\\s*(" + LENGTH + ")\\s*\\)");
    private static final Pattern CALL = Pattern.compile("(\\w+)\\(" + NUMBER + "(?:," + NUMBER + ")?\\)");

    private LifterLines() {}

    /** Returns the lifters that scripts declare, in order; those whose numbers are out of range are left out. */
    public static List<ExerciseShelf.Trying> in(String scripts) {
        List<ExerciseShelf.Trying> all = new ArrayList<>();
        for (Matcher line = LINE.matcher(scripts); line.find(); ) {
            try {
                Sex sex = line.group(3).equals("FEMALE") ? Sex.FEMALE : Sex.MALE;
                Lifter lifter = Lifter.lifter(line.group(2)).of(sex, length(line.group(4)), mass(line.group(5)));
                String name = line.group(1);
                all.removeIf(other -> other.name().equals(name));
                all.add(new ExerciseShelf.Trying(name, changed(lifter, line.group(6)), AddedLoads.NONE));
            } catch (IllegalArgumentException outOfRange) {
                continue;
            }
        }
        return List.copyOf(all);
    }

    private static Lifter changed(Lifter lifter, String calls) {
        Lifter changed = calls.contains(".segments(WINTER)") ? lifter.segments(SegmentTable.WINTER) : lifter;
        for (Matcher call = CHANGE.matcher(calls); call.find(); ) {
            try {
                Method word = Lifter.class.getMethod(call.group(1), Length.class);
                changed = (Lifter) word.invoke(changed, length(call.group(2)));
            } catch (NoSuchMethodException unknown) {
                continue;
            } catch (IllegalAccessException | InvocationTargetException impossible) {
                throw new IllegalArgumentException("a length that no body has", impossible);
            }
        }
        return changed;
    }

    private static Length length(String text) {
        Matcher call = CALL.matcher(text);
        if (!call.matches()) {
            throw new IllegalArgumentException(text + " is no plain length");
        }
        double first = Double.parseDouble(call.group(2));
        return switch (call.group(1)) {
            case "m" -> Measures.m(first);
            case "mm" -> Measures.mm(first);
            case "inches" -> Measures.inches(first);
            case "feetInches" -> Measures.feetInches((int) first, Double.parseDouble(call.group(3)));
            default -> Measures.cm(first);
        };
    }

    private static Mass mass(String text) {
        Matcher call = CALL.matcher(text);
        if (!call.matches()) {
            throw new IllegalArgumentException(text + " is no plain mass");
        }
        double value = Double.parseDouble(call.group(2));
        return call.group(1).equals("lb") ? Measures.lb(value) : Measures.kg(value);
    }
}

package leverwright.mechanics.working;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.measure.Measure;

/**
 * A hand calculation as data: steps that lead to the last step's value, and checks of what was found by search.
 *
 * <p>Inputs need no step of their own: {@link WorkingText} states every input with its source before the step that uses
 * it first. Within one working a name stands for one value only.
 *
 * @param title what is computed, such as "Hip extension moment, per side"
 * @param steps at least one; the last step's value is the answer
 * @param checks lines that confirm a value found by search: residuals that should vanish, optimality; may be empty
 * @param ending a closing sentence, such as {@link #CELL_BEGINS}; may be empty
 */
public record Working(String title, List<Step> steps, List<Step> checks, String ending) {

    /** The closing sentence where a cell goes on with arithmetic of its own. */
    public static final String CELL_BEGINS = "The working ends here; what follows is the cell's own arithmetic.";

    /**
     * Copies the lists and checks that every name stands for one value.
     *
     * @throws IllegalArgumentException if there is no step, or if a name stands for two values
     */
    public Working {
        Names.checkSource(title);
        Names.checkSource(ending);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("the working “" + title + "” needs at least one step");
        }
        steps = List.copyOf(steps);
        checks = List.copyOf(checks);
        checkNames(title, steps, checks);
    }

    /** Returns a working without checks and closing sentence. */
    public static Working of(String title, List<Step> steps) {
        return new Working(title, steps, List.of(), "");
    }

    /** Returns a working that only states a value and where it comes from. */
    public static Working given(String title, String symbol, Measure<?> value, String source) {
        return of(title, List.of(Step.given(symbol, value, source)));
    }

    /** Returns the same working with these checks. */
    public Working checked(List<Step> lines) {
        return new Working(title, steps, lines, ending);
    }

    /** Returns the same working with this closing sentence. */
    public Working endingWith(String sentence) {
        return new Working(title, steps, checks, sentence);
    }

    /** Returns the last step, whose value is the answer. */
    public Step last() {
        return steps.get(steps.size() - 1);
    }

    private static void checkNames(String title, List<Step> steps, List<Step> checks) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (List<Step> lines : List.of(steps, checks)) {
            for (Step step : lines) {
                if (step.expression() != null) {
                    for (Leaf leaf : Leaf.namedIn(step.expression())) {
                        put(values, leaf.name(), leaf.si(), title);
                    }
                }
                put(values, step.symbol(), step.value(), title);
            }
        }
    }

    private static void put(Map<String, Double> values, String name, double si, String title) {
        Double before = values.putIfAbsent(name, si);
        if (before != null && Double.compare(before, si) != 0) {
            throw new IllegalArgumentException("in the working “" + title + "” the name " + name
                    + " stands for two values, " + before + " and " + si + "; use two names");
        }
    }
}

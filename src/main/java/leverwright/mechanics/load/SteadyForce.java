package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.working.Step;

/**
 * A force given from outside, the same wherever it acts: a partner, or water at one speed.
 *
 * @param name who gives it, in print, such as "partner"
 * @param size N, 0 to {@link Load#GREATEST_FORCE}
 */
public record SteadyForce(String name, double size) implements Resistance {
    /**
     * Makes the force.
     *
     * @throws IllegalArgumentException if the force is outside its range or not a number
     */
    public SteadyForce {
        Require.within(size, 0, Load.GREATEST_FORCE, "force of the " + name, "N");
    }

    @Override
    public String positionWords() {
        return "position";
    }

    @Override
    public double force(Travel travel) {
        return size;
    }

    @Override
    public double stored(Travel travel) {
        return 0;
    }

    @Override
    public double heat(Travel travel) {
        return 0;
    }

    @Override
    public boolean isGiven() {
        return true;
    }

    @Override
    public List<String> notes() {
        return List.of("The " + name + "'s force is taken as given, the same at every speed.");
    }

    @Override
    public List<Step> steps(Travel travel) {
        return List.of(Step.given("F", Force.of(size), "given for the " + name));
    }
}

package leverwright.mechanics.exercise;

/**
 * A knob that moves in step with another one, evenly: the shank leans while the thigh comes down.
 *
 * @param knob the one that follows
 * @param from its SI value where the driver starts
 * @param to its SI value where the driver ends
 * @param driver the one that is turned
 * @param driverFrom the driver's SI value at the start
 * @param driverTo the driver's SI value at the end; not the one at the start
 */
public record InStep(Knob<?> knob, double from, double to, Knob<?> driver, double driverFrom, double driverTo) {
    /** Checks that the driver moves and is another knob. */
    public InStep {
        if (driverFrom == driverTo || knob.equals(driver)) {
            throw new IllegalArgumentException(knob.name() + " moves in step with " + driver.name() + " from "
                    + driver.unit().format(driverFrom)
                    + " to " + driver.unit().format(driverTo)
                    + "; allowed: two knobs, and two different settings of the one that is turned");
        }
    }
}

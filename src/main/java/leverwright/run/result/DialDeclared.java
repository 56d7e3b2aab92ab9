package leverwright.run.result;

/**
 * A named input that a cell declared, with its range.
 *
 * @param name the dial's name as people read it; not blank
 * @param setting the value now in force, with the error typed with it, and the unit it is read in
 * @param standard the value the script gives, which a reset goes back to
 * @param from the least allowed value in SI units
 * @param to the greatest allowed value in SI units; above {@code from}
 * @param step the step of the arrow keys in SI units; above 0
 */
public record DialDeclared(String name, Quantity setting, Quantity standard, double from, double to, double step) {

    /**
     * Checks name and range.
     *
     * @throws IllegalArgumentException when the name is blank, the range is empty or a value lies outside it
     */
    public DialDeclared {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a dial needs a name; write dial(\"Torso lean\", deg(45))");
        }
        if (!(Double.isFinite(from) && Double.isFinite(to) && from < to)) {
            throw new IllegalArgumentException(
                    "the dial \"" + name + "\" needs a range whose end lies above its start");
        }
        if (!(step > 0) || !Double.isFinite(step)) {
            throw new IllegalArgumentException("the dial \"" + name + "\" needs a step above 0");
        }
        from += 0.0;
        to += 0.0;
    }
}

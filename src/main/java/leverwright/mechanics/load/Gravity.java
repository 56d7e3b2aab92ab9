package leverwright.mechanics.load;

import leverwright.mechanics.measure.Acceleration;
import leverwright.mechanics.working.Expression;

/** Gravity as workings print it. */
final class Gravity {
    static final double STANDARD = 9.80665;

    private Gravity() {}

    static Expression symbol(double gravity) {
        return gravity == STANDARD
                ? Expression.exact("g", Acceleration.of(STANDARD), "standard gravity")
                : Expression.symbol("g", Acceleration.of(gravity), "gravity; set");
    }
}

package leverwright.mechanics.load;

import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Place;

/**
 * A mass fixed to a link: force m·(g − a), so its weight at rest and −m·a besides in motion. It is a point mass: a bar that
 * turns with the link needs its own inertia in the link.
 *
 * @param on name of the link
 * @param at where on the link
 * @param mass kg, 0 to {@link #GREATEST_MASS}
 * @param couple N·m
 */
public record MassLoad(String on, Place at, double mass, double couple) implements Load {
    /** Greatest attached mass, kg. */
    public static final double GREATEST_MASS = 10_000;

    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public MassLoad {
        Require.within(mass, 0, GREATEST_MASS, "attached mass", "kg");
        Load.couple(couple, on);
    }

    /** Makes the load without a couple. */
    public MassLoad(String on, Place at, double mass) {
        this(on, at, mass, 0);
    }

    @Override
    public MassLoad withCouple(double newCouple) {
        return new MassLoad(on, at, mass, newCouple);
    }

    @Override
    public double attachedMass() {
        return mass;
    }

    @Override
    public double forceX(LoadPoint point) {
        return mass * (point.gravityX() - point.accelerationX());
    }

    @Override
    public double forceY(LoadPoint point) {
        return mass * (point.gravityY() - point.accelerationY());
    }

    @Override
    public double storedEnergy(LoadPoint point) {
        double height = -(point.gravityX() * point.x() + point.gravityY() * point.y());
        double square = point.velocityX() * point.velocityX() + point.velocityY() * point.velocityY();
        return mass * (height + 0.5 * square);
    }

    @Override
    public boolean isGiven() {
        return false;
    }

    @Override
    public String kind() {
        return "mass";
    }
}

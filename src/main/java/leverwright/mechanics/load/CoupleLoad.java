package leverwright.mechanics.load;

import leverwright.mechanics.posture.Place;

/**
 * A couple alone, without a force.
 *
 * @param on name of the link
 * @param couple N·m, counter-clockwise positive, within ±{@link Load#GREATEST_COUPLE}
 */
public record CoupleLoad(String on, double couple) implements Load {
    /**
     * Makes the load.
     *
     * @throws IllegalArgumentException if the couple is outside its range or not a number
     */
    public CoupleLoad {
        Load.couple(couple, on);
    }

    @Override
    public Place at() {
        return Place.START;
    }

    @Override
    public CoupleLoad withCouple(double newCouple) {
        return new CoupleLoad(on, newCouple);
    }

    @Override
    public double forceX(LoadPoint point) {
        return 0;
    }

    @Override
    public double forceY(LoadPoint point) {
        return 0;
    }

    @Override
    public String kind() {
        return "couple";
    }
}

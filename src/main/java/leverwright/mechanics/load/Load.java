package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.posture.Place;

/** A load on one link of a linkage: a force at a place, and a couple. Immutable. */
public sealed interface Load
        permits MassLoad, ForceLoad, CoupleLoad, CableLoad, BandLoad, PadLoad, ResistanceLoad, LeverLoad {
    /** Greatest size of a force, N. */
    double GREATEST_FORCE = 1.0e6;
    /** Greatest size of a couple, N·m. */
    double GREATEST_COUPLE = 1.0e6;

    /** Returns the name of the link it acts on. */
    String on();

    /** Returns where on the link its force acts. */
    Place at();

    /** Returns the couple that it exerts besides its force, N·m, counter-clockwise positive. */
    double couple();

    /** Returns the same load with another couple, N·m, within ±{@link #GREATEST_COUPLE}. */
    Load withCouple(double newCouple);

    /** Returns the mass that rides on the link, kg: 0 for all but {@link MassLoad}. */
    default double attachedMass() {
        return 0;
    }

    /** Returns the forward part of the force on the link, N, when its point is in a state. */
    double forceX(LoadPoint point);

    /** Returns the upward part of the force on the link, N, when its point is in a state. */
    double forceY(LoadPoint point);

    /** Returns the couple on the link in a state, N·m: {@link #couple()} and, where the force slides along the link, its moment about {@link #at}. */
    default double couple(LoadPoint point) {
        return couple();
    }

    /** Returns the energy that the load stores in a state, J: of height, motion or stretch; 0 for a force given from outside. */
    default double storedEnergy(LoadPoint point) {
        return 0;
    }

    /** Returns the power that friction, hysteresis or setting down turns into heat, W, never negative. */
    default double dissipation(LoadPoint point) {
        return 0;
    }

    /** Tells whether its power comes from outside (a partner, water) instead of from what it stores. */
    default boolean isGiven() {
        return true;
    }

    /** Returns what must be said beside results of this load. */
    default List<String> notes() {
        return List.of();
    }

    /** Returns a word for its kind, as scenario files and workings print it. */
    String kind();

    /** Returns a couple, N·m, if it is allowed; else throws. */
    static double couple(double couple, String on) {
        if (Math.abs(couple) <= GREATEST_COUPLE) {
            return couple;
        }
        return Require.within(
                couple, -GREATEST_COUPLE, GREATEST_COUPLE, "couple of a load on link \"" + on + "\"", "N m");
    }
}

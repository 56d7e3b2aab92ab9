package leverwright.mechanics.load;

import java.util.List;

/** A load whose force, energy, heat, words and notes are those of a resistance somewhere on its way. */
sealed interface ResistanceLoad extends Load permits LineLoad, RailLoad {
    /** Returns what pulls or pushes back. */
    Resistance resistance();

    /** Returns where the resistance stands on its way when the point is in a state. */
    Travel travel(LoadPoint point);

    @Override
    default double storedEnergy(LoadPoint point) {
        return resistance().stored(travel(point));
    }

    @Override
    default double dissipation(LoadPoint point) {
        return resistance().heat(travel(point));
    }

    @Override
    default boolean isGiven() {
        return resistance().isGiven();
    }

    @Override
    default List<String> notes() {
        return resistance().notes();
    }

    @Override
    default String kind() {
        return resistance().name();
    }
}

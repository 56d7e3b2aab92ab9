package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.posture.Place;

/** The words with which a cell describes what resists, as in {@code cable(kg(40)).ratio(2).efficiency(percent(90))}. */
public final class Resistances {
    private Resistances() {}

    /** Returns a weight stack on a cable, ratio 1, without friction, 0 to 1000 kg. */
    public static Cable cable(Mass stack) {
        return new Cable(stack.si(), 1, 1, 0, Direction.HELD);
    }

    /** Begins a band by its rest length; then tell its measured forces: {@code .stretched(cm(20), newtons(60))}. */
    public static Band band(Length restLength) {
        return Band.ofRestLength(restLength);
    }

    /** Returns chains from the bar to the floor: the mass of all, the length of each. */
    public static Chain chains(Mass mass, Length length) {
        return new Chain(mass.si(), length.si());
    }

    /** Returns a sled with its plates on a rail at an angle over level, without friction. */
    public static Sled sled(Mass mass, Angle rail) {
        return new Sled(mass.si(), rail.si(), 0, 0, Direction.HELD);
    }

    /** Returns a partner's steady force. */
    public static SteadyForce partner(Force force) {
        return new SteadyForce("partner", force.si());
    }

    /** Returns the drag of water at the speed at which it was measured. */
    public static SteadyForce water(Force force) {
        return new SteadyForce("water", force.si());
    }

    /** Begins measured handle forces: {@code measured().lifted(cm(0), newtons(180)).lifted(cm(20), newtons(210))}. */
    public static MeasuredForce measured() {
        return new MeasuredForce(List.of(), List.of(), 0);
    }

    /** Returns a machine's lever with a stack on a round wheel; then tell cam, masses, where it starts, its sense. */
    public static MachineLever lever(Mass stack, Length wheel) {
        return MachineLever.stack(stack, wheel);
    }

    /**
     * Returns a weight vest or pack as a load on the trunk.
     *
     * @param mass 0 to 10 000 kg
     * @param aboveHip its middle from the hip along the trunk
     * @param ahead its middle ahead of the line from hip to shoulder; negative behind, as a pack
     */
    public static MassLoad vest(Mass mass, Length aboveHip, Length ahead) {
        return new MassLoad("trunk", new Place(aboveHip.si(), -ahead.si()), mass.si());
    }
}

package leverwright.mechanics.load;

import java.util.List;
import leverwright.mechanics.measure.Acceleration;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Speed;
import leverwright.mechanics.numeric.Require;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;

/**
 * Chains that hang from the bar to the floor. Only the lifted part is carried and moves; links are picked up from rest, which
 * costs (mass per length)·speed², half of it heat, and when they are set down their motion turns to heat on the floor
 * (momentum of a body of changing mass, after Cayley 1857: from memory; derived here). Position: height of the chain's upper
 * end over the floor.
 *
 * @param mass of all chains, kg, 0 to {@link #GREATEST_MASS}
 * @param length of each chain from its upper end, m
 */
public record Chain(double mass, double length) implements Resistance {
    /**
     * Makes the chains.
     *
     * @throws IllegalArgumentException if a value is outside its range or not a number
     */
    public Chain {
        Require.within(mass, 0, GREATEST_MASS, "mass of the chains", "kg");
        Require.positive(length, 20, "length of the chains", "m");
    }

    @Override
    public String name() {
        return "chains";
    }

    @Override
    public String positionWords() {
        return "height of the chains' upper end";
    }

    private double lifted(Travel travel) {
        return Math.max(0, Math.min(length, travel.position()));
    }

    private boolean onFloor(Travel travel) {
        return travel.position() > 0 && travel.position() < length;
    }

    @Override
    public double force(Travel travel) {
        double perLength = mass / length;
        double weight = perLength * lifted(travel) * (travel.gravity() + travel.acceleration());
        return onFloor(travel) && travel.speed() > 0 ? weight + perLength * travel.speed() * travel.speed() : weight;
    }

    @Override
    public double stored(Travel travel) {
        double lifted = lifted(travel);
        double centre = Math.max(lifted, travel.position()) - lifted / 2;
        return mass / length * lifted * (travel.gravity() * centre + 0.5 * travel.speed() * travel.speed());
    }

    @Override
    public double heat(Travel travel) {
        double speed = Math.abs(travel.speed());
        return onFloor(travel) ? 0.5 * mass / length * speed * speed * speed : 0;
    }

    @Override
    public List<String> notes() {
        return List.of(
                "Only the lifted part of the chains moves; links picked up and set down turn motion into heat, which is"
                        + " counted.");
    }

    @Override
    public List<Step> steps(Travel travel) {
        Expression m = Expression.symbol("m_chain", Mass.of(mass), "all chains; set");
        Expression length = Expression.symbol("L_chain", Length.of(this.length), "length of each chain; set");
        Expression s = Expression.symbol("s", Length.of(lifted(travel)), "lifted part of each chain");
        Expression a = Expression.symbol("a", Acceleration.of(travel.acceleration()), "upward");
        Expression g = Gravity.symbol(travel.gravity());
        Expression pull = travel.acceleration() == 0 ? g : g.plus(a);
        Expression weight = m.times(s).dividedBy(length).times(pull);
        Expression v = Expression.symbol("v", Speed.of(travel.speed()), "upward");
        boolean picked = onFloor(travel) && travel.speed() > 0;
        Expression force = picked ? weight.plus(m.dividedBy(length).times(v.squared())) : weight;
        return List.of(Step.of("F", force, Force.of(force(travel)), "the lifted part alone moves"));
    }
}

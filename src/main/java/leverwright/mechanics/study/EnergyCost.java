package leverwright.mechanics.study;

import java.util.List;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.measure.Power;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * What light sets cost in energy by a published regression: oxygen uptake, L/min, from load and distance lifted, times 5.05
 * kcal/L. R. A. Robergs and others, Journal of Strength and Conditioning Research 21 (2007) 123: trained men, five minutes
 * without a break; bench press 0.132 + 0.031·kg + 0.01·cm (standard error of estimate 0.16 L/min), parallel squat −1.424 +
 * 0.022·kg + 0.035·cm (0.314 L/min), as its abstract prints them. Which loads and distances were measured is not in the
 * abstract: the limits here are from memory, and nothing is said beyond them.
 */
final class EnergyCost {
    /** W for 1 L/min: 5.05 kcal/L of 4184 J over 60 s. */
    private static final double WATTS = 5.05 * 4184 / 60;

    /** 3.5 mL/kg/min, the definition of one MET, of 70 kg, L/min. */
    private static final double RESTING = 0.25;

    private EnergyCost() {}

    static Answer<Power> squat(Mass load, Length distance) {
        within(load, distance, "squat", 20, 80, 0.3, 0.8);
        return answer("squat", "-1.424", "0.022", "3.5", 0.314, load, distance);
    }

    static Answer<Power> benchPress(Mass load, Length distance) {
        within(load, distance, "bench press", 20, 60, 0.2, 0.6);
        return answer("bench press", "0.132", "0.031", "1", 0.16, load, distance);
    }

    private static void within(
            Mass load, Length distance, String what, double least, double most, double shortest, double longest) {
        if (!(load.si() >= least && load.si() <= most && distance.si() >= shortest && distance.si() <= longest)) {
            throw new IllegalArgumentException("the energy cost of a " + what + " with " + load + " over " + distance
                    + " lies outside the regression; allowed: " + least + " to " + most + " kg and " + shortest + " to "
                    + longest + " m, light loads lifted for five minutes without a break (limits from memory)");
        }
    }

    private static Answer<Power> answer(
            String what,
            String constant,
            String perKilogram,
            String perMetre,
            double error,
            Mass load,
            Length distance) {
        double uptake = Double.parseDouble(constant)
                + Double.parseDouble(perKilogram) * load.si()
                + Double.parseDouble(perMetre) * distance.si();
        if (!(uptake >= RESTING)) {
            throw new IllegalArgumentException("the regression gives an oxygen uptake of " + uptake + " L/min for this "
                    + what + ", less than about " + RESTING
                    + " L/min at rest (3.5 mL/kg/min, 70 kg); take a longer way or a larger load");
        }
        Power power = Power.of(uptake * WATTS);
        String label = "energy cost of the " + what + " while it lasts";
        return Answer.of(
                        label,
                        power,
                        Sides.TOTAL,
                        () -> working(label, constant, perKilogram, perMetre, load, distance, power))
                .between(Power.of(Math.max(0, uptake - error) * WATTS), Power.of((uptake + error) * WATTS))
                .noted(List.of(
                        "Regression on trained men lifting light loads for five minutes; the band is its standard error of"
                                + " estimate. It says nothing about heavy sets, rests or what comes after.",
                        "A model's estimate: no medical or training advice. Licensed practice and local rules come"
                                + " first."));
    }

    private static Working working(
            String label,
            String constant,
            String perKilogram,
            String perMetre,
            Mass load,
            Length distance,
            Power power) {
        Expression uptake = Expression.exact(constant)
                .plus(Expression.exact(perKilogram).times(Expression.symbol("m", load, "load, kg; set")))
                .plus(Expression.exact(perMetre).times(Expression.symbol("d", distance, "way, m; set")));
        return Working.of(
                label + ", in total",
                List.of(Step.of(
                        "P",
                        uptake.times(Expression.exact("5.05"))
                                .times(Expression.exact("4184"))
                                .dividedBy(Expression.exact("60")),
                        power,
                        "Robergs 2007: oxygen uptake in L/min, 5.05 kcal/L, 4184 J/kcal")));
    }
}

package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;

/**
 * A number about a lifter that was given with an error, such as a thigh of 44.5 ± 1 cm.
 *
 * @param name what it is, as in "length of the thigh"
 * @param mover puts another value in its place
 */
public record UncertainInput(String name, Mover mover) {
    /** Puts a value from within the band into a lifter. */
    public interface Mover {
        /**
         * Returns a lifter with this input moved, without an error of its own; all else as it was.
         *
         * @param from the lifter to change
         * @param part of the half width, −1 for the lower end of the band to 1 for the upper
         */
        Lifter move(Lifter from, double part);
    }

    static List<UncertainInput> of(LifterInputs in) {
        List<UncertainInput> all = new ArrayList<>();
        Length stature = in.stature();
        if (stature.error() > 0) {
            all.add(new UncertainInput("stature", (from, part) -> from.stature(at(stature, part))));
        }
        Mass mass = in.bodyMass();
        if (mass.error() > 0) {
            all.add(new UncertainInput("body mass", (from, part) -> from.bodyMass(at(mass, part))));
        }
        in.lengths().forEach((segment, length) -> {
            if (length.error() > 0) {
                String name = "length of the " + segment.words();
                all.add(new UncertainInput(name, (from, part) -> from.length(segment, at(length, part))));
            }
        });
        in.masses().forEach((segment, given) -> {
            if (given.error() > 0) {
                String name = "mass of " + segment.oneOf();
                all.add(new UncertainInput(name, (from, part) -> from.mass(segment, at(given, part))));
            }
        });
        in.centres().forEach((segment, centre) -> {
            if (centre.error() > 0) {
                String name = "mass centre of the " + segment.words();
                all.add(new UncertainInput(name, (from, part) -> from.centre(segment, at(centre, part))));
            }
        });
        in.places().forEach((landmark, place) -> {
            if (place.error() > 0) {
                all.add(new UncertainInput(landmark.words(), (from, part) -> from.place(landmark, at(place, part))));
            }
        });
        return List.copyOf(all);
    }

    private static Length at(Length value, double part) {
        return Length.of(value.si() + part * value.error());
    }

    private static Mass at(Mass value, double part) {
        return Mass.of(value.si() + part * value.error());
    }
}

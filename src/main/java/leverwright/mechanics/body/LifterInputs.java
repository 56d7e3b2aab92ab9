package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;

/** All that was said about a lifter, checked. */
record LifterInputs(
        String name,
        Sex sex,
        Length stature,
        Mass bodyMass,
        SegmentTable table,
        Map<Segment, Length> lengths,
        Map<Segment, Mass> masses,
        Map<Segment, Length> centres,
        Map<Landmark, Length> places,
        int age,
        List<Circumstance> circumstances,
        List<StrengthTest> tests) {
    /** Age of a lifter whose age was not said. */
    static final int AGE_NOT_SAID = -1;

    static final int OLDEST = 120;
    static final int ADULT = 18;

    LifterInputs {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a lifter has a blank name; give a name to print, such as \"Ines\"");
        }
        within(
                stature.si(),
                Lifter.SHORTEST,
                Lifter.TALLEST,
                "stature of " + name,
                "m",
                "give the height without shoes");
        within(
                bodyMass.si(),
                Lifter.LIGHTEST,
                Lifter.HEAVIEST,
                "body mass of " + name,
                "kg",
                "give what a scale shows");
        if (age != AGE_NOT_SAID) {
            within(age, 0, OLDEST, "age of " + name, "years", "give full years, or leave it out");
        }
        lengths = copy(lengths, Segment.class);
        masses = copy(masses, Segment.class);
        centres = copy(centres, Segment.class);
        places = copy(places, Landmark.class);
        circumstances = List.copyOf(circumstances);
        tests = List.copyOf(tests);
    }

    static LifterInputs of(String name, Sex sex, Length stature, Mass mass) {
        return new LifterInputs(
                name,
                sex,
                stature,
                mass,
                SegmentTable.DE_LEVA,
                new EnumMap<>(Segment.class),
                new EnumMap<>(Segment.class),
                new EnumMap<>(Segment.class),
                new EnumMap<>(Landmark.class),
                AGE_NOT_SAID,
                List.of(),
                List.of());
    }

    static void within(double value, double least, double most, String what, String unit, String advice) {
        if (!(value >= least && value <= most)) {
            throw new IllegalArgumentException(what + " is " + value + " " + unit + "; allowed: " + least + " to "
                    + most + " " + unit + "; " + advice);
        }
    }

    private static <K extends Enum<K>, V> Map<K, V> copy(Map<K, V> map, Class<K> keys) {
        EnumMap<K, V> copy = new EnumMap<>(keys);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }

    private static <K extends Enum<K>, V> Map<K, V> with(Map<K, V> map, K key, V value, Class<K> keys) {
        EnumMap<K, V> copy = new EnumMap<>(keys);
        copy.putAll(map);
        copy.put(key, value);
        return copy;
    }

    LifterInputs withTable(SegmentTable other) {
        return new LifterInputs(
                name, sex, stature, bodyMass, other, lengths, masses, centres, places, age, circumstances, tests);
    }

    LifterInputs withStature(Length other) {
        return new LifterInputs(
                name, sex, other, bodyMass, table, lengths, masses, centres, places, age, circumstances, tests);
    }

    LifterInputs withBodyMass(Mass other) {
        return new LifterInputs(
                name, sex, stature, other, table, lengths, masses, centres, places, age, circumstances, tests);
    }

    LifterInputs withLength(Segment segment, Length length) {
        Map<Segment, Length> more = with(lengths, segment, length, Segment.class);
        return new LifterInputs(
                name, sex, stature, bodyMass, table, more, masses, centres, places, age, circumstances, tests);
    }

    LifterInputs withMass(Segment segment, Mass mass) {
        Map<Segment, Mass> more = with(masses, segment, mass, Segment.class);
        return new LifterInputs(
                name, sex, stature, bodyMass, table, lengths, more, centres, places, age, circumstances, tests);
    }

    LifterInputs withCentre(Segment segment, Length centre) {
        Map<Segment, Length> more = with(centres, segment, centre, Segment.class);
        return new LifterInputs(
                name, sex, stature, bodyMass, table, lengths, masses, more, places, age, circumstances, tests);
    }

    LifterInputs withPlace(Landmark landmark, Length place) {
        Map<Landmark, Length> more = with(places, landmark, place, Landmark.class);
        return new LifterInputs(
                name, sex, stature, bodyMass, table, lengths, masses, centres, more, age, circumstances, tests);
    }

    LifterInputs withAge(int years) {
        return new LifterInputs(
                name, sex, stature, bodyMass, table, lengths, masses, centres, places, years, circumstances, tests);
    }

    LifterInputs with(Circumstance circumstance) {
        List<Circumstance> more = new ArrayList<>(circumstances);
        if (!more.contains(circumstance)) {
            more.add(circumstance);
        }
        return new LifterInputs(
                name, sex, stature, bodyMass, table, lengths, masses, centres, places, age, more, tests);
    }

    LifterInputs with(StrengthTest test) {
        List<StrengthTest> more = new ArrayList<>(tests);
        more.add(test);
        return new LifterInputs(
                name, sex, stature, bodyMass, table, lengths, masses, centres, places, age, circumstances, more);
    }
}

package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import leverwright.mechanics.body.Body.Property;

/** Finds what must be said about a lifter: the table, the samples, measured values, numbers from memory, cautions. */
final class BodyNotes {
    private static final double TRUNK_CHANGE = 0.1;
    private static final double LENGTH_CHANGE = 0.15;
    private static final double TAIL = 0.05;

    private final LifterInputs in;
    private final Map<Segment, Map<Property, SourcedValue>> sources;
    private final Map<Landmark, SourcedValue> places;
    private final List<Note> notes = new ArrayList<>();

    BodyNotes(LifterInputs in, Map<Segment, Map<Property, SourcedValue>> sources, Map<Landmark, SourcedValue> places) {
        this.in = in;
        this.sources = sources;
        this.places = places;
    }

    List<Note> all() {
        notes.addAll(in.table().notes(in.sex()));
        outOfSample("stature", "stature", "m", in.stature().si());
        outOfSample("body_mass", "body mass", "kg", in.bodyMass().si());
        measuredLengths();
        measuredMasses();
        fromMemory();
        cautions();
        return notes;
    }

    private void add(Note.Kind kind, String form, Object... values) {
        notes.add(new Note(kind, String.format(Locale.ROOT, form, values)));
    }

    private void outOfSample(String dimension, String words, String unit, double value) {
        double low = Landmarks.SURVEY.value(dimension, "-", in.sex(), "p5").value();
        double high = Landmarks.SURVEY.value(dimension, "-", in.sex(), "p95").value();
        if (value < low || value > high) {
            add(
                    Note.Kind.OUT_OF_SAMPLE,
                    "The %s of %s, %s, is outside the middle 90 %% of %s in ANSUR II 2012 (%s to %s):"
                            + " proportions of the table may not hold; measure segments.",
                    words,
                    in.name(),
                    plain(value, unit),
                    in.sex().group(),
                    plain(low, unit),
                    plain(high, unit));
        }
    }

    /** Returns a number rounded to a thousandth, without trailing zeros, with its unit. */
    private static String plain(double value, String unit) {
        double rounded = Math.rint(value * 1000) / 1000;
        String digits = String.format(Locale.ROOT, "%.3f", rounded).replaceAll("\\.?0+$", "");
        return digits + " " + unit;
    }

    private double value(Segment segment, Property property) {
        return java.util.Objects.requireNonNull(
                        java.util.Objects.requireNonNull(sources.get(segment)).get(property))
                .value();
    }

    private void measuredLengths() {
        Proportions table = in.table().proportions(in.sex());
        in.lengths().forEach((segment, length) -> {
            double expected = table.row(segment).length().value() * in.stature().si();
            if (Math.abs(length.si() / expected - 1) > LENGTH_CHANGE) {
                add(
                        Note.Kind.MEASURED,
                        "The measured %s of %s, %s, differs by more than 15 %% from the %s of %s; check from where"
                                + " to where it was measured.",
                        segment.words(),
                        in.name(),
                        plain(length.si(), "m"),
                        plain(expected, "m"),
                        in.table().name());
            }
            unusualLimb(segment, length.si() / expected);
        });
    }

    /** A limb that few people of that stature have: its ratio to the table's length, as the survey spreads. */
    private void unusualLimb(Segment segment, double ratioToTable) {
        double stature = in.stature().si();
        Survey.partBelow(segment, in.sex(), stature, ratioToTable)
                .filter(part -> part < TAIL || part > 1 - TAIL)
                .ifPresent(part -> add(
                        Note.Kind.OUT_OF_SAMPLE,
                        "The %s of %s is %s than that of 95 of 100 %s of that stature (ANSUR II 2012, ratio to the table's"
                                + " length): the table's masses and centres may not hold.",
                        segment.words(),
                        in.name(),
                        part < TAIL ? "shorter" : "longer",
                        in.sex().group()));
    }

    private void measuredMasses() {
        if (in.masses().isEmpty()) {
            return;
        }
        double trunk = value(Segment.TRUNK, Property.MASS);
        double expected =
                in.table().proportions(in.sex()).row(Segment.TRUNK).mass().value()
                        * in.bodyMass().si();
        if (in.masses().containsKey(Segment.TRUNK)) {
            double sum = 0;
            for (Segment segment : Segment.values()) {
                sum += segment.sides() * value(segment, Property.MASS);
            }
            add(
                    Note.Kind.MEASURED,
                    "With the given mass of the trunk the segments of %s sum to %s; the stated body mass is %s.",
                    in.name(),
                    plain(sum, "kg"),
                    plain(in.bodyMass().si(), "kg"));
        } else {
            String check = Math.abs(trunk / expected - 1) > TRUNK_CHANGE
                    ? ", more than 10 % off the table: check that masses are for one of a pair"
                    : "";
            add(
                    Note.Kind.MEASURED,
                    "Measured segment masses: the trunk with head of %s takes up the difference and has %s instead of"
                            + " %s%s.",
                    in.name(),
                    plain(trunk, "kg"),
                    plain(expected, "kg"),
                    check);
        }
    }

    private void fromMemory() {
        List<String> names = new ArrayList<>();
        sources.forEach((segment, numbers) -> numbers.values().forEach(number -> {
            if (number.fromMemory()) {
                names.add(number.name());
            }
        }));
        places.values().forEach(number -> {
            if (number.fromMemory()) {
                names.add(number.name());
            }
        });
        if (!names.isEmpty()) {
            add(Note.Kind.FROM_MEMORY, "From memory, no text was read: %s.", String.join("; ", names));
        }
    }

    private void cautions() {
        if (in.age() != LifterInputs.AGE_NOT_SAID && in.age() < LifterInputs.ADULT) {
            add(
                    Note.Kind.CAUTION,
                    "%s is under 18: the tables measured adults; loads for children and youths are for a qualified coach.",
                    in.name());
        }
        for (Circumstance circumstance : in.circumstances()) {
            add(Note.Kind.CAUTION, "%s is %s.", in.name(), circumstance.words());
        }
    }
}

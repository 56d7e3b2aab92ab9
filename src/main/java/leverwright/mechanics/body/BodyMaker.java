package leverwright.mechanics.body;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import leverwright.mechanics.body.Body.Property;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;

/** Makes a body from what was said about a lifter. */
final class BodyMaker {
    /** Least mass of the trunk with head, of body mass; every table has 0.49 to 0.58. */
    static final double LEAST_TRUNK = 0.2;

    private static final double SHORTEST_SEGMENT = 0.01;
    private static final String MEASURED = "measured on ";

    private final LifterInputs in;
    private final Proportions table;
    private final String measured;
    private final Map<Segment, Map<Property, SourcedValue>> sources = new EnumMap<>(Segment.class);
    private final Map<Landmark, Length> places = new EnumMap<>(Landmark.class);
    private final Map<Landmark, SourcedValue> placeSources = new EnumMap<>(Landmark.class);

    BodyMaker(LifterInputs in) {
        this.in = in;
        this.table = in.table().proportions(in.sex());
        this.measured = MEASURED + in.name();
    }

    Body make() {
        for (Segment segment : Segment.values()) {
            sources.put(segment, numbers(segment));
        }
        trunkMass();
        for (Landmark landmark : Landmark.values()) {
            place(landmark);
        }
        Map<Segment, BodySegment> segments = new EnumMap<>(Segment.class);
        for (Segment segment : Segment.values()) {
            segments.put(segment, segment(segment));
        }
        BodySegment trunk = Objects.requireNonNull(segments.get(Segment.TRUNK));
        TrunkCut cut = TrunkCut.at(place(Landmark.LOW_BACK_ABOVE_HIP).si(), trunk, table);
        return new Body(
                segments, sources, places, placeSources, cut, () -> new BodyNotes(in, sources, placeSources).all());
    }

    private Map<Property, SourcedValue> numbers(Segment segment) {
        SegmentRow row = table.row(segment);
        String of = " of the " + segment.words();
        SourcedValue length = length(segment, row.length());
        Map<Property, SourcedValue> numbers = new EnumMap<>(Property.class);
        numbers.put(Property.LENGTH, length);
        numbers.put(Property.MASS, mass(segment, row.mass()));
        numbers.put(Property.CENTRE, centre(segment, row.centre(), length));
        numbers.put(
                Property.RADIUS,
                row.radius()
                        .made("radius of gyration" + of, row.radius().value() * length.value(), "m", " × its length"));
        return numbers;
    }

    private SourcedValue length(Segment segment, SourcedValue ratio) {
        String name = "length of the " + segment.words();
        Length given = in.lengths().get(segment);
        if (given == null) {
            return ratio.made(name, ratio.value() * in.stature().si(), "m", " × stature");
        }
        String advice = "measure from " + segment.start() + " to " + segment.end();
        LifterInputs.within(given.si(), SHORTEST_SEGMENT, in.stature().si(), name + " of " + in.name(), "m", advice);
        return new SourcedValue(name, given.si(), "m", measured, ReadingStatus.GIVEN);
    }

    private SourcedValue mass(Segment segment, SourcedValue ratio) {
        String name = "mass of " + (segment.sides() == 1 ? "the " : "") + segment.oneOf();
        Mass given = in.masses().get(segment);
        if (given == null) {
            return ratio.made(name, ratio.value() * in.bodyMass().si(), "kg", " × body mass");
        }
        if (!(given.si() > 0 && given.si() < in.bodyMass().si())) {
            throw new IllegalArgumentException(name + " of " + in.name() + " is " + given.si()
                    + " kg; allowed: greater than 0 and less than the body mass, " + in.bodyMass());
        }
        return new SourcedValue(name, given.si(), "kg", measured, ReadingStatus.GIVEN);
    }

    private SourcedValue centre(Segment segment, SourcedValue ratio, SourcedValue length) {
        String name = "mass centre of the " + segment.words() + " from the " + segment.start();
        Length given = in.centres().get(segment);
        if (given == null) {
            return ratio.made(name, ratio.value() * length.value(), "m", " × its length");
        }
        String advice = "measure from the " + segment.start() + " along the segment";
        LifterInputs.within(given.si(), 0, length.value(), name + " of " + in.name(), "m", advice);
        return new SourcedValue(name, given.si(), "m", measured, ReadingStatus.GIVEN);
    }

    /** The trunk takes what the scale leaves, unless it was given too. */
    private void trunkMass() {
        if (in.masses().containsKey(Segment.TRUNK)) {
            return;
        }
        double left = in.bodyMass().si();
        ReadingStatus status = ReadingStatus.DERIVED;
        for (Segment segment : Segment.values()) {
            if (segment != Segment.TRUNK) {
                SourcedValue mass = number(segment, Property.MASS);
                left -= segment.sides() * mass.value();
                status = status.worse(mass.status());
            }
        }
        if (!(left >= LEAST_TRUNK * in.bodyMass().si())) {
            throw new IllegalArgumentException("the measured masses leave " + left + " kg for the trunk with head of "
                    + in.name() + "; allowed: at least "
                    + LEAST_TRUNK * in.bodyMass().si()
                    + " kg; masses are for one of a pair");
        }
        String source = "body mass less all other segments; the table's own ratio is "
                + table.row(Segment.TRUNK).mass().value();
        Objects.requireNonNull(sources.get(Segment.TRUNK))
                .put(Property.MASS, new SourcedValue("mass of the trunk with head", left, "kg", source, status));
    }

    private SourcedValue number(Segment segment, Property property) {
        return Objects.requireNonNull(
                Objects.requireNonNull(sources.get(segment)).get(property));
    }

    private Length place(Landmark landmark) {
        Length given = in.places().get(landmark);
        LandmarkRow row = table.landmark(landmark);
        if (given == null) {
            double stretch = stretch(landmark);
            double value = row.ofStature().value() * in.stature().si() * stretch;
            places.put(landmark, new Length(value, row.halfWidth()));
            placeSources.put(landmark, row.ofStature().made(landmark.words(), value, "m", " × stature"));
            return new Length(value, row.halfWidth());
        }
        double most = number(segmentOf(landmark), Property.LENGTH).value();
        if (!(given.si() > 0 && given.si() < most)) {
            throw new IllegalArgumentException(landmark.words() + " of " + in.name() + " is " + given.si()
                    + " m; allowed: greater than 0 and less than the "
                    + segmentOf(landmark).words() + "'s length, " + most + " m");
        }
        places.put(landmark, given);
        placeSources.put(landmark, new SourcedValue(landmark.words(), given.si(), "m", measured, ReadingStatus.GIVEN));
        return given;
    }

    /** Places on a foot or hand move with its measured length. */
    private double stretch(Landmark landmark) {
        if (landmark != Landmark.ANKLE_FROM_HEEL && landmark != Landmark.GRIP_FROM_WRIST) {
            return 1;
        }
        Segment segment = segmentOf(landmark);
        return number(segment, Property.LENGTH).value()
                / (table.row(segment).length().value() * in.stature().si());
    }

    private static Segment segmentOf(Landmark landmark) {
        return switch (landmark) {
            case ANKLE_FROM_HEEL, ANKLE_HEIGHT, FOOT_CENTRE_HEIGHT -> Segment.FOOT;
            case GRIP_FROM_WRIST -> Segment.HAND;
            case LOW_BACK_ABOVE_HIP -> Segment.TRUNK;
        };
    }

    private BodySegment segment(Segment segment) {
        double mass = segment.sides() * number(segment, Property.MASS).value();
        double radius = number(segment, Property.RADIUS).value();
        double across = segment == Segment.FOOT
                ? Objects.requireNonNull(places.get(Landmark.FOOT_CENTRE_HEIGHT))
                        .si()
                : 0;
        return new BodySegment(
                segment.words(),
                segment.sides(),
                mass,
                number(segment, Property.LENGTH).value(),
                number(segment, Property.CENTRE).value(),
                across,
                mass * radius * radius);
    }
}

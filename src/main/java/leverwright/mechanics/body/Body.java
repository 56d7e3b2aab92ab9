package leverwright.mechanics.body;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Supplier;
import leverwright.mechanics.measure.Length;
import org.jspecify.annotations.Nullable;

/**
 * A lifter's body in SI units: seven rigid parts, the places on them, and where every number comes from. Immutable.
 */
public final class Body {
    /** What of a segment a number is about. */
    public enum Property {
        /** Start to end, m. */
        LENGTH,
        /** Of one of a pair, kg. */
        MASS,
        /** Mass centre from the start, m. */
        CENTRE,
        /** Radius of gyration about the mass centre, m. */
        RADIUS
    }

    private final Map<Segment, BodySegment> segments;
    private final Map<Segment, Map<Property, SourcedValue>> sources;
    private final Map<Landmark, Length> places;
    private final Map<Landmark, SourcedValue> placeSources;
    private final TrunkCut trunk;
    private final Supplier<List<Note>> notesMaker;
    private volatile @Nullable List<Note> notes;

    Body(
            Map<Segment, BodySegment> segments,
            Map<Segment, Map<Property, SourcedValue>> sources,
            Map<Landmark, Length> places,
            Map<Landmark, SourcedValue> placeSources,
            TrunkCut trunk,
            Supplier<List<Note>> notesMaker) {
        this.segments = Collections.unmodifiableMap(new EnumMap<>(segments));
        this.sources = Collections.unmodifiableMap(new EnumMap<>(sources));
        this.places = Collections.unmodifiableMap(new EnumMap<>(places));
        this.placeSources = Collections.unmodifiableMap(new EnumMap<>(placeSources));
        this.trunk = trunk;
        this.notesMaker = notesMaker;
    }

    /** Returns a segment, both sides together, from its start as {@link Segment} names it. */
    public BodySegment segment(Segment segment) {
        return Objects.requireNonNull(segments.get(segment));
    }

    /** Returns all seven segments in the order of {@link Segment}. */
    public List<BodySegment> segments() {
        return List.copyOf(segments.values());
    }

    /** Returns the sum of all segments, kg: the body mass, unless the mass of the trunk was given too. */
    public double mass() {
        double sum = 0;
        for (BodySegment segment : segments.values()) {
            sum += segment.mass();
        }
        return sum;
    }

    /** Returns the part of the trunk between hip and low back; it starts at the hip. */
    public BodySegment pelvis() {
        return trunk.pelvis();
    }

    /** Returns the trunk with head above the low back, without the arms; it starts at the low back, ends at the shoulder. */
    public BodySegment trunkAboveLowBack() {
        return trunk.above();
    }

    /** Returns the mass that rides on the low back in an upright stance, kg: trunk above it, head and both arms. */
    public double massAboveLowBack() {
        return trunk.above().mass()
                + segment(Segment.UPPER_ARM).mass()
                + segment(Segment.FOREARM).mass()
                + segment(Segment.HAND).mass();
    }

    /** Returns the mass of head, or of head and neck, kg, as the table cuts it. */
    public double headMass() {
        return trunk.headMass();
    }

    /** Returns the head's mass centre above the hip, in line with the trunk, m. */
    public double headCentreAboveHip() {
        return trunk.headCentre();
    }

    /** Returns the neck joint above the hip, in line with the trunk, m. */
    public double neckAboveHip() {
        return trunk.neck();
    }

    /** Returns a place on the body with the band in which it is meant to lie. */
    public Length place(Landmark landmark) {
        return Objects.requireNonNull(places.get(landmark));
    }

    /** Returns where the number of a place comes from. */
    public SourcedValue number(Landmark landmark) {
        return Objects.requireNonNull(placeSources.get(landmark));
    }

    /** Returns one number of a segment with its source; masses are those of one of a pair. */
    public SourcedValue number(Segment segment, Property property) {
        return Objects.requireNonNull(
                Objects.requireNonNull(sources.get(segment)).get(property));
    }

    /** Returns all numbers with their sources: the segments in order, then the places. */
    public List<SourcedValue> numbers() {
        List<SourcedValue> all = new java.util.ArrayList<>();
        sources.values().forEach(ofSegment -> all.addAll(ofSegment.values()));
        all.addAll(placeSources.values());
        all.addAll(trunk.numbers());
        return List.copyOf(all);
    }

    /** Returns what must be said beside every result. */
    public List<Note> notes() {
        List<Note> made = notes;
        if (made == null) {
            made = List.copyOf(notesMaker.get());
            notes = made;
        }
        return made;
    }
}

package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import leverwright.mechanics.body.Body;
import leverwright.mechanics.body.BodySegment;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SourcedValue;

/**
 * A piece of the body whose weight counts at a joint: a whole segment, or the trunk's part above a cut.
 *
 * @param symbol subscript in workings
 * @param on the segment it belongs to
 * @param whole whether it is that whole segment
 * @param mass kg, both sides together
 * @param centre its mass centre from the segment's end nearer the feet (arms: nearer the trunk), m
 * @param massSource where the mass comes from, put into words only when asked for
 * @param centreSource where the mass centre comes from, likewise
 */
record Part(
        String symbol,
        Segment on,
        boolean whole,
        double mass,
        double centre,
        Supplier<String> massSource,
        Supplier<String> centreSource) {

    /** Returns the pieces that lie beyond a joint, away from the feet and out along the arms. */
    static List<Part> above(Joint joint, Skeleton body) {
        return switch (joint) {
            case LOW_BACK -> aboveLowBack(body);
            case NECK -> List.of(head(body));
            default -> segments(Layout.above(joint), Segment.HAND, body);
        };
    }

    /** Returns the pieces between a joint and the foot, for a leg that hangs. */
    static List<Part> below(Joint joint, Skeleton body) {
        Segment above = Layout.above(joint);
        return segments(Segment.FOOT, Layout.SEGMENTS.get(above.ordinal() - 1), body);
    }

    /** Returns all seven segments. */
    static List<Part> all(Skeleton body) {
        List<Part> parts = new ArrayList<>();
        for (Segment segment : Layout.SEGMENTS) {
            parts.add(whole(segment, body));
        }
        return List.copyOf(parts);
    }

    private static List<Part> segments(Segment first, Segment last, Skeleton body) {
        return List.copyOf(body.all().subList(first.ordinal(), last.ordinal() + 1));
    }

    private static Part whole(Segment segment, Skeleton body) {
        SourcedValue mass = body.body().number(segment, Body.Property.MASS);
        SourcedValue centre = body.body().number(segment, Body.Property.CENTRE);
        return new Part(
                segment.name().toLowerCase(Locale.ROOT),
                segment,
                true,
                body.mass(segment),
                body.centre(segment),
                () -> both(segment) + Sources.of(mass),
                () -> "from the " + segment.start() + "; " + Sources.of(centre));
    }

    private static String both(Segment segment) {
        return segment.sides() == 2 ? "both " + plural(segment) + ", 2 × one: " : "";
    }

    private static String plural(Segment segment) {
        return segment == Segment.FOOT ? "feet" : segment.words() + "s";
    }

    private static List<Part> aboveLowBack(Skeleton body) {
        BodySegment above = body.body().trunkAboveLowBack();
        List<Part> parts = new ArrayList<>();
        parts.add(new Part(
                "trunk_above",
                Segment.TRUNK,
                false,
                above.mass(),
                body.lowBackAlong() + above.centre(),
                () -> "trunk with head above the low back: trunk less its part below the low back; derived",
                () -> "from the hip; trunk with head less its part below the low back; derived"));
        parts.addAll(segments(Segment.UPPER_ARM, Segment.HAND, body));
        return List.copyOf(parts);
    }

    private static Part head(Skeleton body) {
        return new Part(
                "head",
                Segment.TRUNK,
                false,
                body.body().headMass(),
                body.body().headCentreAboveHip(),
                () -> "head as the segment table cuts it",
                () -> "from the hip, in line with the trunk; segment table");
    }
}

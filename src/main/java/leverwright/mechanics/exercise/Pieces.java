package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import leverwright.mechanics.body.Body;
import leverwright.mechanics.body.BodySegment;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.SourcedValue;

/** A body taken to pieces at its joints, for one way of keeping the two sides together or apart. */
final class Pieces {
    private final Skeleton body;
    private final Parting parting;
    private final double[] masses = new double[Member.COUNT];
    private final Part[] whole = new Part[Member.COUNT];
    private final List<Part> all;
    private final Map<Joint, List<Part>> above = new EnumMap<>(Joint.class);
    private final Map<Joint, List<Part>> below = new EnumMap<>(Joint.class);

    Pieces(Skeleton body, Parting parting) {
        this.body = body;
        this.parting = parting;
        List<Part> parts = new ArrayList<>();
        for (Member member : Member.ALL) {
            if (parting.has(member)) {
                Part part = make(member);
                whole[member.ordinal()] = part;
                masses[member.ordinal()] = part.mass();
                parts.add(part);
            }
        }
        all = List.copyOf(parts);
        for (Joint joint : Joint.values()) {
            cut(joint);
        }
    }

    private void cut(Joint joint) {
        switch (joint) {
            case NECK -> {
                above.put(joint, List.of(head()));
                below.put(joint, List.of());
            }
            case LOW_BACK -> {
                above.put(joint, cutTrunk(aboveLowBack(), true));
                below.put(joint, cutTrunk(pelvis(), false));
            }
            default -> {
                int mask = parting.above(joint);
                above.put(joint, segments(mask));
                below.put(joint, segments(parting.everything() & ~mask));
            }
        }
    }

    private List<Part> segments(int mask) {
        List<Part> parts = new ArrayList<>();
        for (Part part : all) {
            if ((part.on().bit() & mask) != 0) {
                parts.add(part);
            }
        }
        return List.copyOf(parts);
    }

    private List<Part> cutTrunk(Part ofTrunk, boolean upper) {
        List<Part> parts = new ArrayList<>();
        if (upper) {
            parts.add(ofTrunk);
        }
        for (Part part : all) {
            if (upper ? part.on().isArm() : part.on().isLeg()) {
                parts.add(part);
            }
        }
        if (!upper) {
            parts.add(ofTrunk);
        }
        return List.copyOf(parts);
    }

    /** Mass of a segment, kg: of both sides together where they are alike. */
    double mass(int member) {
        return masses[member];
    }

    /** Returns all segments that count in this plane. */
    List<Part> all() {
        return all;
    }

    /** Returns the pieces beyond a joint, on the side away from the feet and out along the arms, or on the other one. */
    List<Part> parts(Joint joint, boolean beyond) {
        return Objects.requireNonNull((beyond ? above : below).get(joint));
    }

    private Part make(Member member) {
        Segment segment = member.segment();
        SourcedValue mass = body.body().number(segment, Body.Property.MASS);
        SourcedValue centre = body.body().number(segment, Body.Property.CENTRE);
        boolean one = segment.sides() == 1 || parting.isSplit(segment);
        return new Part(
                member.symbol(),
                member,
                true,
                one && segment.sides() == 2 ? body.mass(segment) / 2 : body.mass(segment),
                body.centre(segment),
                () -> (one ? "" : "both " + plural(segment) + ", 2 × one: ") + Sources.of(mass),
                () -> "from the " + segment.start() + "; " + Sources.of(centre));
    }

    private static String plural(Segment segment) {
        return segment == Segment.FOOT ? "feet" : segment.words() + "s";
    }

    private Part aboveLowBack() {
        BodySegment part = body.body().trunkAboveLowBack();
        return new Part(
                "trunk_above",
                Member.TRUNK,
                false,
                part.mass(),
                body.lowBackAlong() + part.centre(),
                () -> "trunk with head above the low back: trunk less its part below the low back; derived",
                () -> "from the hip; trunk with head less its part below the low back; derived");
    }

    private Part pelvis() {
        BodySegment part = body.body().pelvis();
        return new Part(
                "pelvis",
                Member.TRUNK,
                false,
                part.mass(),
                part.centre(),
                () -> "trunk below the low back; derived from the segment table",
                () -> "from the hip, in line with the trunk; derived");
    }

    private Part head() {
        return new Part(
                "head",
                Member.TRUNK,
                false,
                body.body().headMass(),
                body.body().headCentreAboveHip(),
                () -> "head as the segment table cuts it",
                () -> "from the hip, in line with the trunk; segment table");
    }
}

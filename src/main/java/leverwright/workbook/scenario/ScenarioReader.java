package leverwright.workbook.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import leverwright.mechanics.equilibrium.FixedSupport;
import leverwright.mechanics.equilibrium.GroundSupport;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import leverwright.workbook.json.CanonicalNumber;
import leverwright.workbook.json.JsonCursor;

/** Reads a scenario from a tree, and refuses what it does not know. */
final class ScenarioReader {
    private static final List<String> TOP =
            List.of("format", "version", "kind", "title", "gravity", "segments", "origin", "loads", "support");
    private static final List<String> SEGMENT = List.of(
            "name",
            "sides",
            "mass",
            "length",
            "centre",
            "next",
            "inertia",
            "direction",
            "angularVelocity",
            "angularAcceleration");
    private static final int MOST_LOADS = 10_000;

    private ScenarioReader() {}

    /** Returns what the key "kind" says, after checking format and version. */
    static String kind(JsonCursor root) {
        JsonCursor format = root.member("format");
        if (!format.text().equals(ScenarioSolver.SCENARIO_FORMAT)) {
            throw format.problem("is " + quoted(format) + "; allowed: \"" + ScenarioSolver.SCENARIO_FORMAT + "\"");
        }
        JsonCursor version = root.member("version");
        if (version.number() != ScenarioSolver.VERSION) {
            throw version.problem("is " + CanonicalNumber.write(version.number()) + "; allowed: "
                    + ScenarioSolver.VERSION + ", the version that this program reads");
        }
        JsonCursor kind = root.member("kind");
        if (!List.of("linkage", "sharing", "exercise").contains(kind.text())) {
            throw kind.problem("is " + quoted(kind) + "; allowed: \"linkage\", \"sharing\", \"exercise\"");
        }
        return kind.text();
    }

    static LinkageScenario read(JsonCursor root) {
        root.allowOnly(TOP);
        root.optional("title").ifPresent(JsonCursor::text);
        return linkage(root);
    }

    private static LinkageScenario linkage(JsonCursor root) {
        double gravity = root.optional("gravity")
                .map(at -> within(at, 0, LinkageSolver.GREATEST_GRAVITY, "m/s^2"))
                .orElse(LinkageSolver.STANDARD_GRAVITY);
        List<JsonCursor> segments = segments(root.member("segments"));
        Linkage linkage = linkage(segments);
        Configuration configuration = new Configuration(
                worldPoint(root.member("origin")),
                each(segments, "direction", Configuration.GREATEST_DIRECTION, "rad", true),
                each(segments, "angularVelocity", Configuration.GREATEST_ANGULAR_VELOCITY, "rad/s", false),
                each(segments, "angularAcceleration", Configuration.GREATEST_ANGULAR_ACCELERATION, "rad/s^2", false));
        return new LinkageScenario(
                gravity, linkage, configuration, loads(root, linkage), support(root.member("support"), linkage));
    }

    private static List<JsonCursor> segments(JsonCursor at) {
        List<JsonCursor> segments = at.elements();
        if (segments.isEmpty() || segments.size() > Linkage.MOST_LINKS) {
            throw at.problem("has " + segments.size() + " segments; allowed: 1 to " + Linkage.MOST_LINKS);
        }
        return segments;
    }

    private static Linkage linkage(List<JsonCursor> segments) {
        List<Link> links = new ArrayList<>();
        Set<String> names = new TreeSet<>();
        for (JsonCursor segment : segments) {
            segment.allowOnly(SEGMENT);
            JsonCursor name = segment.member("name");
            if (name.text().isBlank()) {
                throw name.problem("is blank; give each segment a name of its own");
            }
            if (!names.add(name.text())) {
                throw name.problem("is " + quoted(name) + " like an earlier segment; give each a name of its own");
            }
            links.add(link(segment, name.text()));
        }
        return Linkage.chain(links);
    }

    private static Link link(JsonCursor segment, String name) {
        JsonCursor sides = segment.member("sides");
        if (sides.number() != 1 && sides.number() != 2) {
            throw sides.problem("is " + CanonicalNumber.write(sides.number()) + "; allowed: 1 or 2");
        }
        return new Link(
                name,
                (int) sides.number(),
                within(segment.member("mass"), 0, Link.GREATEST_MASS, "kg"),
                positive(segment.member("length"), Link.GREATEST_LENGTH, "m"),
                place(segment.member("centre")),
                place(segment.member("next")),
                within(segment.member("inertia"), 0, Link.GREATEST_INERTIA, "kg m^2"));
    }

    private static List<Double> each(
            List<JsonCursor> segments, String key, double greatest, String unit, boolean required) {
        List<Double> values = new ArrayList<>();
        for (JsonCursor segment : segments) {
            Optional<JsonCursor> at = required ? Optional.of(segment.member(key)) : segment.optional(key);
            values.add(at.map(found -> within(found, -greatest, greatest, unit)).orElse(0.0));
        }
        return values;
    }

    private static List<Load> loads(JsonCursor root, Linkage linkage) {
        JsonCursor at = root.member("loads");
        List<JsonCursor> elements = at.elements();
        if (elements.size() > MOST_LOADS) {
            throw at.problem("has " + elements.size() + " loads; allowed: 0 to " + MOST_LOADS);
        }
        List<Load> loads = new ArrayList<>();
        for (JsonCursor load : elements) {
            loads.add(LoadReader.read(load, linkage));
        }
        return loads;
    }

    private static Support support(JsonCursor support, Linkage linkage) {
        JsonCursor kind = support.member("kind");
        return switch (kind.text()) {
            case "ground" -> {
                support.allowOnly(List.of("kind", "segment"));
                yield new GroundSupport(segmentName(support, linkage));
            }
            case "fixed" -> {
                support.allowOnly(List.of("kind", "segment", "at"));
                yield new FixedSupport(segmentName(support, linkage), place(support.member("at")));
            }
            default -> throw kind.problem("is " + quoted(kind) + "; allowed: \"ground\", \"fixed\"");
        };
    }

    /** Returns the name in the key "segment", which must be that of a segment. */
    static String segmentName(JsonCursor owner, Linkage linkage) {
        JsonCursor name = owner.member("segment");
        if (!linkage.has(name.text())) {
            List<String> names =
                    linkage.links().stream().map(Link::name).limit(20).toList();
            throw name.problem("is " + quoted(name) + ", which is no segment; allowed: \""
                    + String.join("\", \"", names) + "\"" + (linkage.size() > names.size() ? ", …" : ""));
        }
        return name.text();
    }

    static Place place(JsonCursor at) {
        List<JsonCursor> pair = pair(at);
        return new Place(
                within(pair.get(0), -Link.GREATEST_LENGTH, Link.GREATEST_LENGTH, "m"),
                within(pair.get(1), -Link.GREATEST_LENGTH, Link.GREATEST_LENGTH, "m"));
    }

    static Vector worldPoint(JsonCursor at) {
        return vector(at, Configuration.GREATEST_COORDINATE, "m");
    }

    static Vector vector(JsonCursor at, double greatest, String unit) {
        List<JsonCursor> pair = pair(at);
        return new Vector(
                within(pair.get(0), -greatest, greatest, unit), within(pair.get(1), -greatest, greatest, unit));
    }

    private static List<JsonCursor> pair(JsonCursor at) {
        List<JsonCursor> pair = at.elements();
        if (pair.size() != 2) {
            throw at.problem("has " + pair.size() + " numbers; allowed: two, as in [0.1, 0]");
        }
        return pair;
    }

    static double within(JsonCursor at, double least, double greatest, String unit) {
        double value = at.number();
        if (value < least || value > greatest) {
            throw at.problem("is " + CanonicalNumber.write(value) + " " + unit + "; allowed: "
                    + CanonicalNumber.write(least) + " to " + CanonicalNumber.write(greatest) + " " + unit);
        }
        return value;
    }

    static double positive(JsonCursor at, double greatest, String unit) {
        double value = at.number();
        if (!(value > 0) || value > greatest) {
            throw at.problem("is " + CanonicalNumber.write(value) + " " + unit + "; allowed: greater than 0, at most "
                    + CanonicalNumber.write(greatest) + " " + unit);
        }
        return value;
    }

    static String quoted(JsonCursor text) {
        String shown = text.text();
        return "\"" + (shown.length() > 60 ? shown.substring(0, 60) + "…" : shown) + "\"";
    }
}

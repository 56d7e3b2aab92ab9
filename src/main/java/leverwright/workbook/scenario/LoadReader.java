package leverwright.workbook.scenario;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.load.BandLoad;
import leverwright.mechanics.load.CableLoad;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.load.PadLoad;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import leverwright.workbook.json.CanonicalNumber;
import leverwright.workbook.json.JsonCursor;

/** Reads one load of a scenario. */
final class LoadReader {
    private static final List<String> COMMON = List.of("kind", "segment", "at", "couple");

    private LoadReader() {}

    static Load read(JsonCursor load, Linkage linkage) {
        JsonCursor kind = load.member("kind");
        String wanted = kind.text();
        List<String> allowed = new ArrayList<>(COMMON);
        allowed.addAll(
                switch (wanted) {
                    case "mass" -> List.of("mass");
                    case "force" -> List.of("force");
                    case "cable" -> List.of("pulley", "stack", "ratio");
                    case "band" -> List.of("anchor", "stiffness", "restLength");
                    case "pad" -> List.of("force", "sense");
                    default ->
                        throw kind.problem("is " + ScenarioReader.quoted(kind)
                                + "; allowed: \"mass\", \"force\", \"cable\", \"band\", \"pad\"");
                });
        load.allowOnly(allowed);
        String on = ScenarioReader.segmentName(load, linkage);
        Place at = ScenarioReader.place(load.member("at"));
        double couple = load.optional("couple")
                .map(c -> ScenarioReader.within(c, -Load.GREATEST_COUPLE, Load.GREATEST_COUPLE, "N m"))
                .orElse(0.0);
        return switch (wanted) {
            case "mass" -> mass(load, on, at, couple);
            case "force" -> force(load, on, at, couple);
            case "cable" -> cable(load, on, at, couple);
            case "band" -> band(load, on, at, couple);
            default -> pad(load, on, at, couple);
        };
    }

    private static Load mass(JsonCursor load, String on, Place at, double couple) {
        double mass = ScenarioReader.within(load.member("mass"), 0, MassLoad.GREATEST_MASS, "kg");
        return new MassLoad(on, at, mass, couple);
    }

    private static Load force(JsonCursor load, String on, Place at, double couple) {
        Vector force = ScenarioReader.vector(load.member("force"), Load.GREATEST_FORCE, "N");
        return new ForceLoad(on, at, force.x(), force.y(), couple);
    }

    private static Load cable(JsonCursor load, String on, Place at, double couple) {
        return new CableLoad(
                on,
                at,
                ScenarioReader.worldPoint(load.member("pulley")),
                ScenarioReader.within(load.member("stack"), 0, MassLoad.GREATEST_MASS, "kg"),
                ScenarioReader.positive(load.member("ratio"), CableLoad.GREATEST_RATIO, "(a ratio)"),
                couple);
    }

    private static Load band(JsonCursor load, String on, Place at, double couple) {
        return new BandLoad(
                on,
                at,
                ScenarioReader.worldPoint(load.member("anchor")),
                ScenarioReader.within(load.member("stiffness"), 0, BandLoad.GREATEST_STIFFNESS, "N/m"),
                ScenarioReader.within(load.member("restLength"), 0, Configuration.GREATEST_COORDINATE, "m"),
                couple);
    }

    private static Load pad(JsonCursor load, String on, Place at, double couple) {
        JsonCursor sense = load.member("sense");
        if (Math.abs(sense.number()) != 1) {
            throw sense.problem("is " + CanonicalNumber.write(sense.number()) + "; allowed: 1 or -1");
        }
        return new PadLoad(
                on,
                at,
                ScenarioReader.within(load.member("force"), 0, Load.GREATEST_FORCE, "N"),
                sense.number() > 0 ? PadLoad.Side.LEFT : PadLoad.Side.RIGHT,
                couple);
    }
}

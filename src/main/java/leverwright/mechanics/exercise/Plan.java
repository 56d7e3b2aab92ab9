package leverwright.mechanics.exercise;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.function.Function;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.working.Expression;
import org.jspecify.annotations.Nullable;

/** What a movement is made of, as its words have said so far. A movement copies it before it changes anything. */
final class Plan {
    /** A coordinate that may follow from settings and body, m. */
    interface Coordinate {
        double of(Work work);
    }

    /** Which part of gravity acts in the plane. */
    enum Gravity {
        WHOLE,
        TILTED,
        NONE
    }

    String name;
    Plane plane = Plane.SAGITTAL;
    Parting parting = Parting.NONE;
    Family family = Family.OWN;
    boolean standing;
    boolean onFeet;
    List<Knob<Angle>> preferred = List.of();
    Anchor anchor = Anchor.HIP;
    Coordinate anchorX = work -> 0;
    Coordinate anchorY = work -> 0;
    String anchorWords = "";
    int held = Member.TRUNK.bit();
    Layout.TrunkHold trunkHold = Layout.TrunkHold.WHOLE;
    Gravity gravity = Gravity.WHOLE;

    @Nullable
    Knob<Angle> tilt;

    @Nullable
    Knob<Ratio> hips;

    @Nullable
    Knob<Ratio> shoulders;

    boolean palmsBack;
    int elbowTurn = 1;
    Map<Member, LeanRule> leans = new LinkedHashMap<>();
    List<Reach> reaches = new ArrayList<>();
    List<LoadRule> loads = new ArrayList<>();
    List<Consumer<Work>> scenery = new ArrayList<>();

    @Nullable
    Search search;

    Coordinate pressure = work -> 0;

    @Nullable
    Knob<?> path;

    double pathFrom;
    double pathTo;
    /** Knobs that move in step with the path's, with their values at its ends. */
    Map<Knob<?>, double[]> inStep = new LinkedHashMap<>();

    Set<Joint> drives = new LinkedHashSet<>();
    Map<Knob<?>, Drawing.Moved> moves = new LinkedHashMap<>();
    List<Consumer<Work>> checks = new ArrayList<>();
    List<BiFunction<Hand, Work, List<Expression.Symbol>>> confirmations = new ArrayList<>();
    List<Function<Work, Optional<String>>> remarks = new ArrayList<>();
    List<String> trains = new ArrayList<>();
    List<String> supports = new ArrayList<>();
    List<String> assumptions = new ArrayList<>();
    Set<String> cautions = new LinkedHashSet<>(List.of(Cautions.GENERAL));
    List<String> free = new ArrayList<>();
    List<String> follows = new ArrayList<>();

    Plan(String name) {
        this.name = name;
    }

    Plan copy() {
        Plan copy = new Plan(name);
        copy.plane = plane;
        copy.parting = parting;
        copy.family = family;
        copy.standing = standing;
        copy.onFeet = onFeet;
        copy.preferred = preferred;
        copy.anchor = anchor;
        copy.anchorX = anchorX;
        copy.anchorY = anchorY;
        copy.anchorWords = anchorWords;
        copy.held = held;
        copy.trunkHold = trunkHold;
        copy.gravity = gravity;
        copy.tilt = tilt;
        copy.hips = hips;
        copy.shoulders = shoulders;
        copy.palmsBack = palmsBack;
        copy.elbowTurn = elbowTurn;
        copy.leans = new LinkedHashMap<>(leans);
        copy.reaches = new ArrayList<>(reaches);
        copy.loads = new ArrayList<>(loads);
        copy.scenery = new ArrayList<>(scenery);
        copy.search = search;
        copy.pressure = pressure;
        copy.path = path;
        copy.pathFrom = pathFrom;
        copy.pathTo = pathTo;
        copy.inStep = new LinkedHashMap<>(inStep);
        copy.drives = new LinkedHashSet<>(drives);
        copy.moves = new LinkedHashMap<>(moves);
        copy.checks = new ArrayList<>(checks);
        copy.confirmations = new ArrayList<>(confirmations);
        copy.remarks = new ArrayList<>(remarks);
        copy.trains = new ArrayList<>(trains);
        copy.supports = new ArrayList<>(supports);
        copy.assumptions = new ArrayList<>(assumptions);
        copy.cautions = new LinkedHashSet<>(cautions);
        copy.free = new ArrayList<>(free);
        copy.follows = new ArrayList<>(follows);
        return copy;
    }

    /** Adds a load before the contacts, which carry what the loads ask for. */
    void add(LoadRule rule) {
        int at = 0;
        while (at < loads.size() && !(loads.get(at) instanceof Contact)) {
            at++;
        }
        loads.add(rule instanceof Contact ? loads.size() : at, rule);
    }
}

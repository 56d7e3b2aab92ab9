package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static leverwright.mechanics.measure.Measures.ratio;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.LeverLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.load.Resistances;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.working.Sketch;
import org.junit.jupiter.api.Test;

/** What holds between exercises of the catalogue, and of each as mechanics. */
class CatalogueMechanicsTest {
    private static final double G = 9.80665;
    private static final double TURN = 0.7;

    private final Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));

    @Test
    void thereAreAtLeastFortyAndAllAreKnownByName() {
        assertTrue(Catalogue.exercises().size() >= 40);
        assertEquals(
                Catalogue.exercises().size(),
                Catalogue.exercises().stream().map(Exercise::name).distinct().count());
        for (Exercise<?> exercise : Catalogue.exercises()) {
            assertTrue(exercise.family() != Family.OWN, exercise.name());
            assertTrue(!exercise.trains().isEmpty(), exercise.name());
            assertTrue(!exercise.drivenJoints().isEmpty(), exercise.name());
            assertTrue(!exercise.supports().isEmpty(), exercise.name());
        }
    }

    /**
     * By more than 5 % in some joint's moment at their defaults, either side's, counted only where the model knows it in both.
     * In another plane a joint turns about another axis, about which the planar exercise asks for nothing: there the moment of
     * a joint that drives one of them, 1 N·m or more, is the whole difference.
     */
    @Test
    void anyTwoDifferByMoreThanATwentiethInSomeJointMoment() {
        List<Exercise<?>> all = Catalogue.exercises();
        List<String> alike = new ArrayList<>();
        for (int i = 0; i < all.size(); i++) {
            for (int k = i + 1; k < all.size(); k++) {
                if (!differ(all.get(i), all.get(k))) {
                    alike.add(all.get(i) + " and " + all.get(k));
                }
            }
        }
        assertEquals(List.of(), alike);
    }

    private boolean differ(Exercise<?> one, Exercise<?> other) {
        if (one.plane() != other.plane()) {
            return drives(one) || drives(other);
        }
        HeldPosture first = one.by(ines).posture();
        HeldPosture second = other.by(ines).posture();
        return differ(first, second)
                || (one.keepsSidesApart() && differ(first.otherSide(), second))
                || (other.keepsSidesApart() && differ(first, second.otherSide()));
    }

    /** Whether a joint that drives it has a moment. */
    private boolean drives(Exercise<?> exercise) {
        HeldPosture held = exercise.by(ines).posture();
        return exercise.drivenJoints().stream()
                .filter(joint -> Cut.isKnown(held.layout(), joint))
                .anyMatch(joint -> Math.abs(held.cut(joint).reported()) > 1);
    }

    private static boolean differ(HeldPosture first, HeldPosture second) {
        for (Joint joint : Joint.values()) {
            if (Cut.isKnown(first.layout(), joint) && Cut.isKnown(second.layout(), joint)) {
                double a = first.cut(joint).reported();
                double b = second.cut(joint).reported();
                double size = Math.max(Math.abs(a), Math.abs(b));
                if (size > 1 && Math.abs(a - b) > 0.05 * size) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The force in the low back that the spine's load starts from: by the cut, and by the general solver of a linkage. */
    @Test
    void theForceInTheLowBackIsThatOfTheGeneralSolver() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            HeldPosture held = exercise.by(ines).posture();
            if (!Cut.isKnown(held.layout(), Joint.LOW_BACK)) {
                continue;
            }
            Mechanism mechanism = held.mechanism();
            LinkageSolver solved = mechanism.solved();
            int link =
                    mechanism.linkage().indexOf(mechanism.joint(Joint.LOW_BACK).link());
            assertEquals(solved.forceX(link), held.forceForwardSi(Joint.LOW_BACK), 1e-8, exercise.name());
            assertEquals(solved.forceY(link), held.forceUpwardSi(Joint.LOW_BACK), 1e-8, exercise.name());
        }
    }

    /** A squat goes down its way with shank, thigh and trunk in step, the pressure at its place; what is set stays. */
    @Test
    void aSquatsTrunkLeansAsBalanceAsksOnItsWay() {
        for (Exercise<?> squat : List.of(
                Exercises.backSquat(), Exercises.lowBarSquat(), Exercises.frontSquat(), Exercises.gobletSquat())) {
            Performance way = squat.by(ines).alongItsWay();
            HeldPosture top = way.with(Knobs.THIGH_ABOVE_LEVEL, deg(90)).posture();
            HeldPosture half = way.with(Knobs.THIGH_ABOVE_LEVEL, deg(45)).posture();
            HeldPosture low = way.with(Knobs.THIGH_ABOVE_LEVEL, deg(0)).posture();
            for (HeldPosture held : List.of(top, half, low)) {
                assertEquals(Standing.BALANCED, held.standing(), squat.name());
            }
            assertTrue(lean(half, Segment.TRUNK) > lean(top, Segment.TRUNK) + 0.1, squat.name());
            assertTrue(lean(low, Segment.SHANK) > lean(half, Segment.SHANK), squat.name());
            Performance stays = way.with(Knobs.TORSO_LEAN, deg(40));
            assertEquals(
                    deg(40).si(),
                    lean(stays.with(Knobs.THIGH_ABOVE_LEVEL, deg(45)).posture(), Segment.TRUNK),
                    1e-12);
        }
        HeldPosture stood = Exercises.deadlift()
                .by(ines)
                .alongItsWay()
                .with(Knobs.THIGH_ABOVE_LEVEL, deg(85))
                .posture();
        assertTrue(lean(stood, Segment.TRUNK) < deg(15).si());
    }

    private static double lean(HeldPosture held, Segment segment) {
        return held.lean(segment).value().si();
    }

    /** The whole way of its usual range, every exercise has a posture, and no lifter falls. */
    @Test
    void everyUsualPathIsPossible() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            exercise.course().ifPresent(course -> {
                for (int k = 0; k <= 20; k++) {
                    double setting = course.from() + (course.to() - course.from()) * k / 20;
                    HeldPosture held = exercise.by(ines)
                            .alongItsWay()
                            .withSi(course.knob(), setting)
                            .posture();
                    assertTrue(!held.standing().wouldFall(), exercise + " at " + setting);
                    assertTrue(held.bothCuts().agree(), exercise + " at " + setting);
                }
            });
        }
    }

    /** M_knee + M_hip, both sides: weights above the hip times (x_knee − x_hip), and the thighs'; Winter's identity by hand. */
    @Test
    void kneeAndHipOfASquatShareWhatTheThighsAngleAsks() {
        for (Exercise<?> squat : List.of(
                Exercises.backSquat(), Exercises.lowBarSquat(), Exercises.frontSquat(), Exercises.gobletSquat())) {
            for (int depth = -20; depth <= 80; depth += 20) {
                HeldPosture held =
                        squat.with(Knobs.THIGH_ABOVE_LEVEL, deg(depth)).by(ines).posture();
                Layout layout = held.layout();
                double above = held.cut(Joint.HIP).mass();
                double knee = layout.jointX(Joint.KNEE);
                double sum = above * (knee - layout.jointX(Joint.HIP))
                        + layout.body().mass(Segment.THIGH) * (knee - layout.centreX(Segment.THIGH));
                double moments = 2
                        * (held.cut(Joint.KNEE).reported() + held.cut(Joint.HIP).reported());
                assertEquals(G * sum, moments, 1e-9 * (1 + Math.abs(moments)), squat + " " + depth);
            }
        }
    }

    /** What remains at the first contact is one force through it: the second contact's share leaves no couple there. */
    @Test
    void secondContactsLeaveNoCoupleAtTheFirst() {
        for (Exercise<?> exercise : Catalogue.exercises()) {
            if (exercise instanceof Movement movement) {
                HeldPosture held = movement.by(ines).posture();
                List<LoadRule> rules = movement.plan().loads;
                for (LoadRule rule : rules) {
                    if (rule instanceof Contact contact) {
                        Work work = new Work(held.layout(), movement.settings(), false);
                        double about = work.momentAbout(
                                contact.about().x(work), contact.about().y(work), contact.members());
                        assertEquals(0, about, 1e-8, movement.name());
                    }
                }
            }
        }
    }

    /**
     * An equal force on hand or foot relative to the body gives equal joint moments, whichever end moves: with massless
     * segments between, to rounding; with real masses the difference is the moment of the limb's own weight.
     */
    @Test
    void aJointDoesNotCareWhichEndMoves() {
        // closed: standing on both feet, the ground pushes at the chosen pressure
        Movement stands = Exercises.frontSquat();
        HeldPosture closed = stands.by(ines).posture();
        Layout layout = closed.layout();
        double ground = closed.groundReaction().value().si();
        double knee = layout.jointX(Joint.KNEE);
        double ofForce = (layout.pressureX() - knee) * ground;
        double ofLimb = 0;
        for (Segment segment : List.of(Segment.FOOT, Segment.SHANK)) {
            ofLimb -= layout.body().mass(segment) * G * (layout.centreX(segment) - knee);
        }
        // open: the same leg posture on a seat, the same force at the same place of the sole
        Movement open = Exercises.exercise("Open leg")
                .seated()
                .change(plan -> plan.held = Member.TRUNK.bit())
                .lean(Segment.THIGH, leverwright.mechanics.measure.Angle.of(layout.lean(Member.THIGH)))
                .lean(Segment.SHANK, leverwright.mechanics.measure.Angle.of(layout.lean(Member.SHANK)))
                .lean(Segment.FOOT, deg(0))
                .then(movement -> Holds.force(
                        movement, "floor", new Spot(Member.FOOT, Spot.From.HEEL, Knobs.PRESSURE, 0, null, 1, 0)))
                .knob(Knobs.PRESSURE)
                .pull(newtons(ground))
                .pullDirection(deg(90));
        double moved = open.by(ines).posture().moment(Joint.KNEE).value().si();
        assertEquals(closed.moment(Joint.KNEE).value().si(), moved, 1e-9);
        assertEquals(-(ofForce + ofLimb) / 2, moved, 1e-9);
    }

    /** Turning body, forces and gravity together changes no joint's moment. */
    @Test
    void noMomentDependsOnTheFrame() {
        double sine = Math.sin(TURN);
        double cosine = Math.cos(TURN);
        for (Exercise<?> exercise : Catalogue.exercises()) {
            HeldPosture held = exercise.by(ines).posture();
            if (held.layout().support() != Layout.Support.HELD) {
                continue;
            }
            Mechanism still = held.mechanism();
            List<Load> turned = new ArrayList<>();
            if (still.loads().stream().anyMatch(load -> load instanceof LeverLoad)) {
                continue; // a machine's lever has its axis in the world, which would have to turn too
            }
            for (int k = 0; k < still.loads().size(); k++) {
                Load load = still.loads().get(k);
                leverwright.mechanics.exercise.Load force =
                        held.layout().loads().get(k);
                turned.add(
                        load instanceof MassLoad
                                ? load
                                : new ForceLoad(
                                        load.on(),
                                        load.at(),
                                        force.forceX() * cosine - force.forceY() * sine,
                                        force.forceX() * sine + force.forceY() * cosine));
            }
            Vector origin = still.configuration().origin();
            double[] directions = still.configuration().directions().stream()
                    .mapToDouble(direction -> direction + TURN)
                    .toArray();
            LinkageSolver solver = LinkageSolver.of(still.linkage(), turned, still.support())
                    .gravity(still.gravity() * sine, -still.gravity() * cosine)
                    .configuration(Configuration.at(
                            still.linkage(),
                            new Vector(
                                    origin.x() * cosine - origin.y() * sine, origin.x() * sine + origin.y() * cosine),
                            directions))
                    .solve();
            for (Joint joint : still.joints().keySet()) {
                assertEquals(held.cut(joint).reported(), still.reported(joint, solver), 1e-8, exercise + ", " + joint);
            }
        }
    }

    @Test
    void whatCannotBeIsToldInWords() {
        refused(Exercises.stepUp().with(SetupKnobs.STEP_HEIGHT, cm(80)), "the step is 0.8 m high");
        refused(Exercises.benchPress().gripWidth(cm(160)).barHeight(cm(60)), "the place of the hands is");
        refused(Exercises.splitSquat().stepLength(cm(150)), "the place of the foot is");
        refused(
                Exercises.pushUpHandsRaised()
                        .with(SetupKnobs.HANDS_HEIGHT, cm(100))
                        .elbowFlexion(deg(150)),
                "");
        refused(Exercises.cableCurl().pulleyAhead(leverwright.mechanics.measure.Length.of(0.3)), "");
        IllegalArgumentException tooMuch = assertThrows(
                IllegalArgumentException.class, () -> Exercises.frontSquat().barbell(Mass.of(1200)));
        assertTrue(String.valueOf(tooMuch.getMessage()).contains("allowed: 0 kg to 1"));
        HeldPosture nothing = Exercises.cableFly().stack(kg(0)).by(ines).posture();
        assertEquals(0, nothing.moment(Joint.SHOULDER).value().si(), 0);
        assertEquals(0, nothing.load(Joint.SHOULDER).value().si(), 0);
        HeldPosture held = Exercises.legPress()
                .rail(deg(20))
                .with(SetupKnobs.RAIL_FRICTION, ratio(0.5))
                .by(ines)
                .posture();
        assertTrue(held.notes().stream().anyMatch(note -> note.startsWith("Friction holds the sled")));
        HeldPosture slack = Exercises.backSquat()
                .band(Resistances.band(cm(400)).stretched(cm(30), newtons(70)), cm(15), cm(0))
                .by(ines)
                .posture();
        assertTrue(
                slack.notes().stream().anyMatch(note -> note.startsWith("The band is slack")),
                slack.notes().toString());
        HeldPosture slides = Exercises.hipThrust()
                .with(SetupKnobs.BENCH_FORCE, newtons(1500))
                .by(ines)
                .posture();
        assertTrue(slides.notes().stream().anyMatch(note -> note.contains("would slide")));
    }

    private void refused(Movement exercise, String words) {
        try {
            HeldPosture held = exercise.by(ines).posture();
            for (Joint joint : Joint.values()) {
                if (Cut.isKnown(held.layout(), joint)) {
                    assertTrue(Double.isFinite(held.cut(joint).reported()), exercise + ", " + joint);
                }
            }
            assertTrue(words.isEmpty(), () -> exercise + " was possible");
        } catch (IllegalArgumentException said) {
            assertTrue(String.valueOf(said.getMessage()).contains(words), said.getMessage());
        }
    }

    /** At the ends of the band nothing slides yet, just beyond it something does; every result carries its range. */
    @Test
    void resultsCarryTheirRangeWhileFrictionHolds() {
        Movement held = Exercises.hipThrust().whileFrictionHolds(ines);
        leverwright.mechanics.measure.Force band = held.get(SetupKnobs.BENCH_FORCE);
        assertTrue(band.error() > 50, band.toString());
        HeldPosture posture = held.by(ines).posture();
        assertTrue(posture.moment(Joint.HIP).high().si()
                > posture.moment(Joint.HIP).low().si() + 1);
        for (int end = -1; end <= 1; end += 2) {
            double at = band.si() + end * band.error();
            Layout layout = Exercises.hipThrust()
                    .with(SetupKnobs.BENCH_FORCE, newtons(at))
                    .by(ines)
                    .posture()
                    .layout();
            double normal = layout.loads().get(1).forceY();
            double ground = HandGround.reactionSi(layout);
            double spare = Math.min(0.5 * normal - Math.abs(at), 0.5 * ground - Math.abs(HandGround.forwardSi(layout)));
            assertEquals(0, spare, 1e-6);
        }
        assertThrows(
                IllegalArgumentException.class, () -> Exercises.frontSquat().whileFrictionHolds(ines));
    }

    /** Equilibrium of the whole body: what is drawn adds up to nothing, in both directions. */
    @Test
    void bothSolesAreDrawnWhereFeetStandApart() {
        HeldPosture held = Exercises.sideBend().by(ines).posture();
        double up = 0;
        int soles = 0;
        for (Sketch.Shape shape : held.sketch().shapes()) {
            if (shape instanceof Sketch.Arrow arrow) {
                up += arrow.newtons().y();
                soles += arrow.kind() == Sketch.ForceKind.REACTION ? 1 : 0;
            }
        }
        assertEquals(2, soles);
        assertEquals(71 * G, up, 1e-9 * 71 * G);
    }
}

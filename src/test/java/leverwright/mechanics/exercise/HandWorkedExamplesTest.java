package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.deg;
import static leverwright.mechanics.measure.Measures.kg;
import static leverwright.mechanics.measure.Measures.newtons;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.body.Sex;
import org.junit.jupiter.api.Test;

/**
 * One example per exercise, worked by hand: what lies beyond a joint, weight by weight and force by force, about that joint.
 * Forces of cables, pads and sleds are written out here from their inputs. No source outside the project: a free-body sum.
 */
class HandWorkedExamplesTest {
    private static final double G = 9.80665;
    private static final List<Member> ARM = List.of(Member.UPPER_ARM, Member.FOREARM, Member.HAND);
    private static final List<Member> FORE = List.of(Member.FOREARM, Member.HAND);
    private static final List<Member> BOTH_ARMS = List.of(
            Member.UPPER_ARM,
            Member.FOREARM,
            Member.HAND,
            Member.OTHER_UPPER_ARM,
            Member.OTHER_FOREARM,
            Member.OTHER_HAND);
    private static final List<Member> SHANK = List.of(Member.FOOT, Member.SHANK);
    private static final List<Member> LEG = List.of(Member.FOOT, Member.SHANK, Member.THIGH);

    private final Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
    private final Set<String> seen = new LinkedHashSet<>();

    /** A free body being summed about a joint: counter-clockwise moment of all that acts on it, N·m. */
    private static final class Sum {
        private final Layout layout;
        private final double x;
        private final double y;
        private double moment;

        Sum(HeldPosture held, Joint joint) {
            layout = held.layout();
            x = layout.jointX(joint);
            y = layout.jointY(joint);
        }

        /** Weights of whole segments, each at its mass centre. */
        Sum weights(List<Member> members) {
            for (Member member : members) {
                double mass = layout.pieces().mass(member.ordinal());
                moment -= mass * layout.gravity() * (layout.centreX(member) - x);
            }
            return this;
        }

        Sum mass(double kilograms, double atX) {
            moment -= kilograms * layout.gravity() * (atX - x);
            return this;
        }

        Sum grip(double kilograms) {
            return mass(kilograms, layout.gripX());
        }

        Sum force(double atX, double atY, double forceX, double forceY) {
            moment += (atX - x) * forceY - (atY - y) * forceX;
            return this;
        }

        Sum gripForce(double forceX, double forceY) {
            return force(layout.gripX(), layout.gripY(), forceX, forceY);
        }

        /** A cable in the hand that runs to a pulley. */
        Sum cable(double newtons, double pulleyX, double pulleyY) {
            double dx = pulleyX - layout.gripX();
            double dy = pulleyY - layout.gripY();
            double length = Math.hypot(dx, dy);
            return gripForce(newtons * dx / length, newtons * dy / length);
        }
    }

    private void check(Movement exercise, Joint joint, double expected) {
        HeldPosture held = exercise.by(ines).posture();
        double reported = held.moment(joint).value().si();
        assertEquals(expected, reported, 1e-9 * (1 + Math.abs(expected)), exercise + ", " + joint);
        assertTrue(Math.abs(reported) > 0.5, () -> exercise + ", " + joint + ": nothing to see, " + reported);
        seen.add(exercise.name());
    }

    private Sum about(Movement exercise, Joint joint) {
        return new Sum(exercise.by(ines).posture(), joint);
    }

    private Layout layout(Movement exercise) {
        return exercise.by(ines).posture().layout();
    }

    /** Hip of a squat: trunk, arms and load above it, half for a side; forward of the hip they ask for extension. */
    @Test
    void squatsAndHinges() {
        Skeleton body = new Skeleton(ines);
        Movement[] withBar = {
            Exercises.lowBarSquat(), Exercises.frontSquat(), Exercises.goodMorning(), Exercises.standingCalfRaise()
        };
        double[] along = {-0.05, 0.02, 0.02, 0.04};
        double[] behind = {0.09, -0.12, 0.06, 0};
        double[] bar = {20, 20, 20, 60};
        for (int k = 0; k < withBar.length - 1; k++) {
            Layout layout = layout(withBar[k]);
            double lean = layout.lean(Member.TRUNK);
            double x = layout.jointX(Joint.HIP)
                    + (body.length(Segment.TRUNK) + along[k]) * Math.sin(lean)
                    - behind[k] * Math.cos(lean);
            Sum sum = about(withBar[k], Joint.HIP)
                    .weights(List.of(Member.TRUNK))
                    .weights(ARM)
                    .mass(bar[k], x);
            check(withBar[k], Joint.HIP, -sum.moment / 2);
        }
        Layout goblet = layout(Exercises.gobletSquat());
        double lean = Math.toRadians(25);
        double x = goblet.jointX(Joint.SHOULDER) - 0.15 * Math.sin(lean) + 0.18 * Math.cos(lean);
        check(
                Exercises.gobletSquat(),
                Joint.HIP,
                -about(Exercises.gobletSquat(), Joint.HIP)
                                .weights(List.of(Member.TRUNK))
                                .weights(ARM)
                                .mass(16, x)
                                .moment
                        / 2);
        // the calf: all weight stands over the ball of the foot, 74 % of its length; the foot itself lies below the
        // ankle
        Movement calf = Exercises.standingCalfRaise();
        Layout raised = layout(calf);
        double ground = (71 + 60) * G;
        Sum foot = about(calf, Joint.ANKLE)
                .weights(List.of(Member.FOOT))
                .force(0.74 * body.length(Segment.FOOT), 0, 0, ground);
        check(calf, Joint.ANKLE, foot.moment / 2);
        assertTrue(raised.startY(Member.FOOT) > 0);
    }

    @Test
    void deadliftFromTheFloor() {
        HeldPosture held = Exercises.deadlift().by(ines).posture();
        Sum sum = new Sum(held, Joint.HIP)
                .weights(List.of(Member.TRUNK))
                .weights(ARM)
                .mass(60, held.layout().pressureX() + 0.03);
        assertEquals(-sum.moment / 2, held.moment(Joint.HIP).value().si(), 1e-9);
    }

    /** Two contacts: first what the second one carries, by moments about the first; then the leg. */
    @Test
    void splitSquatAndStepUp() {
        Movement split = Exercises.splitSquat();
        Layout layout = layout(split);
        double pressure = layout.pressureX();
        double ball = -0.60;
        double rear = 0;
        for (Part part : layout.pieces().all()) {
            rear += part.mass() * G * (layout.centreX(part.on()) - pressure);
        }
        rear += 16 * G * (layout.gripX() - pressure);
        rear /= ball - pressure;
        double front = (71 + 16) * G - rear;
        Sum leg = about(split, Joint.HIP).weights(LEG).force(pressure, 0, 0, front);
        check(split, Joint.HIP, leg.moment);
        Sum other = new Sum(split.by(ines).otherSide().posture(), Joint.KNEE)
                .weights(SHANK)
                .force(ball, 0, 0, rear);
        assertEquals(
                -other.moment,
                split.by(ines).otherSide().posture().moment(Joint.KNEE).value().si(),
                1e-9);

        Movement step = Exercises.stepUp();
        Sum knee = about(step, Joint.KNEE).weights(SHANK).force(layout(step).pressureX(), 0, 0, (71 + 16) * G);
        check(step, Joint.KNEE, -knee.moment);
    }

    @Test
    void wallSquatHipThrustAndBackExtension() {
        Movement wall = Exercises.wallSquat();
        Layout layout = layout(wall);
        double moment = 0;
        for (Part part : layout.pieces().all()) {
            moment += part.mass() * G * (layout.centreX(part.on()) - layout.pressureX());
        }
        double height = layout.jointY(Joint.HIP) + 0.35;
        // the wall's push at its height turns the other way
        double push = -moment / height;
        Sum leg = about(wall, Joint.KNEE).weights(SHANK).force(layout.pressureX(), 0, -push, 71 * G);
        check(wall, Joint.KNEE, -leg.moment / 2);

        Movement thrust = Exercises.hipThrust();
        Layout lifted = layout(thrust);
        double bench = 0;
        for (Part part : lifted.pieces().all()) {
            bench += part.mass() * G * (lifted.centreX(part.on()) - lifted.pressureX());
        }
        bench += 60 * G * (lifted.jointX(Joint.HIP) - lifted.pressureX());
        bench /= 0 - lifted.pressureX();
        Sum legs = about(thrust, Joint.HIP).weights(LEG).force(lifted.pressureX(), 0, 0, (71 + 60) * G - bench);
        check(thrust, Joint.HIP, legs.moment / 2);

        Movement back = Exercises.backExtension();
        Layout inclined = layout(back);
        double lean = Math.toRadians(65);
        double plate = inclined.jointX(Joint.HIP) + 0.35 * Math.sin(lean) + 0.15 * Math.cos(lean);
        Sum above = about(back, Joint.HIP)
                .weights(List.of(Member.TRUNK))
                .weights(ARM)
                .mass(10, plate);
        check(back, Joint.HIP, -above.moment / 2);
    }

    @Test
    void legMachines() {
        Movement press = Exercises.legPress();
        Layout layout = layout(press);
        double force = (45 + 100) * G * Math.sin(Math.toRadians(45));
        double foot = 0.4 * layout.body().length(Segment.FOOT);
        double heelX = layout.startX(Member.FOOT);
        double heelY = layout.startY(Member.FOOT);
        double half = Math.sqrt(0.5);
        // a sole square to a rail of 45° points its toes up and back
        Sum knee = about(press, Joint.KNEE)
                .weights(SHANK)
                .force(heelX - foot * half, heelY + foot * half, -force * half, -force * half);
        check(press, Joint.KNEE, -knee.moment / 2);

        for (Movement curl : List.of(Exercises.seatedLegCurl(), Exercises.lyingLegCurl())) {
            Layout at = layout(curl);
            double shank = at.lean(Member.SHANK);
            double pad = 20 * G * 0.15 / 0.34;
            double x = at.jointX(Joint.KNEE) - 0.34 * Math.sin(shank);
            double y = at.jointY(Joint.KNEE) - 0.34 * Math.cos(shank);
            Sum below =
                    about(curl, Joint.KNEE).weights(SHANK).force(x, y, pad * Math.cos(shank), -pad * Math.sin(shank));
            check(curl, Joint.KNEE, -below.moment / 2);
        }

        Movement seated = Exercises.seatedCalfRaise();
        Layout calf = layout(seated);
        double pitch = calf.lean(Member.FOOT);
        double ball = 0.74 * calf.body().length(Segment.FOOT);
        double ballX = calf.startX(Member.FOOT) + ball * Math.cos(pitch);
        double block = 40 * G * 0.36;
        for (Member member : LEG) {
            block += calf.pieces().mass(member.ordinal()) * G * (calf.centreX(member) - calf.jointX(Joint.HIP));
        }
        block /= ballX - calf.jointX(Joint.HIP);
        Sum ankle = about(seated, Joint.ANKLE).weights(List.of(Member.FOOT)).force(ballX, 0, 0, block);
        check(seated, Joint.ANKLE, ankle.moment / 2);
    }

    @Test
    void hipsByCableAndOnOneLeg() {
        Movement extension = Exercises.cableHipExtension();
        Layout layout = layout(extension);
        double cuffX = layout.jointX(Joint.KNEE) - 0.36 * Math.sin(layout.lean(Member.SHANK));
        double cuffY = layout.jointY(Joint.KNEE) - 0.36 * Math.cos(layout.lean(Member.SHANK));
        double dx = 0.9 - cuffX;
        double dy = 0.15 - cuffY;
        double length = Math.hypot(dx, dy);
        Sum leg = about(extension, Joint.HIP)
                .weights(LEG)
                .force(cuffX, cuffY, 10 * G * dx / length, 10 * G * dy / length);
        check(extension, Joint.HIP, leg.moment);

        Movement spread = Exercises.hipAbduction();
        check(spread, Joint.HIP, -about(spread, Joint.HIP).weights(LEG).moment);

        Movement cable = Exercises.cableHipAbduction();
        Layout at = layout(cable);
        double x = at.jointX(Joint.KNEE) - 0.36 * Math.sin(at.lean(Member.SHANK));
        double y = at.jointY(Joint.KNEE) - 0.36 * Math.cos(at.lean(Member.SHANK));
        double away = Math.hypot(-1 - x, 0.15 - y);
        Sum pulled =
                about(cable, Joint.HIP).weights(LEG).force(x, y, 5 * G * (-1 - x) / away, 5 * G * (0.15 - y) / away);
        check(cable, Joint.HIP, -pulled.moment);

        // on one leg all weight stands under the foot, at x = 0
        Movement stance = Exercises.singleLegStance();
        Sum standing = about(stance, Joint.HIP).weights(LEG).force(0, 0, 0, 71 * G);
        check(stance, Joint.HIP, -standing.moment);
        Movement carry = Exercises.loadedCarry();
        Sum carrying = about(carry, Joint.HIP).weights(LEG).force(0, 0, 0, (71 + 24) * G);
        check(carry, Joint.HIP, -carrying.moment);
    }

    @Test
    void pressesAndFliesSeenFromTheHead() {
        Movement bench = Exercises.benchPress().outwardForce(newtons(30));
        check(
                bench,
                Joint.SHOULDER,
                -about(bench, Joint.SHOULDER).weights(ARM).grip(20).gripForce(30, 0).moment);
        Movement dumbbells = Exercises.dumbbellBenchPress();
        check(
                dumbbells,
                Joint.SHOULDER,
                -about(dumbbells, Joint.SHOULDER).weights(ARM).grip(16).moment);
        Movement fly = Exercises.fly();
        check(fly, Joint.SHOULDER, -about(fly, Joint.SHOULDER).weights(ARM).grip(8).moment);
        Movement incline = Exercises.inclineFly();
        check(
                incline,
                Joint.SHOULDER,
                -about(incline, Joint.SHOULDER).weights(ARM).grip(8).moment);
        assertEquals(
                Math.cos(Math.toRadians(30)),
                incline.by(ines).posture().moment(Joint.SHOULDER).value().si()
                        / fly.by(ines).posture().moment(Joint.SHOULDER).value().si(),
                1e-12);
        // standing, gravity does not act in this plane
        Movement cable = Exercises.cableFly();
        check(cable, Joint.SHOULDER, -about(cable, Joint.SHOULDER).cable(10 * G, 1.5, -0.3).moment);
    }

    @Test
    void pressesStandingAndDips() {
        Movement press = Exercises.overheadPress();
        check(press, Joint.ELBOW, about(press, Joint.ELBOW).weights(FORE).grip(20).moment / 2);
        Movement dumbbells = Exercises.dumbbellShoulderPress();
        check(
                dumbbells,
                Joint.SHOULDER,
                -about(dumbbells, Joint.SHOULDER).weights(ARM).grip(8).moment);
        // hanging on the hands, balanced over them: the whole weight pushes up at the grip, at x = 0
        for (Movement held : List.of(Exercises.dip(), Exercises.pullUp())) {
            Sum arm =
                    about(held, Joint.ELBOW).weights(FORE).force(0, layout(held).gripY(), 0, 71 * G);
            check(held, Joint.ELBOW, arm.moment / 2);
            assertEquals(0, layout(held).gripX(), 1e-12);
        }
    }

    @Test
    void pushUpsAndPlank() {
        for (Movement raised : List.of(Exercises.pushUpHandsRaised(), Exercises.pushUpFeetRaised())) {
            Layout layout = layout(raised);
            double pitch = layout.lean(Member.FOOT);
            double ball = layout.startX(Member.FOOT) + 0.74 * layout.body().length(Segment.FOOT) * Math.cos(pitch);
            checkPush(raised, layout, ball, layout.jointX(Joint.WRIST) + 0.08, layout.jointY(Joint.WRIST));
        }
        Movement knees = Exercises.pushUpOnKnees();
        Layout layout = layout(knees);
        double hands = 0;
        for (Member member : List.of(Member.THIGH, Member.TRUNK, Member.UPPER_ARM, Member.FOREARM, Member.HAND)) {
            hands += layout.pieces().mass(member.ordinal()) * G * layout.centreX(member);
        }
        for (Member member : SHANK) {
            hands += layout.pieces().mass(member.ordinal()) * G * layout.centreX(member);
        }
        double at = layout.jointX(Joint.WRIST) + 0.08;
        hands /= at;
        check(knees, Joint.ELBOW, about(knees, Joint.ELBOW).weights(FORE).force(at, 0, 0, hands).moment / 2);
        Movement plank = Exercises.plank();
        Layout straight = layout(plank);
        double ball = straight.startX(Member.FOOT)
                + 0.74 * straight.body().length(Segment.FOOT) * Math.cos(straight.lean(Member.FOOT));
        double forearms = straight.jointX(Joint.ELBOW) + 0.05;
        double push = 0;
        for (Part part : straight.pieces().all()) {
            push += part.mass() * G * (straight.centreX(part.on()) - ball);
        }
        push /= forearms - ball;
        Sum above = about(plank, Joint.HIP)
                .weights(List.of(Member.TRUNK))
                .weights(ARM)
                .force(forearms, 0, 0, push);
        check(plank, Joint.HIP, -above.moment / 2);
    }

    private void checkPush(Movement exercise, Layout layout, double ball, double at, double y) {
        double push = 0;
        for (Part part : layout.pieces().all()) {
            push += part.mass() * G * (layout.centreX(part.on()) - ball);
        }
        push /= at - ball;
        Sum arm = about(exercise, Joint.ELBOW).weights(FORE).force(at, y, 0, push);
        check(exercise, Joint.ELBOW, arm.moment / 2);
    }

    @Test
    void raisesAndRowsSeenFromTheFront() {
        for (Movement raise : List.of(Exercises.lateralRaise(), Exercises.lyingLateralRaise())) {
            check(
                    raise,
                    Joint.SHOULDER,
                    -about(raise, Joint.SHOULDER).weights(ARM).grip(5).moment);
        }
        Movement cable = Exercises.cableLateralRaise();
        check(cable, Joint.SHOULDER, -about(cable, Joint.SHOULDER).weights(ARM).cable(6 * G, -0.5, 0.2).moment);
        Movement upright = Exercises.uprightRow();
        check(
                upright,
                Joint.SHOULDER,
                -about(upright, Joint.SHOULDER).weights(ARM).grip(10).moment);
        Movement pulldown = Exercises.pulldown();
        check(
                pulldown,
                Joint.SHOULDER,
                -about(pulldown, Joint.SHOULDER).weights(ARM).gripForce(0, 15 * G).moment);
        // the trunk's upper part is no whole segment: its weight acts where the body's data put it
        Movement bend = Exercises.sideBend();
        Layout layout = layout(bend);
        double lean = layout.lean(Member.TRUNK);
        double trunk = layout.body().body().trunkAboveLowBack().mass();
        double along = layout.body().body().trunkAboveLowBack().centre();
        Sum above = about(bend, Joint.LOW_BACK)
                .weights(BOTH_ARMS)
                .grip(16)
                .mass(trunk, layout.jointX(Joint.LOW_BACK) + along * Math.sin(lean));
        check(bend, Joint.LOW_BACK, -above.moment);
    }

    @Test
    void rowsAndPullsSeenFromTheSide() {
        Movement front = Exercises.frontRaise();
        check(front, Joint.SHOULDER, about(front, Joint.SHOULDER).weights(ARM).grip(10).moment / 2);
        Movement row = Exercises.bentOverRow();
        check(row, Joint.SHOULDER, about(row, Joint.SHOULDER).weights(ARM).grip(30).moment / 2);
        Movement cable = Exercises.cableRow();
        check(cable, Joint.SHOULDER, about(cable, Joint.SHOULDER).weights(ARM).cable(30 * G, 1.5, 0.45).moment / 2);
        Movement straight = Exercises.straightArmPulldown();
        check(
                straight,
                Joint.SHOULDER,
                about(straight, Joint.SHOULDER).weights(ARM).cable(8 * G, 0.8, 2.1).moment / 2);
    }

    @Test
    void curlsAndExtensionsOfTheArm() {
        Movement incline = Exercises.inclineCurl();
        check(incline, Joint.ELBOW, about(incline, Joint.ELBOW).weights(FORE).grip(16).moment / 2);
        Movement pad = Exercises.preacherCurl();
        check(pad, Joint.ELBOW, about(pad, Joint.ELBOW).weights(FORE).grip(20).moment / 2);
        Movement cable = Exercises.cableCurl();
        check(cable, Joint.ELBOW, about(cable, Joint.ELBOW).weights(FORE).cable(15 * G, 0.5, 0.2).moment / 2);
        Movement down = Exercises.pushdown();
        check(down, Joint.ELBOW, about(down, Joint.ELBOW).weights(FORE).cable(15 * G, 0.4, 2.1).moment / 2);
        Movement overhead = Exercises.overheadTricepsExtension();
        check(overhead, Joint.ELBOW, about(overhead, Joint.ELBOW).weights(FORE).grip(10).moment / 2);
        Movement lying = Exercises.lyingTricepsExtension();
        check(lying, Joint.ELBOW, about(lying, Joint.ELBOW).weights(FORE).grip(20).moment / 2);
        Movement wrist = Exercises.wristCurl().wristFlexion(deg(0));
        check(
                wrist,
                Joint.WRIST,
                about(wrist, Joint.WRIST).weights(List.of(Member.HAND)).grip(16).moment / 2);
    }

    @Test
    void crunch() {
        Movement crunch = Exercises.crunch();
        Layout layout = layout(crunch);
        double lean = Math.toRadians(-60);
        double along = layout.body().body().trunkAboveLowBack().centre();
        Sum above = about(crunch, Joint.LOW_BACK)
                .weights(ARM)
                .mass(
                        layout.body().body().trunkAboveLowBack().mass(),
                        layout.jointX(Joint.LOW_BACK) + along * Math.sin(lean));
        check(crunch, Joint.LOW_BACK, -above.moment);
    }

    /** Every movement of the catalogue has its example above. */
    @Test
    void noneIsLeftOut() {
        squatsAndHinges();
        splitSquatAndStepUp();
        wallSquatHipThrustAndBackExtension();
        legMachines();
        hipsByCableAndOnOneLeg();
        pressesAndFliesSeenFromTheHead();
        pressesStandingAndDips();
        pushUpsAndPlank();
        raisesAndRowsSeenFromTheFront();
        rowsAndPullsSeenFromTheSide();
        curlsAndExtensionsOfTheArm();
        crunch();
        for (Exercise<?> exercise : Catalogue.exercises()) {
            assertTrue(!(exercise instanceof Movement) || seen.contains(exercise.name()), exercise.name());
        }
    }
}

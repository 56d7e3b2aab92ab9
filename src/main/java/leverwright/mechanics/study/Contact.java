package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.LeverView;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Moment;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.measure.Unit;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Listing;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * What the surfaces of ankle, knee, hip, shoulder or elbow press on each other with, by one equivalent muscle: contact = net
 * force of the near segment on the far one − force of the muscle on the far one (equilibrium of the far part, derived here).
 *
 * <p>Lines of pull: calf and shin muscles along the shank; patellar tendon at an angle to the shank that falls from 20° ahead
 * of it with the straight knee to 10° behind it at 100°, from memory; hamstrings and hip extensors along the thigh; deltoid at
 * 15° to the upper arm, Giancoli's example; biceps and triceps along the upper arm. The patellar tendon's arm, 42.55, 39.91,
 * 37.73 and 36.18 mm at 0, 20, 40 and 60° of flexion (PMC7547162), gives its force; the effective quadriceps arm gives the
 * muscle's.
 */
final class Contact {
    private static final double[] TENDON_ARMS = {0.04255, 0.03991, 0.03773, 0.03618};
    private static final double TENDON_STEP = Math.toRadians(20);
    private static final double TENDON_END = Math.toRadians(60);
    private static final double TENDON_STRAIGHT = Math.toRadians(20);
    private static final double TENDON_BENT = Math.toRadians(-10);
    private static final double BENT = Math.toRadians(100);
    private static final double DELTOID = Math.toRadians(15);

    private final Joint joint;
    private final double netX;
    private final double netY;
    private final double moment;
    private final double muscle;
    private final double arm;
    private final Vector pull;
    private final Vector face;
    private final Sides sides;
    private final String muscleName;
    private final List<String> notes;

    private Contact(HeldPosture held, Joint joint) {
        this.joint = joint;
        LeverView view = held.leverView(joint);
        LeverView.Muscle equivalent = view.muscle()
                .orElseThrow(() -> new IllegalArgumentException("no muscle arm for the " + view.action()
                        + " is on file, so that the contact force cannot be estimated"));
        Mechanism mechanism = held.mechanism();
        LinkageSolver solved = mechanism.solved();
        Mechanism.JointLink at = mechanism.joint(joint);
        int link = mechanism.linkage().indexOf(at.link());
        netX = solved.forceX(link) / at.divisor();
        netY = solved.forceY(link) / at.divisor();
        moment = Math.abs(Readings.moment(joint).si(held));
        sides = joint.sides();
        int parent = mechanism.linkage().parent(link);
        Vector far = axis(mechanism, link);
        Vector near = axis(mechanism, parent);
        boolean extending = Readings.moment(joint).si(held) >= 0;
        boolean tendon = joint == Joint.KNEE && extending;
        double flexion = tendon ? Readings.flexion(joint).si(held) : 0;
        arm = tendon ? tendonArm(flexion) : equivalent.arm().value().si();
        muscle = moment / arm;
        muscleName = tendon ? "patellar tendon" : equivalent.name();
        pull = pull(joint, extending, flexion, near, far, solved.moment(link));
        face = joint == Joint.ANKLE || joint == Joint.SHOULDER ? far : near;
        notes = notes(view, tendon && flexion > TENDON_END);
    }

    /** The direction of a link, from its nearer end to its farther one. */
    static Vector axis(Mechanism mechanism, int link) {
        double direction = mechanism.configuration().directions().get(link);
        return new Vector(Trigonometry.cosine(direction), Trigonometry.sine(direction));
    }

    static double tendonArm(double flexion) {
        double held = Math.max(0, Math.min(TENDON_END, flexion));
        int k = (int) Math.min(2, Math.floor(held / TENDON_STEP));
        return TENDON_ARMS[k] + (TENDON_ARMS[k + 1] - TENDON_ARMS[k]) * (held / TENDON_STEP - k);
    }

    /** Direction in which the muscle pulls the far part. */
    private static Vector pull(
            Joint joint, boolean extending, double flexion, Vector near, Vector far, double turning) {
        return switch (joint) {
            case ANKLE -> far.times(-1);
            case KNEE -> extending ? tendon(near, flexion) : far.times(-1);
            case HIP -> near.times(-1);
            case SHOULDER -> deltoid(far, turning);
            case ELBOW -> near.times(-1);
            default ->
                throw new IllegalArgumentException("no contact estimate of the " + joint.words()
                        + "; allowed: ankle, knee, hip, shoulder, elbow; for the low back ask for its compression");
        };
    }

    /** Down the shank, and backward by the tendon's angle ahead of it. */
    private static Vector tendon(Vector shank, double flexion) {
        double angle = TENDON_STRAIGHT + (TENDON_BENT - TENDON_STRAIGHT) * Math.max(0, Math.min(1, flexion / BENT));
        Vector forward = new Vector(shank.y(), -shank.x());
        return shank.times(-Trigonometry.cosine(angle)).minus(forward.times(Trigonometry.sine(angle)));
    }

    private static Vector deltoid(Vector arm, double turning) {
        Vector left = new Vector(-arm.y(), arm.x()).times(turning >= 0 ? 1 : -1);
        return arm.times(-Trigonometry.cosine(DELTOID)).plus(left.times(Trigonometry.sine(DELTOID)));
    }

    private double contactX() {
        return netX - muscle * pull.x();
    }

    private double contactY() {
        return netY - muscle * pull.y();
    }

    double total() {
        double x = contactX();
        double y = contactY();
        return Math.sqrt(x * x + y * y);
    }

    double compression() {
        return contactX() * face.x() + contactY() * face.y();
    }

    double shear() {
        return contactX() * face.y() - contactY() * face.x();
    }

    private List<String> notes(LeverView view, boolean beyond) {
        Set<String> all = new LinkedHashSet<>();
        if (beyond) {
            all.add("The patellar tendon's arm was read up to 60° of knee flexion only; beyond, that value is held: an"
                    + " extrapolation.");
        }
        if (joint == Joint.KNEE) {
            all.add("The patellar tendon's direction is from memory.");
        }
        all.add("Contact by one equivalent muscle: muscles that work against it raise the true force above this one.");
        all.addAll(view.notes());
        return List.copyOf(all);
    }

    private enum Part {
        TOTAL("contact force"),
        COMPRESSION("compression"),
        SHEAR("shear");

        private final String words;

        Part(String words) {
            this.words = words;
        }

        double of(Contact contact) {
            return switch (this) {
                case TOTAL -> contact.total();
                case COMPRESSION -> contact.compression();
                case SHEAR -> contact.shear();
            };
        }
    }

    private Answer<Force> answer(Part part) {
        String label = joint.words() + " " + part.words;
        return Answer.of(label, Force.of(part.of(this)), sides, () -> working(label, part))
                .noted(new LinkedHashSet<>(notes));
    }

    private Working working(String label, Part part) {
        List<Step> steps = new ArrayList<>();
        Expression m = Expression.symbol("M", Moment.of(moment), "the moment's size; ask for its own working");
        Expression r = Expression.symbol("r", Length.of(arm), "arm of the " + muscleName);
        Step force = Step.of("F", m.dividedBy(r), Force.of(muscle), muscleName);
        steps.add(force);
        Expression d = Expression.symbol(
                "d", Angle.of(Trigonometry.arcTangent(pull.y(), pull.x())), "direction of its pull on the far part");
        Step x = Step.of(
                "J_x",
                Expression.symbol("R_x", Force.of(netX), "net force of the near segment, forward")
                        .minus(force.result().times(Expression.cosine(d))),
                Force.of(contactX()),
                "contact, forward");
        Step y = Step.of(
                "J_y",
                Expression.symbol("R_y", Force.of(netY), "net force of the near segment, upward")
                        .minus(force.result().times(Expression.sine(d))),
                Force.of(contactY()),
                "contact, upward");
        steps.add(x);
        steps.add(y);
        Expression e =
                Expression.symbol("e", Angle.of(Trigonometry.arcTangent(face.y(), face.x())), "direction of the bone");
        Expression last = switch (part) {
            case TOTAL ->
                Expression.squareRoot(x.result().squared().plus(y.result().squared()));
            case COMPRESSION ->
                x.result().times(Expression.cosine(e)).plus(y.result().times(Expression.sine(e)));
            case SHEAR -> x.result().times(Expression.sine(e)).minus(y.result().times(Expression.cosine(e)));
        };
        steps.add(Step.of("J", last, Force.of(part.of(this)), part.words));
        return Working.of(label + ", " + sides.words(), steps);
    }

    static Reading<Force> force(Joint joint) {
        return reading(joint, Part.TOTAL);
    }

    static Reading<Force> compression(Joint joint) {
        return reading(joint, Part.COMPRESSION);
    }

    static Reading<Force> shear(Joint joint) {
        return reading(joint, Part.SHEAR);
    }

    private static Reading<Force> reading(Joint joint, Part part) {
        return Reading.of(
                joint.words() + " " + part.words,
                Unit.NEWTON,
                joint.sides(),
                held -> part.of(new Contact(held, joint)),
                held -> {
                    Contact contact = new Contact(held, joint);
                    HeldPosture.Span span = held.span(reading(joint, part));
                    return contact.answer(part).between(Force.of(span.low()), Force.of(span.high()));
                });
    }

    static Listing listing(HeldPosture held, Joint joint) {
        Contact contact = new Contact(held, joint);
        List<Answer<?>> answers = new ArrayList<>();
        answers.add(held.moment(joint));
        answers.add(held.muscleForce(joint));
        if (contact.muscleName.equals("patellar tendon")) {
            answers.add(Answer.of(
                    "force of the patellar tendon",
                    Force.of(contact.muscle),
                    contact.sides,
                    () -> Working.of(
                            "force of the patellar tendon, per side",
                            List.of(Step.of(
                                    "F",
                                    Expression.symbol("M", Moment.of(contact.moment), "the moment's size")
                                            .dividedBy(Expression.symbol(
                                                    "r", Length.of(contact.arm), "patellar tendon's arm, PMC7547162")),
                                    Force.of(contact.muscle),
                                    "by the tendon's own arm")))));
        }
        answers.add(compression(joint).of(held));
        answers.add(shear(joint).of(held));
        answers.add(force(joint).of(held));
        return Listing.of("Contact at the " + joint.words() + ": " + held.performance(), answers, contact.notes);
    }
}

package leverwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Mechanism;
import leverwright.mechanics.exercise.Plane;
import leverwright.mechanics.exercise.Readings;
import leverwright.mechanics.measure.Force;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Ratio;
import leverwright.mechanics.measure.Sides;
import leverwright.mechanics.muscle.Axis;
import leverwright.mechanics.muscle.Muscle;
import leverwright.mechanics.muscle.MuscleForces;
import leverwright.mechanics.muscle.MuscleGroup;
import leverwright.mechanics.muscle.MuscleModel;
import leverwright.mechanics.muscle.MuscleState;
import leverwright.mechanics.muscle.Muscles;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.working.Answer;
import leverwright.mechanics.working.Expression;
import leverwright.mechanics.working.Step;
import leverwright.mechanics.working.Working;

/**
 * What the low back's disc presses with, what ankle, knee or hip press together with along the bone below, shoulder and elbow along the upper arm, with the shared
 * muscle forces: the net force along that bone and the pull of every muscle across the joint, all taken along it (assumed). The quadriceps presses by its tendon:
 * force × effective arm over the tendon's arm, 42.55, 39.91, 37.73, 36.18 mm at 0, 20, 40, 60° (PMC7547162), held beyond.
 */
final class MuscleContact {
    private static final double[] TENDON = {0.04255, 0.03991, 0.03773, 0.03618};
    private static final double STEP = Math.PI / 9;
    private static final double PARALLEL = 1e-9;
    private static final String NO_ADVICE =
            "Joint forces: not for rehabilitation; after injury or surgery ask a clinician. A model's estimate.";

    private MuscleContact() {}

    private static double tendonArm(double flexion) {
        double place = Math.max(0, Math.min(TENDON.length - 1, flexion / STEP));
        int k = (int) Math.min(TENDON.length - 2, Math.floor(place));
        return TENDON[k] + (TENDON[k + 1] - TENDON[k]) * (place - k);
    }

    private static Segment bone(Joint joint) {
        return switch (joint) {
            case ANKLE, KNEE -> Segment.SHANK;
            case HIP -> Segment.THIGH;
            case ELBOW, SHOULDER -> Segment.UPPER_ARM;
            default ->
                throw new IllegalArgumentException(
                        "contact with shared muscles is computed for ankle, knee, hip, low back, shoulder and elbow, not for the "
                                + joint.words() + "; ask contact(held, joint) there");
        };
    }

    private static Muscles across(Joint joint) {
        return switch (joint) {
            case ANKLE, KNEE -> MuscleGroup.CALF;
            case HIP -> MuscleGroup.HIP_EXTENSORS;
            default -> MuscleGroup.ELBOW_FLEXORS;
        };
    }

    /**
     * The net force that presses the joint together along a bone, all sides of the cut together. The solved force is that of the
     * link nearer to the linkage's root on the farther one, so it presses where it points along the bone away from the root.
     */
    private static double pressing(HeldPosture held, Joint joint) {
        Mechanism mechanism = held.mechanism();
        LinkageSolver solved = mechanism.solved();
        int link = mechanism.linkage().indexOf(mechanism.joint(joint).link());
        double lean = Readings.lean(bone(joint)).si(held);
        Vector parent = Contact.axis(mechanism, mechanism.linkage().parent(link));
        double across = parent.x() * Trigonometry.cosine(lean) - parent.y() * Trigonometry.sine(lean);
        Vector along = Math.abs(across) < PARALLEL ? parent : Contact.axis(mechanism, link);
        return solved.forceX(link) * along.x() + solved.forceY(link) * along.y();
    }

    static Answer<Force> of(HeldPosture held, MuscleModel model, Joint joint) {
        if (held.plane() != Plane.SAGITTAL) {
            throw new IllegalArgumentException(
                    "contact with shared muscles is computed for exercises seen from the side;" + " leave it out here");
        }
        if (joint == Joint.LOW_BACK) {
            return lowBack(held, model);
        }
        double net = pressing(held, joint) / held.mechanism().joint(joint).divisor();
        Axis axis = Axis.valueOf(joint.name());
        MuscleForces made = Shares.of(held, model, across(joint));
        MuscleForces forces = made.asked();
        MuscleModel own = Shares.own(held, model);
        List<Step> steps = new ArrayList<>();
        List<Expression> terms = new ArrayList<>();
        terms.add(Expression.symbol(
                "R",
                Force.of(net),
                "net force that presses the joint together, along the "
                        + bone(joint).words()));
        double sum = net;
        for (MuscleState state : forces.states()) {
            double force = forces.force(state.muscle());
            if (!state.arms().containsKey(axis) || force <= 0) {
                continue;
            }
            String name = state.muscle().name().toLowerCase(Locale.ROOT);
            Expression pull = Expression.symbol("F_" + name, Force.of(force), "shared; ask for its own working");
            if (joint == Joint.KNEE && MuscleGroup.QUADRICEPS.members().contains(state.muscle())) {
                double size = held.performance().lifter().stature().si() / 1.75;
                double tendon = tendonArm(Readings.flexion(Joint.KNEE).si(held)) * size;
                double effective = state.arms().getOrDefault(axis, 0.0);
                pull = pull.times(Expression.symbol("r_quadriceps", Length.of(effective), "effective arm")
                        .dividedBy(Expression.symbol("r_tendon", Length.of(tendon), "tendon's arm, PMC7547162")));
                force = force * (effective / tendon);
            }
            terms.add(pull);
            sum += force;
        }
        Force value = Force.of(sum);
        List<String> notes = new ArrayList<>();
        Shares.beyond(made).ifPresent(notes::add);
        notes.add(Shares.ruleNote(own));
        notes.add(
                "Muscles are taken to pull along the bone, since no published lines of pull were read; co-contraction "
                        + Ratio.of(own.coContraction().si()) + ".");
        notes.add(NO_ADVICE);
        String label = joint.words() + " compression with shared muscles";
        steps.add(Step.of(
                "C", Expression.sum(terms), value, "along the " + bone(joint).words() + ", per side"));
        return Answer.of(label, value, Sides.PER_SIDE, Working.of(label, steps)).noted(notes);
    }

    /** Across the lowest disc: the net force, extensors behind its normal as inclined as published, abdominals along it. */
    private static Answer<Force> lowBack(HeldPosture held, MuscleModel model) {
        MuscleForces made = Shares.of(held, model, Muscle.ERECTOR_SPINAE);
        MuscleForces forces = made.asked();
        Spine spine = Spine.standard();
        List<Expression> terms = new ArrayList<>();
        double net = spine.shared(held, 0, 0).compression();
        terms.add(Expression.symbol("R", Force.of(net), "net force across the disc; ask spine() for its own working"));
        double extensors = 0;
        double abdominals = 0;
        for (MuscleState state : forces.states()) {
            double force = forces.force(state.muscle());
            if (force <= 0) {
                continue;
            }
            Expression pull = Expression.symbol(
                    "F_" + state.muscle().name().toLowerCase(Locale.ROOT),
                    Force.of(force),
                    "shared, both sides; ask for its own working");
            boolean extending = state.arms().getOrDefault(Axis.LOW_BACK, 0.0) > 0;
            extensors += extending ? force : 0;
            abdominals += extending ? 0 : force;
            terms.add(
                    extending
                            ? pull.times(Expression.cosine(Expression.symbol(
                                    "i", spine.inclination(), "behind the disc's normal, Cholewicki 1991")))
                            : pull);
        }
        Force value = Force.of(spine.shared(held, extensors, abdominals).compression());
        List<String> notes = new ArrayList<>();
        Shares.beyond(made).ifPresent(notes::add);
        notes.add(Shares.ruleNote(Shares.own(held, model)));
        notes.add(
                "Disc tilt upright 35° from memory, following the trunk's lean; abdominal pressure 0, lumbar flexion none; compression is"
                        + " no injury threshold. Compare spine(), by one equivalent muscle of 6 cm.");
        notes.add(NO_ADVICE);
        String label = "low back compression with shared muscles";
        return Answer.of(
                        label,
                        value,
                        Sides.TOTAL,
                        Working.of(
                                label,
                                List.of(Step.of("C", Expression.sum(terms), value, "across the disc, in total"))))
                .noted(notes);
    }
}

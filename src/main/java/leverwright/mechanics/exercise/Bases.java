package leverwright.mechanics.exercise;

import static leverwright.mechanics.measure.Measures.deg;

import java.util.List;
import java.util.Optional;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Measures;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.working.Sketch;
import org.jspecify.annotations.Nullable;

/** What carries the body of a movement. */
final class Bases {
    private static final String STANDS =
            "Two of torso lean, shank lean, thigh above level and knee flexion are set; balance"
                    + " finds what is left, so that the pressure lies at the chosen place of the foot. Set three, and the posture is"
                    + " held as set and the pressure falls where it falls.";
    private static final String BESIDE =
            "Straight legs stand on the feet; moments about one foot give what the other one carries.";
    private static final double FLOOR = 0.6;

    private Bases() {}

    static Movement standing(Movement movement) {
        if (movement.plan().plane == Plane.FRONTAL) {
            return standingSideways(movement);
        }
        if (movement.plan().plane == Plane.TRANSVERSE) {
            return seenFromTheHead(movement, false);
        }
        return standing(movement, Knobs.TORSO_LEAN, Knobs.KNEE_FLEXION)
                .knob(Knobs.TORSO_LEAN, deg(0), "upright")
                .knob(Knobs.KNEE_FLEXION, deg(0), "straight knees")
                .knob(Knobs.THIGH_ABOVE_LEVEL, deg(90), "upright")
                .knob(Knobs.SHANK_LEAN, deg(0), "upright");
    }

    static Movement standing(Movement movement, Knob<Angle> first, Knob<Angle> second) {
        return stanceKnobs(movement, List.of(first, second))
                .change(plan -> {
                    plan.standing = true;
                    plan.held = Member.FOOT.bit();
                    arms(plan);
                })
                .carriedBy("both feet on the floor")
                .says(STANDS);
    }

    private static Movement stanceKnobs(Movement movement, List<Knob<Angle>> preferred) {
        Movement knobs = movement.change(plan -> plan.preferred = preferred);
        List<Knob<?>> needed = List.of(
                Knobs.THIGH_ABOVE_LEVEL,
                Knobs.TORSO_LEAN,
                Knobs.SHANK_LEAN,
                Knobs.KNEE_FLEXION,
                Knobs.PRESSURE,
                Knobs.HEEL_HEIGHT);
        for (Knob<?> knob : needed) {
            knobs = knobs.settings().has(knob) ? knobs : knobs.knob(knob);
        }
        return knobs;
    }

    static Movement onOneLeg(Movement movement, Knob<Angle> first, Knob<Angle> second) {
        return stanceKnobs(movement, List.of(first, second))
                .change(plan -> {
                    plan.standing = true;
                    plan.parting = Parting.LEGS;
                    plan.held = Member.FOOT.bit();
                    arms(plan);
                    put(plan, Member.OTHER_THIGH, Member.TRUNK, "in line with the trunk");
                    put(plan, Member.OTHER_SHANK, Member.OTHER_THIGH, "in line with the thigh");
                    put(plan, Member.OTHER_FOOT, Member.OTHER_SHANK, "square to the shank");
                })
                .carriedBy("one foot on the floor")
                .says(STANDS);
    }

    private static void put(Plan plan, Member member, Member like, String words) {
        plan.leans.put(member, LeanRule.from(like, 1, null, 0, 0, words));
    }

    /** The rules of arms that hang, forearm and hand in line. */
    static void arms(Plan plan) {
        plan.leans.put(Member.UPPER_ARM, LeanRule.fixed(deg(0)));
        put(plan, Member.FOREARM, Member.UPPER_ARM, "in line with the upper arm");
        put(plan, Member.HAND, Member.FOREARM, "in line with the forearm");
        if (plan.parting.isSplit(Segment.UPPER_ARM)) {
            List.of(Member.UPPER_ARM, Member.FOREARM, Member.HAND).forEach(member -> mirror(plan, member));
        }
    }

    /** The arms hang plumb whatever the trunk does. */
    static void plumbArms(Plan plan) {
        for (Member member : List.of(Member.UPPER_ARM, Member.FOREARM, Member.HAND)) {
            plan.leans.put(member, LeanRule.fixed(deg(0)));
            mirror(plan, member);
        }
    }

    private static void mirror(Plan plan, Member member) {
        LeanRule rule = plan.leans.get(member);
        if (rule != null) {
            plan.leans.put(member.twin(), plan.plane == Plane.SAGITTAL ? rule.copied() : rule.mirrored());
        }
    }

    /** The rules of all segments of a body that is held somewhere. */
    static void all(Plan plan, Angle trunk, Angle thigh, Angle shank, Angle foot) {
        plan.leans.put(Member.TRUNK, LeanRule.fixed(trunk));
        plan.leans.put(Member.THIGH, LeanRule.fixed(thigh));
        plan.leans.put(Member.SHANK, LeanRule.fixed(shank));
        plan.leans.put(Member.FOOT, LeanRule.fixed(foot));
        if (plan.parting.isSplit(Segment.THIGH)) {
            List.of(Member.THIGH, Member.SHANK, Member.FOOT).forEach(member -> mirror(plan, member));
        }
        arms(plan);
    }

    static Movement seated(Movement movement) {
        return movement.knob(SetupKnobs.SEAT_HEIGHT)
                .change(plan -> {
                    plan.anchor = Anchor.HIP;
                    plan.anchorY = work -> work.si(SetupKnobs.SEAT_HEIGHT);
                    plan.anchorWords = "on the seat, from which x counts";
                    plan.held = Member.TRUNK.bit() | Member.THIGH.bit() | Member.FOOT.bit();
                    all(plan, deg(0), deg(-90), deg(0), deg(0));
                })
                .show(work -> bench(work, -0.2, 0.35))
                .carriedBy("seat and backrest hold thighs and trunk, the floor the feet");
    }

    static Movement lying(Movement movement, Angle trunk) {
        return movement.knob(SetupKnobs.SEAT_HEIGHT, Measures.cm(55), "a bench (from memory)")
                .change(plan -> {
                    plan.anchor = Anchor.HIP;
                    plan.anchorY = work -> work.si(SetupKnobs.SEAT_HEIGHT);
                    plan.anchorWords = "on the bench, from which x counts";
                    plan.held = Member.TRUNK.bit() | Member.THIGH.bit() | Member.SHANK.bit();
                    all(plan, trunk, trunk, trunk, trunk);
                })
                .show(work -> bench(work, -FLOOR, FLOOR))
                .carriedBy("a bench holds trunk and thighs");
    }

    /** A bench below the hips, from x to x. */
    static void bench(Work work, double from, double to) {
        double y = work.layout().startY(Member.TRUNK) - BELOW;
        double x = work.layout().startX(Member.TRUNK);
        work.layout().show(new Sketch.GroundLine(new Sketch.Point(x + from, y), new Sketch.Point(x + to, y)));
    }

    private static final double BELOW = 0.1;

    /** Two feet apart, seen from the front: moments about one foot give the other one's share. */
    private static Movement standingSideways(Movement movement) {
        return sideways(movement)
                .change(plan -> {
                    plan.anchor = Anchor.HEEL;
                    plan.anchorX = work -> work.si(SetupKnobs.STANCE_WIDTH) / 2;
                    plan.anchorY = Bases::heelHeight;
                    plan.held = Member.FOOT.bit();
                    all(plan, deg(0), deg(0), deg(0), deg(0));
                    LeanRule leg = LeanRule.worked(Bases::legLean, "follows: straight legs from the hips to the feet");
                    plan.leans.put(Member.THIGH, leg);
                    put(plan, Member.SHANK, Member.THIGH, "in line with the thigh: straight legs");
                    mirror(plan, Member.THIGH);
                    mirror(plan, Member.SHANK);
                })
                .knob(SetupKnobs.STANCE_WIDTH)
                .contact(new Contact(
                        "other sole",
                        Spot.onSole(Member.OTHER_FOOT),
                        new Pull.Fixed(deg(90).si()),
                        new Pivot.On(Spot.onSole(Member.FOOT), "sole"),
                        -1,
                        SetupKnobs.FLOOR_FORCE,
                        Knobs.FRICTION,
                        "0 by default, feet that press straight down."))
                .show(work -> floor(work, 0))
                .carriedBy("both feet on the floor, apart")
                .says(BESIDE);
    }

    /** A pelvis that tilts with the trunk lifts one heel, so that the other one stands on the floor. */
    private static double heelHeight(Work work) {
        double hips = work.si(SetupKnobs.HIP_SPACING)
                * work.layout().body().lifter().stature().si();
        return Math.max(0, -hips * work.layout().sine(Member.TRUNK));
    }

    /** The lean of a straight leg seen from the front, from its foot to its hip; outwards of the hip is negative. */
    private static double legLean(Work work) {
        Skeleton body = work.layout().body();
        double hips = work.si(SetupKnobs.HIP_SPACING) * body.lifter().stature().si() / 2;
        double leg = body.length(Segment.THIGH) + body.length(Segment.SHANK);
        double out = work.si(SetupKnobs.STANCE_WIDTH) / 2 - hips;
        if (Math.abs(out) >= leg) {
            throw new ImpossibleSetting("the feet are " + Measures.m(2 * (out + hips)) + " apart, but the legs are "
                    + Measures.m(leg) + " long; set the stance narrower");
        }
        return -Trigonometry.arcSine(out / leg);
    }

    static Sketch.Shape line(double from, double to, double y) {
        return new Sketch.GroundLine(new Sketch.Point(from, y), new Sketch.Point(to, y));
    }

    static void floor(Work work, double y) {
        work.layout().show(new Sketch.GroundLine(new Sketch.Point(-FLOOR, y), new Sketch.Point(FLOOR, y)));
    }

    /**
     * Both hands hold bars and carry the whole body; the upper arms lean as balance over or under the hands asks.
     *
     * @param height of the grip, m
     * @param words where the hands are, for print
     * @param least smallest lean of the upper arms that is sought
     * @param most greatest lean of the upper arms that is sought
     * @param where the weight is to lie, seen from the hands: over or under them
     */
    static void carriedByHands(Plan plan, double height, String words, Angle least, Angle most, String where) {
        plan.anchor = Anchor.GRIP;
        plan.anchorY = work -> height;
        plan.anchorWords = words;
        plan.held = Member.HAND.bit();
        plan.search = new Search(
                least.si(),
                most.si(),
                6,
                new Search.Balanced(new Pivot.On(Spot.grip(Member.HAND), "grip"), "grip"),
                "no lean of the upper arms brings the body's weight " + where
                        + " the hands; set the torso's lean otherwise");
    }

    /** A weight vest high on the trunk, with its knob. */
    static Movement vest(Movement movement) {
        return movement.knob(SetupKnobs.VEST).add(Hung.vest());
    }

    /** The frontal plane with both sides apart. */
    static Movement sideways(Movement movement) {
        return movement.knob(SetupKnobs.HIP_SPACING)
                .knob(SetupKnobs.SHOULDER_SPACING)
                .change(plan -> {
                    plan.plane = Plane.FRONTAL;
                    plan.parting = Parting.LIMBS;
                    plan.hips = SetupKnobs.HIP_SPACING;
                    plan.shoulders = SetupKnobs.SHOULDER_SPACING;
                });
    }

    /** Arms seen from the head: on a bench with gravity in the plane, or standing with gravity square to it. */
    static Movement seenFromTheHead(Movement movement, boolean onBench) {
        return movement.knob(SetupKnobs.SHOULDER_SPACING)
                .knob(SetupKnobs.HIP_SPACING)
                .change(plan -> {
                    plan.plane = Plane.TRANSVERSE;
                    plan.parting = Parting.ARMS_ALONE;
                    plan.hips = SetupKnobs.HIP_SPACING;
                    plan.shoulders = SetupKnobs.SHOULDER_SPACING;
                    plan.gravity = onBench ? Plan.Gravity.WHOLE : Plan.Gravity.NONE;
                    plan.anchor = Anchor.HIP;
                    plan.anchorWords = "from which all places count";
                    plan.held = Member.TRUNK.bit();
                    plan.leans.put(Member.TRUNK, LeanRule.fixed(deg(0)));
                    arms(plan);
                })
                .carriedBy(
                        onBench
                                ? "a bench holds the trunk"
                                : "the feet and the trunk hold the shoulders in their place")
                .assumes("the arms move in the plane square to the trunk; what holds the trunk is not modelled");
    }

    static Member beyond(Joint joint) {
        return switch (joint) {
            case ANKLE -> Member.FOOT;
            case KNEE -> Member.SHANK;
            case HIP -> Member.THIGH;
            case SHOULDER -> Member.UPPER_ARM;
            case ELBOW -> Member.FOREARM;
            case WRIST -> Member.HAND;
            case LOW_BACK, NECK ->
                throw new IllegalArgumentException("the " + joint.words()
                        + " does not bend in this model: the trunk is straight from hip to head; lean the trunk");
        };
    }

    /** The rule by which the segment beyond a joint leans. */
    static LeanRule bend(Plan plan, Joint joint, @Nullable Knob<Angle> knob, double fixed) {
        int sense = joint == Joint.ELBOW ? plan.elbowTurn : 1;
        return switch (joint) {
            case KNEE -> LeanRule.from(Member.THIGH, 1, knob, 1, fixed, "lean of the thigh plus knee flexion");
            case ANKLE -> LeanRule.from(Member.SHANK, 1, knob, -1, -fixed, "square to the shank, less dorsiflexion");
            case HIP ->
                plan.plane == Plane.FRONTAL
                        ? LeanRule.from(Member.TRUNK, 1, knob, -1, -fixed, "lean of the trunk less abduction")
                        : LeanRule.from(Member.TRUNK, 1, knob, -1, -fixed, "lean of the trunk less hip flexion");
            case SHOULDER -> LeanRule.from(Member.TRUNK, -1, knob, 1, fixed, "shoulder's angle less lean of the trunk");
            case ELBOW ->
                LeanRule.from(
                        Member.UPPER_ARM, 1, knob, sense, sense * fixed, "lean of the upper arm plus elbow flexion");
            case WRIST -> {
                int palm = plan.palmsBack ? -1 : 1;
                yield LeanRule.from(
                        Member.FOREARM, 1, knob, palm, palm * fixed, "lean of the forearm plus wrist flexion");
            }
            case LOW_BACK, NECK -> throw new IllegalArgumentException("the " + joint.words() + " does not bend");
        };
    }

    static Optional<Drawing.Moved> moved(Segment segment) {
        return switch (segment) {
            case TRUNK -> Optional.of(Drawing.Moved.SHOULDER);
            case UPPER_ARM -> Optional.of(Drawing.Moved.ELBOW);
            case FOREARM -> Optional.of(Drawing.Moved.WRIST);
            case HAND -> Optional.of(Drawing.Moved.BAR);
            case SHANK -> Optional.of(Drawing.Moved.ANKLE);
            case THIGH -> Optional.of(Drawing.Moved.KNEE);
            case FOOT -> Optional.empty();
        };
    }
}

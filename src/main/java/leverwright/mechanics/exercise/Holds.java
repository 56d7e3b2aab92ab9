package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.numeric.Trigonometry;

/** What a movement holds or is loaded with. */
final class Holds {
    private Holds() {}

    static Movement barbellInHands(Movement movement) {
        Movement knobs = movement.knob(Knobs.BAR);
        if (!movement.plan().parting.isSplit(Segment.UPPER_ARM)) {
            return knobs.add(new Hung("bar", Spot.grip(Member.HAND), Knobs.BAR, 1));
        }
        return knobs.add(new Hung("bar", Spot.grip(Member.HAND), Knobs.BAR, 0.5))
                .add(new Hung("bar other half", Spot.grip(Member.OTHER_HAND), Knobs.BAR, 0.5));
    }

    static Movement dumbbellsInHands(Movement movement) {
        Movement knobs = movement.knob(Knobs.DUMBBELL);
        if (!movement.plan().parting.isSplit(Segment.UPPER_ARM)) {
            return knobs.add(new Hung("dumbbells", Spot.grip(Member.HAND), Knobs.DUMBBELL, 2));
        }
        return knobs.add(new Hung("dumbbell", Spot.grip(Member.HAND), Knobs.DUMBBELL, 1))
                .add(new Hung("other dumbbell", Spot.grip(Member.OTHER_HAND), Knobs.DUMBBELL, 1));
    }

    static Movement dumbbellInOneHand(Movement movement) {
        return movement.knob(Knobs.DUMBBELL).add(new Hung("dumbbell", Spot.grip(Member.HAND), Knobs.DUMBBELL, 1));
    }

    static Movement barbellOnShoulders(Movement movement, Length above, Length behind) {
        return movement.knob(Knobs.BAR)
                .knob(Knobs.BAR_HEIGHT_ON_TRUNK, above, "where this exercise puts the bar (from memory)")
                .knob(Knobs.BAR_BEHIND_TRUNK, behind, "where this exercise puts the bar (from memory)")
                .add(new Hung(
                        "bar", Spot.onShoulders(Knobs.BAR_HEIGHT_ON_TRUNK, Knobs.BAR_BEHIND_TRUNK), Knobs.BAR, 1));
    }

    /** The arms at a bar that lies on the shoulders: upper arms at an angle to the trunk, forearms pointing to the bar. */
    static Movement forearmsToTheBar(Movement movement, Angle shoulder) {
        Spot bar = Spot.onShoulders(Knobs.BAR_HEIGHT_ON_TRUNK, Knobs.BAR_BEHIND_TRUNK);
        return movement.bend(Joint.SHOULDER, shoulder)
                .rule(Member.FOREARM, LeanRule.worked(work -> towards(work, bar), "from the elbow towards the bar"));
    }

    /** The lean of a forearm that points to a place on the trunk. */
    private static double towards(Work work, Spot place) {
        Layout layout = work.layout();
        double length = layout.body().length(Segment.UPPER_ARM);
        double elbowX = layout.alongX(Member.TRUNK, layout.trunkLength()) + length * layout.sine(Member.UPPER_ARM);
        double elbowY = layout.alongY(Member.TRUNK, layout.trunkLength()) - length * layout.cosine(Member.UPPER_ARM);
        return Trigonometry.arcTangent(place.x(work) - elbowX, elbowY - place.y(work));
    }

    /** A cable; seen from the front or from the head one for each side, each with half of the stack, unless one alone is asked for. */
    static Movement cable(Movement movement, String name, Spot at, Length first, Length second) {
        boolean both = movement.plan().parting.isSplit(at.on().segment()) && movement.plan().plane != Plane.SAGITTAL;
        Movement one = oneCable(movement, name, at, first, second, both ? 2 : 1);
        if (!both) {
            return one;
        }
        Spot twin = new Spot(
                at.on().twin(), at.from(), at.along(), at.fixedAlong(), at.across(), at.acrossSign(), at.fixedAcross());
        Pull.Pulley pulley = pulley(movement.plan().plane, true);
        return one.add(new Pull("other " + name, twin, new Sizes.Stack(Knobs.STACK, 2), pulley));
    }

    static Movement oneCable(Movement movement, String name, Spot at, Length first, Length second, int parts) {
        Plane plane = movement.plan().plane;
        return movement.knob(Knobs.STACK)
                .knob(horizontal(plane), first, "where this exercise has it (from memory): measure it")
                .knob(vertical(plane), second, "where this exercise has it (from memory): measure it")
                .knob(SetupKnobs.PULL_DIRECTION)
                .add(new Pull(name, at, new Sizes.Stack(Knobs.STACK, parts), pulley(plane, false)));
    }

    private static Knob<Length> horizontal(Plane plane) {
        return plane == Plane.SAGITTAL ? SetupKnobs.PULLEY_AHEAD : SetupKnobs.PULLEY_ASIDE;
    }

    private static Knob<Length> vertical(Plane plane) {
        return plane == Plane.TRANSVERSE ? SetupKnobs.PULLEY_AHEAD : SetupKnobs.PULLEY_HEIGHT;
    }

    private static Pull.Pulley pulley(Plane plane, boolean mirrored) {
        return new Pull.Pulley(horizontal(plane), vertical(plane), SetupKnobs.PULL_DIRECTION, mirrored);
    }

    /** A machine's pad on a segment, square to it: stack times the wheel's arm over the pad's distance. */
    static Movement pad(Movement movement, Spot at, int sense) {
        return movement.knob(Knobs.STACK)
                .knob(Knobs.WHEEL_ARM)
                .knob(Knobs.PAD_FORCE)
                .add(new Pull("pad", at, new Sizes.Wheel(), new Pull.Square(at.on(), sense)));
    }

    static Movement force(Movement movement, String name, Spot at) {
        return movement.knob(SetupKnobs.PULL)
                .knob(SetupKnobs.PULL_DIRECTION)
                .add(new Pull(
                        name, at, new Sizes.Given(SetupKnobs.PULL, 1), new Pull.ByKnob(SetupKnobs.PULL_DIRECTION, 0)));
    }
}

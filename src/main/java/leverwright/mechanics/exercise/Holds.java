package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Length;

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

    static Movement cable(Movement movement, String name, Spot at, Length ahead, Length height) {
        Movement knobs = movement.knob(Knobs.STACK)
                .knob(SetupKnobs.PULLEY_AHEAD, ahead, "where this exercise has it (from memory): measure it")
                .knob(SetupKnobs.PULLEY_HEIGHT, height, "where this exercise has it (from memory): measure it")
                .knob(SetupKnobs.PULL_DIRECTION);
        boolean both = movement.plan().parting.isSplit(at.on().segment()) && movement.plan().plane != Plane.SAGITTAL;
        Pull one = new Pull(name, at, new Sizes.Stack(Knobs.STACK, both ? 2 : 1), pulley(false));
        if (!both) {
            return knobs.add(one);
        }
        Spot twin = new Spot(
                at.on().twin(), at.from(), at.along(), at.fixedAlong(), at.across(), at.acrossSign(), at.fixedAcross());
        return knobs.add(one).add(new Pull("other " + name, twin, new Sizes.Stack(Knobs.STACK, 2), pulley(true)));
    }

    private static Pull.Pulley pulley(boolean mirrored) {
        return new Pull.Pulley(SetupKnobs.PULLEY_AHEAD, SetupKnobs.PULLEY_HEIGHT, SetupKnobs.PULL_DIRECTION, mirrored);
    }

    static Movement force(Movement movement, String name, Spot at) {
        return movement.knob(SetupKnobs.PULL)
                .knob(SetupKnobs.PULL_DIRECTION)
                .add(new Pull(
                        name,
                        at,
                        new Sizes.Given(SetupKnobs.PULL, 1),
                        new Pull.ByKnob(SetupKnobs.PULL_DIRECTION, false)));
    }
}

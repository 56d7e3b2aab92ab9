package leverwright.mechanics.exercise;

import java.util.Locale;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.measure.Force;

/** Between which free forces a movement's second contact, and the feet where they are the first one, push without sliding. */
final class FrictionHolds {
    private final Movement movement;
    private final Contact contact;
    private final Skeleton body;

    private FrictionHolds(Movement movement, Contact contact, Lifter lifter) {
        this.movement = movement;
        this.contact = contact;
        this.body = new Skeleton(lifter);
    }

    /** Returns the movement with all those forces as the band of its free force. */
    static Movement of(Movement movement, Lifter lifter) {
        for (LoadRule rule : movement.plan().loads) {
            if (rule instanceof Contact contact) {
                return new FrictionHolds(movement, contact, lifter).band();
            }
        }
        throw new IllegalArgumentException("the " + movement.name().toLowerCase(Locale.ROOT)
                + " has no second contact whose force along a surface would be free");
    }

    /** What could slide or lift changes evenly with the free force, so that two places give the ends. */
    private Movement band() {
        double[] none = spare(0);
        double[] unit = spare(1);
        double least = contact.free().least().si();
        double greatest = contact.free().most().si();
        for (int k = 0; k < none.length; k++) {
            double slope = unit[k] - none[k];
            double end = -none[k] / slope;
            if (slope > 0) {
                least = Math.max(least, end);
            } else if (slope < 0) {
                greatest = Math.min(greatest, end);
            } else if (none[k] < 0) {
                least = Double.POSITIVE_INFINITY;
            }
        }
        if (!(least <= greatest)) {
            throw new ImpossibleSetting(
                    "no force along the " + contact.name() + " lets both contacts push without sliding in"
                            + " this posture; set more friction or another posture");
        }
        return movement.with(contact.free(), new Force((least + greatest) / 2, (greatest - least) / 2));
    }

    /** What friction could still give in both directions, and how hard each contact pushes, N. */
    private double[] spare(double free) {
        Movement at = movement.with(contact.free(), Force.of(free));
        Layout layout = at.arrange(body);
        Work work = new Work(layout, at.settings(), false);
        int index = movement.plan().loads.indexOf(contact);
        double push = contact.pushSi(work, layout.loads().get(index));
        double friction = work.si(contact.friction());
        boolean onFeet = (movement.plan().held & Member.FOOT.bit()) != 0 && !(contact.about() instanceof Pivot.At);
        if (!onFeet) {
            return new double[] {friction * push - free, friction * push + free, push};
        }
        double ground = HandGround.reactionSi(layout);
        double forward = HandGround.forwardSi(layout);
        return new double[] {
            friction * push - free,
            friction * push + free,
            push,
            friction * ground - forward,
            friction * ground + forward,
            ground
        };
    }
}

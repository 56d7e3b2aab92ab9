package leverwright.mechanics.exercise;

import java.util.function.DoubleSupplier;
import leverwright.mechanics.body.Body;
import leverwright.mechanics.body.BodySegment;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Landmark;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Segment;
import org.jspecify.annotations.Nullable;

/**
 * A lifter's body as an exercise lays it out: plain numbers by segment index, both sides together, mass centres from the end
 * nearer the feet (for the arms: nearer the trunk), which turns shank and thigh round.
 */
final class Skeleton {
    private final Lifter lifter;
    private final Body body;
    private final double[] lengths = new double[Layout.SEGMENTS.size()];
    private final double[] masses = new double[Layout.SEGMENTS.size()];
    private final double[] centres = new double[Layout.SEGMENTS.size()];
    private final @Nullable Pieces[] pieces = new Pieces[Parting.COUNT];
    private volatile @Nullable Remembered memory;
    private final double footCentreAcross;
    private final double ankleAlong;
    private final double ankleAcross;
    private final double gripAlong;

    Skeleton(Lifter lifter) {
        this.lifter = lifter;
        this.body = lifter.body();
        for (Segment segment : Layout.SEGMENTS) {
            BodySegment part = body.segment(segment);
            int k = segment.ordinal();
            lengths[k] = part.length();
            masses[k] = part.mass();
            centres[k] = isTurned(segment) ? part.length() - part.centre() : part.centre();
        }
        footCentreAcross = body.segment(Segment.FOOT).across();
        ankleAlong = body.place(Landmark.ANKLE_FROM_HEEL).si();
        ankleAcross = body.place(Landmark.ANKLE_HEIGHT).si();
        gripAlong = body.place(Landmark.GRIP_FROM_WRIST).si();
    }

    /** Whether the body's data measure a segment from the end that here is its far one. */
    static boolean isTurned(Segment segment) {
        return segment == Segment.SHANK || segment == Segment.THIGH;
    }

    /** Returns the body taken to pieces; the same pieces each time. */
    Pieces pieces(Parting parting) {
        Pieces made = pieces[parting.ordinal()];
        if (made == null) {
            made = new Pieces(this, parting);
            pieces[parting.ordinal()] = made;
        }
        return made;
    }

    /** A number worked out before. */
    private record Remembered(Exercise<?> exercise, Joint joint, double value) {}

    /** Returns the number last worked out for an exercise and joint, or works it out: a sweep asks for the same one often. */
    double remembered(Exercise<?> exercise, Joint joint, DoubleSupplier work) {
        Remembered before = memory;
        if (before != null && before.joint() == joint && before.exercise().equals(exercise)) {
            return before.value();
        }
        double value = work.getAsDouble();
        memory = new Remembered(exercise, joint, value);
        return value;
    }

    Lifter lifter() {
        return lifter;
    }

    Body body() {
        return body;
    }

    double length(int k) {
        return lengths[k];
    }

    double length(Segment segment) {
        return lengths[segment.ordinal()];
    }

    double mass(int k) {
        return masses[k];
    }

    double mass(Segment segment) {
        return masses[segment.ordinal()];
    }

    double centre(int k) {
        return centres[k];
    }

    double centre(Segment segment) {
        return centres[segment.ordinal()];
    }

    double footCentreAcross() {
        return footCentreAcross;
    }

    double ankleAlong() {
        return ankleAlong;
    }

    double ankleAcross() {
        return ankleAcross;
    }

    double gripAlong() {
        return gripAlong;
    }

    double lowBackAlong() {
        return body.pelvis().length();
    }

    double neckAlong() {
        return body.neckAboveHip();
    }
}

package leverwright.mechanics.motion;

import leverwright.mechanics.measure.Duration;

/**
 * How long the parts of one repetition take: out from the first posture to the last, a pause there, back, a pause here.
 *
 * @param out 0.1 to 60 s
 * @param pauseOut 0 to 600 s
 * @param back 0.1 to 60 s
 * @param pauseBack 0 to 600 s
 */
public record Tempo(Duration out, Duration pauseOut, Duration back, Duration pauseBack) {
    private static final double SHORTEST = 0.1;
    private static final double LONGEST = 60;
    private static final double LONGEST_PAUSE = 600;

    /**
     * Makes a tempo.
     *
     * @throws IllegalArgumentException if a part is outside its range
     */
    public Tempo {
        part(out, SHORTEST, LONGEST, "the way out");
        part(pauseOut, 0, LONGEST_PAUSE, "the pause at the end");
        part(back, SHORTEST, LONGEST, "the way back");
        part(pauseBack, 0, LONGEST_PAUSE, "the pause at the start");
    }

    private static void part(Duration given, double least, double most, String what) {
        if (!(given.si() >= least && given.si() <= most)) {
            throw new IllegalArgumentException(
                    what + " of a repetition takes " + given + "; allowed: " + least + " s to " + most + " s");
        }
    }

    /** Returns a tempo without pauses. */
    public static Tempo of(Duration out, Duration back) {
        return new Tempo(out, Duration.of(0), back, Duration.of(0));
    }

    /** Returns this tempo with a pause at the end of the way out. */
    public Tempo pause(Duration atTheEnd) {
        return new Tempo(out, atTheEnd, back, pauseBack);
    }

    /** Returns this tempo with a pause after the way back. */
    public Tempo pauseBetween(Duration atTheStart) {
        return new Tempo(out, pauseOut, back, atTheStart);
    }

    /**
     * Returns how much of the way out is done at a time, 0 to 1: each way by minimum jerk, with rest in the pauses.
     *
     * @param time s from the start of the way out; before it and after the end that of start and end
     */
    public double wayDone(double time) {
        double t = Math.max(0, Math.min(time, total()));
        if (t <= out.si()) {
            return MinimumJerk.way(t / out.si());
        }
        double begins = out.si() + pauseOut.si();
        if (t < begins) {
            return 1;
        }
        double part = Math.min(1, (t - begins) / back.si());
        return part == 1 ? 0 : 1 - MinimumJerk.way(part);
    }

    /** Returns this tempo in words, such as "2 s out, 0.5 s pause, 1 s back". */
    public String words() {
        String words = out + " out";
        if (pauseOut.si() > 0) {
            words += ", " + pauseOut + " pause";
        }
        words += ", " + back + " back";
        return pauseBack.si() > 0 ? words + ", " + pauseBack + " pause" : words;
    }

    /** Returns the time of one repetition with its pauses, s. */
    public double total() {
        return out.si() + pauseOut.si() + back.si() + pauseBack.si();
    }
}

package leverwright.mechanics.motion;

import leverwright.mechanics.numeric.Require;

/**
 * The smoothest motion from rest to rest: of all motions of one duration the one with the least integral of the squared third
 * derivative, s = 10·τ³ − 15·τ⁴ + 6·τ⁵ (T. Flash and N. Hogan, Journal of Neuroscience 5 (1985) 1688: from memory; that it
 * starts and ends without speed and acceleration is easily checked).
 */
public final class MinimumJerk {
    private MinimumJerk() {}

    /** Returns the part of the way done at a part of the time, both 0 to 1. */
    public static double way(double time) {
        double t = Require.within(time, 0, 1, "part of a motion's time", "");
        return t * t * t * (10 + t * (-15 + 6 * t));
    }

    /** Returns the speed at a part of the time, in ways per duration: at most 1.875. */
    public static double speed(double time) {
        double t = Require.within(time, 0, 1, "part of a motion's time", "");
        double rest = 1 - t;
        return 30 * t * t * rest * rest;
    }

    /** Returns the acceleration at a part of the time, in ways per duration squared: at most 5.774. */
    public static double acceleration(double time) {
        double t = Require.within(time, 0, 1, "part of a motion's time", "");
        return 60 * t * (1 + t * (-3 + 2 * t));
    }

    /** Returns the part of the time at which a part of the way is done, both 0 to 1, to the last bits. */
    public static double timeOf(double way) {
        Require.within(way, 0, 1, "part of a motion's way", "");
        double low = 0;
        double high = 1;
        for (int k = 0; k < 60; k++) {
            double middle = 0.5 * (low + high);
            if (way(middle) < way) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }
}

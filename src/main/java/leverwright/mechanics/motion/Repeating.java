package leverwright.mechanics.motion;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A linkage that goes along its path and back at a tempo, each way by minimum jerk. Time 0 is the start of the way out; the
 * pause before the next repetition is at the end.
 */
public final class Repeating {
    /** Gauss–Legendre places and weights on −1 to 1 (M. Abramowitz and I. Stegun, table 25.4: from memory, checked by sums). */
    private static final double[] PLACES = {
        -0.861136311594052575, -0.339981043584856265, 0.339981043584856265, 0.861136311594052575
    };

    private static final double[] WEIGHTS = {
        0.347854845137453857, 0.652145154862546143, 0.652145154862546143, 0.347854845137453857
    };

    private final LinkagePath path;
    private final Tempo tempo;
    private final boolean backwards;

    /**
     * Puts a path to a tempo.
     *
     * @param backwards whether the way out begins at the end of the path
     */
    public Repeating(LinkagePath path, Tempo tempo, boolean backwards) {
        this.path = path;
        this.tempo = tempo;
        this.backwards = backwards;
    }

    /** Returns the tempo. */
    public Tempo tempo() {
        return tempo;
    }

    /** The part of the way out, its rate and its rate's rate at a time. */
    private double[] way(double time) {
        double t = Math.max(0, Math.min(time, tempo.total()));
        double out = tempo.out().si();
        double back = tempo.back().si();
        if (t <= out) {
            double part = t / out;
            return new double[] {
                MinimumJerk.way(part), MinimumJerk.speed(part) / out, MinimumJerk.acceleration(part) / (out * out)
            };
        }
        double begins = out + tempo.pauseOut().si();
        if (t < begins) {
            return new double[] {1, 0, 0};
        }
        double part = Math.min(1, (t - begins) / back);
        if (part == 1) {
            return new double[] {0, 0, 0};
        }
        return new double[] {
            1 - MinimumJerk.way(part), -MinimumJerk.speed(part) / back, -MinimumJerk.acceleration(part) / (back * back)
        };
    }

    /** Returns the setting at a time, s from the start of the way out. */
    public double setting(double time) {
        return settingAt(way(time)[0]);
    }

    private double settingAt(double part) {
        double done = (path.to() - path.from()) * part;
        return backwards ? path.to() - done : path.from() + done;
    }

    /** Returns the state at a time, s from the start of the way out. */
    public LinkagePath.State at(double time) {
        double[] way = way(time);
        double span = (path.to() - path.from()) * (backwards ? -1 : 1);
        return path.at(settingAt(way[0]), span * way[1], span * way[2]);
    }

    /** Returns the posture passed at a time, as if it were held still. */
    public LinkagePath.State heldAt(double time) {
        return path.at(setting(time), 0, 0);
    }

    /** Times within one way at which the path's pieces change, from 0 to 1. */
    private List<Double> joints() {
        List<Double> times = new ArrayList<>();
        int pieces = path.pieces();
        times.add(0.0);
        for (int k = 1; k < pieces; k++) {
            times.add(MinimumJerk.timeOf((double) k / pieces));
        }
        times.add(1.0);
        return times;
    }

    /** Something summed over time. */
    public interface Sampled {
        /**
         * Takes one instant.
         *
         * @param time s
         * @param weight how long it stands for, s
         * @param state of the linkage then
         */
        void take(double time, double weight, LinkagePath.State state);
    }

    /** Goes through one repetition by Gauss' places, the pauses as one instant each. */
    public void integrate(Sampled sampled) {
        List<Double> parts = joints();
        double out = tempo.out().si();
        double begins = out + tempo.pauseOut().si();
        way(parts, 0, out, sampled);
        pause(out, tempo.pauseOut().si(), sampled);
        way(parts, begins, tempo.back().si(), sampled);
        pause(begins + tempo.back().si(), tempo.pauseBack().si(), sampled);
    }

    private void pause(double begins, double lasts, Sampled sampled) {
        if (lasts > 0) {
            double middle = begins + 0.5 * lasts;
            sampled.take(middle, lasts, heldAt(middle));
        }
    }

    private void way(List<Double> parts, double begins, double lasts, Sampled sampled) {
        for (int k = 1; k < parts.size(); k++) {
            double half = 0.5 * (parts.get(k) - parts.get(k - 1));
            double middle = 0.5 * (parts.get(k) + parts.get(k - 1));
            for (int g = 0; g < PLACES.length; g++) {
                double time = begins + lasts * (middle + half * PLACES[g]);
                sampled.take(time, lasts * half * WEIGHTS[g], at(time));
            }
        }
    }

    /** Returns the energy account of one repetition. */
    public Energies energies() {
        int size = path.linkage().size();
        double[] work = new double[size];
        double[] positive = new double[size];
        double[] sums = new double[6];
        LinkagePath.State start = at(0);
        double first = start.energy();
        integrate((time, weight, state) -> {
            for (int k = 1; k < size; k++) {
                double power = state.jointPower(k);
                work[k] += weight * power;
                positive[k] += weight * Math.max(0, power);
            }
            double external = state.externalPower();
            sums[0] += weight * state.heat();
            sums[1] += weight * state.givenPower();
            sums[2] += weight * state.supportPower();
            sums[3] += weight * Math.max(0, external);
            sums[4] += weight * Math.min(0, external);
            sums[5] = Math.max(sums[5], state.energy() - first);
        });
        sums[5] = Math.max(sums[5], heldAt(tempo.out().si()).energy() - first);
        return new Energies(
                list(work),
                list(positive),
                at(tempo.total()).energy() - first,
                sums[0],
                sums[1],
                sums[2],
                sums[3],
                sums[4],
                sums[5]);
    }

    private static List<Double> list(double... values) {
        List<Double> list = new ArrayList<>();
        for (double value : values) {
            list.add(value);
        }
        return Collections.unmodifiableList(list);
    }
}

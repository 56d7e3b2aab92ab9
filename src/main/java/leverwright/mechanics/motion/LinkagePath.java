package leverwright.mechanics.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import leverwright.mechanics.equilibrium.LinkageSolver;
import leverwright.mechanics.equilibrium.Solution;
import leverwright.mechanics.equilibrium.Support;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.LoadPoint;
import leverwright.mechanics.numeric.CubicSpline;
import leverwright.mechanics.numeric.Trigonometry;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;
import leverwright.mechanics.posture.Placement;

/**
 * A linkage on its way through a range: a smooth curve through postures at evenly spaced settings. Directions, angular
 * velocities and accelerations come from the same curve, so that energy adds up to rounding; between the postures the curve
 * is an approximation of third order. Not for several threads at once.
 */
public final class LinkagePath {
    /**
     * One posture on the way.
     *
     * @param configuration where the links lie
     * @param loads on them, the same kinds on the same links in every posture
     */
    public record Sample(Configuration configuration, List<Load> loads) {}

    private static final double TURN = 2 * Math.PI;

    private final Linkage linkage;
    private final Support support;
    private final double gravity;
    private final double from;
    private final double to;
    private final CubicSpline originX;
    private final CubicSpline originY;
    private final List<CubicSpline> directions = new ArrayList<>();
    private final List<Load> loads;
    /** Forward and upward part of each given force; of other loads none. */
    private final List<List<CubicSpline>> forces = new ArrayList<>();

    private LinkagePath(
            Linkage linkage, Support support, double gravity, double from, double to, List<Sample> samples) {
        this.linkage = linkage;
        this.support = support;
        this.gravity = gravity;
        this.from = from;
        this.to = to;
        this.loads = samples.get(0).loads();
        originX = curve(samples, sample -> sample.configuration().origin().x());
        originY = curve(samples, sample -> sample.configuration().origin().y());
        for (int k = 0; k < linkage.size(); k++) {
            directions.add(new CubicSpline(from, to, unwound(samples, k)));
        }
        for (int l = 0; l < loads.size(); l++) {
            int load = l;
            forces.add(
                    loads.get(l) instanceof ForceLoad
                            ? List.of(
                                    curve(samples, sample -> force(sample, load).x()),
                                    curve(samples, sample -> force(sample, load).y()))
                            : List.of());
        }
    }

    /** Directions without jumps of a whole turn, which an angle found from a point makes where it passes half a turn. */
    private static double[] unwound(List<Sample> samples, int link) {
        double[] directions = new double[samples.size()];
        double before = samples.get(0).configuration().directions().get(link);
        for (int k = 0; k < directions.length; k++) {
            double now = samples.get(k).configuration().directions().get(link);
            before = now - TURN * Math.rint((now - before) / TURN);
            directions[k] = before;
        }
        return directions;
    }

    private static ForceLoad force(Sample sample, int load) {
        return (ForceLoad) sample.loads().get(load);
    }

    private CubicSpline curve(List<Sample> samples, ToDoubleFunction<Sample> part) {
        return new CubicSpline(from, to, samples.stream().mapToDouble(part).toArray());
    }

    /**
     * Returns the way through some postures.
     *
     * @param gravity downwards, m/s²
     * @param from setting of the first posture
     * @param to setting of the last, greater
     * @param samples at least 5, at settings evenly apart
     * @throws IllegalArgumentException if a posture has other loads than the first
     */
    public static LinkagePath through(
            Linkage linkage, Support support, double gravity, double from, double to, List<Sample> samples) {
        for (Sample sample : samples) {
            List<Load> first = samples.get(0).loads();
            boolean same = sample.loads().size() == first.size();
            for (int l = 0; same && l < first.size(); l++) {
                same = sample.loads().get(l).kind().equals(first.get(l).kind())
                        && sample.loads().get(l).on().equals(first.get(l).on());
            }
            if (!same) {
                throw new IllegalArgumentException("the loads change on the way from " + from + " to " + to
                        + "; allowed: the same loads on the same segments throughout. Choose a part of the range");
            }
        }
        return new LinkagePath(linkage, support, gravity, from, to, samples);
    }

    /** Returns the first setting. */
    public double from() {
        return from;
    }

    /** Returns the last setting. */
    public double to() {
        return to;
    }

    /** Returns how many smooth pieces the way has. */
    int pieces() {
        return originX.pieces();
    }

    Linkage linkage() {
        return linkage;
    }

    /**
     * Returns the state at a setting.
     *
     * @param setting between the ends
     * @param speed of the setting, per s
     * @param acceleration of the setting, per s²
     * @throws IllegalArgumentException if a load has no force there, such as a slack cable
     */
    public State at(double setting, double speed, double acceleration) {
        return new State(setting, speed, acceleration);
    }

    /** One instant on the way. */
    public final class State {
        private final LinkageSolver solver;
        private final Kinematics kinematics;
        private final Placement placement;
        private final List<Load> now;
        private final double jointPower;

        private State(double setting, double speed, double acceleration) {
            Vector velocity = new Vector(originX.slope(setting) * speed, originY.slope(setting) * speed);
            Vector accelerated = new Vector(
                    originX.curvature(setting) * speed * speed + originX.slope(setting) * acceleration,
                    originY.curvature(setting) * speed * speed + originY.slope(setting) * acceleration);
            List<Double> where = new ArrayList<>();
            List<Double> turns = new ArrayList<>();
            List<Double> turnsFaster = new ArrayList<>();
            for (CubicSpline direction : directions) {
                where.add(direction.value(setting));
                turns.add(direction.slope(setting) * speed);
                turnsFaster.add(direction.curvature(setting) * speed * speed + direction.slope(setting) * acceleration);
            }
            Vector origin = new Vector(originX.value(setting), originY.value(setting));
            Configuration configuration = new Configuration(origin, where, turns, turnsFaster);
            now = loadsAt(setting);
            placement = Placement.of(linkage, configuration);
            kinematics = Kinematics.of(linkage, configuration, velocity, accelerated);
            solver = LinkageSolver.of(linkage, now, support)
                    .gravity(gravity)
                    .configuration(configuration)
                    .originMoving(velocity.x(), velocity.y(), accelerated.x(), accelerated.y())
                    .solve();
            double power = 0;
            for (int k = 1; k < linkage.size(); k++) {
                power += jointPower(k);
            }
            jointPower = power;
        }

        private List<Load> loadsAt(double setting) {
            List<Load> all = new ArrayList<>();
            for (int l = 0; l < loads.size(); l++) {
                Load load = loads.get(l);
                List<CubicSpline> force = forces.get(l);
                all.add(
                        force.isEmpty()
                                ? load
                                : new ForceLoad(
                                        load.on(),
                                        load.at(),
                                        force.get(0).value(setting),
                                        force.get(1).value(setting),
                                        load.couple()));
            }
            return all;
        }

        /** Returns the solved linkage. */
        public LinkageSolver solver() {
            return solver;
        }

        /** Returns the angular acceleration of a link, rad/s², counter-clockwise positive. */
        public double angularAcceleration(int link) {
            return placement.configuration().angularAccelerations().get(link);
        }

        /** Returns velocities and accelerations. */
        public Kinematics kinematics() {
            return kinematics;
        }

        /** Returns the power of the joint where a link starts, W, both sides together. */
        public double jointPower(int link) {
            return kinematics.jointPower(solver, link);
        }

        /** Returns the power of all joints, W. */
        public double jointPower() {
            return jointPower;
        }

        /** Returns the energy of the links' motion and of what the loads and heights store, J. */
        public double energy() {
            return kinematics.kineticEnergy() + potentialEnergy() + storedByLoads();
        }

        /** Returns the energy of the links' motion, J. */
        public double kineticEnergy() {
            return kinematics.kineticEnergy();
        }

        /** Returns the links' energy of height over y = 0, J. */
        public double potentialEnergy() {
            double sum = 0;
            for (int k = 0; k < linkage.size(); k++) {
                sum += linkage.link(k).mass() * gravity * solver.centreY(k);
            }
            return sum;
        }

        /** Returns what the loads store, motion included, J. */
        public double storedByLoads() {
            double sum = 0;
            for (Load load : now) {
                sum += load.storedEnergy(point(load));
            }
            return sum;
        }

        /** Returns the power that loads turn into heat, W. */
        public double heat() {
            double sum = 0;
            for (Load load : now) {
                sum += load.dissipation(point(load));
            }
            return sum;
        }

        /** Returns the power that given forces put into the linkage, W. */
        public double givenPower() {
            double sum = 0;
            for (Load load : now) {
                if (load.isGiven()) {
                    LoadPoint point = point(load);
                    sum += point.power(load.forceX(point), load.forceY(point), load.couple(point));
                }
            }
            return sum;
        }

        /** Returns the power that what holds the linkage puts into it, W: 0 where it stands still. */
        public double supportPower() {
            double sum = 0;
            for (Solution.Reaction reaction : solver.solution().reactions()) {
                Place place = placeOf(reaction);
                Vector velocity = kinematics.velocity(reaction.on(), place);
                double turn = placement.configuration().angularVelocities().get(linkage.indexOf(reaction.on()));
                sum += reaction.force().dot(velocity) + reaction.couple() * turn;
            }
            return sum;
        }

        private Place placeOf(Solution.Reaction reaction) {
            Vector arm = reaction.at().minus(placement.start(reaction.on()));
            Vector axis = placement.axis(reaction.on());
            return new Place(arm.dot(axis), axis.cross(arm));
        }

        /** Returns the power against weights and loads, W: what raises heights, fills loads or heats them, less what is given. */
        public double externalPower() {
            double power = -givenPower();
            for (int k = 0; k < linkage.size(); k++) {
                Vector velocity = kinematics.velocity(
                        linkage.link(k).name(), linkage.link(k).centre());
                power += linkage.link(k).mass() * gravity * velocity.y();
            }
            for (Load load : now) {
                if (!load.isGiven()) {
                    LoadPoint point = point(load);
                    power -= point.power(load.forceX(point), load.forceY(point), load.couple(point));
                }
            }
            return power;
        }

        private LoadPoint point(Load load) {
            int link = linkage.indexOf(load.on());
            Vector at = placement.point(load.on(), load.at());
            Vector velocity = kinematics.velocity(load.on(), load.at());
            Vector acceleration = kinematics.acceleration(load.on(), load.at());
            double direction = placement.configuration().directions().get(link);
            return new LoadPoint(
                    at.x(),
                    at.y(),
                    Trigonometry.cosine(direction),
                    Trigonometry.sine(direction),
                    acceleration.x(),
                    acceleration.y(),
                    velocity.x(),
                    velocity.y(),
                    placement.configuration().angularVelocities().get(link),
                    placement.configuration().angularAccelerations().get(link),
                    0,
                    -gravity,
                    gravity);
        }
    }
}

package leverwright.mechanics.muscle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;

/** How muscles share the moments of a posture: forces N, one side (trunk: both sides together). */
public final class MuscleForces {
    /** What is asked for leaves a hair to choose. */
    private static final double BEYOND = 1 + 1e-7;

    private final MuscleModel model;
    private final List<MuscleState> states;
    private final Map<Axis, Double> moments;
    private final SharingSolution solution;

    private MuscleForces(
            MuscleModel model, List<MuscleState> states, Map<Axis, Double> moments, SharingSolution solution) {
        this.model = model;
        this.states = List.copyOf(states);
        this.moments = moments;
        this.solution = solution;
    }

    static MuscleForces of(MuscleModel model, List<MuscleState> states, Map<Axis, Double> moments) {
        if (states.isEmpty()) {
            throw new IllegalArgumentException("no muscle on file works about the axes of this posture");
        }
        return new MuscleForces(model, states, moments, solve(model, states, moments, 1));
    }

    /** Shares among muscles that are all so many times as strong. */
    private static SharingSolution solve(
            MuscleModel model, List<MuscleState> states, Map<Axis, Double> moments, double stronger) {
        SharingProblem problem = problem(model, states, moments, List.of(), stronger);
        SharingSolution plain = Sharing.solve(problem, model.rule());
        List<Axis> against = new ArrayList<>();
        double part = model.coContraction().si();
        if (part > 0 && plain.feasible()) {
            for (Map.Entry<Axis, Double> moment : moments.entrySet()) {
                double made = 0;
                for (int i = 0; i < states.size(); i++) {
                    double own = states.get(i).arms().getOrDefault(moment.getKey(), 0.0) * plain.force(i);
                    made += own * moment.getValue() < 0 ? Math.abs(own) : 0;
                }
                if (moment.getValue() != 0 && made < part * Math.abs(moment.getValue())) {
                    against.add(moment.getKey());
                }
            }
        }
        return against.isEmpty()
                ? plain
                : Sharing.solve(problem(model, states, moments, against, stronger), model.rule());
    }

    /**
     * Returns what the moments ask for where the muscles cannot make them: the forces of muscles that are all as much stronger
     * as they would have to be, so that capacity used is above 1 for those that lack; these forces themselves where they can.
     *
     * @throws IllegalArgumentException if no muscle of an axis makes its moment at all
     */
    public MuscleForces asked() {
        double scale = greatestScale();
        if (feasible() || scale <= 0) {
            return this;
        }
        return new MuscleForces(model, states, moments, solve(model, states, moments, BEYOND / scale));
    }

    /** Rows: every axis, and for some of them what the muscles against its moment make. */
    private static SharingProblem problem(
            MuscleModel model,
            List<MuscleState> states,
            Map<Axis, Double> moments,
            List<Axis> against,
            double stronger) {
        int rows = moments.size() + against.size();
        int n = states.size();
        double[][] arms = new double[rows][n];
        double[] right = new double[rows];
        double[] divisors = new double[n];
        double[] limits = new double[n];
        List<String> names = new ArrayList<>();
        int j = 0;
        for (Map.Entry<Axis, Double> moment : moments.entrySet()) {
            names.add(moment.getKey().action(moment.getValue()));
            right[j] = moment.getValue();
            for (int i = 0; i < n; i++) {
                arms[j][i] = states.get(i).arms().getOrDefault(moment.getKey(), 0.0);
            }
            j++;
        }
        for (Axis axis : against) {
            double moment = Objects.requireNonNull(moments.get(axis));
            names.add(axis.action(-moment) + " against it");
            right[j] = model.coContraction().si() * Math.abs(moment);
            for (int i = 0; i < n; i++) {
                double arm = states.get(i).arms().getOrDefault(axis, 0.0);
                arms[j][i] = arm * moment < 0 ? Math.abs(arm) : 0;
            }
            j++;
        }
        List<String> muscles = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            muscles.add(states.get(i).muscle().words());
            divisors[i] = model.divisorOf(states.get(i));
            limits[i] = states.get(i).capacity() * stronger;
        }
        return SharingProblem.of(names, muscles, arms, right, divisors, limits);
    }

    /** Returns the model. */
    public MuscleModel model() {
        return model;
    }

    /** Returns what each muscle can do here. */
    public List<MuscleState> states() {
        return states;
    }

    /** Returns the moments asked for, N·m by axis. */
    public Map<Axis, Double> moments() {
        return new LinkedHashMap<>(moments);
    }

    /** Returns the sharing problem and its solution with the checks. */
    public SharingSolution solution() {
        return solution;
    }

    /** Returns whether the muscles can make the moments. */
    public boolean feasible() {
        return solution.feasible();
    }

    /** Returns the places of some muscles among the states; those without an axis here are left out. */
    private List<Integer> places(Muscles muscles) {
        List<Integer> places = new ArrayList<>();
        for (int i = 0; i < states.size(); i++) {
            if (muscles.members().contains(states.get(i).muscle())) {
                places.add(i);
            }
        }
        if (places.isEmpty()) {
            throw new IllegalArgumentException("the " + muscles.words()
                    + " cross no joint whose moment is known in this posture; ask for other muscles");
        }
        return places;
    }

    /** Returns the states of some muscles. */
    public List<MuscleState> states(Muscles muscles) {
        return places(muscles).stream().map(states::get).toList();
    }

    /**
     * Returns the force of some muscles together, N.
     *
     * @throws IllegalArgumentException if the moments cannot be made, naming what lacks, or the muscles play no part
     */
    public double force(Muscles muscles) {
        double sum = 0;
        for (int i : places(muscles)) {
            sum += solution.force(i);
        }
        return sum;
    }

    /** Returns the capacity of some muscles together, N. */
    public double capacity(Muscles muscles) {
        double sum = 0;
        for (int i : places(muscles)) {
            sum += states.get(i).capacity();
        }
        return sum;
    }

    /** Returns force over capacity of some muscles together, 0 to 1; above 1 only in what is {@link #asked}. */
    public double capacityUsed(Muscles muscles) {
        return force(muscles) / capacity(muscles);
    }

    /** Returns the greatest factor times all moments that the muscles could make; infinite if all are 0. */
    public double greatestScale() {
        return solution.greatestScale().orElse(Double.POSITIVE_INFINITY);
    }

    /**
     * Returns the action that stops the moments from growing: the one without which they could grow most. Tells it by
     * leaving out each in turn.
     */
    public Axis limiting() {
        Axis limiting = moments.keySet().iterator().next();
        double most = -1;
        for (Axis axis : moments.keySet()) {
            Map<Axis, Double> others = new LinkedHashMap<>(moments);
            others.remove(axis);
            double scale = others.isEmpty()
                    ? Double.POSITIVE_INFINITY
                    : Sharing.solve(problem(model, states, others, List.of(), 1), model.rule())
                            .greatestScale()
                            .orElse(Double.POSITIVE_INFINITY);
            if (scale > most) {
                most = scale;
                limiting = axis;
            }
        }
        return limiting;
    }

    /** Returns what must be said about the numbers behind some muscles, each once. */
    public List<String> marks(Muscles muscles) {
        Set<String> marks = new LinkedHashSet<>();
        for (MuscleState state : states(muscles)) {
            state.marks().forEach(mark -> marks.add(state.muscle().words() + ": " + mark));
        }
        return List.copyOf(marks);
    }
}

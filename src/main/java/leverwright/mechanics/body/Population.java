package leverwright.mechanics.body;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.Mass;
import leverwright.mechanics.numeric.NormalCurve;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Require;

/**
 * People of a survey: percentiles, random bodies whose lengths and mass go together as they did among those measured.
 *
 * <pre>{@code
 * population(FEMALE).percentile(50)                 // one at the middle of stature and of mass
 * population(MALE).random(20261125, 200)            // 200 men
 * population(FEMALE).limb(ines, THIGH, 95)          // Ines with thighs longer than those of 95 of 100 women of her stature
 * }</pre>
 *
 * <p>Source: ANSUR II 2012, 4082 men and 1986 women of the US Army, aged 17 to 58, computed from the individual records: means,
 * standard deviations, percentiles, correlations, regressions on stature. Its dimensions run between bony landmarks, not
 * joint centres; so the segment table gives the length and the survey the ratio to its mean. Normal distributions are
 * assumed (Cholesky's factor of the correlations times independent draws); body mass among those measured is skewed a little.
 */
public final class Population {
    private static final int MOST = 100_000;
    private static final List<String> DIMENSIONS = List.of(
            Survey.STATURE,
            Survey.MASS,
            Survey.SHOULDER,
            Survey.HIP,
            Survey.THIGH,
            Survey.ANKLE,
            "shoulderelbowlength",
            "radialestylionlength",
            "handlength",
            "footlength");

    private final Sex sex;
    private final SegmentTable table;
    private final double[][] factor;

    private Population(Sex sex, SegmentTable table) {
        this.sex = sex;
        this.table = table;
        this.factor = factor();
    }

    /** Returns the women or men of the survey, with segments after de Leva 1996. */
    public static Population population(Sex sex) {
        return new Population(sex, SegmentTable.DE_LEVA);
    }

    /** Returns the same people with segments of another table. */
    public Population segments(SegmentTable other) {
        return new Population(sex, other);
    }

    /**
     * Returns a lifter at one percentile of both stature and body mass. Nobody is at one percentile in everything: lengths
     * follow the table.
     *
     * @param percent greater than 0, less than 100
     */
    public Lifter percentile(double percent) {
        return percentiles(percent, percent);
    }

    /**
     * Returns a lifter at percentiles of stature and of body mass.
     *
     * @param ofStature greater than 0, less than 100
     * @param ofMass likewise
     * @throws IllegalArgumentException if a percentile is not
     */
    public Lifter percentiles(double ofStature, double ofMass) {
        String name = String.format(
                Locale.ROOT, "%s at percentile %s of stature, %s of mass", sex.group(), text(ofStature), text(ofMass));
        return Lifter.lifter(name)
                .of(sex, Length.of(at(Survey.STATURE, ofStature)), Mass.of(at(Survey.MASS, ofMass)))
                .segments(table);
    }

    private static String text(double percent) {
        return percent == Math.rint(percent) ? Long.toString((long) percent) : Double.toString(percent);
    }

    /** As counted at 5, 50 and 95; else by the normal distribution of the survey's mean and standard deviation. */
    private double at(String dimension, double percent) {
        if (!(percent > 0 && percent < 100)) {
            throw new IllegalArgumentException("a percentile is " + percent
                    + "; allowed: greater than 0 and less than 100, the part of people that lies below");
        }
        if (percent == 5 || percent == 50 || percent == 95) {
            return Survey.percentile(dimension, sex, (int) percent);
        }
        return Survey.mean(dimension, sex) + NormalCurve.at(percent / 100) * Survey.deviation(dimension, sex);
    }

    /** Returns the percentile of a stature among these people, 0 to 100, by the normal distribution. */
    public double percentileOf(Length stature) {
        return 100
                * NormalCurve.below(
                        (stature.si() - Survey.mean(Survey.STATURE, sex)) / Survey.deviation(Survey.STATURE, sex));
    }

    /**
     * Returns a lifter with a segment longer than those of a part of the people of that stature; all else as it was.
     *
     * @param segment any but the trunk, which follows
     * @param percent greater than 0, less than 100; 50 is the table's own length
     * @throws IllegalArgumentException if the segment is the trunk or the percentile out of range
     */
    public Lifter limb(Lifter lifter, Segment segment, double percent) {
        String dimension = Survey.dimension(segment)
                .orElseThrow(
                        () -> new IllegalArgumentException(
                                "the trunk has no dimension of its own in the survey; allowed: foot, shank, thigh and the arm's parts"));
        if (!(percent > 0 && percent < 100)) {
            throw new IllegalArgumentException(
                    "a percentile is " + percent + "; allowed: greater than 0 and less than 100");
        }
        double stature = lifter.stature().si();
        double ratio = 1
                + NormalCurve.at(percent / 100)
                        * Survey.spread(dimension, sex)
                        / Survey.expected(dimension, sex, stature);
        double usual = table.proportions(sex).row(segment).length().value() * stature;
        return lifter.length(segment, Length.of(usual * ratio));
    }

    /**
     * Returns random people: stature, body mass and the lengths of all segments go together as they did among those measured.
     *
     * @param seed equal seeds give equal people
     * @param count 1 to 100 000
     */
    public List<Lifter> random(long seed, int count) {
        Require.within(count, 1, MOST, "number of random bodies", "");
        RandomStream stream = new RandomStream(seed);
        List<Lifter> people = new ArrayList<>();
        int tried = 0;
        while (people.size() < count) {
            tried++;
            double[] drawn = draw(stream, factor);
            boolean adult = drawn[1] >= Lifter.LIGHTEST && drawn[1] <= Lifter.HEAVIEST;
            if (adult) {
                people.add(person(String.format(Locale.ROOT, "%s %d of seed %d", one(), tried, seed), drawn));
            }
        }
        return List.copyOf(people);
    }

    /** Returns how many numbers one body takes. */
    public int axes() {
        return DIMENSIONS.size();
    }

    /**
     * Returns one body of these people, by where it stands in each of the independent normal distributions that the survey's
     * dimensions are mixed from.
     *
     * @param unit numbers greater than 0 and less than 1, {@link #axes()} of them from a place on
     * @param from that place
     * @throws IllegalArgumentException if the body is none of an adult
     */
    public Lifter at(double[] unit, int from) {
        double[] independent = new double[DIMENSIONS.size()];
        for (int i = 0; i < independent.length; i++) {
            independent[i] = NormalCurve.at(unit[from + i]);
        }
        return person("a drawn " + one(), mixed(factor, independent));
    }

    private String one() {
        return sex == Sex.FEMALE ? "woman" : "man";
    }

    private double[] draw(RandomStream stream, double[][] factor) {
        double[] independent = new double[DIMENSIONS.size()];
        for (int i = 0; i < independent.length; i++) {
            independent[i] = stream.nextNormal();
        }
        return mixed(factor, independent);
    }

    private double[] mixed(double[][] factor, double... independent) {
        int size = DIMENSIONS.size();
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            double sum = 0;
            for (int j = 0; j <= i; j++) {
                sum += factor[i][j] * independent[j];
            }
            String dimension = DIMENSIONS.get(i);
            values[i] = Survey.mean(dimension, sex) + sum * Survey.deviation(dimension, sex);
        }
        return values;
    }

    private double[][] factor() {
        int size = DIMENSIONS.size();
        double[][] factor = new double[size][size];
        for (int i = 0; i < size; i++) {
            for (int j = 0; j <= i; j++) {
                double rest = Survey.correlation(DIMENSIONS.get(i), DIMENSIONS.get(j), sex);
                for (int k = 0; k < j; k++) {
                    rest -= factor[i][k] * factor[j][k];
                }
                factor[i][j] = i == j ? Math.sqrt(rest) : rest / factor[j][j];
            }
        }
        return factor;
    }

    private double of(String dimension, double... drawn) {
        return drawn[DIMENSIONS.indexOf(dimension)];
    }

    /** The table's length for the mean stature, times the drawn dimension over its mean. */
    private Lifter person(String name, double... drawn) {
        LifterInputs inputs = LifterInputs.of(
                        name, sex, Length.of(of(Survey.STATURE, drawn)), Mass.of(of(Survey.MASS, drawn)))
                .withTable(table);
        double mean = Survey.mean(Survey.STATURE, sex);
        double hip = of(Survey.HIP, drawn);
        double thigh = of(Survey.THIGH, drawn);
        for (Segment segment : Segment.values()) {
            double ratio = switch (segment) {
                case TRUNK ->
                    (of(Survey.SHOULDER, drawn) - hip)
                            / (Survey.mean(Survey.SHOULDER, sex) - Survey.mean(Survey.HIP, sex));
                case SHANK -> (hip - thigh - of(Survey.ANKLE, drawn)) / Survey.mean(Survey.SHANK, sex);
                default -> {
                    String dimension = Survey.dimension(segment).orElseThrow();
                    yield of(dimension, drawn) / Survey.mean(dimension, sex);
                }
            };
            double length = table.proportions(sex).row(segment).length().value() * mean * ratio;
            inputs = inputs.withLength(segment, Length.of(length));
        }
        return Lifter.from(inputs);
    }

    @Override
    public String toString() {
        return sex.group() + " of ANSUR II 2012, segments after " + table.name();
    }
}

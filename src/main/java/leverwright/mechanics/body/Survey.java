package leverwright.mechanics.body;

import java.util.Optional;
import leverwright.mechanics.numeric.NormalCurve;

/** The body survey behind percentiles, random bodies and out-of-sample notes: ANSUR II 2012, and how its dimensions stand for segments. */
final class Survey {
    static final String STATURE = "stature";
    static final String MASS = "body_mass";
    static final String THIGH = "trochanterion_minus_lateral_femoral_epicondyle";
    static final String SHANK = "lateral_femoral_epicondyle_minus_lateral_malleolus";
    static final String SHOULDER = "acromialheight";
    static final String HIP = "trochanterionheight";
    static final String ANKLE = "lateralmalleolusheight";

    private static final DataFile CORRELATIONS = DataFile.read("ansur_2012_correlations.csv");

    private Survey() {}

    static double mean(String dimension, Sex sex) {
        return Landmarks.SURVEY.value(dimension, "-", sex, "mean").value();
    }

    static double deviation(String dimension, Sex sex) {
        return Landmarks.SURVEY.value(dimension, "-", sex, "sd").value();
    }

    static double percentile(String dimension, Sex sex, int percent) {
        return Landmarks.SURVEY.value(dimension, "-", sex, "p" + percent).value();
    }

    static double correlation(String one, String other, Sex sex) {
        if (one.equals(other)) {
            return 1;
        }
        for (DataFile.Row row : CORRELATIONS.rows()) {
            boolean pair = (row.segment().equals(one) && row.endPoints().equals(other))
                    || (row.segment().equals(other) && row.endPoints().equals(one));
            if (pair && row.sex().equals(sex.name())) {
                return row.value();
            }
        }
        throw new IllegalArgumentException("the survey has no correlation of " + one + " and " + other);
    }

    /** The dimension that stands for the length of a segment; none for the trunk, which is shoulder height less hip height. */
    static Optional<String> dimension(Segment segment) {
        return switch (segment) {
            case FOOT -> Optional.of("footlength");
            case SHANK -> Optional.of(SHANK);
            case THIGH -> Optional.of(THIGH);
            case TRUNK -> Optional.empty();
            case UPPER_ARM -> Optional.of("shoulderelbowlength");
            case FOREARM -> Optional.of("radialestylionlength");
            case HAND -> Optional.of("handlength");
        };
    }

    /** Mean of a segment's dimension among people of a stature, m. */
    static double expected(String dimension, Sex sex, double stature) {
        return Landmarks.SURVEY.value(dimension, "-", sex, "intercept").value()
                + Landmarks.SURVEY.value(dimension, "-", sex, "slope").value() * stature;
    }

    /** Standard deviation of a segment's dimension among people of one stature, m. */
    static double spread(String dimension, Sex sex) {
        return Landmarks.SURVEY.value(dimension, "-", sex, "residual_sd").value();
    }

    /** Which part of people of a stature has a shorter segment, when the mean one has a ratio of 1; empty for the trunk. */
    static Optional<Double> partBelow(Segment segment, Sex sex, double stature, double ratioToMean) {
        return dimension(segment)
                .map(dimension -> NormalCurve.below(
                        (ratioToMean - 1) * expected(dimension, sex, stature) / spread(dimension, sex)));
    }
}

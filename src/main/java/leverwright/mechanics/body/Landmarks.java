package leverwright.mechanics.body;

import java.util.List;

/** Where ankle, low back, neck and grip lie when nobody measured them: published data where there are any. */
final class Landmarks {
    /** Heel to ankle, of foot length: from memory; with its band of ±1 cm about 6 N·m at each knee with a 60 kg bar. */
    static final double ANKLE_OF_FOOT = 0.22;

    private static final double ANKLE_BAND = 0.01;
    /** Low back above the hip, of stature: from memory, ±2 cm. */
    static final double LOW_BACK_OF_STATURE = 0.056;

    private static final double LOW_BACK_BAND = 0.02;
    private static final double FOOT_CENTRE_OF_ANKLE_HEIGHT = 0.5;
    private static final double HEIGHT_BAND = 0.01;
    private static final double GRIP_BAND = 0.01;

    /** The survey behind the defaults and the out-of-sample notes. */
    static final DataFile SURVEY = DataFile.read("ansur_2012.csv");

    private final Sex sex;

    Landmarks(Sex sex) {
        this.sex = sex;
    }

    private double mean(String dimension) {
        return SURVEY.value(dimension, "-", sex, "mean").value();
    }

    /** Heel to the ball of the foot, of foot length: ANSUR II, ratio of means. */
    double ballOfFoot() {
        return mean("balloffootlength") / mean("footlength");
    }

    /** Height of the outer ankle bone, of stature: ANSUR II. */
    SourcedValue measuredAnkleHeight() {
        return SURVEY.value("lateralmalleolusheight", "-", sex, "per_stature");
    }

    /** Height of the seventh cervical vertebra, of stature: ANSUR II. */
    SourcedValue neckOfStature() {
        return SURVEY.value("cervicaleheight", "-", sex, "per_stature");
    }

    /** Elbow to grip centre less elbow to ulnar styloid, over hand length: ANSUR II, ratio of means. */
    private SourcedValue grip(SourcedValue handLength) {
        double ofHand = (mean("forearmcenterofgriplength") - mean("radialestylionlength")) / mean("handlength");
        return new SourcedValue(
                "grip from the wrist over stature",
                ofHand * handLength.value(),
                "1",
                SURVEY.citation() + ", forearm to grip centre less forearm, over hand length",
                ReadingStatus.DERIVED.worse(handLength.status()));
    }

    /**
     * Returns the rows of all landmarks.
     *
     * @param footLength of stature
     * @param handLength of stature
     * @param ankleHeight of stature
     */
    List<LandmarkRow> beside(SourcedValue footLength, SourcedValue handLength, SourcedValue ankleHeight) {
        return List.of(
                row(
                        Landmark.ANKLE_FROM_HEEL,
                        ANKLE_OF_FOOT * footLength.value(),
                        "from memory: 0.22 of the foot's" + " length",
                        ANKLE_BAND),
                new LandmarkRow(Landmark.ANKLE_HEIGHT, ankleHeight, HEIGHT_BAND),
                row(
                        Landmark.FOOT_CENTRE_HEIGHT,
                        FOOT_CENTRE_OF_ANKLE_HEIGHT * ankleHeight.value(),
                        "assumed: half the ankle's height",
                        HEIGHT_BAND),
                new LandmarkRow(Landmark.GRIP_FROM_WRIST, grip(handLength), GRIP_BAND),
                row(Landmark.LOW_BACK_ABOVE_HIP, LOW_BACK_OF_STATURE, "from memory: 0.056 of stature", LOW_BACK_BAND));
    }

    private static LandmarkRow row(Landmark landmark, double ofStature, String source, double halfWidth) {
        return new LandmarkRow(
                landmark,
                new SourcedValue(landmark.words() + " over stature", ofStature, "1", source, ReadingStatus.FROM_MEMORY),
                halfWidth);
    }
}

package leverwright.mechanics.study;

import static leverwright.mechanics.measure.Measures.cm;
import static leverwright.mechanics.measure.Measures.kg;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.logging.Logger;
import java.util.regex.Pattern;
import leverwright.mechanics.body.Joint;
import leverwright.mechanics.body.Lifter;
import leverwright.mechanics.body.Sex;
import leverwright.mechanics.exercise.Catalogue;
import leverwright.mechanics.exercise.Exercise;
import leverwright.mechanics.exercise.HeldPosture;
import leverwright.mechanics.exercise.Knob;
import leverwright.mechanics.exercise.Performance;
import leverwright.mechanics.exercise.Reading;
import leverwright.mechanics.exercise.Readings;
import org.junit.jupiter.api.Test;

/** Any settings within the knobs' ranges give finite answers or a sentence; never a number that is none. */
class RandomSettingsTest {
    private static final Logger LOG = Logger.getLogger(RandomSettingsTest.class.getName());
    private static final long SEED = 20261125;
    private static final int DRAWS = 60;
    private static final Pattern RAW = Pattern.compile("NaN|Infinity|Exception|null|\\d\\.\\d{11,}");

    private final Lifter ines = Lifter.lifter("Ines").of(Sex.FEMALE, cm(178), kg(71));
    private final List<Reading<?>> readings = readings();

    private static List<Reading<?>> readings() {
        List<Reading<?>> all = new ArrayList<>();
        for (Joint joint : Joint.values()) {
            all.add(Readings.moment(joint));
            all.add(Readings.load(joint));
            all.add(Readings.loadArm(joint));
        }
        for (Joint joint : List.of(Joint.LOW_BACK, Joint.KNEE, Joint.HIP, Joint.SHOULDER, Joint.ELBOW, Joint.ANKLE)) {
            all.add(Studies.compression(joint));
        }
        return all;
    }

    @Test
    void everySettingIsAnsweredByNumbersOrWords() {
        LOG.info(() -> "seed " + SEED);
        Random random = new Random(SEED);
        int answered = 0;
        int refused = 0;
        for (Exercise<?> exercise : Catalogue.exercises()) {
            for (int draw = 0; draw < DRAWS; draw++) {
                if (isAnswered(drawn(exercise.by(ines), random))) {
                    answered++;
                } else {
                    refused++;
                }
            }
        }
        assertTrue(answered > DRAWS * 10, answered + " answered");
        assertTrue(refused > DRAWS, refused + " refused");
    }

    /** Most knobs stay; a few are set, often at an end of their range. */
    private static Performance drawn(Performance start, Random random) {
        Performance drawn = start;
        for (Knob<?> knob : start.exercise().knobs()) {
            if (random.nextInt(3) == 0) {
                double least = knob.least().si();
                double most = knob.most().si();
                boolean atEnd = random.nextInt(4) == 0;
                double between = least + random.nextDouble() * (most - least);
                drawn = drawn.withSi(knob, atEnd ? (random.nextBoolean() ? least : most) : between);
            }
        }
        return drawn;
    }

    private boolean isAnswered(Performance drawn) {
        HeldPosture held;
        try {
            held = drawn.posture();
            assertFalse(held.standing().words().isBlank());
            held.remarks().forEach(RandomSettingsTest::readable);
        } catch (IllegalArgumentException impossible) {
            readable(String.valueOf(impossible.getMessage()));
            return false;
        }
        for (Reading<?> reading : readings) {
            try {
                assertTrue(Double.isFinite(reading.si(held)), reading + " of " + settings(drawn));
            } catch (IllegalArgumentException shared) {
                readable(String.valueOf(shared.getMessage()));
            }
        }
        return true;
    }

    private static void readable(String sentence) {
        assertTrue(sentence.length() > 20 && !RAW.matcher(sentence).find(), sentence);
    }

    private static String settings(Performance drawn) {
        StringBuilder text = new StringBuilder(drawn.exercise().name());
        for (Knob<?> knob : drawn.exercise().knobs()) {
            if (drawn.exercise().isSet(knob)) {
                text.append("; ")
                        .append(knob.name())
                        .append(' ')
                        .append(drawn.exercise().get(knob));
            }
        }
        return text.toString();
    }
}

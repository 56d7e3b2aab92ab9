package leverwright.mechanics.muscle;

import java.util.List;
import java.util.Locale;

/** Muscles that are named together. */
public enum MuscleGroup implements Muscles {
    /** Rectus femoris, vastus lateralis, vastus intermedius, vastus medialis. */
    QUADRICEPS(Muscle.RECTUS_FEMORIS, Muscle.VASTUS_LATERALIS, Muscle.VASTUS_INTERMEDIUS, Muscle.VASTUS_MEDIALIS),
    /** Vastus lateralis, vastus intermedius, vastus medialis. */
    VASTI(Muscle.VASTUS_LATERALIS, Muscle.VASTUS_INTERMEDIUS, Muscle.VASTUS_MEDIALIS),
    /** Semimembranosus, semitendinosus, biceps femoris long head. */
    HAMSTRINGS(Muscle.SEMIMEMBRANOSUS, Muscle.SEMITENDINOSUS, Muscle.BICEPS_FEMORIS_LONG_HEAD),
    /** Gluteus maximus, semimembranosus, semitendinosus, biceps femoris long head, adductor magnus. */
    HIP_EXTENSORS(
            Muscle.GLUTEUS_MAXIMUS,
            Muscle.SEMIMEMBRANOSUS,
            Muscle.SEMITENDINOSUS,
            Muscle.BICEPS_FEMORIS_LONG_HEAD,
            Muscle.ADDUCTOR_MAGNUS),
    /** Iliacus, psoas. */
    ILIOPSOAS(Muscle.ILIACUS, Muscle.PSOAS),
    /** Gastrocnemius, soleus. */
    CALF(Muscle.GASTROCNEMIUS, Muscle.SOLEUS),
    /** Rectus abdominis, external oblique, internal oblique. */
    ABDOMINALS(Muscle.RECTUS_ABDOMINIS, Muscle.EXTERNAL_OBLIQUE, Muscle.INTERNAL_OBLIQUE),
    /** External oblique, internal oblique. */
    OBLIQUES(Muscle.EXTERNAL_OBLIQUE, Muscle.INTERNAL_OBLIQUE),
    /** Deltoid anterior, deltoid middle, deltoid posterior. */
    DELTOID(Muscle.DELTOID_ANTERIOR, Muscle.DELTOID_MIDDLE, Muscle.DELTOID_POSTERIOR),
    /** Pectoralis clavicular, pectoralis sternal. */
    PECTORALIS(Muscle.PECTORALIS_CLAVICULAR, Muscle.PECTORALIS_STERNAL),
    /** Biceps long head, biceps short head. */
    BICEPS(Muscle.BICEPS_LONG_HEAD, Muscle.BICEPS_SHORT_HEAD),
    /** Biceps long head, biceps short head, brachialis, brachioradialis. */
    ELBOW_FLEXORS(Muscle.BICEPS_LONG_HEAD, Muscle.BICEPS_SHORT_HEAD, Muscle.BRACHIALIS, Muscle.BRACHIORADIALIS),
    /** Triceps long head, triceps short heads. */
    TRICEPS(Muscle.TRICEPS_LONG_HEAD, Muscle.TRICEPS_SHORT_HEADS);

    private final List<Muscle> members;

    MuscleGroup(Muscle... members) {
        this.members = List.of(members);
    }

    @Override
    public List<Muscle> members() {
        return members;
    }

    @Override
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}

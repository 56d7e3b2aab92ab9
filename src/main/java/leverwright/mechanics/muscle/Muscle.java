package leverwright.mechanics.muscle;

import java.util.List;
import java.util.Locale;

/** The muscles of the planar body, one side; what each is made of stands in the data file, see {@link MuscleData}. */
public enum Muscle implements Muscles {
    /** The vastus lateralis. */
    VASTUS_LATERALIS,
    /** The vastus intermedius. */
    VASTUS_INTERMEDIUS,
    /** The vastus medialis. */
    VASTUS_MEDIALIS,
    /** The rectus femoris. */
    RECTUS_FEMORIS,
    /** The gluteus maximus. */
    GLUTEUS_MAXIMUS,
    /** The semimembranosus. */
    SEMIMEMBRANOSUS,
    /** The semitendinosus. */
    SEMITENDINOSUS,
    /** The biceps femoris long head. */
    BICEPS_FEMORIS_LONG_HEAD,
    /** The biceps femoris short head. */
    BICEPS_FEMORIS_SHORT_HEAD,
    /** The adductor magnus. */
    ADDUCTOR_MAGNUS,
    /** The iliacus. */
    ILIACUS,
    /** The psoas. */
    PSOAS,
    /** The gastrocnemius. */
    GASTROCNEMIUS,
    /** The soleus. */
    SOLEUS,
    /** The tibialis anterior. */
    TIBIALIS_ANTERIOR,
    /** The erector spinae. */
    ERECTOR_SPINAE,
    /** The quadratus lumborum. */
    QUADRATUS_LUMBORUM,
    /** The rectus abdominis. */
    RECTUS_ABDOMINIS,
    /** The external oblique. */
    EXTERNAL_OBLIQUE,
    /** The internal oblique. */
    INTERNAL_OBLIQUE,
    /** The gluteus medius. */
    GLUTEUS_MEDIUS,
    /** The adductors. */
    ADDUCTORS,
    /** The deltoid anterior. */
    DELTOID_ANTERIOR,
    /** The deltoid middle. */
    DELTOID_MIDDLE,
    /** The deltoid posterior. */
    DELTOID_POSTERIOR,
    /** The pectoralis clavicular. */
    PECTORALIS_CLAVICULAR,
    /** The pectoralis sternal. */
    PECTORALIS_STERNAL,
    /** The latissimus. */
    LATISSIMUS,
    /** The teres major. */
    TERES_MAJOR,
    /** The biceps long head. */
    BICEPS_LONG_HEAD,
    /** The biceps short head. */
    BICEPS_SHORT_HEAD,
    /** The brachialis. */
    BRACHIALIS,
    /** The brachioradialis. */
    BRACHIORADIALIS,
    /** The triceps long head. */
    TRICEPS_LONG_HEAD,
    /** The triceps short heads. */
    TRICEPS_SHORT_HEADS,
    /** The wrist flexors. */
    WRIST_FLEXORS,
    /** The wrist extensors. */
    WRIST_EXTENSORS;

    @Override
    public List<Muscle> members() {
        return List.of(this);
    }

    @Override
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Returns whether both sides together pull at one joint: the muscles of the trunk. */
    public boolean isOfTheTrunk() {
        return this == ERECTOR_SPINAE
                || this == QUADRATUS_LUMBORUM
                || MuscleGroup.ABDOMINALS.members().contains(this);
    }
}

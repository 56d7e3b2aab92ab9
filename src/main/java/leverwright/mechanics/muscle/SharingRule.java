package leverwright.mechanics.muscle;

/** By which rule muscles share the moments that they must make together. */
public sealed interface SharingRule {
    /** Greatest exponent: there the greatest stress is within 1 to 3 % of that of {@link EqualShare}. */
    double GREATEST_EXPONENT = 100;

    /**
     * The least sum of (force/divisor) to a power.
     *
     * @param exponent greater than 1, at most {@value SharingRule#GREATEST_EXPONENT}
     */
    record Power(double exponent) implements SharingRule {
        /**
         * Checks the exponent.
         *
         * @throws IllegalArgumentException if it lies outside its range
         */
        public Power {
            if (!(exponent > 1 && exponent <= GREATEST_EXPONENT)) {
                throw new IllegalArgumentException("the exponent of the sharing rule is " + exponent
                        + "; allowed: greater than 1, at most " + GREATEST_EXPONENT
                        + ". For 1 take singleMuscle(), without end equalShare()");
            }
        }

        @Override
        public String words() {
            String shown = exponent == Math.rint(exponent) ? String.valueOf((int) exponent) : String.valueOf(exponent);
            return "least sum of (force/divisor)^" + shown;
        }
    }

    /** The least greatest share: then the least second one, and so on; what a power without end would give. */
    record EqualShare() implements SharingRule {
        @Override
        public String words() {
            return "equal share: least greatest force/divisor";
        }
    }

    /** One muscle after another: the one that makes most of the moment for its divisor, until it is full; the power 1. */
    record SingleMuscle() implements SharingRule {
        @Override
        public String words() {
            return "single muscle: least sum of force/divisor";
        }
    }

    /** Returns the rule as it stands beside results. */
    String words();

    /** Returns the rule of the least sum of cubes, the default: R. D. Crowninshield and R. A. Brand, J Biomech 14 (1981). */
    static SharingRule cubic() {
        return new Power(3);
    }

    /**
     * Returns the rule of the least sum of powers.
     *
     * @throws IllegalArgumentException if the exponent is not greater than 1
     */
    static SharingRule power(double exponent) {
        return new Power(exponent);
    }

    /** Returns the rule that lets all muscles work at an equal share as far as their arms allow. */
    static SharingRule equalShare() {
        return new EqualShare();
    }

    /** Returns the rule that uses as few muscles as can be. */
    static SharingRule singleMuscle() {
        return new SingleMuscle();
    }
}

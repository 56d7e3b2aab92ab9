package leverwright.run.gate;

/** Knows the generators of random numbers that take a seed from the cell's stream when none is given. */
final class SeededCalls {

    private SeededCalls() {}

    static boolean isGenerator(String type) {
        return type.equals("java/util/Random") || type.equals("java/util/SplittableRandom");
    }
}

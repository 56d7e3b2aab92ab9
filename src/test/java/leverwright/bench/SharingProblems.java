package leverwright.bench;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import leverwright.mechanics.muscle.CubicSharing;

/**
 * The problems of {@code src/test/peers/share.bin}: 9 muscles about 3 joints, 48 doubles each (27 arms by joint, 3 moments, 9
 * areas, 9 limits), and forces of {@code share_ref.bin} for the first of them, found by an exact method in another language.
 */
public final class SharingProblems {
    /** Muscles of a problem. */
    public static final int MUSCLES = 9;

    private static final int LENGTH = 48;
    private final double[] numbers;
    private final double[] forces;

    /** Reads both files. */
    public SharingProblems() throws IOException {
        numbers = read("share.bin");
        forces = read("share_ref.bin");
    }

    private static double[] read(String name) throws IOException {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(Path.of("src", "test", "peers", name)))
                .order(ByteOrder.LITTLE_ENDIAN);
        double[] values = new double[bytes.capacity() / Double.BYTES];
        bytes.asDoubleBuffer().get(values);
        return values;
    }

    /** Returns how many problems there are. */
    public int count() {
        return numbers.length / LENGTH;
    }

    /** Returns for how many of them the forces are known. */
    public int known() {
        return forces.length / MUSCLES;
    }

    /** Sets a problem. */
    public void set(CubicSharing solver, int problem) {
        int at = LENGTH * problem;
        for (int i = 0; i < MUSCLES; i++) {
            solver.muscle(
                    i,
                    numbers[at + 30 + i],
                    numbers[at + 39 + i],
                    numbers[at + i],
                    numbers[at + MUSCLES + i],
                    numbers[at + 2 * MUSCLES + i]);
        }
        solver.moments(numbers[at + 27], numbers[at + 28], numbers[at + 29]);
    }

    /** Returns a known force, N. */
    public double force(int problem, int muscle) {
        return forces[MUSCLES * problem + muscle];
    }

    /** Returns the largest limit of a problem, N. */
    public double largestLimit(int problem) {
        double largest = 0;
        for (int i = 0; i < MUSCLES; i++) {
            largest = Math.max(largest, numbers[LENGTH * problem + 39 + i]);
        }
        return largest;
    }

    /** Returns the greatest difference of a joint's moment from what the forces make, over the problem's greatest moment. */
    public double residual(CubicSharing solver, int problem) {
        int at = LENGTH * problem;
        double worst = 0;
        double greatest = 0;
        for (int j = 0; j < 3; j++) {
            double sum = -numbers[at + 27 + j];
            greatest = Math.max(greatest, Math.abs(sum));
            for (int i = 0; i < MUSCLES; i++) {
                sum += numbers[at + MUSCLES * j + i] * solver.force(i);
            }
            worst = Math.max(worst, Math.abs(sum));
        }
        return worst / greatest;
    }
}

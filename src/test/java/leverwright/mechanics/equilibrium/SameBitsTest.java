package leverwright.mechanics.equilibrium;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.Test;

/** The raw bits of many solves are the same on every JDK, interpreted or compiled, on one thread or two. */
class SameBitsTest {
    /** Of {@link SolveDigest#CASES} cases; the same on JDK 17 and 25. */
    private static final String STORED = "f42e4ca425415622";

    @Test
    void givesTheStoredBitsOnThisJdk() {
        assertEquals(STORED, SolveDigest.of(1, SolveDigest.CASES));
    }

    @Test
    void givesTheSameBitsInterpreted() throws Exception {
        Process child = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xint",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SolveDigest.class.getName())
                .redirectErrorStream(true)
                .start();
        String printed = new String(child.getInputStream().readAllBytes(), StandardCharsets.UTF_8).strip();
        assertEquals(0, child.waitFor(), printed);
        assertEquals(STORED, printed);
    }

    @Test
    void givesTheSameBitsCompiled() {
        for (int run = 0; run < 40; run++) {
            assertEquals(STORED, SolveDigest.of(1, SolveDigest.CASES), "run " + run);
        }
    }

    @Test
    void givesTheSameBitsOnTwoThreads() throws Exception {
        ExecutorService two = Executors.newFixedThreadPool(2);
        try {
            List<Future<String>> digests = new ArrayList<>();
            for (int run = 0; run < 8; run++) {
                digests.add(two.submit((Callable<String>) () -> SolveDigest.of(1, SolveDigest.CASES)));
            }
            for (Future<String> digest : digests) {
                assertEquals(STORED, digest.get());
            }
        } finally {
            two.shutdownNow();
        }
    }
}

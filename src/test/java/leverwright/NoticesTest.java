package leverwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** Keeps the licence notices in docs in step with what the build packages. */
class NoticesTest {

    @Test
    void theListOfThirdPartiesIsTheOneTheBuildGenerated() throws IOException {
        assertEquals(
                Files.readString(Path.of("target/licence/third-party.txt")),
                Files.readString(Path.of("docs/licence/third-party.txt")),
                "docs/licence/third-party.txt is out of date: copy target/licence/third-party.txt over it");
    }

    @Test
    void everyThirdPartyStandsUnderALicenceWhoseTextIsKept() throws IOException {
        for (String line : Files.readAllLines(Path.of("docs/licence/third-party.txt"))) {
            if (line.contains("BSD-2-Clause") || line.contains("BSD-3-Clause")) {
                String artefact = line.split(":")[1];
                Path text = Path.of("docs/licence", artefact + ".txt");
                assertTrue(Files.exists(text), () -> artefact + " asks for its own licence text, expected at " + text);
            }
        }
    }
}

package leverwright.mechanics.body;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The table that readers see against the one that prints use. */
class SignsDocumentTest {
    @Test
    void tableOfTheDocumentIsThatOfTheCode() throws IOException {
        String document = Files.readString(Path.of("docs/signs.md"));
        for (Joint joint : Joint.values()) {
            String turns = joint.counterClockwise() > 0 ? "counter-clockwise" : "clockwise";
            String end = "| " + joint.positiveAction() + " | " + turns + " | "
                    + joint.sides().words() + " |";
            assertTrue(
                    document.lines()
                            .anyMatch(line -> line.startsWith("| " + joint.words() + " |") && line.endsWith(end)),
                    () -> "docs/signs.md lacks a row for the " + joint.words() + " that ends with " + end);
        }
    }
}

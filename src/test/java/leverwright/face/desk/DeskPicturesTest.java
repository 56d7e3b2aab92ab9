package leverwright.face.desk;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ListView;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;
import leverwright.face.desk.model.Colours;
import leverwright.workbook.document.NoteCell;
import leverwright.workbook.document.Workbook;
import leverwright.workbook.document.WorkbookFiles;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** Pictures of the main states, in every set of colours, at scales 1 and 2, for people to look at. */
class DeskPicturesTest extends AtTheWindow {

    private static final Path FOLDER = Path.of("target/screenshots");
    private static final int FEWEST_SHADES = 200;

    @BeforeEach
    void makeFolder() throws Exception {
        Files.createDirectories(FOLDER);
    }

    @Test
    @Tag("minute")
    void theMainStatesAreDrawn() throws Exception {
        DeskWindow demo = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(demo.model());
        shoot(demo, "demo");
        bench.doing(demo::showTasks);
        shoot(demo, "help");
        bench.doing(demo.model()::hold);
        bench.doing(() -> demo.model().turn("Torso lean", 1.1));
        bench.untilFresh(demo.model());
        bench.doing(demo::goToOutline);
        shoot(demo, "before-after");
        bench.doing(() -> demo.model().type("moments", "table(held.moment(HIP, KNEE))", 0));
        bench.until("failed", () -> demo.model().status().get().contains("failed"));
        bench.doing(() -> demo.reveal("moments"));
        shoot(demo, "error");
        Path stranger = folder.resolve("stranger.leverwright.json");
        Workbook theirs = WorkbookFiles.onDisk().read(WindowBench.demo()).workbook();
        WorkbookFiles.onDisk().saveNew(stranger, theirs.withWords("The torso leans, changed", "somebody else", ""));
        shoot(bench.open(stranger), "stranger");
    }

    @Test
    @Tag("minute")
    void theCatalogueIsDrawn() throws Exception {
        DeskWindow demo = bench.open(bench.onShelf(WindowBench.demo()));
        bench.untilFresh(demo.model());
        bench.doing(demo::showExercises);
        bench.until("the catalogue is there", () -> list(demo).getItems().size() > 50);
        shoot(demo, "exercises");
        bench.doing(() -> {
            list(demo).getSelectionModel().select(2);
            list(demo).fireEvent(new KeyEvent(KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
        });
        bench.until(
                "its figure is drawn",
                () -> WindowThread.all(demo.stage().getScene().getRoot())
                        .anyMatch(
                                node -> String.valueOf(node.getAccessibleText()).startsWith("Front squat by Ines")));
        shoot(demo, "exercise");
    }

    @Test
    @Tag("minute")
    void aNoteWithTableAndFormulasIsDrawn() throws Exception {
        Workbook notes = Workbook.empty("Notes")
                .withAdded(
                        0,
                        new NoteCell(
                                "n1",
                                "# Levers\n\nThe moment is $M = W·d_{hip} / 2$ a side, and energy goes with $v^2$.\n\n"
                                        + "| joint | load arm | moment |\n|---|--:|--:|\n| hip | 25.6 cm | $M_{hip}$ |\n"
                                        + "| knee, bent as far as it goes | 4.3 cm | $M_{knee}$ |\n"));
        Path file = folder.resolve("notes.leverwright.json");
        WorkbookFiles.onDisk().saveNew(file, notes);
        shoot(bench.open(file), "notes");
    }

    private static ListView<?> list(DeskWindow window) {
        return WindowThread.all(window.stage().getScene().getRoot())
                .filter(node -> "Exercises".equals(node.getAccessibleText()))
                .map(node -> (ListView<?>) node)
                .findFirst()
                .orElseThrow();
    }

    private void shoot(DeskWindow window, String name) throws Exception {
        for (Colours colours : Colours.values()) {
            bench.doing(() -> bench.home.show(bench.home.looks().get().in(colours)));
            Thread.sleep(500);
            for (int scale = 1; scale <= 2; scale++) {
                Path file = FOLDER.resolve(name + "-" + colours.styleClass() + (scale == 1 ? "" : "@2") + ".png");
                int shades = write(window, scale, file);
                assertTrue(
                        shades > FEWEST_SHADES || colours == Colours.CONTRAST,
                        file + " has only " + shades + " shades");
            }
        }
        bench.doing(() -> bench.home.show(bench.home.looks().get().in(Colours.LIGHT)));
    }

    private int write(DeskWindow window, int scale, Path file) throws Exception {
        WritableImage image = bench.at(() -> {
            SnapshotParameters parameters = new SnapshotParameters();
            parameters.setTransform(Transform.scale(scale, scale));
            return window.stage().getScene().getRoot().snapshot(parameters, null);
        });
        int width = (int) image.getWidth();
        int height = (int) image.getHeight();
        int[] pixels = new int[width * height];
        image.getPixelReader().getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        picture.setRGB(0, 0, width, height, pixels, 0, width);
        ImageIO.write(picture, "png", file.toFile());
        Set<Integer> shades = new HashSet<>();
        for (int pixel : pixels) {
            shades.add(pixel);
        }
        return shades.size();
    }
}

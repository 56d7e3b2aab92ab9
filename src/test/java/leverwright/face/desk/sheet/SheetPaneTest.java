package leverwright.face.desk.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.stage.Stage;
import leverwright.face.desk.WindowThread;
import leverwright.face.desk.dials.SidePane;
import leverwright.face.publish.Cautions;
import leverwright.run.result.CellState;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.Result;
import leverwright.workbook.document.ScriptCell;
import leverwright.workbook.document.Workbook;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Sheet and side as a reader meets them: what is seen, clicked, dragged and typed. */
class SheetPaneTest {

    private static final String LEAN = "Torso lean";

    @TempDir
    private Path folder;

    private SheetBench bench;

    private void show(Workbook workbook) throws Exception {
        bench = new SheetBench(folder, workbook);
    }

    private void show(String... scripts) throws Exception {
        Workbook workbook = Workbook.empty("test");
        for (int i = 0; i < scripts.length; i++) {
            workbook = workbook.withAdded(i, new ScriptCell("c" + (i + 1), scripts[i]));
        }
        show(workbook);
    }

    @AfterEach
    void end() throws Exception {
        bench.close();
        assertEquals(List.of(), bench.failures);
    }

    private ChartPane chart(String cell) throws Exception {
        bench.doing(() -> bench.sheet.reveal(cell));
        Strip strip =
                bench.wait(bench.sheet, Strip.class, found -> found.cell().id().equals(cell));
        ChartPane chart = bench.wait(strip, ChartPane.class, found -> found.drawn() != null);
        bench.untilSteady(chart);
        return chart;
    }

    @Test
    void aChartReadsOutThePointUnderTheMouseAndAClickSetsTheDialToIt() throws Exception {
        show(SheetBench.demo());
        ChartPane chart = chart("lean-sweep");
        CurvesResult curves = (CurvesResult) bench.at(() -> bench.model
                .cell("lean-sweep")
                .orElseThrow()
                .shown()
                .get()
                .results()
                .get(0));
        int last = curves.curves().axis().values().size() - 1;
        Point2D place = bench.at(() -> chart.placeOf(last / 2).orElseThrow());
        Point2D screen = bench.at(() -> chart.localToScreen(place));
        bench.robot.moveTo(screen.getX(), screen.getY());
        bench.until("read out", () -> !chart.readoutWords().isEmpty());
        double setting = curves.curves().axis().values().get(last / 2);
        assertTrue(
                bench.at(chart::readoutWords)
                        .contains(curves.curves().axis().unit().format(setting, 4)),
                bench.at(chart::readoutWords));
        bench.robot.clickOn(screen.getX(), screen.getY());
        bench.until("turned", () -> Math.abs(bench.model.dials().get(0).value().get() - setting) < Math.toRadians(0.6));
        assertEquals(setting, bench.dial(LEAN), Math.toRadians(0.6));
    }

    @Test
    void aChartIsReadAndAnswersByTheKeyboardAlone() throws Exception {
        show(SheetBench.demo());
        ChartPane chart = chart("lean-sweep");
        bench.doing(chart::requestFocus);
        bench.robot.push(KeyCode.END);
        bench.until("read out", () -> chart.readoutWords().contains("80"));
        assertTrue(bench.at(chart::getAccessibleText).contains("80"));
        bench.robot.push(KeyCode.ENTER);
        bench.until("turned", () -> bench.model.dials().get(0).value().get() > Math.toRadians(79.9));
        bench.robot.push(KeyCode.PLUS);
        bench.until("a stretch", () -> !chart.whole().get());
        bench.robot.push(KeyCode.ESCAPE);
        bench.until("whole again", () -> chart.whole().get());
    }

    @Test
    void aMapReadsOutItsNodesAndAClickSetsBothDials() throws Exception {
        show(String.join(
                "\n",
                "var lean = dial(\"Torso lean\", deg(45)).from(deg(10)).to(deg(80));",
                "var bar = dial(\"Bar\", kg(50)).from(kg(0)).to(kg(100));",
                "var hinge = romanianDeadlift().barbell(bar).torsoLean(lean).by(lifter(\"Ines\").of(FEMALE, cm(178), kg(71)));",
                "map(sweep(TORSO_LEAN).from(deg(10)).to(deg(80)), sweep(BAR).to(kg(100))).points(15, 11).of(hinge)",
                "    .chart(moment(HIP));"));
        MapPane map = bench.wait(bench.sheet, MapPane.class, found -> found.drawn() != null);
        bench.untilSteady(map);
        Point2D place = bench.at(() -> map.placeOf(4, 2).orElseThrow());
        Point2D screen = bench.at(() -> map.localToScreen(place));
        bench.robot.moveTo(screen.getX(), screen.getY());
        bench.until(
                "read out",
                () -> map.readoutWords().startsWith("Torso lean 30.00°\nBar 20.00 kg\nhip extension moment "));
        bench.robot.clickOn(screen.getX(), screen.getY());
        bench.until(
                "both turned",
                () -> Math.abs(bench.model.dials().get(0).value().get() - Math.toRadians(30)) < 1e-6
                        && Math.abs(bench.model.dials().get(1).value().get() - 20) < 1e-6);
        bench.doing(map::requestFocus);
        bench.robot.push(KeyCode.UP);
        bench.until("one row up", () -> map.readoutWords().contains("Bar 30.00 kg"));
        bench.robot.push(KeyCode.PLUS);
        bench.until("a part", () -> !map.whole().get());
        bench.robot.push(KeyCode.ESCAPE);
        bench.until("whole again", () -> map.whole().get());
        bench.robot.moveTo(1, 1);
        bench.robot.push(KeyCode.UP);
        bench.until("read out by keys", () -> !map.readoutWords().isEmpty());
        bench.doing(() -> bench.model.turn("Bar", 70));
        bench.until("the dial went elsewhere", () -> map.readoutWords().isEmpty());
        bench.robot.push(KeyCode.UP);
        bench.until("keys go on from the dial", () -> map.readoutWords().contains("Bar 70.00 kg"));
    }

    @Test
    void keysReadAChartOnFromTheDialWhereverTheMouseOrTheKeysWereBefore() throws Exception {
        show(SheetBench.demo());
        ChartPane chart = chart("lean-sweep");
        Point2D right = bench.at(() -> chart.localToScreen(chart.placeOf(190).orElseThrow()));
        bench.robot.moveTo(right.getX(), right.getY());
        bench.until("read out", () -> !chart.readoutWords().isEmpty());
        bench.robot.moveTo(right.getX(), right.getY() - 700);
        bench.until("let go", () -> chart.readoutWords().isEmpty());
        bench.doing(chart::requestFocus);
        bench.robot.push(KeyCode.LEFT);
        // The two computed points nearest to 45 degrees.
        bench.until("at the dial", () -> chart.readoutWords().matches("(?s)" + LEAN + " (44.82|45.18).*"));
        bench.robot.push(KeyCode.END);
        bench.until("at the end", () -> chart.readoutWords().startsWith(LEAN + " 80"));
        bench.doing(() -> bench.model.turn(LEAN, Math.toRadians(60)));
        bench.until("let go", () -> chart.readoutWords().isEmpty());
        bench.untilFresh();
        bench.robot.push(KeyCode.RIGHT);
        // The computed point nearest to 60 degrees.
        bench.until("at the dial again", () -> chart.readoutWords().startsWith(LEAN + " 59.95"));
        bench.robot.push(KeyCode.RIGHT);
        bench.until("one further", () -> chart.readoutWords().startsWith(LEAN + " 60.3"));
    }

    @Test
    void aJointIsDraggedOnItsWayAndTurnsItsDial() throws Exception {
        show(SheetBench.demo());
        FigurePane figure = bench.wait(bench.side, FigurePane.class, found -> found.drawn() != null);
        Node grip =
                bench.wait(figure, Region.class, found -> found.getStyleClass().contains("figure-handle"));
        double before = bench.dial(LEAN);
        Point2D at = bench.at(() -> grip.localToScreen(9, 9));
        bench.robot.drag(at.getX(), at.getY()).moveBy(22, 16).moveBy(14, 14).drop();
        bench.until("turned", () -> bench.model.dials().get(0).value().get() > before + Math.toRadians(4));
    }

    @Test
    void aFigureIsPlayedThroughItsRepetitionAndStopsWhereItIsPaused() throws Exception {
        show(
                "var lean = dial(\"Torso lean\", deg(45)).from(deg(10)).to(deg(80));",
                "var hinge = romanianDeadlift().barbell(kg(50)).torsoLean(lean)"
                        + ".by(lifter(\"Ines\").of(FEMALE, cm(178), kg(71)));",
                "figure(repetition(hinge).through(TORSO_LEAN, deg(20), deg(60)).tempo(seconds(0.5), seconds(0.5)))");
        bench.wait(
                bench.side,
                FigurePane.class,
                found -> found.drawn() != null && found.dial().isPresent());
        javafx.scene.control.Button play = bench.wait(
                bench.side,
                javafx.scene.control.Button.class,
                found -> String.valueOf(found.getAccessibleText()).contains("0.5 s out, 0.5 s back"));
        List<Double> passed = new java.util.ArrayList<>();
        bench.doing(() -> bench.model
                .dials()
                .get(0)
                .value()
                .addListener((property, before, now) -> passed.add(now.doubleValue())));
        bench.doing(play::fire);
        bench.until("out", () -> passed.stream().anyMatch(lean -> lean > Math.toRadians(55)));
        bench.until("and back", () -> passed.get(passed.size() - 1) < Math.toRadians(25));
        bench.doing(play::fire);
        assertTrue(
                bench.at(() ->
                        passed.stream().allMatch(lean -> lean > Math.toRadians(19.4) && lean < Math.toRadians(60.6))),
                () -> "beyond the repetition: " + passed);
        double paused = bench.dial(LEAN);
        Thread.sleep(200);
        assertEquals(paused, bench.dial(LEAN));
    }

    @Test
    void aDialIsTypedWithItsUnitAndBadTextIsKeptWithTheReason() throws Exception {
        show(SheetBench.demo());
        TextField typed = bench.wait(bench.side, TextField.class, found -> true);
        bench.doing(typed::requestFocus);
        bench.doing(() -> typed.setText("forty"));
        bench.robot.push(KeyCode.ENTER);
        bench.until("told why", () -> !bench.model.dials().get(0).error().get().isEmpty());
        assertEquals("forty", bench.at(typed::getText));
        assertTrue(bench.words(bench.side)
                .contains(bench.at(() -> bench.model.dials().get(0).error().get())));
        bench.doing(() -> typed.setText("0.8 rad"));
        bench.robot.push(KeyCode.ENTER);
        bench.until("taken", () -> Math.abs(bench.model.dials().get(0).value().get() - 0.8) < 1e-9);
        assertEquals("", bench.at(() -> bench.model.dials().get(0).error().get()));
        bench.press(bench.side, "Reset");
        bench.until("reset", () -> Math.abs(bench.model.dials().get(0).value().get() - Math.PI / 4) < 1e-9);
    }

    @Test
    void aSliderGoesByStepsOfItsDial() throws Exception {
        show(SheetBench.demo());
        Slider slider = bench.wait(bench.side, Slider.class, found -> true);
        bench.doing(slider::requestFocus);
        double before = bench.dial(LEAN);
        double step = bench.at(() -> bench.model.dials().get(0).declared().get().step());
        bench.robot.push(KeyCode.RIGHT);
        bench.robot.push(KeyCode.RIGHT);
        bench.until("two steps on", () -> Math.abs(slider.getValue() - before - 2 * step) < step / 10);
        bench.robot.push(KeyCode.END);
        bench.until("at the end", () -> slider.getValue() == slider.getMax());
        assertEquals(Math.toRadians(80), bench.dial(LEAN), 1e-9);
    }

    @Test
    void whatIsHeldStandsBesideTheLiveAsChangesInTheTable() throws Exception {
        show(SheetBench.demo());
        bench.doing(bench.model::hold);
        bench.doing(() -> bench.model.turn(LEAN, Math.toRadians(60)));
        bench.doing(() -> bench.sheet.reveal("moments"));
        GridTable grid = bench.wait(
                bench.wait(bench.sheet, Strip.class, found -> found.cell().id().equals("moments")),
                GridTable.class,
                found -> true);
        bench.until(
                "changes",
                () -> WindowThread.all(grid)
                        .anyMatch(node ->
                                node instanceof Label label && label.getText().startsWith("+")));
        bench.doing(bench.model::letGo);
        bench.until(
                "no changes",
                () -> WindowThread.all(grid)
                        .noneMatch(node ->
                                node instanceof Label label && label.getText().startsWith("+")));
    }

    @Test
    void aTableSortsAndUnfoldsTheWorkingOfAnEntry() throws Exception {
        show(SheetBench.demo());
        bench.doing(() -> bench.sheet.reveal("moments"));
        Strip strip =
                bench.wait(bench.sheet, Strip.class, found -> found.cell().id().equals("moments"));
        GridTable grid = bench.wait(strip, GridTable.class, found -> true);
        List<String> script = firstColumn(grid);
        Button head = bench.find(grid, Button.class, found -> found.getText().startsWith("joint"))
                .get(0);
        bench.doing(head::fire);
        assertEquals(script.stream().sorted().toList(), firstColumn(grid));
        bench.doing(head::fire);
        bench.doing(head::fire);
        assertEquals(script, firstColumn(grid));
        bench.doing(grid::requestFocus);
        bench.robot.push(KeyCode.HOME);
        bench.robot.push(KeyCode.RIGHT);
        bench.robot.push(KeyCode.RIGHT);
        bench.robot.push(KeyCode.ENTER);
        WorkingView working = bench.wait(strip, WorkingView.class, WorkingView::isVisible);
        bench.until("unfolded", () -> working.text().contains("="));
        bench.robot.push(KeyCode.ESCAPE);
        bench.until("folded", () -> !working.getParent().isVisible());
    }

    private List<String> firstColumn(GridTable grid) throws Exception {
        return bench.at(() -> WindowThread.all(grid)
                .filter(node -> node instanceof Label
                        && node.getLayoutX() == 0
                        && node.getStyleClass().contains("entry"))
                .map(node -> ((Label) node).getText())
                .collect(Collectors.toList()));
    }

    @Test
    void whatIsSavedCarriesTheCaution() throws Exception {
        show(SheetBench.demo());
        Result result = bench.at(() -> bench.model
                .cell("lean-sweep")
                .orElseThrow()
                .shown()
                .get()
                .results()
                .get(0));
        assertTrue(
                new String(ResultFiles.csv(result), java.nio.charset.StandardCharsets.UTF_8).contains(Cautions.SHORT));
        assertTrue(ResultFiles.text(result).contains("not medical or training advice"));
        String svg = new String(ResultFiles.svg(result), java.nio.charset.StandardCharsets.UTF_8);
        assertTrue(svg.contains("not medical or training advice"));
        ResultHost host = new ResultHost(
                bench.model,
                new leverwright.face.desk.model.Pin("lean-sweep", 0),
                (owner, name, ending, kind) -> java.util.Optional.of(folder.resolve(name + "." + ending)));
        StringBuilder told = new StringBuilder();
        bench.doing(() -> host.save(
                bench.sheet,
                result,
                "png",
                "Picture",
                () -> ResultFiles.png(result, leverwright.face.draw.Palette.LIGHT),
                told::append));
        bench.until("saved", () -> told.toString().startsWith("Saved in"));
        try (var files = Files.list(folder)) {
            Path png = files.filter(file -> file.toString().endsWith(".png"))
                    .findFirst()
                    .orElseThrow();
            assertNotEquals(null, javax.imageio.ImageIO.read(png.toFile()));
        }
    }

    @Test
    @Tag("minute")
    void onlyStripsNearTheViewAreBuilt() throws Exception {
        Workbook many = Workbook.empty("many");
        for (int i = 0; i < 400; i++) {
            many = many.withAdded(i, new ScriptCell("c" + i, "var v" + i + " = " + i + ";"));
        }
        show(many);
        assertTrue(bench.find(bench.sheet, Strip.class, found -> true).size() < 40);
        bench.doing(() -> bench.sheet.reveal("c399"));
        bench.until(
                "the last one is built",
                () -> WindowThread.all(bench.sheet)
                        .anyMatch(node ->
                                node instanceof Strip strip && strip.cell().id().equals("c399")));
        bench.until(
                "those far away are given up",
                () -> WindowThread.all(bench.sheet)
                                .filter(Strip.class::isInstance)
                                .count()
                        < 60);
        assertTrue(
                bench.find(bench.sheet, Strip.class, found -> found.cell().id().equals("c0"))
                        .isEmpty());
    }

    @Test
    void cellsAreAddedMovedAndDeletedFromTheMenuOfAStrip() throws Exception {
        show("var a = 1;", "var b = 2;");
        StripHead head = bench.wait(bench.sheet, StripHead.class, found -> true);
        bench.doing(() -> choose(head, "Move down"));
        assertEquals(List.of("c2", "c1"), ids());
        bench.doing(() -> choose(head, "New script below"));
        assertEquals(3, ids().size());
        bench.doing(() -> choose(head, "Delete"));
        assertFalse(ids().contains("c1"));
        bench.doing(bench.model::undo);
        assertTrue(ids().contains("c1"));
    }

    private static void choose(StripHead head, String words) {
        head.menu().getItems().stream()
                .filter(item -> words.equals(item.getText()))
                .findFirst()
                .orElseThrow()
                .fire();
    }

    private List<String> ids() throws Exception {
        return bench.at(
                () -> bench.model.cells().stream().map(cell -> cell.id()).toList());
    }

    @Test
    void anErrorIsSaidWithItsLineAndWhatToDo() throws Exception {
        show("show(\"n\", 1)");
        bench.doing(() -> bench.model.type("c1", "var a = 1;\nshow(\"n\", nothingOfThatName)", 0));
        bench.until(
                "failed",
                () -> bench.model.cell("c1").orElseThrow().shown().get().state() == CellState.FAILED);
        bench.until(
                "said",
                () -> SheetBench.wordsNow(bench.sheet).contains("Go to line 2")
                        && SheetBench.wordsNow(bench.sheet).contains("failed ✕"));
        bench.doing(() -> bench.model.type("c1", "show(\"n\", 1)", 0));
        bench.untilFresh();
        assertFalse(bench.words(bench.sheet).contains("Go to line"));
    }

    @Test
    void longOutputScrollsInItsStrip() throws Exception {
        show("for (int i = 0; i < 500; i++) { System.out.println(\"line \" + i); }");
        bench.until(
                "shown",
                () -> WindowThread.all(bench.sheet).anyMatch(node -> node instanceof javafx.scene.control.ListView<?>));
        double height = bench.at(() -> WindowThread.all(bench.sheet)
                .filter(Strip.class::isInstance)
                .mapToDouble(strip -> ((Strip) strip).getHeight())
                .max()
                .orElse(0));
        assertTrue(height < 600, "the strip is " + height + " high");
    }

    @Test
    void everyControlHasANameAndCanBeReachedByTheKeyboard() throws Exception {
        show(SheetBench.demo());
        for (Node part : List.of(bench.sheet, bench.side)) {
            for (Control control : bench.find(
                    part,
                    Control.class,
                    found -> SheetBench.isSeen(found)
                            && !(found instanceof Label)
                            && !(found instanceof ScrollBar)
                            && !(found instanceof SidePane))) {
                boolean named = (control.getAccessibleText() != null
                                && !control.getAccessibleText().isBlank())
                        || (control instanceof javafx.scene.control.Labeled labeled
                                && !labeled.getText().isBlank());
                assertTrue(named, control + " has no name");
                assertTrue(control.isFocusTraversable(), control + " is not reached by the keyboard");
            }
        }
    }

    @Test
    void sheetsAndSidesThatAreGivenUpLeaveNothingBehind() throws Exception {
        show(SheetBench.demo());
        List<WeakReference<Object>> gone = IntStream.range(0, 3)
                .boxed()
                .flatMap(i -> {
                    try {
                        return shownAndGivenUp().stream();
                    } catch (Exception failure) {
                        throw new IllegalStateException(failure);
                    }
                })
                .toList();
        for (WeakReference<Object> each : gone) {
            for (int i = 0; i < 60 && each.get() != null; i++) {
                System.gc();
                bench.doing(() -> {});
                Thread.sleep(50);
            }
            assertNull(each.get(), () -> each.get() + " is still held");
        }
    }

    private List<WeakReference<Object>> shownAndGivenUp() throws Exception {
        SheetPane sheet = bench.at(() -> new SheetPane(bench.model));
        SidePane side = bench.at(() -> new SidePane(bench.model));
        Stage stage = bench.at(() -> {
            Stage window = new Stage();
            javafx.scene.layout.HBox both = new javafx.scene.layout.HBox(sheet, side);
            window.setScene(new Scene(both, 1000, 600));
            window.show();
            return window;
        });
        bench.doing(() -> bench.model.turn(LEAN, Math.toRadians(30)));
        bench.untilFresh();
        bench.doing(() -> {
            sheet.dispose();
            side.dispose();
            stage.setScene(new Scene(new Region(), 10, 10));
            stage.close();
        });
        return List.of(new WeakReference<>(sheet), new WeakReference<>(side));
    }
}

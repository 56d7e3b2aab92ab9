package leverwright.face.desk.catalogue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.sheet.StillPane;
import leverwright.face.desk.style.Words;
import leverwright.run.result.CurvesResult;
import leverwright.run.result.FigureResult;
import leverwright.workbook.scenario.ExerciseShelf;

/** One exercise to be tried: figure, moments through its way, knobs, and what it trains, assumes and warns of. */
final class ExercisePage extends BorderPane {
    /** Puts lines into the sheet. */
    interface Inserting {
        /** Puts an exercise with its settings into the sheet, with what is to be shown of it. */
        void insert(ExerciseShelf.Entry entry, Map<Integer, Double> set, ExerciseShelf.Trying trying, Shown shown);
    }

    /**
     * What is shown of an exercise that is put into the sheet.
     *
     * @param figure whether its figure is
     * @param table whether its moments are
     * @param chart whether its moments through its way are
     */
    record Shown(boolean figure, boolean table, boolean chart) {}

    private final ExerciseShelf.Entry entry;
    private final Map<Integer, Double> set = new LinkedHashMap<>();
    private final ComboBox<ExerciseShelf.Trying> lifters = new ComboBox<>();
    private final AddedRows added = new AddedRows(this::tryIt);
    private final List<KnobRow> rows = new ArrayList<>();
    private final StillPane figure;
    private final StillPane chart;
    private final Label refused = Words.paragraph("", "dial-error");
    private final Trial trial;
    private final Button put = new Button("Put it into the sheet");

    /**
     * Makes the page.
     *
     * @param people whom the workbook knows; at least one
     */
    ExercisePage(DeskModel model, ExerciseShelf.Entry entry, List<ExerciseShelf.Trying> people, Inserting inserting) {
        this.entry = entry;
        figure = new StillPane(model);
        chart = new StillPane(model);
        trial = new Trial(this::show, this::refuse);
        getStyleClass().add("exercise-page");
        refused.managedProperty().bind(refused.visibleProperty());
        refused.setVisible(false);
        chart.managedProperty().bind(chart.visibleProperty());
        chart.setVisible(entry.way().isPresent());
        List<Node> parts = new ArrayList<>();
        parts.add(Words.paragraph("Trains " + String.join("; ", entry.trains()) + "."));
        parts.addAll(List.of(by(people), refused, figure, chart, Words.paragraph("KNOBS", "heading")));
        wayFirst().forEach(place -> parts.add(row(place)));
        parts.add(Words.paragraph("ADDED LOADS", "heading"));
        parts.add(added);
        parts.addAll(facts());
        setCenter(Words.pane(entry.name() + ", to be tried", parts));
        setBottom(foot(inserting));
        tryIt();
    }

    private Node by(List<ExerciseShelf.Trying> people) {
        lifters.getItems().addAll(people);
        lifters.setValue(people.get(0));
        lifters.setAccessibleText("Lifter who tries it");
        lifters.valueProperty().addListener((property, before, now) -> tryIt());
        FlowPane by = new FlowPane(new Label("by "), lifters);
        by.getStyleClass().add("catalogue-foot");
        return by;
    }

    /** Orders figure and chart; what was typed is read where they are computed, so that bad words are told like the rest. */
    private void tryIt() {
        ExerciseShelf.Trying who = lifters.getValue();
        AddedRows.Typed typed = added.typed();
        trial.order(entry, set, () -> who.with(typed.read()));
    }

    /** The places of the knobs, the one that moves before the others. */
    private List<Integer> wayFirst() {
        List<Integer> places = new ArrayList<>();
        entry.way().ifPresent(way -> places.add(way.knob()));
        for (int k = 0; k < entry.knobs().size(); k++) {
            if (!places.contains(k)) {
                places.add(k);
            }
        }
        return places;
    }

    private Node row(int place) {
        KnobRow row = new KnobRow(
                entry.knobs().get(place),
                si -> {
                    set.put(place, si);
                    tryIt();
                },
                () -> {
                    set.remove(place);
                    tryIt();
                });
        rows.add(row);
        return row;
    }

    private List<Node> facts() {
        List<Node> facts = new ArrayList<>();
        fact(facts, "Carried by", entry.supports());
        fact(facts, "Loads", entry.loads().isEmpty() ? List.of("body weight alone") : entry.loads());
        fact(facts, "Plane", List.of(entry.plane()));
        fact(facts, "What follows", List.of(entry.follows()));
        fact(facts, "Free forces", entry.freeForces());
        fact(facts, "Assumes", entry.assumptions());
        fact(facts, "Cautions", entry.cautions());
        return facts;
    }

    private static void fact(List<Node> facts, String what, List<String> words) {
        if (!words.isEmpty()) {
            facts.add(Words.paragraph(what, "term"));
            words.forEach(each -> facts.add(Words.paragraph(each)));
        }
    }

    private Node foot(Inserting inserting) {
        CheckBox ofFigure = new CheckBox("figure");
        CheckBox ofTable = new CheckBox("moments");
        CheckBox ofChart = new CheckBox("chart");
        ofFigure.setSelected(true);
        ofTable.setSelected(true);
        ofChart.setSelected(entry.way().isPresent());
        ofChart.setDisable(entry.way().isEmpty());
        put.getStyleClass().add("primary");
        put.setOnAction(event -> inserting.insert(
                entry,
                Map.copyOf(set),
                lifters.getValue().with(added.typed().read()),
                new Shown(ofFigure.isSelected(), ofTable.isSelected(), ofChart.isSelected())));
        Label with = new Label("with its");
        FlowPane foot = new FlowPane(put, with, ofFigure, ofTable, ofChart);
        foot.getStyleClass().add("catalogue-foot");
        return foot;
    }

    private void show(ExerciseShelf.View view) {
        refused.setVisible(!view.remarks().isEmpty());
        refused.setText(String.join("\n", view.remarks()));
        put.setDisable(false);
        figure.show(new FigureResult(view.sketch().title(), "", view.sketch(), List.of()));
        if (view.curves() != null) {
            chart.show(new CurvesResult(view.curves().title(), view.curves(), List.of()));
        }
    }

    /** No posture has these settings: the last one stays in sight, and nothing can be put into the sheet. */
    private void refuse(String words) {
        refused.setText(words);
        refused.setVisible(true);
        put.setDisable(true);
    }

    List<KnobRow> rows() {
        return List.copyOf(rows);
    }

    /** Stops following the desk. */
    void dispose() {
        trial.end();
        figure.dispose();
        chart.dispose();
    }
}

package leverwright.face.desk.catalogue;

import java.util.function.DoubleConsumer;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DialText;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;
import leverwright.run.result.DialDeclared;
import leverwright.run.result.Quantity;
import leverwright.workbook.scenario.ExerciseShelf;

/** One knob of an exercise: its name, its value as text that can be typed, a slider over its range, and the way back. */
final class KnobRow extends VBox {
    private static final double STEPS = 100;

    private final ExerciseShelf.Setting knob;
    private final DialDeclared range;
    private final DoubleConsumer set;
    private final Runnable unset;
    private final TextField typed = new TextField();
    private final Slider slider = new Slider();
    private final Button reset = new Button("Reset");
    private final Label error = new Label();
    private boolean following;

    /**
     * Makes a row that stands at the knob's default.
     *
     * @param set takes the SI value that a reader chose
     * @param unset is told when the default holds again
     */
    KnobRow(ExerciseShelf.Setting knob, DoubleConsumer set, Runnable unset) {
        this.knob = knob;
        this.set = set;
        this.unset = unset;
        Unit unit = knob.unit();
        double step = unit == Unit.DEGREE || unit == Unit.PERCENT || unit == Unit.CENTIMETRE
                ? unit.toSi(1)
                : (knob.most() - knob.least()) / STEPS;
        Quantity standard = Quantity.exact(knob.standard(), unit);
        range = new DialDeclared(knob.name(), standard, standard, knob.least(), knob.most(), step);
        getStyleClass().addAll("dial", "knob");
        build();
        show(knob.standard());
        reset.setVisible(false);
    }

    private void build() {
        Label name = new Label(knob.name());
        name.setWrapText(true);
        name.setMaxWidth(Double.MAX_VALUE);
        name.setLabelFor(typed);
        String meaning = knob.meaning() + "\nStarts at " + text(knob.standard()) + ": " + knob.reason();
        Tooltip help = new Tooltip(meaning);
        help.setWrapText(true);
        help.setMaxWidth(360);
        name.setTooltip(help);
        HBox.setHgrow(name, Priority.ALWAYS);
        typed.getStyleClass().add("dial-value");
        typed.setAccessibleText(knob.name() + ", " + knob.meaning());
        typed.setOnAction(event -> take());
        typed.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                take();
            }
        });
        typed.setOnKeyPressed(event -> {
            if (event.getCode() == KeyCode.ESCAPE) {
                show(slider.getValue());
                event.consume();
            }
        });
        reset.getStyleClass().addAll("plain", "small", "dial-reset");
        reset.setMinWidth(USE_PREF_SIZE);
        reset.setAccessibleText("Reset " + knob.name());
        reset.setOnAction(event -> {
            show(knob.standard());
            reset.setVisible(false);
            unset.run();
        });
        HBox line = new HBox(name, reset, typed);
        line.getStyleClass().add("dial-line");
        slider.setMin(knob.least());
        slider.setMax(knob.most());
        slider.setBlockIncrement(range.step());
        slider.setAccessibleText(knob.name());
        slider.valueProperty().addListener((property, before, now) -> turn(now.doubleValue()));
        Region space = new Region();
        HBox.setHgrow(space, Priority.ALWAYS);
        HBox ends = new HBox(
                new Label(knob.unit().format(knob.least())),
                space,
                new Label(knob.unit().format(knob.most())));
        ends.getStyleClass().add("dial-ends");
        error.getStyleClass().add("dial-error");
        error.setWrapText(true);
        error.setMinHeight(USE_PREF_SIZE);
        error.managedProperty().bind(error.visibleProperty());
        error.setVisible(false);
        getChildren().addAll(line, slider, ends, error);
    }

    private String text(double si) {
        return MeasureText.exact(knob.unit().dimension().of(si, 0), knob.unit());
    }

    private void show(double si) {
        following = true;
        slider.setValue(si);
        typed.setText(text(si));
        error.setVisible(false);
        following = false;
    }

    private void turn(double si) {
        if (!following) {
            choose(DialText.turned(range, si));
        }
    }

    private void take() {
        try {
            String setting = DialText.typed(range, typed.getText());
            double si = MeasureText.parse(setting, knob.unit().dimension()).si();
            if (!text(si).equals(text(slider.getValue()))) {
                choose(setting);
            } else {
                show(slider.getValue());
            }
        } catch (IllegalArgumentException wrong) {
            error.setText(wrong.getMessage());
            error.setVisible(true);
        }
    }

    private void choose(String setting) {
        double si = MeasureText.parse(setting, knob.unit().dimension()).si();
        show(si);
        reset.setVisible(true);
        set.accept(si);
    }

    /** Returns the knob. */
    ExerciseShelf.Setting knob() {
        return knob;
    }

    /** Sets the knob as a reader would who typed this. */
    void type(String text) {
        typed.setText(text);
        take();
    }
}

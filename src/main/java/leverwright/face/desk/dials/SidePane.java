package leverwright.face.desk.dials;

import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import leverwright.face.desk.model.DeskModel;
import leverwright.face.desk.model.DialView;

/** The dials of one workbook. */
public final class SidePane extends VBox {

    private final DeskModel model;
    private final ObservableList<DialView> dials;
    private final ListChangeListener<DialView> follow = change -> take();

    /**
     * Shows the dials of a workbook.
     *
     * @param model the workbook
     */
    public SidePane(DeskModel model) {
        this.model = model;
        dials = model.dials();
        getStyleClass().add("side");
        setAccessibleText("Dials");
        dials.addListener(follow);
        take();
    }

    private void take() {
        getChildren().clear();
        for (DialView dial : dials) {
            getChildren().add(control(dial));
        }
    }

    private VBox control(DialView dial) {
        Label name = new Label(dial.name());
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        TextField typed = new TextField(dial.setting().get());
        typed.getStyleClass().add("dial-value");
        typed.setAccessibleText(dial.name());
        typed.setPrefColumnCount(8);
        typed.setOnAction(event -> model.typeDial(dial.name(), typed.getText()));
        dial.setting().addListener((property, before, now) -> typed.setText(now));
        Slider slider = new Slider(
                dial.declared().get().from(),
                dial.declared().get().to(),
                dial.value().get());
        slider.setAccessibleText(dial.name());
        slider.setBlockIncrement(dial.declared().get().step());
        slider.valueProperty().addListener((property, before, now) -> {
            if (now.doubleValue() != dial.value().get()) {
                model.turn(dial.name(), now.doubleValue());
            }
        });
        dial.value().addListener((property, before, now) -> slider.setValue(now.doubleValue()));
        Button reset = new Button("Reset");
        reset.setOnAction(event -> model.resetDial(dial.name()));
        VBox control = new VBox(new HBox(8, name, typed, reset), slider);
        control.getStyleClass().add("dial");
        return control;
    }

    /** Stops following the workbook. */
    public void dispose() {
        dials.removeListener(follow);
    }
}

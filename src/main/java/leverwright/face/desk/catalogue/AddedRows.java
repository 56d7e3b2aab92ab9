package leverwright.face.desk.catalogue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import leverwright.mechanics.measure.Dimension;
import leverwright.mechanics.measure.MeasureText;
import leverwright.workbook.scenario.AddedLoads;

/** Loads beside an exercise's own, typed as text with units: vest, chains, a measured band, a guide of the bar. */
final class AddedRows extends VBox {
    private final Runnable changed;
    private final TextField vest = new TextField();
    private final TextField chains = new TextField();
    private final TextField chainLength = new TextField();
    private final TextField rest = new TextField();
    private final TextField stretched = new TextField();
    private final TextField returned = new TextField();
    private final TextField ahead = new TextField();
    private final TextField height = new TextField();
    private final CheckBox guided = new CheckBox("bar guided upright");

    /**
     * Makes rows that add nothing.
     *
     * @param changed is told when something was typed or chosen
     */
    AddedRows(Runnable changed) {
        this.changed = changed;
        getStyleClass().addAll("dial", "knob");
        row("Vest", "5 kg", vest);
        row("Chains, all together", "16 kg", chains);
        row("Length of each chain", "160 cm", chainLength);
        row("Band, length at rest", "60 cm", rest);
        row("Band, stretched by and with", "30 cm 70 N, 90 cm 150 N", stretched);
        row("Band, on the way back", "45 cm 60 N, 90 cm 145 N", returned);
        row("Band's anchor, ahead", "15 cm", ahead);
        row("Band's anchor, height", "0 cm", height);
        guided.setOnAction(event -> changed.run());
        getChildren().add(guided);
    }

    private void row(String what, String example, TextField field) {
        Label name = new Label(what);
        name.setWrapText(true);
        name.setMaxWidth(Double.MAX_VALUE);
        name.setLabelFor(field);
        HBox.setHgrow(name, Priority.ALWAYS);
        field.setPromptText(example);
        field.setAccessibleText(what + ", for example " + example);
        field.setOnAction(event -> changed.run());
        field.focusedProperty().addListener((property, before, now) -> {
            if (!now) {
                changed.run();
            }
        });
        HBox line = new HBox(name, field);
        line.getStyleClass().add("dial-line");
        getChildren().add(line);
    }

    /** Returns what stands in the rows. */
    Typed typed() {
        return new Typed(
                List.of(
                        vest.getText(),
                        chains.getText(),
                        chainLength.getText(),
                        rest.getText(),
                        stretched.getText(),
                        returned.getText(),
                        ahead.getText(),
                        height.getText()),
                guided.isSelected());
    }

    /**
     * What stands in the rows, to be read.
     *
     * @param texts in the order of the rows
     * @param guided whether the bar is guided
     */
    record Typed(List<String> texts, boolean guided) {
        /**
         * Returns the loads.
         *
         * @throws IllegalArgumentException in words, where a text cannot be read
         */
        AddedLoads read() {
            return new AddedLoads(
                    number(0, Dimension.MASS, 0),
                    number(1, Dimension.MASS, 0),
                    number(2, Dimension.LENGTH, 1.6),
                    band(),
                    guided);
        }

        private double number(int row, Dimension wanted, double otherwise) {
            String text = texts.get(row).strip();
            return text.isEmpty() ? otherwise : MeasureText.parse(text, wanted).si();
        }

        private Optional<AddedLoads.Tied> band() {
            return texts.get(4).isBlank()
                    ? Optional.empty()
                    : Optional.of(AddedLoads.Tied.of(
                            number(3, Dimension.LENGTH, 0.6),
                            points(texts.get(4)),
                            points(texts.get(5)),
                            number(6, Dimension.LENGTH, 0),
                            number(7, Dimension.LENGTH, 0)));
        }

        private static List<double[]> points(String text) {
            List<double[]> points = new ArrayList<>();
            for (String pair : text.split("[,;]")) {
                if (!pair.isBlank()) {
                    String[] words = pair.strip().split("\\s+");
                    if (words.length != 4) {
                        throw new IllegalArgumentException("\"" + pair.strip()
                                + "\" is no point of a band; write a stretch and its force, such as 30 cm 70 N");
                    }
                    points.add(new double[] {
                        MeasureText.parse(words[0] + " " + words[1], Dimension.LENGTH)
                                .si(),
                        MeasureText.parse(words[2] + " " + words[3], Dimension.FORCE)
                                .si()
                    });
                }
            }
            return points;
        }
    }
}

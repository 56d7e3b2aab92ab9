package leverwright.face.desk.editor;

import java.util.LinkedHashMap;
import java.util.Map;
import javafx.scene.Group;
import javafx.scene.text.Text;
import javafx.scene.text.TextBoundsType;
import javafx.scene.text.TextFlow;

/**
 * How high source stands at a width, lines broken where they do not fit. An area itself knows that only once it was laid out
 * at that width, which is too late for whoever lays it out.
 */
final class SourceHeight extends Group {

    private static final int MOST_KEPT = 500;

    /** What the place of a line between two pixels may cost. */
    private static final double ROUNDING = 0.5;

    private final Text letter = new Text("x");
    private final Text broken = new Text("x");
    private final TextFlow flow = new TextFlow(broken);
    private final Map<String, Double> heights = new LinkedHashMap<>();
    private double width = -1;
    private double one = -1;
    private double row;

    SourceHeight() {
        letter.getStyleClass().add("source-measure");
        broken.getStyleClass().add("source-measure");
        // As an area lays its lines out.
        broken.setBoundsType(TextBoundsType.LOGICAL_VERTICAL_CENTER);
        flow.setLineSpacing(1);
        getChildren().addAll(letter, flow);
        setManaged(false);
        setVisible(false);
    }

    /** Returns the height of one row. */
    double row() {
        follow(width);
        return row;
    }

    private void follow(double now) {
        double letterNow = letter.getLayoutBounds().getWidth();
        if (letterNow != one) {
            broken.setText("x");
            row = Math.ceil(flow.prefHeight(-1)) + ROUNDING;
        }
        if (now != width || letterNow != one || heights.size() > MOST_KEPT) {
            heights.clear();
            width = now;
            one = letterNow;
        }
    }

    /**
     * Returns how high lines of source stand.
     *
     * @param lines the lines
     * @param wide the width that they have; 0 or less where nothing breaks
     * @param most the most that is wanted, in rows
     */
    double of(Iterable<String> lines, double wide, int most) {
        follow(wide);
        double all = 0;
        for (String line : lines) {
            all += wide <= 0 || (line.length() * one <= wide && isPlain(line)) ? row : height(line);
            if (all >= most * row) {
                return most * row;
            }
        }
        return Math.max(row, all);
    }

    private static boolean isPlain(String line) {
        return line.chars().allMatch(each -> each >= ' ' && each < 127);
    }

    private double height(String line) {
        return heights.computeIfAbsent(line, text -> {
            broken.setText(text);
            return Math.ceil(flow.prefHeight(width)) + ROUNDING;
        });
    }
}

package leverwright.face.desk.editor;

import javafx.geometry.Insets;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polyline;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;

/** A part of a formula that is no line of text; it stands on the line of the words around it. */
abstract class FormulaPart extends Region {

    /** How high the line of a fraction stands over the line of writing, in heights of a letter's row. */
    private static final double AXIS = 0.22;

    private static final double AIR = 2;

    private final Text letter = new Text("x");

    private FormulaPart(String text) {
        letter.getStyleClass().addAll("text", "note-text");
        letter.setManaged(false);
        letter.setVisible(false);
        getChildren().add(letter);
        setAccessibleRole(AccessibleRole.TEXT);
        setAccessibleText(text);
        setPadding(new Insets(0, AIR, 0, AIR));
    }

    final double row() {
        return letter.getLayoutBounds().getHeight();
    }

    @Override
    protected final double computeMinWidth(double height) {
        return computePrefWidth(height);
    }

    @Override
    protected final double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    /** What stands above a line and what below. */
    static final class Fraction extends FormulaPart {
        private final TextFlow above;
        private final TextFlow below;
        private final Line line = new Line();

        Fraction(String text, TextFlow above, TextFlow below) {
            super(text);
            this.above = above;
            this.below = below;
            line.getStyleClass().add("formula-line");
            line.setManaged(false);
            getChildren().addAll(above, below, line);
        }

        @Override
        public double getBaselineOffset() {
            return above.prefHeight(-1) + AIR + row() * AXIS;
        }

        @Override
        protected double computePrefWidth(double height) {
            return Math.max(above.prefWidth(-1), below.prefWidth(-1))
                    + 2 * AIR
                    + snappedLeftInset()
                    + snappedRightInset();
        }

        @Override
        protected double computePrefHeight(double width) {
            return above.prefHeight(-1) + 2 * AIR + below.prefHeight(-1);
        }

        @Override
        protected void layoutChildren() {
            double top = above.prefHeight(-1);
            double wide = getWidth();
            above.resizeRelocate((wide - above.prefWidth(-1)) / 2, 0, above.prefWidth(-1), top);
            below.resizeRelocate(
                    (wide - below.prefWidth(-1)) / 2, top + 2 * AIR, below.prefWidth(-1), below.prefHeight(-1));
            double y = Math.round(top + AIR) + 0.5;
            line.setStartX(snappedLeftInset());
            line.setEndX(wide - snappedRightInset());
            line.setStartY(y);
            line.setEndY(y);
        }
    }

    /** What stands under the sign of a root. */
    static final class Root extends FormulaPart {
        private static final double SIGN = 0.55;
        private static final double ROOF = 3;

        private final TextFlow inside;
        private final Polyline sign = new Polyline();

        Root(String text, TextFlow inside) {
            super(text);
            this.inside = inside;
            sign.getStyleClass().add("formula-line");
            sign.setManaged(false);
            getChildren().addAll(inside, sign);
        }

        @Override
        public double getBaselineOffset() {
            return ROOF + inside.getBaselineOffset();
        }

        @Override
        protected double computePrefWidth(double height) {
            return row() * SIGN + inside.prefWidth(-1) + AIR + snappedLeftInset() + snappedRightInset();
        }

        @Override
        protected double computePrefHeight(double width) {
            return inside.prefHeight(-1) + ROOF;
        }

        @Override
        protected void layoutChildren() {
            double left = snappedLeftInset();
            double wide = row() * SIGN;
            double high = getHeight();
            inside.resizeRelocate(left + wide, ROOF, inside.prefWidth(-1), inside.prefHeight(-1));
            sign.getPoints()
                    .setAll(
                            left,
                            high * 0.62,
                            left + wide * 0.2,
                            high * 0.56,
                            left + wide * 0.5,
                            high - 2,
                            left + wide * 0.95,
                            1.5,
                            getWidth() - snappedRightInset(),
                            1.5);
        }
    }
}

package leverwright.face.draw;

import java.awt.Shape;
import java.util.List;

/** One mark of a picture, in picture units (1 unit is 1 CSS pixel at natural size), x to the right and y downwards. */
public sealed interface Mark {

    /**
     * A drawn line.
     *
     * @param shape the line
     * @param pen how it is drawn
     */
    record Stroke(Shape shape, Pen pen) implements Mark {}

    /**
     * A filled area.
     *
     * @param shape the area
     * @param ink its colour
     * @param opacity from 0 for clear to 1 for solid
     */
    record Fill(Shape shape, Ink ink, double opacity) implements Mark {}

    /**
     * A line of words.
     *
     * @param text the words
     * @param x where the words are anchored
     * @param y the base line
     * @param anchor which end of the words lies at {@code x}
     * @param type size, weight and ink
     */
    record Words(String text, double x, double y, Anchor anchor, Type type) implements Mark {

        /** Returns the left edge of the words. */
        double left() {
            return x - anchor.share() * type.width(text);
        }
    }

    /**
     * How a line is drawn.
     *
     * @param ink its colour
     * @param width its width
     * @param dash lengths of dashes and gaps in turn; empty for a solid line
     * @param round whether its ends are round
     */
    record Pen(Ink ink, double width, List<Double> dash, boolean round) {

        /** Copies the dashes. */
        public Pen {
            dash = List.copyOf(dash);
        }

        /** Returns a solid pen with round ends. */
        static Pen solid(Ink ink, double width) {
            return new Pen(ink, width, List.of(), true);
        }

        /** Returns a dashed pen with flat ends. */
        static Pen dashed(Ink ink, double width, Double... dash) {
            return new Pen(ink, width, List.of(dash), false);
        }
    }

    /** Which end of a line of words lies at its place. */
    enum Anchor {
        /** The words begin there. */
        START(0),
        /** The words are centred there. */
        MIDDLE(0.5),
        /** The words end there. */
        END(1);

        private final double share;

        Anchor(double share) {
            this.share = share;
        }

        /** Returns the share of the width that lies to the left of the place. */
        double share() {
            return share;
        }
    }

    /**
     * The type of a line of words.
     *
     * @param ink its colour
     * @param size the font size
     * @param bold whether it is bold
     * @param halo whether a rim in the ground's colour parts the words from lines behind them
     */
    record Type(Ink ink, double size, boolean bold, boolean halo) {

        /** Returns how wide words of this type are, never less than in common sans-serif fonts. */
        double width(String text) {
            return TextWidth.of(text) * size * (bold ? 1.1 : 1);
        }
    }
}

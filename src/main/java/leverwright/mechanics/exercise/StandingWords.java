package leverwright.mechanics.exercise;

import leverwright.mechanics.body.Segment;
import leverwright.mechanics.measure.Angle;
import leverwright.mechanics.measure.Length;
import leverwright.mechanics.measure.MeasureText;
import leverwright.mechanics.measure.Unit;

/** Says in a sentence how a posture stands that is not simply balanced. */
record StandingWords(HeldPosture held) {
    private static final int DIGITS = 3;

    String text() {
        Layout layout = held.layout();
        String where = layout.plane() == Plane.FRONTAL
                ? "the pressure falls " + cm(held.pressureSi()) + " beside the middle of the foot"
                : "the pressure falls " + cm(held.pressureSi()) + " ahead of the heel, the foot is "
                        + cm(layout.body().length(Segment.FOOT)) + " long";
        Layout.Found found = layout.found();
        if (found != null && !found.balanced()) {
            Segment segment = found.segment();
            return "Not balanced: no lean of the " + segment.words()
                    + " brings the pressure to the chosen place. Held at "
                    + MeasureText.print(Angle.of(layout.lean(segment)), Unit.DEGREE, DIGITS) + ", " + where + ": "
                    + held.standing().words() + ".";
        }
        return "Held as set: " + where + ": " + held.standing().words() + ".";
    }

    private static String cm(double metres) {
        return MeasureText.print(Length.of(metres), Unit.CENTIMETRE, DIGITS);
    }
}

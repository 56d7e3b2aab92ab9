package leverwright.mechanics.equilibrium;

import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;

/** One force that holds a linkage; places from the first link's start, m; forces N; couples and moments N·m. */
final class Hold {
    final int link;
    private final Place place;
    double atX;
    double atY;
    double forceX;
    double forceY;
    double couple;
    /** Moment of force and couple about the first link's start. */
    double moment;

    Hold(Linkage linkage, String on, Place place) {
        this.link = linkage.indexOf(on);
        this.place = place;
    }

    /** Puts the force at its place on its body. */
    void place(Body body) {
        atX = body.startX + (place.along() * body.cosine() - place.across() * body.sine());
        atY = body.startY + (place.along() * body.sine() + place.across() * body.cosine());
    }

    /** Returns the moment about a body's start. */
    double momentAbout(Body body) {
        return moment - (body.startX * forceY - body.startY * forceX);
    }

    /** Sets the force. */
    void force(double x, double y) {
        force(x, y, atX * y - atY * x + couple);
    }

    /** Sets the force, and its moment with the couple about the first link's start. */
    void force(double x, double y, double about) {
        forceX = x;
        forceY = y;
        moment = about;
    }
}

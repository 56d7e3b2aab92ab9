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
    /** About the first link's start. */
    double moment;

    Hold(Linkage linkage, String on, Place place) {
        this.link = linkage.indexOf(on);
        this.place = place;
    }

    /** Puts the force at its place on its body. */
    void place(Body body) {
        atX = body.startX + (place.along() * body.rotation.cosine() - place.across() * body.rotation.sine());
        atY = body.startY + (place.along() * body.rotation.sine() + place.across() * body.rotation.cosine());
    }

    /** Returns the moment about a body's start. */
    double momentAbout(Body body) {
        return (atX - body.startX) * forceY - (atY - body.startY) * forceX + couple;
    }

    /** Sets the force, and with its place and couple the moment. */
    void force(double x, double y) {
        forceX = x;
        forceY = y;
        moment = atX * y - atY * x + couple;
    }
}

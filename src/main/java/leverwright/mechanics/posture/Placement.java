package leverwright.mechanics.posture;

import java.util.Optional;
import leverwright.mechanics.numeric.Rotation;
import leverwright.mechanics.numeric.Vector;

/** Where the joints, mass centres and places of a linkage lie in one configuration; immutable. */
public final class Placement {
    private final Linkage linkage;
    private final Configuration configuration;
    private final double[] sines;
    private final double[] cosines;
    private final double[] startX;
    private final double[] startY;

    private Placement(Linkage linkage, Configuration configuration) {
        int size = linkage.size();
        this.linkage = linkage;
        this.configuration = configuration;
        sines = new double[size];
        cosines = new double[size];
        startX = new double[size];
        startY = new double[size];
        Rotation rotation = new Rotation();
        for (int k = 0; k < size; k++) {
            rotation.turnTo(configuration.directions().get(k));
            sines[k] = rotation.sine();
            cosines[k] = rotation.cosine();
            if (k > 0) {
                int parent = linkage.parent(k);
                Place at = linkage.attachment(k);
                startX[k] = startX[parent] + (at.along() * cosines[parent] - at.across() * sines[parent]);
                startY[k] = startY[parent] + (at.along() * sines[parent] + at.across() * cosines[parent]);
            }
        }
    }

    /**
     * Returns where the linkage lies.
     *
     * @throws IllegalArgumentException if the configuration is of another number of links
     */
    public static Placement of(Linkage linkage, Configuration configuration) {
        if (configuration.directions().size() != linkage.size()) {
            throw new IllegalArgumentException("the linkage has " + linkage.size() + " links, but the configuration "
                    + configuration.directions().size() + " directions; allowed: one per link");
        }
        return new Placement(linkage, configuration);
    }

    /** Returns the linkage that is placed. */
    public Linkage linkage() {
        return linkage;
    }

    /** Returns the configuration that places it. */
    public Configuration configuration() {
        return configuration;
    }

    /** Returns where a link starts: its joint to its parent, or the origin; world coordinates, m. */
    public Vector start(String link) {
        return start(linkage.indexOf(link));
    }

    /** Returns where the link with an index starts, m. */
    public Vector start(int index) {
        return configuration.origin().plus(new Vector(startX[index], startY[index]));
    }

    /** Returns where the axis of a link ends, {@code length} from its start, m. */
    public Vector end(String link) {
        return point(link, Place.along(linkage.link(linkage.indexOf(link)).length()));
    }

    /** Returns where a place on a link lies, m. */
    public Vector point(String link, Place place) {
        return point(linkage.indexOf(link), place);
    }

    /** Returns where a place on the link with an index lies, m. */
    public Vector point(int index, Place place) {
        double x = startX[index] + (place.along() * cosines[index] - place.across() * sines[index]);
        double y = startY[index] + (place.along() * sines[index] + place.across() * cosines[index]);
        return configuration.origin().plus(new Vector(x, y));
    }

    /** Returns the unit vector along a link's axis. */
    public Vector axis(String link) {
        int index = linkage.indexOf(link);
        return new Vector(cosines[index], sines[index]);
    }

    /** Returns the mass centre of a link, m. */
    public Vector centre(String link) {
        int index = linkage.indexOf(link);
        return point(index, linkage.link(index).centre());
    }

    /** Returns the mass centre of the links from one index to another, both included; empty if they have no mass. */
    public Optional<Vector> massCentre(int from, int to) {
        double mass = 0;
        Vector sum = Vector.ZERO;
        for (int k = from; k <= to; k++) {
            Link link = linkage.link(k);
            mass += link.mass();
            sum = sum.plus(point(k, link.centre()).times(link.mass()));
        }
        return mass > 0 ? Optional.of(sum.times(1 / mass)) : Optional.empty();
    }

    /** Returns the mass centre of all links, m; empty if they have no mass. */
    public Optional<Vector> massCentre() {
        return massCentre(0, linkage.size() - 1);
    }
}

package leverwright.mechanics.equilibrium;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import leverwright.mechanics.load.BandLoad;
import leverwright.mechanics.load.CableLoad;
import leverwright.mechanics.load.CoupleLoad;
import leverwright.mechanics.load.ForceLoad;
import leverwright.mechanics.load.Load;
import leverwright.mechanics.load.MassLoad;
import leverwright.mechanics.load.PadLoad;
import leverwright.mechanics.numeric.RandomStream;
import leverwright.mechanics.numeric.Vector;
import leverwright.mechanics.posture.Configuration;
import leverwright.mechanics.posture.Link;
import leverwright.mechanics.posture.Linkage;
import leverwright.mechanics.posture.Place;

/** A linkage drawn at random: chain or tree, with loads of every kind, at rest or moving, held in one of three ways. */
record RandomCase(Linkage linkage, Configuration configuration, List<Load> loads, Support support) {
    static RandomCase of(long seed) {
        RandomStream random = new RandomStream(seed);
        int size = 1 + random.nextIndex(9);
        boolean tree = random.nextIndex(2) == 0;
        Linkage.Builder builder = Linkage.builder();
        for (int k = 0; k < size; k++) {
            Link link = new Link(
                    "link " + k,
                    1 + random.nextIndex(2),
                    random.nextBetween(0, 40),
                    random.nextBetween(0.1, 0.6),
                    place(random),
                    place(random),
                    random.nextBetween(0, 2));
            if (tree && k > 1) {
                builder.attach(link, "link " + random.nextIndex(k), place(random));
            } else {
                builder.then(link);
            }
        }
        Linkage linkage = builder.build();
        double[] directions = new double[size];
        for (int k = 0; k < size; k++) {
            directions[k] = random.nextBetween(-4, 4);
        }
        Configuration configuration =
                Configuration.at(linkage, new Vector(random.nextBetween(-1, 1), random.nextBetween(0, 1)), directions);
        if (random.nextIndex(2) == 0) {
            configuration = configuration.moving(rates(random, size, 3), rates(random, size, 20));
        }
        return new RandomCase(linkage, configuration, loads(random, size), support(random, size));
    }

    RandomCase atRest() {
        List<Double> none = Collections.nCopies(linkage.size(), 0.0);
        return new RandomCase(linkage, configuration.moving(none, none), loads, support);
    }

    LinkageSolver solver() {
        return LinkageSolver.of(linkage, loads, support)
                .configuration(configuration)
                .solve();
    }

    private static Place place(RandomStream random) {
        return new Place(random.nextBetween(-0.1, 0.5), random.nextBetween(-0.1, 0.1));
    }

    private static List<Double> rates(RandomStream random, int size, double reach) {
        List<Double> rates = new ArrayList<>();
        for (int k = 0; k < size; k++) {
            rates.add(random.nextBetween(-reach, reach));
        }
        return rates;
    }

    private static Support support(RandomStream random, int size) {
        String on = "link " + random.nextIndex(size);
        return switch (random.nextIndex(3)) {
            case 0 -> new GroundSupport(on);
            case 1 -> new FixedSupport(on, place(random));
            default ->
                new TwoContacts(
                        new TwoContacts.Contact(on, new Place(0.7, 0)),
                        new TwoContacts.Contact("link " + random.nextIndex(size), new Place(-0.9, 0.3)),
                        random.nextBetween(-1, 1),
                        random.nextBetween(-200, 200));
        };
    }

    private static List<Load> loads(RandomStream random, int size) {
        List<Load> loads = new ArrayList<>();
        int count = random.nextIndex(5);
        for (int l = 0; l < count; l++) {
            String on = "link " + random.nextIndex(size);
            Place at = place(random);
            double couple = random.nextBetween(-20, 20);
            Vector far = new Vector(random.nextBetween(-2, 2), random.nextBetween(2, 4));
            loads.add(
                    switch (random.nextIndex(6)) {
                        case 0 -> new MassLoad(on, at, random.nextBetween(0, 100), couple);
                        case 1 ->
                            new ForceLoad(on, at, random.nextBetween(-300, 300), random.nextBetween(-300, 300), couple);
                        case 2 -> new CoupleLoad(on, couple);
                        case 3 -> new CableLoad(on, at, far, random.nextBetween(0, 90), 2, couple);
                        case 4 -> new BandLoad(on, at, far, 400, random.nextBetween(0, 4), couple);
                        default -> new PadLoad(on, at, random.nextBetween(0, 400), PadLoad.Side.RIGHT, couple);
                    });
        }
        return loads;
    }
}

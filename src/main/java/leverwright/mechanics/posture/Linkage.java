package leverwright.mechanics.posture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A planar tree of links, immutable, built at run time.
 *
 * <p>Links are kept so that every link is followed by all that hangs on it: the links of the part that hangs on link k have
 * the indices k to {@link #lastOf lastOf(k)}. For a chain that is the order of building. Link 0 starts at the origin; joint
 * k, for k ≥ 1, is where link k starts on its {@link #parent parent}.
 */
public final class Linkage {
    /** Greatest number of links. */
    public static final int MOST_LINKS = 10_000;

    private final List<Link> links;
    private final int[] parents;
    private final int[] lasts;
    private final List<Place> attachments;
    private final Map<String, Integer> indices;

    private Linkage(List<Link> links, int[] parents, List<Place> attachments) {
        this.links = List.copyOf(links);
        this.parents = parents;
        this.attachments = List.copyOf(attachments);
        this.lasts = lasts(parents);
        this.indices = new LinkedHashMap<>();
        for (int k = 0; k < links.size(); k++) {
            indices.put(links.get(k).name(), k);
        }
    }

    private static int[] lasts(int[] parents) {
        int[] lasts = new int[parents.length];
        for (int k = parents.length - 1; k >= 0; k--) {
            lasts[k] = Math.max(lasts[k], k);
            if (k > 0) {
                lasts[parents[k]] = Math.max(lasts[parents[k]], lasts[k]);
            }
        }
        return lasts;
    }

    /**
     * Returns the chain in which each link starts at the {@code next} place of the one before it.
     *
     * @throws IllegalArgumentException if there is no link, too many, or two with the same name
     */
    public static Linkage chain(List<Link> links) {
        Builder builder = new Builder();
        for (Link link : links) {
            builder.then(link);
        }
        return builder.build();
    }

    /** Returns a new, empty builder. */
    public static Builder builder() {
        return new Builder();
    }

    /** Returns the number of links. */
    public int size() {
        return links.size();
    }

    /** Returns the links by index. */
    public List<Link> links() {
        return links;
    }

    /** Returns the link with an index from 0 to {@link #size} − 1. */
    public Link link(int index) {
        return links.get(index);
    }

    /** Returns the index of the link that link {@code index} starts on, or −1 for link 0. */
    public int parent(int index) {
        return parents[index];
    }

    /** Returns where on its parent link {@code index} starts; for link 0 the start place, which means the origin. */
    public Place attachment(int index) {
        return attachments.get(index);
    }

    /** Returns the index of the last link of the part that hangs on link {@code index}, that link included. */
    public int lastOf(int index) {
        return lasts[index];
    }

    /**
     * Returns the number of sides by which values at joint {@code index} ≥ 1 are divided: 2 if either link is a pair (a hip
     * or a shoulder counts as paired).
     */
    public int sidesOfJoint(int index) {
        return Math.max(links.get(index).sides(), links.get(parents[index]).sides());
    }

    /** Tells whether a link of that name exists. */
    public boolean has(String name) {
        return indices.containsKey(name);
    }

    /**
     * Returns the index of a link.
     *
     * @throws IllegalArgumentException if there is no link of that name; the message lists the names
     */
    public int indexOf(String name) {
        Integer index = indices.get(name);
        if (index == null) {
            throw new IllegalArgumentException(
                    "there is no link \"" + name + "\"; allowed: " + String.join(", ", indices.keySet()));
        }
        return index;
    }

    /** Returns the mass of all links, kg, both sides together. */
    public double mass() {
        double sum = 0;
        for (Link link : links) {
            sum += link.mass();
        }
        return sum;
    }

    /** Builds a linkage link by link; the first one starts at the origin. */
    public static final class Builder {
        private record Node(Link link, Place attachment, List<Node> children) {}

        private final Map<String, Node> nodes = new LinkedHashMap<>();
        private String latest = "";

        private Builder() {}

        /** Adds the link that starts at the origin: the same as {@link #then} on an empty builder. */
        public Builder start(Link link) {
            if (!nodes.isEmpty()) {
                throw new IllegalArgumentException("link \"" + link.name()
                        + "\" cannot start the linkage, which starts with another; join it by then or attach");
            }
            return then(link);
        }

        /** Adds a link at the {@code next} place of the link added before it. */
        public Builder then(Link link) {
            return nodes.isEmpty() ? add(link, Place.START) : attach(link, latest);
        }

        /** Adds a link at the {@code next} place of the link with the name {@code parent}. */
        public Builder attach(Link link, String parent) {
            return attach(link, parent, node(parent).link().next());
        }

        /** Adds a link at a place on the link with the name {@code parent}. */
        public Builder attach(Link link, String parent, Place at) {
            Node on = node(parent);
            add(link, at);
            on.children().add(node(link.name()));
            return this;
        }

        private Builder add(Link link, Place at) {
            if (nodes.containsKey(link.name())) {
                throw new IllegalArgumentException(
                        "two links are called \"" + link.name() + "\"; give each link a name of its own");
            }
            if (nodes.size() == MOST_LINKS) {
                throw new IllegalArgumentException("a linkage has more than " + MOST_LINKS + " links");
            }
            nodes.put(link.name(), new Node(link, at, new ArrayList<>()));
            latest = link.name();
            return this;
        }

        private Node node(String name) {
            Node node = nodes.get(name);
            if (node == null) {
                throw new IllegalArgumentException("there is no link \"" + name + "\" to join a link to; so far: "
                        + String.join(", ", nodes.keySet()));
            }
            return node;
        }

        /**
         * Returns the linkage.
         *
         * @throws IllegalArgumentException if no link was added
         */
        public Linkage build() {
            if (nodes.isEmpty()) {
                throw new IllegalArgumentException("a linkage has no links; it needs at least one");
            }
            List<Link> links = new ArrayList<>();
            List<Place> attachments = new ArrayList<>();
            int[] parents = new int[nodes.size()];
            List<Node> open = new ArrayList<>();
            List<Integer> above = new ArrayList<>();
            open.add(nodes.values().iterator().next());
            above.add(-1);
            while (!open.isEmpty()) {
                Node node = open.remove(open.size() - 1);
                int index = links.size();
                parents[index] = above.remove(above.size() - 1);
                links.add(node.link());
                attachments.add(node.attachment());
                for (int c = node.children().size() - 1; c >= 0; c--) {
                    open.add(node.children().get(c));
                    above.add(index);
                }
            }
            return new Linkage(links, parents, attachments);
        }
    }
}

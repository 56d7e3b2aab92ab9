package leverwright.run.gate.woven;

import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Unmodifiable sets that keep the order in which they were written: twins of {@link Set#of()} and its kin. */
public final class OrderedSets {

    private OrderedSets() {}

    private static <E> Set<E> build(List<E> elements) {
        Set<E> set = new LinkedHashSet<>();
        for (E element : elements) {
            if (!set.add(Objects.requireNonNull(element, "an element of Set.of is null"))) {
                throw new IllegalArgumentException(
                        "Set.of has the element " + SameText.of(element) + " twice; write every element once");
            }
        }
        return Collections.unmodifiableSet(set);
    }

    /**
     * Returns a copy in the order of the original, each element once.
     *
     * @param original the elements to copy
     */
    public static <E> Set<E> copyOf(Collection<? extends E> original) {
        Set<E> set = new LinkedHashSet<>();
        for (E element : original) {
            set.add(Objects.requireNonNull(element, "an element of Set.copyOf is null"));
        }
        return Collections.unmodifiableSet(set);
    }

    /**
     * Returns a set of the elements, in their order.
     *
     * @param elements the elements, each once
     */
    @SafeVarargs
    public static <E> Set<E> of(E... elements) {
        return build(Arrays.asList(elements));
    }

    // One method for each number of elements, since the gate changes only the name of the class that is called.

    /** Returns a set of 0 elements, in the order of writing. */
    public static <E> Set<E> of() {
        return build(List.of());
    }

    /** Returns a set of 1 elements, in the order of writing. */
    public static <E> Set<E> of(E e1) {
        return build(List.of(e1));
    }

    /** Returns a set of 2 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2) {
        return build(List.of(e1, e2));
    }

    /** Returns a set of 3 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3) {
        return build(List.of(e1, e2, e3));
    }

    /** Returns a set of 4 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4) {
        return build(List.of(e1, e2, e3, e4));
    }

    /** Returns a set of 5 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4, E e5) {
        return build(List.of(e1, e2, e3, e4, e5));
    }

    /** Returns a set of 6 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4, E e5, E e6) {
        return build(List.of(e1, e2, e3, e4, e5, e6));
    }

    /** Returns a set of 7 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4, E e5, E e6, E e7) {
        return build(List.of(e1, e2, e3, e4, e5, e6, e7));
    }

    /** Returns a set of 8 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4, E e5, E e6, E e7, E e8) {
        return build(List.of(e1, e2, e3, e4, e5, e6, e7, e8));
    }

    /** Returns a set of 9 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4, E e5, E e6, E e7, E e8, E e9) {
        return build(List.of(e1, e2, e3, e4, e5, e6, e7, e8, e9));
    }

    /** Returns a set of 10 elements, in the order of writing. */
    public static <E> Set<E> of(E e1, E e2, E e3, E e4, E e5, E e6, E e7, E e8, E e9, E e10) {
        return build(List.of(e1, e2, e3, e4, e5, e6, e7, e8, e9, e10));
    }
}

package leverwright.run.gate.woven;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/** Unmodifiable maps that keep the order in which they were written: twins of {@link Map#of()} and its kin. */
public final class OrderedMaps {

    private OrderedMaps() {}

    private static <K, V> Map<K, V> build(Object... keysAndValues) {
        Map<K, V> map = new LinkedHashMap<>();
        for (int i = 0; i < keysAndValues.length; i += 2) {
            @SuppressWarnings("unchecked")
            K key = (K) keysAndValues[i];
            @SuppressWarnings("unchecked")
            V value = (V) keysAndValues[i + 1];
            put(map, key, value);
        }
        return Collections.unmodifiableMap(map);
    }

    private static <K, V> void put(Map<K, V> map, K key, V value) {
        Objects.requireNonNull(key, "a key of Map.of is null");
        Objects.requireNonNull(value, "a value of Map.of is null");
        if (map.put(key, value) != null) {
            throw new IllegalArgumentException(
                    "Map.of has the key " + SameText.of(key) + " twice; write every key once");
        }
    }

    /**
     * Returns a map with the entries in their order.
     *
     * @param entries the entries
     */
    @SafeVarargs
    public static <K, V> Map<K, V> ofEntries(Map.Entry<? extends K, ? extends V>... entries) {
        Map<K, V> map = new LinkedHashMap<>();
        for (Map.Entry<? extends K, ? extends V> entry : entries) {
            put(map, entry.getKey(), entry.getValue());
        }
        return Collections.unmodifiableMap(map);
    }

    /**
     * Returns a copy in the order of the original.
     *
     * @param original the map to copy
     */
    public static <K, V> Map<K, V> copyOf(Map<? extends K, ? extends V> original) {
        Map<K, V> map = new LinkedHashMap<>();
        original.forEach((key, value) -> put(map, key, value));
        return Collections.unmodifiableMap(map);
    }

    // One method for each number of pairs, since the gate changes only the name of the class that is called.

    /** Returns a map with 0 entries, in the order of writing. */
    public static <K, V> Map<K, V> of() {
        return build();
    }

    /** Returns a map with 1 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(K k1, V v1) {
        return build(k1, v1);
    }

    /** Returns a map with 2 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(K k1, V v1, K k2, V v2) {
        return build(k1, v1, k2, v2);
    }

    /** Returns a map with 3 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(K k1, V v1, K k2, V v2, K k3, V v3) {
        return build(k1, v1, k2, v2, k3, v3);
    }

    /** Returns a map with 4 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(K k1, V v1, K k2, V v2, K k3, V v3, K k4, V v4) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4);
    }

    /** Returns a map with 5 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(K k1, V v1, K k2, V v2, K k3, V v3, K k4, V v4, K k5, V v5) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4, k5, v5);
    }

    /** Returns a map with 6 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(K k1, V v1, K k2, V v2, K k3, V v3, K k4, V v4, K k5, V v5, K k6, V v6) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4, k5, v5, k6, v6);
    }

    /** Returns a map with 7 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(
            K k1, V v1, K k2, V v2, K k3, V v3, K k4, V v4, K k5, V v5, K k6, V v6, K k7, V v7) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4, k5, v5, k6, v6, k7, v7);
    }

    /** Returns a map with 8 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(
            K k1, V v1, K k2, V v2, K k3, V v3, K k4, V v4, K k5, V v5, K k6, V v6, K k7, V v7, K k8, V v8) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4, k5, v5, k6, v6, k7, v7, k8, v8);
    }

    /** Returns a map with 9 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(
            K k1,
            V v1,
            K k2,
            V v2,
            K k3,
            V v3,
            K k4,
            V v4,
            K k5,
            V v5,
            K k6,
            V v6,
            K k7,
            V v7,
            K k8,
            V v8,
            K k9,
            V v9) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4, k5, v5, k6, v6, k7, v7, k8, v8, k9, v9);
    }

    /** Returns a map with 10 entries, in the order of writing. */
    public static <K, V> Map<K, V> of(
            K k1,
            V v1,
            K k2,
            V v2,
            K k3,
            V v3,
            K k4,
            V v4,
            K k5,
            V v5,
            K k6,
            V v6,
            K k7,
            V v7,
            K k8,
            V v8,
            K k9,
            V v9,
            K k10,
            V v10) {
        return build(k1, v1, k2, v2, k3, v3, k4, v4, k5, v5, k6, v6, k7, v7, k8, v8, k9, v9, k10, v10);
    }
}

package leverwright.run.gate.woven;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collector;
import java.util.stream.Collectors;

/** Collectors whose sets and maps keep the order of arrival: twins of those in {@link Collectors}. */
public final class OrderedCollectors {

    private OrderedCollectors() {}

    /** Returns the twin of {@link Collectors#toSet()}. */
    public static <T> Collector<T, ?, Set<T>> toSet() {
        return Collectors.toCollection(LinkedHashSet::new);
    }

    /** Returns the twin of {@link Collectors#toUnmodifiableSet()}. */
    public static <T> Collector<T, ?, Set<T>> toUnmodifiableSet() {
        return Collectors.collectingAndThen(toSet(), Collections::unmodifiableSet);
    }

    /** Returns the twin of {@link Collectors#toMap(Function, Function)}. */
    public static <T, K, U> Collector<T, ?, Map<K, U>> toMap(
            Function<? super T, ? extends K> key, Function<? super T, ? extends U> value) {
        return toMap(key, value, (first, second) -> {
            throw new IllegalStateException("two elements have the same key, with the values " + SameText.of(first)
                    + " and " + SameText.of(second) + "; give toMap a third argument that merges them");
        });
    }

    /** Returns the twin of {@link Collectors#toMap(Function, Function, BinaryOperator)}. */
    public static <T, K, U> Collector<T, ?, Map<K, U>> toMap(
            Function<? super T, ? extends K> key, Function<? super T, ? extends U> value, BinaryOperator<U> merge) {
        return Collectors.toMap(key, value, merge, LinkedHashMap::new);
    }

    /** Returns the twin of {@link Collectors#toUnmodifiableMap(Function, Function)}. */
    public static <T, K, U> Collector<T, ?, Map<K, U>> toUnmodifiableMap(
            Function<? super T, ? extends K> key, Function<? super T, ? extends U> value) {
        return Collectors.collectingAndThen(toMap(key, value), Collections::unmodifiableMap);
    }

    /** Returns the twin of {@link Collectors#toUnmodifiableMap(Function, Function, BinaryOperator)}. */
    public static <T, K, U> Collector<T, ?, Map<K, U>> toUnmodifiableMap(
            Function<? super T, ? extends K> key, Function<? super T, ? extends U> value, BinaryOperator<U> merge) {
        return Collectors.collectingAndThen(toMap(key, value, merge), Collections::unmodifiableMap);
    }

    /** Returns the twin of {@link Collectors#groupingBy(Function)}. */
    public static <T, K> Collector<T, ?, Map<K, List<T>>> groupingBy(Function<? super T, ? extends K> key) {
        return groupingBy(key, Collectors.toList());
    }

    /** Returns the twin of {@link Collectors#groupingBy(Function, Collector)}. */
    public static <T, K, A, D> Collector<T, ?, Map<K, D>> groupingBy(
            Function<? super T, ? extends K> key, Collector<? super T, A, D> downstream) {
        return Collectors.groupingBy(key, LinkedHashMap::new, downstream);
    }
}

package leverwright.run.gate.woven;

import java.lang.reflect.Array;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.Collection;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Values as text that is the same on every JDK and at every start: shortest digits for doubles, no addresses or identity
 * numbers for objects without words of their own.
 */
public final class SameText {

    private static final int DEEPEST = 20;
    private static final int LONGEST = 1_000_000;

    private static final ClassValue<Boolean> HAS_WORDS = new ClassValue<>() {
        @Override
        protected Boolean computeValue(Class<?> type) {
            try {
                return type.getMethod("toString").getDeclaringClass() != Object.class;
            } catch (NoSuchMethodException e) {
                return false;
            }
        }
    };

    private SameText() {}

    /**
     * Returns a value as text.
     *
     * @param value any value, or null
     * @return its words; for objects without words of their own the short name of their kind
     */
    public static String of(@Nullable Object value) {
        if (value instanceof String text) {
            return text;
        }
        if (value == null) {
            return "null";
        }
        StringBuilder out = new StringBuilder();
        write(value, out, 0);
        return out.toString();
    }

    /**
     * Returns a number in the form of {@link Double#toString(double)} with the fewest digits that give it back.
     *
     * @param value any number
     */
    public static String of(double value) {
        return ShortestDigits.of(value);
    }

    /**
     * Returns a number in the form of {@link Float#toString(float)} with the fewest digits that give it back.
     *
     * @param value any number
     */
    public static String of(float value) {
        return ShortestDigits.of(value);
    }

    /**
     * Returns the text of an object that must not be null, as a call of {@code toString()} does.
     *
     * @param value the object
     * @throws NullPointerException when it is null
     */
    public static String ofCall(@Nullable Object value) {
        if (value == null) {
            throw new NullPointerException("toString() was asked of a value that is null");
        }
        return of(value);
    }

    /**
     * Returns the text of an object or a replacement for null, as {@code Objects.toString} does.
     *
     * @param value the object, or null
     * @param replacement what to return for null
     */
    public static @Nullable String orElse(@Nullable Object value, @Nullable String replacement) {
        return value == null ? replacement : of(value);
    }

    /**
     * Returns the short name of an object's kind: what stands for an object without words of its own.
     *
     * @param value the object
     */
    public static String nameOf(Object value) {
        return value.getClass().getSimpleName();
    }

    /**
     * Appends a value, as {@code StringBuilder.append} does.
     *
     * @param builder where to append
     * @param value what to append
     * @return the builder
     */
    public static StringBuilder append(StringBuilder builder, @Nullable Object value) {
        return builder.append(of(value));
    }

    /** Appends a number, as {@code StringBuilder.append} does. */
    public static StringBuilder append(StringBuilder builder, double value) {
        return builder.append(of(value));
    }

    /** Appends a number, as {@code StringBuilder.append} does. */
    public static StringBuilder append(StringBuilder builder, float value) {
        return builder.append(of(value));
    }

    /**
     * Returns a record in the form of its own {@code toString()}.
     *
     * @param record the record
     */
    public static String ofRecord(Object record) {
        StringBuilder out = new StringBuilder();
        writeRecord(record, out, 0);
        return out.toString();
    }

    private static void write(@Nullable Object value, StringBuilder out, int depth) {
        if (out.length() > LONGEST || depth > DEEPEST) {
            out.append('…');
        } else if (value instanceof Double number) {
            out.append(of(number.doubleValue()));
        } else if (value instanceof Float number) {
            out.append(of(number.floatValue()));
        } else if (value == null || (value instanceof Number && isJava(value))) {
            out.append(value);
        } else if (value.getClass().isArray()) {
            out.append(value.getClass().getComponentType().getSimpleName())
                    .append('[')
                    .append(Array.getLength(value))
                    .append(']');
        } else if (value instanceof Collection<?> collection && isJava(value)) {
            writeAll(collection, out, depth);
        } else if (value instanceof Map<?, ?> map && isJava(value)) {
            writeMap(map, out, depth);
        } else if (value.getClass().isHidden()) {
            out.append("lambda");
        } else if (HAS_WORDS.get(value.getClass())) {
            out.append(value);
        } else {
            out.append(value.getClass().getSimpleName());
        }
    }

    private static boolean isJava(Object value) {
        return value.getClass().getClassLoader() == null;
    }

    private static void writeAll(Collection<?> collection, StringBuilder out, int depth) {
        String separator = "";
        out.append('[');
        for (Object element : collection) {
            StopCheck.check();
            out.append(separator);
            write(element, out, depth + 1);
            separator = ", ";
            if (out.length() > LONGEST) {
                break;
            }
        }
        out.append(']');
    }

    private static void writeMap(Map<?, ?> map, StringBuilder out, int depth) {
        String separator = "";
        out.append('{');
        for (Map.Entry<?, ?> entry : map.entrySet()) {
            StopCheck.check();
            out.append(separator);
            write(entry.getKey(), out, depth + 1);
            out.append('=');
            write(entry.getValue(), out, depth + 1);
            separator = ", ";
            if (out.length() > LONGEST) {
                break;
            }
        }
        out.append('}');
    }

    private static void writeRecord(Object record, StringBuilder out, int depth) {
        String separator = "";
        out.append(record.getClass().getSimpleName()).append('[');
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            out.append(separator).append(component.getName()).append('=');
            write(read(component.getAccessor(), record), out, depth + 1);
            separator = ", ";
        }
        out.append(']');
    }

    private static @Nullable Object read(Method accessor, Object record) {
        try {
            accessor.setAccessible(true);
            return accessor.invoke(record);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        } catch (IllegalAccessException e) {
            throw new IllegalStateException(e);
        }
    }
}

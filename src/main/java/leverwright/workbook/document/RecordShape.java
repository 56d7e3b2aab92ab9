package leverwright.workbook.document;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonProblem;
import org.jspecify.annotations.Nullable;

/** How one kind of record is taken apart and put together again. */
final class RecordShape {

    /** One component: its key in the file, its type, and how it is read from the record. */
    record Part(String key, ValueType type, Method accessor) {}

    /** The type of a value: its class, whether it may be null, and, for a list, the type of its elements. */
    record ValueType(
            Class<?> type, boolean nullable, @Nullable ValueType element) {

        static ValueType of(AnnotatedType annotated) {
            boolean nullable = annotated.isAnnotationPresent(Nullable.class);
            if (annotated instanceof AnnotatedParameterizedType list) {
                return new ValueType(List.class, nullable, of(list.getAnnotatedActualTypeArguments()[0]));
            }
            return new ValueType((Class<?>) annotated.getType(), nullable, null);
        }
    }

    private final List<Part> parts;
    private final Constructor<?> constructor;

    RecordShape(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        parts = Arrays.stream(components).map(RecordShape::part).toList();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            constructor = type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException("every record has its canonical constructor", impossible);
        }
    }

    private static Part part(RecordComponent component) {
        return new Part(component.getName(), ValueType.of(component.getAnnotatedType()), component.getAccessor());
    }

    List<Part> parts() {
        return parts;
    }

    /** Returns the value of a component. */
    static @Nullable Object value(Part part, Object record) {
        try {
            return part.accessor().invoke(record);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException("the records of results are public", closed);
        }
    }

    /**
     * Returns a record made of its components.
     *
     * @param values the components in order
     * @param place where they were read, for the complaint when they do not fit together
     */
    Object make(List<@Nullable Object> values, JsonCursor place) {
        try {
            return constructor.newInstance(new ArrayList<>(values).toArray());
        } catch (InvocationTargetException refused) {
            throw explained(refused.getCause(), place);
        } catch (ReflectiveOperationException closed) {
            throw new IllegalStateException("the records of results are public", closed);
        }
    }

    private static JsonProblem explained(@Nullable Throwable cause, JsonCursor place) {
        if (cause instanceof Error error) {
            throw error;
        }
        String said = cause instanceof IllegalArgumentException ? cause.getMessage() : null;
        return place.problem(said == null ? "the values here do not fit together; compute the workbook again" : said);
    }
}

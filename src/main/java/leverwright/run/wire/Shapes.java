package leverwright.run.wire;

import java.lang.reflect.AnnotatedParameterizedType;
import java.lang.reflect.AnnotatedType;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * The shapes of the closed set of records, derived from their components. Only primitive numbers, text, enums, arrays of
 * bytes and doubles, lists, records and sealed interfaces over records have a shape; anything else is a mistake in the
 * house and is refused when the shape is derived.
 */
final class Shapes {

    private final Map<Class<?>, Shape> known = new LinkedHashMap<>();

    Shapes() {
        known.put(double.class, Scalars.DOUBLE);
        known.put(Double.class, Scalars.DOUBLE);
        known.put(int.class, Scalars.INT);
        known.put(Integer.class, Scalars.INT);
        known.put(long.class, Scalars.LONG);
        known.put(Long.class, Scalars.LONG);
        known.put(boolean.class, Scalars.BOOLEAN);
        known.put(String.class, Scalars.TEXT);
        known.put(BigDecimal.class, Scalars.DECIMAL);
        known.put(byte[].class, Scalars.BYTES);
        known.put(double[].class, Scalars.DOUBLES);
    }

    /** Returns the shape of a class of the closed set. */
    synchronized Shape of(Class<?> type) {
        Shape shape = known.get(type);
        if (shape == null) {
            shape = derive(type);
            known.put(type, shape);
        }
        return shape;
    }

    private Shape derive(Class<?> type) {
        if (type.isRecord()) {
            return new RecordShape(type, this);
        }
        if (type.isEnum()) {
            return new EnumShape(type.getEnumConstants());
        }
        if (type.isSealed()) {
            List<Class<?>> kinds = new ArrayList<>();
            collect(type, kinds);
            return new ChoiceShape(type, kinds, this);
        }
        throw new IllegalStateException(type + " cannot cross to or from the worker");
    }

    private static void collect(Class<?> type, List<Class<?>> kinds) {
        for (Class<?> permitted : type.getPermittedSubclasses()) {
            if (permitted.isSealed()) {
                collect(permitted, kinds);
            } else {
                kinds.add(permitted);
            }
        }
    }

    /** Returns the shape of a record's component, with what may be null and what lists hold. */
    Shape of(AnnotatedType annotated) {
        Shape shape = plain(annotated);
        return annotated.isAnnotationPresent(Nullable.class) ? new MaybeShape(shape) : shape;
    }

    private Shape plain(AnnotatedType annotated) {
        Type type = annotated.getType();
        if (annotated instanceof AnnotatedParameterizedType list
                && type.getTypeName().startsWith("java.util.List<")) {
            return new ListShape(of(list.getAnnotatedActualTypeArguments()[0]));
        }
        if (type instanceof Class<?> simple) {
            return of(simple);
        }
        throw new IllegalStateException(type + " cannot cross to or from the worker");
    }

    /** An enum by its place. */
    private record EnumShape(Object[] values) implements Shape {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            out.putByte(((Enum<?>) value).ordinal());
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            int place = in.getByte();
            if (place >= values.length) {
                throw new WireException("unknown value " + place + " of "
                        + values.getClass().getComponentType().getSimpleName());
            }
            return values[place];
        }

        @Override
        public int leastBytes() {
            return 1;
        }
    }

    /** A value or nothing. */
    private record MaybeShape(Shape shape) implements Shape {
        @Override
        @SuppressWarnings("NullAway") // null is what this shape is for
        public void write(WireWriter out, @Nullable Object value, int depth) throws WireException {
            out.putByte(value == null ? 0 : 1);
            if (value != null) {
                shape.write(out, value, depth);
            }
        }

        @Override
        @SuppressWarnings("NullAway") // null is what this shape is for
        public @Nullable Object read(WireReader in, int depth) throws WireException {
            int present = in.getByte();
            if (present > 1) {
                throw new WireException("unknown mark " + present + " of an optional value");
            }
            return present == 0 ? null : shape.read(in, depth);
        }

        @Override
        public int leastBytes() {
            return 1;
        }
    }

    /** A list with its count first. */
    private record ListShape(Shape element) implements Shape {
        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            Shape.checkDepth(depth);
            List<?> list = (List<?>) value;
            if (list.size() > WireLimits.COUNT) {
                throw new WireException("a list of " + list.size() + " elements is longer than " + WireLimits.COUNT);
            }
            out.putInt(list.size());
            for (Object each : list) {
                element.write(out, each, depth + 1);
            }
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            Shape.checkDepth(depth);
            Object[] elements = new Object[in.getCount(element.leastBytes())];
            for (int i = 0; i < elements.length; i++) {
                elements[i] = element.read(in, depth + 1);
            }
            return Arrays.asList(elements);
        }

        @Override
        public int leastBytes() {
            return 4;
        }
    }

    /** One of a closed set of records, by its tag. */
    private static final class ChoiceShape implements Shape {
        private final Class<?> family;
        private final List<Class<?>> kinds;
        private final Shapes shapes;

        ChoiceShape(Class<?> family, List<Class<?>> kinds, Shapes shapes) {
            this.family = family;
            this.kinds = kinds;
            this.shapes = shapes;
        }

        @Override
        public void write(WireWriter out, Object value, int depth) throws WireException {
            Shape.checkDepth(depth);
            int tag = kinds.indexOf(value.getClass());
            out.putByte(tag);
            shapes.of(kinds.get(tag)).write(out, value, depth + 1);
        }

        @Override
        public Object read(WireReader in, int depth) throws WireException {
            Shape.checkDepth(depth);
            int tag = in.getByte();
            if (tag >= kinds.size()) {
                throw new WireException("unknown tag " + tag + " of " + family.getSimpleName());
            }
            return shapes.of(kinds.get(tag)).read(in, depth + 1);
        }

        @Override
        public int leastBytes() {
            return 1;
        }
    }
}

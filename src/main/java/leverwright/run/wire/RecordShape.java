package leverwright.run.wire;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;

/** A record as its components in their order. */
final class RecordShape implements Shape {

    private final Class<?> type;
    private final Shapes shapes;
    private final RecordComponent[] components;
    private final Method[] accessors;
    private final Constructor<?> constructor;
    private Shape[] parts = {};

    RecordShape(Class<?> type, Shapes shapes) {
        this.type = type;
        this.shapes = shapes;
        components = type.getRecordComponents();
        accessors = new Method[components.length];
        Class<?>[] types = new Class<?>[components.length];
        for (int i = 0; i < components.length; i++) {
            accessors[i] = components[i].getAccessor();
            accessors[i].setAccessible(true);
            types[i] = components[i].getType();
        }
        try {
            constructor = type.getDeclaredConstructor(types);
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException(e);
        }
        constructor.setAccessible(true);
    }

    /** Derives the parts at first use, since records may hold one another. */
    private Shape[] parts() {
        if (parts.length != components.length) {
            Shape[] derived = new Shape[components.length];
            for (int i = 0; i < derived.length; i++) {
                derived[i] = shapes.of(components[i].getAnnotatedType());
            }
            parts = derived;
        }
        return parts;
    }

    @Override
    @SuppressWarnings("NullAway") // a component that may be null has a shape for it
    public void write(WireWriter out, Object value, int depth) throws WireException {
        Shape.checkDepth(depth);
        out.putByte(components.length);
        Shape[] shape = parts();
        for (int i = 0; i < shape.length; i++) {
            shape[i].write(out, get(accessors[i], value), depth + 1);
        }
    }

    @SuppressWarnings("NullAway") // a component that may be null has a shape for it
    private static Object get(Method accessor, Object value) throws WireException {
        try {
            return accessor.invoke(value);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new WireException("cannot read " + accessor, e);
        }
    }

    @Override
    public Object read(WireReader in, int depth) throws WireException {
        Shape.checkDepth(depth);
        int count = in.getByte();
        if (count != components.length) {
            throw new WireException(type.getSimpleName() + " has " + components.length + " components, not " + count);
        }
        Shape[] shape = parts();
        Object[] values = new Object[shape.length];
        for (int i = 0; i < shape.length; i++) {
            values[i] = shape[i].read(in, depth + 1);
        }
        try {
            return constructor.newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof Error error && !(error instanceof AssertionError)) {
                throw error;
            }
            throw new WireException(
                    "these are not the components of a " + type.getSimpleName() + ": " + e.getCause(), e);
        } catch (ReflectiveOperationException e) {
            throw new WireException("cannot make a " + type.getSimpleName(), e);
        }
    }

    @Override
    public int leastBytes() {
        return 1;
    }
}

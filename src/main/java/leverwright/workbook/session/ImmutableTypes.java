package leverwright.workbook.session;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import javax.lang.model.element.Element;
import javax.lang.model.element.ElementKind;
import javax.lang.model.element.Modifier;
import javax.lang.model.element.PackageElement;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.util.ElementFilter;
import org.jspecify.annotations.Nullable;

/**
 * Knows the types whose values cannot change: primitives, a short list of Java's own, the values of the mechanics that
 * cells handle, and final classes, records and sealed families of the house and of cells whose fields are all final and of
 * such types. The house's own classes copy the arrays and lists they keep, so there those count as well; in classes of cells
 * they do not.
 */
final class ImmutableTypes {

    private static final Set<String> LISTED = Set.of(
            "java.lang.String",
            "java.lang.Boolean",
            "java.lang.Byte",
            "java.lang.Short",
            "java.lang.Character",
            "java.lang.Integer",
            "java.lang.Long",
            "java.lang.Float",
            "java.lang.Double",
            "java.util.OptionalDouble",
            "java.util.OptionalInt",
            "java.util.OptionalLong",
            "java.time.DayOfWeek",
            "java.time.Duration",
            "java.time.LocalDate",
            "java.time.LocalDateTime",
            "java.time.LocalTime",
            "java.time.Month",
            "java.time.Period");

    /** Rooms of the mechanics in which every public type is a value: it may remember what it computed, and never changes. */
    private static final Set<String> ROOMS_OF_VALUES = Set.of(
            "leverwright.mechanics.measure",
            "leverwright.mechanics.working",
            "leverwright.mechanics.body",
            "leverwright.mechanics.exercise",
            "leverwright.mechanics.study");

    private static final Set<String> COPIED_BY_THE_HOUSE = Set.of("java.util.List", "java.util.Map", "java.util.Set");
    private static final String HOUSE = "leverwright.";
    private static final String CELLS = "REPL.";

    private final Map<String, Boolean> known = new LinkedHashMap<>();

    /** Forgets the classes of cells, which may have changed. */
    void forgetCells() {
        known.keySet().removeIf(name -> name.startsWith(CELLS));
    }

    boolean holds(TypeMirror type) {
        if (type.getKind().isPrimitive()) {
            return true;
        }
        return type.getKind() == TypeKind.DECLARED && holds((TypeElement) ((DeclaredType) type).asElement());
    }

    private boolean holds(TypeElement type) {
        String name = type.getQualifiedName().toString();
        if (LISTED.contains(name) || isValue(type)) {
            return true;
        }
        if (!name.startsWith(HOUSE) && !name.startsWith(CELLS)) {
            return false;
        }
        Boolean answer = known.get(name);
        if (answer == null) {
            known.put(name, true);
            answer = look(type, name.startsWith(HOUSE));
            known.put(name, answer);
        }
        return answer;
    }

    private static boolean isValue(TypeElement type) {
        boolean open = type.getModifiers().contains(Modifier.PUBLIC);
        @Nullable Element home = type.getEnclosingElement();
        while (home instanceof TypeElement outer) {
            open &= outer.getModifiers().contains(Modifier.PUBLIC);
            home = outer.getEnclosingElement();
        }
        return open
                && home instanceof PackageElement room
                && ROOMS_OF_VALUES.contains(room.getQualifiedName().toString());
    }

    private boolean look(TypeElement type, boolean house) {
        if (type.getModifiers().contains(Modifier.SEALED)) {
            return type.getPermittedSubclasses().stream().allMatch(this::holds) && fieldsHold(type, house);
        }
        boolean closed = type.getModifiers().contains(Modifier.FINAL)
                || type.getKind() == ElementKind.ENUM
                || type.getKind() == ElementKind.RECORD;
        return closed && fieldsHold(type, house) && parentHolds(type);
    }

    private boolean parentHolds(TypeElement type) {
        TypeMirror parent = type.getSuperclass();
        if (parent.getKind() != TypeKind.DECLARED) {
            return true;
        }
        TypeElement element = (TypeElement) ((DeclaredType) parent).asElement();
        String name = element.getQualifiedName().toString();
        return switch (name) {
            case "java.lang.Object", "java.lang.Record", "java.lang.Enum" -> true;
            default ->
                (name.startsWith(HOUSE) || name.startsWith(CELLS))
                        && fieldsHold(element, name.startsWith(HOUSE))
                        && parentHolds(element);
        };
    }

    private boolean fieldsHold(TypeElement type, boolean house) {
        return ElementFilter.fieldsIn(type.getEnclosedElements()).stream()
                .filter(field -> !field.getModifiers().contains(Modifier.STATIC))
                .allMatch(field -> fieldHolds(field, house));
    }

    private boolean fieldHolds(Element field, boolean house) {
        TypeMirror type = field.asType();
        boolean copied = house
                && (type.getKind() == TypeKind.ARRAY
                        || (type instanceof DeclaredType declared
                                && COPIED_BY_THE_HOUSE.contains(((TypeElement) declared.asElement())
                                        .getQualifiedName()
                                        .toString())));
        return field.getModifiers().contains(Modifier.FINAL) && (copied || holds(type));
    }
}

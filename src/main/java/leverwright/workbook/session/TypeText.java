package leverwright.workbook.session;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import javax.lang.model.element.TypeElement;
import javax.lang.model.type.ArrayType;
import javax.lang.model.type.DeclaredType;
import javax.lang.model.type.IntersectionType;
import javax.lang.model.type.TypeKind;
import javax.lang.model.type.TypeMirror;
import javax.lang.model.type.TypeVariable;
import javax.lang.model.type.WildcardType;

/** Writes a type that the compiler found for {@code var} so that a field can be declared with it. */
final class TypeText {

    private static final int DEEPEST = 6;

    private TypeText() {}

    /** Returns the type as source, or the nearest one that can be written where it has no name. */
    static String of(TypeMirror type) {
        return of(type, 0);
    }

    private static String of(TypeMirror type, int depth) {
        return switch (type.getKind()) {
            case ARRAY -> of(((ArrayType) type).getComponentType(), depth) + "[]";
            case DECLARED -> declared((DeclaredType) type, depth);
            case INTERSECTION -> of(bound((IntersectionType) type), depth + 1);
            case TYPEVAR -> of(((TypeVariable) type).getUpperBound(), depth + 1);
            case WILDCARD, NULL -> "Object";
            default -> type.getKind().isPrimitive() ? type.getKind().name().toLowerCase(Locale.ROOT) : "Object";
        };
    }

    private static TypeMirror bound(IntersectionType type) {
        List<? extends TypeMirror> bounds = type.getBounds();
        for (TypeMirror each : bounds) {
            if (!each.toString().equals("java.lang.Object")) {
                return each;
            }
        }
        return bounds.get(0);
    }

    private static String declared(DeclaredType type, int depth) {
        TypeElement element = (TypeElement) type.asElement();
        if (element.getQualifiedName().isEmpty()) {
            return anonymous(element, depth);
        }
        String name = element.getQualifiedName().toString();
        boolean innerOfGeneric = type.getEnclosingType().getKind() == TypeKind.DECLARED
                && !((DeclaredType) type.getEnclosingType()).getTypeArguments().isEmpty();
        if (type.getTypeArguments().isEmpty() || innerOfGeneric || depth > DEEPEST) {
            return name;
        }
        return type.getTypeArguments().stream()
                .map(argument -> argument(argument, depth + 1))
                .collect(Collectors.joining(", ", name + "<", ">"));
    }

    private static String anonymous(TypeElement element, int depth) {
        List<? extends TypeMirror> interfaces = element.getInterfaces();
        return of(interfaces.isEmpty() ? element.getSuperclass() : interfaces.get(0), depth + 1);
    }

    private static String argument(TypeMirror argument, int depth) {
        if (depth > DEEPEST) {
            return "?";
        }
        return switch (argument.getKind()) {
            case WILDCARD -> wildcard((WildcardType) argument, depth);
            case INTERSECTION, TYPEVAR -> "? extends " + of(argument, depth);
            case DECLARED -> {
                TypeElement element = (TypeElement) ((DeclaredType) argument).asElement();
                yield element.getQualifiedName().isEmpty() ? "? extends " + of(argument, depth) : of(argument, depth);
            }
            default -> of(argument, depth);
        };
    }

    private static String wildcard(WildcardType wildcard, int depth) {
        if (wildcard.getExtendsBound() != null) {
            return "? extends " + of(wildcard.getExtendsBound(), depth);
        }
        return wildcard.getSuperBound() == null ? "?" : "? super " + of(wildcard.getSuperBound(), depth);
    }
}

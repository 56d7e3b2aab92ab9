package leverwright.face.desk.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A signature as the compiler tells it, taken apart.
 *
 * @param type what is returned; for a name what it is
 * @param owner the simple name of the class; empty when none is told
 * @param name the name of the method, or the name itself
 * @param parameters the parameters as written, type and name
 * @param method whether it is a method
 */
record Signature(String type, String owner, String name, List<String> parameters, boolean method) {

    private static final String PACKAGES = "\\b(?:[a-z]\\w*\\.)+(?=[A-Z])";

    /** Reads {@code "Answer<Moment> HeldPosture.moment(Joint joint)"} and the like; empty for what has another form. */
    static Optional<Signature> of(String told) {
        String text = told.replaceAll(PACKAGES, "").strip();
        int bracket = outer(text, '(', 0);
        if (bracket < 0) {
            return name(text);
        }
        String head = text.substring(0, bracket);
        int end = text.lastIndexOf(')');
        if (end < bracket) {
            return Optional.empty();
        }
        int dot = lastOuter(head, '.');
        int blank = lastOuter(head.substring(0, dot < 0 ? head.length() : dot), ' ');
        String name = head.substring(Math.max(dot, blank) + 1).strip();
        String owner = dot < 0 ? "" : head.substring(blank + 1, dot).replaceAll("<.*", "");
        String type = blank < 0
                ? name
                : withoutTypeParameters(head.substring(0, blank).strip());
        return Optional.of(new Signature(type, owner, name, split(text.substring(bracket + 1, end)), true));
    }

    /** {@code "held:HeldPosture"}, {@code "Joint.HIP:Joint"}. */
    private static Optional<Signature> name(String text) {
        int colon = text.lastIndexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        String whole = text.substring(0, colon).strip();
        int dot = whole.lastIndexOf('.');
        return Optional.of(new Signature(
                text.substring(colon + 1).strip(),
                dot < 0 ? "" : whole.substring(0, dot).replaceAll("<.*", ""),
                whole.substring(dot + 1),
                List.of(),
                false));
    }

    private static String withoutTypeParameters(String type) {
        if (!type.startsWith("<")) {
            return type;
        }
        int depth = 0;
        for (int i = 0; i < type.length(); i++) {
            depth += type.charAt(i) == '<' ? 1 : type.charAt(i) == '>' ? -1 : 0;
            if (depth == 0) {
                return type.substring(i + 1).strip();
            }
        }
        return type;
    }

    /** Returns the offset of a sign outside angle brackets; -1 when there is none. */
    private static int outer(String text, char sign, int from) {
        int depth = 0;
        for (int i = from; i < text.length(); i++) {
            char each = text.charAt(i);
            if (each == sign && depth == 0) {
                return i;
            }
            depth += each == '<' ? 1 : each == '>' ? -1 : 0;
        }
        return -1;
    }

    private static int lastOuter(String text, char sign) {
        int found = -1;
        for (int at = outer(text, sign, 0); at >= 0; at = outer(text, sign, at + 1)) {
            found = at;
        }
        return found;
    }

    private static List<String> split(String parameters) {
        List<String> all = new ArrayList<>();
        int start = 0;
        for (int at = outer(parameters, ',', 0); at >= 0; at = outer(parameters, ',', at + 1)) {
            all.add(parameters.substring(start, at).strip());
            start = at + 1;
        }
        String last = parameters.substring(start).strip();
        if (!last.isEmpty()) {
            all.add(last);
        }
        return all;
    }

    /** Returns the types of the parameters. */
    List<String> types() {
        return parameters.stream()
                .map(each -> {
                    int blank = lastOuter(each, ' ');
                    return blank < 0 ? each : each.substring(0, blank);
                })
                .toList();
    }

    /** Returns the signature without class, for example {@code "moment(Joint joint)"}. */
    String call() {
        return method ? name + "(" + String.join(", ", parameters) + ")" : name;
    }
}

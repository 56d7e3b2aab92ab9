package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.List;

/** What may stand as a name, a source and a row of parts. */
final class Names {
    private Names() {}

    static void check(String name) {
        if (!isName(name) || name.equals("sin") || name.equals("cos")) {
            throw new IllegalArgumentException("“" + name
                    + "” cannot name a value in a working; use letters, digits and _, a letter first, not sin or cos");
        }
    }

    private static boolean isName(String name) {
        for (int at = 0; at < name.length(); at = name.offsetByCodePoints(at, 1)) {
            int sign = name.codePointAt(at);
            if (!Character.isLetter(sign) && (at == 0 || !(sign == '_' || isNumber(sign)))) {
                return false;
            }
        }
        return !name.isEmpty();
    }

    private static boolean isNumber(int sign) {
        int type = Character.getType(sign);
        return type == Character.DECIMAL_DIGIT_NUMBER
                || type == Character.LETTER_NUMBER
                || type == Character.OTHER_NUMBER;
    }

    private static boolean isForbiddenInSource(char sign) {
        return sign == '[' || sign == ']' || Character.isISOControl(sign);
    }

    static void checkSource(String source) {
        boolean forbidden = false;
        for (int at = 0; at < source.length(); at++) {
            forbidden |= isForbiddenInSource(source.charAt(at));
        }
        if (forbidden) {
            throw new IllegalArgumentException(
                    "“" + source + "” cannot be a source or note in a working; leave out [ ] and line breaks");
        }
    }

    static List<Expression> atLeastOne(List<Expression> parts, String what) {
        if (parts.isEmpty()) {
            throw new IllegalArgumentException("a " + what + " needs at least one part");
        }
        return List.copyOf(parts);
    }

    static List<Expression> joined(List<Expression> parts, Expression last) {
        List<Expression> all = new ArrayList<>(parts);
        all.add(last);
        return all;
    }
}

package leverwright.mechanics.working;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** What may stand as a name, a source and a row of parts. */
final class Names {
    private static final Pattern NAME = Pattern.compile("\\p{L}[\\p{L}\\p{N}_]*");

    private Names() {}

    static void check(String name) {
        if (!NAME.matcher(name).matches() || name.equals("sin") || name.equals("cos")) {
            throw new IllegalArgumentException("“" + name
                    + "” cannot name a value in a working; use letters, digits and _, a letter first, not sin or cos");
        }
    }

    static void checkSource(String source) {
        if (source.chars().anyMatch(c -> c == '[' || c == ']' || Character.isISOControl(c))) {
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

package leverwright.run.gate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Which of Java's members a cell's class calls under another owner. A replaced static method keeps its name unless said,
 * and always its descriptor; a replaced instance method becomes a static one whose first argument is the object.
 */
final class Replacements {

    private static final String WOVEN = "leverwright/run/gate/woven/";
    static final String STOP_CHECK = WOVEN + "StopCheck";
    static final String SEEDED = WOVEN + "SeededStream";
    private static final String TEXT = WOVEN + "SameText";
    private static final String STRICT = "java/lang/StrictMath";
    private static final String TRIGONOMETRY = "leverwright/mechanics/numeric/Trigonometry";

    /** Where a call goes. */
    record Target(String owner, String name) {}

    private static final Map<String, Target> STATIC = new LinkedHashMap<>();
    private static final Map<String, String> TYPES = Map.of(
            "java/util/HashMap", "java/util/LinkedHashMap",
            "java/util/HashSet", "java/util/LinkedHashSet");

    static {
        for (String name : List.of(
                "sin", "cos", "tan", "asin", "acos", "atan", "atan2", "sinh", "cosh", "tanh", "exp", "expm1", "log",
                "log10", "log1p", "pow", "cbrt", "hypot")) {
            String descriptor = List.of("atan2", "pow", "hypot").contains(name) ? "(DD)D" : "(D)D";
            STATIC.put("java/lang/Math." + name + descriptor, new Target(STRICT, name));
        }
        for (String owner : List.of("java/lang/Math", STRICT)) {
            STATIC.put(owner + ".sin(D)D", new Target(TRIGONOMETRY, "sine"));
            STATIC.put(owner + ".cos(D)D", new Target(TRIGONOMETRY, "cosine"));
            STATIC.put(owner + ".tan(D)D", new Target(TRIGONOMETRY, "tangent"));
            STATIC.put(owner + ".asin(D)D", new Target(TRIGONOMETRY, "arcSine"));
            STATIC.put(owner + ".acos(D)D", new Target(TRIGONOMETRY, "arcCosine"));
            STATIC.put(owner + ".atan(D)D", new Target(TRIGONOMETRY, "arcTangent"));
            STATIC.put(owner + ".atan2(DD)D", new Target(TRIGONOMETRY, "arcTangent"));
            STATIC.put(owner + ".random()D", new Target(SEEDED, "next"));
        }
        STATIC.put("java/util/Collections.shuffle(Ljava/util/List;)V", new Target(SEEDED, "shuffle"));
        String text = ")Ljava/lang/String;";
        STATIC.put("java/lang/String.valueOf(Ljava/lang/Object;" + text, new Target(TEXT, "of"));
        STATIC.put("java/lang/String.valueOf(D" + text, new Target(TEXT, "of"));
        STATIC.put("java/lang/String.valueOf(F" + text, new Target(TEXT, "of"));
        STATIC.put("java/lang/Double.toString(D" + text, new Target(TEXT, "of"));
        STATIC.put("java/lang/Float.toString(F" + text, new Target(TEXT, "of"));
        STATIC.put("java/util/Objects.toString(Ljava/lang/Object;" + text, new Target(TEXT, "of"));
        STATIC.put(
                "java/util/Objects.toString(Ljava/lang/Object;Ljava/lang/String;" + text, new Target(TEXT, "orElse"));
    }

    private Replacements() {}

    /** Returns the class that is made in place of the one given. */
    static String type(String internal) {
        return TYPES.getOrDefault(internal, internal);
    }

    /** Returns where a static call goes instead, or null when it stays. */
    static @Nullable Target ofStatic(String owner, String name, String descriptor) {
        Target target = STATIC.get(owner + "." + name + descriptor);
        if (target != null) {
            return target;
        }
        boolean builds = name.equals("of") || name.equals("ofEntries") || name.equals("copyOf");
        return switch (owner) {
            case "java/util/Map" -> builds ? new Target(WOVEN + "OrderedMaps", name) : null;
            case "java/util/Set" -> builds ? new Target(WOVEN + "OrderedSets", name) : null;
            case "java/util/stream/Collectors" ->
                isUnordered(name, descriptor) ? new Target(WOVEN + "OrderedCollectors", name) : null;
            default -> null;
        };
    }

    private static boolean isUnordered(String name, String descriptor) {
        return switch (name) {
            case "toSet", "toUnmodifiableSet", "toMap", "toUnmodifiableMap", "groupingBy" ->
                !descriptor.contains("Ljava/util/function/Supplier;");
            default -> false;
        };
    }

    /** Returns the static method an instance call goes to instead, or null when it stays. */
    static @Nullable Target ofInstance(String owner, String name, String descriptor) {
        if (name.equals("toString") && descriptor.equals("()Ljava/lang/String;") && !isText(owner)) {
            return new Target(TEXT, "ofCall");
        }
        if (owner.equals("java/lang/StringBuilder") && name.equals("append") && isVarying(descriptor)) {
            return new Target(TEXT, "append");
        }
        return null;
    }

    private static boolean isText(String owner) {
        return owner.equals("java/lang/String") || owner.equals("java/lang/StringBuilder");
    }

    private static boolean isVarying(String descriptor) {
        return descriptor.startsWith("(Ljava/lang/Object;)")
                || descriptor.startsWith("(D)")
                || descriptor.startsWith("(F)");
    }

    /** Returns the descriptor of the static method that stands for an instance method. */
    static String withObject(String owner, String name, String descriptor) {
        String first = name.equals("toString") ? "java/lang/Object" : owner;
        return "(L" + first + ";" + descriptor.substring(1);
    }

    /** Returns where {@code super.toString()} goes when the parent has no words of its own. */
    static Target plainName() {
        return new Target(TEXT, "nameOf");
    }

    /** Returns where the text of a record goes. */
    static Target recordText() {
        return new Target(TEXT, "ofRecord");
    }
}

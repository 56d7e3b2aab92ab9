package leverwright.face.desk.editor;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import leverwright.mechanics.measure.Dimension;

/**
 * What a cell may say: every public type and member of the packages that the gate allows, with the sentences of their
 * Javadoc. Made at build, read once.
 */
public final class ApiIndex {

    private static final String RESOURCE = "api-index.txt";

    /**
     * A parameter.
     *
     * @param type its type as a reader writes it
     * @param name its name
     * @param sentence what it is; empty when nothing is said
     */
    public record Parameter(String type, String name, String sentence) {}

    /**
     * A method, constructor, constant or component.
     *
     * @param owner the simple name of its class
     * @param name its name
     * @param type what it returns or is
     * @param parameters its parameters; empty for a constant
     * @param method whether it is called with brackets
     * @param word whether a cell says it without its class
     * @param sentence the first sentence about it; empty when nothing is said
     * @param returned what it returns, in words; empty when nothing more is said
     */
    public record Member(
            String owner,
            String name,
            String type,
            List<Parameter> parameters,
            boolean method,
            boolean word,
            String sentence,
            String returned) {

        /** Returns how it is written, with its type before it, for example {@code "Answer<Moment> moment(Joint joint)"}. */
        public String signature() {
            if (!method) {
                return type + " " + name;
            }
            return type + " " + name + "("
                    + String.join(
                            ", ",
                            parameters.stream()
                                    .map(each -> each.type() + " " + each.name())
                                    .toList())
                    + ")";
        }
    }

    /**
     * A class, record, enum or interface.
     *
     * @param home its package
     * @param name its simple name
     * @param kind which of these it is
     * @param supertypes what it extends and implements, by simple names
     * @param sentence the first sentence about it
     */
    public record Type(String home, String name, String kind, List<String> supertypes, String sentence) {}

    private static final class Holder {
        static final ApiIndex INDEX = new ApiIndex();
    }

    private final Map<String, Type> types = new LinkedHashMap<>();
    private final Map<String, List<Member>> byName = new LinkedHashMap<>();
    private final Map<String, List<Member>> byOwner = new LinkedHashMap<>();

    private ApiIndex() {
        try (InputStream stream = ApiIndex.class.getResourceAsStream(RESOURCE)) {
            if (stream == null) {
                throw new IllegalStateException("the program's file " + RESOURCE + " is missing");
            }
            new String(stream.readAllBytes(), StandardCharsets.UTF_8).lines().forEach(this::read);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    /** Returns the index; reads it when it is first asked for. */
    public static ApiIndex get() {
        return Holder.INDEX;
    }

    /** Reads the index beforehand, off the calling thread. */
    static void warmUp() {
        CompletableFuture.runAsync(ApiIndex::get);
    }

    private void read(String line) {
        String[] fields = line.split("\t", -1);
        switch (fields[0]) {
            case "type" ->
                types.put(
                        fields[2],
                        new Type(
                                fields[1],
                                fields[2],
                                fields[3],
                                fields[4].isEmpty() ? List.of() : List.of(fields[4].split(" ")),
                                fields[5]));
            case "method" ->
                keep(new Member(
                        fields[1],
                        fields[2],
                        fields[3],
                        parameters(fields[4], fields[9]),
                        true,
                        fields[6].equals("word"),
                        fields[7],
                        fields[8]));
            case "field" ->
                keep(new Member(
                        fields[1], fields[2], fields[3], List.of(), false, fields[5].equals("word"), fields[6], ""));
            default -> throw new IllegalStateException("the program's file " + RESOURCE + " has a line " + fields[0]);
        }
    }

    private static List<Parameter> parameters(String declared, String told) {
        if (declared.isEmpty()) {
            return List.of();
        }
        Map<String, String> sentences = new LinkedHashMap<>();
        for (String each : told.split("\\|")) {
            int sign = each.indexOf('=');
            if (sign > 0) {
                sentences.put(each.substring(0, sign), each.substring(sign + 1));
            }
        }
        List<Parameter> all = new ArrayList<>();
        for (String each : declared.split(";")) {
            int blank = each.lastIndexOf(' ');
            String name = each.substring(blank + 1);
            all.add(new Parameter(each.substring(0, blank), name, sentences.getOrDefault(name, "")));
        }
        return all;
    }

    private void keep(Member member) {
        byName.computeIfAbsent(member.name(), name -> new ArrayList<>()).add(member);
        byOwner.computeIfAbsent(member.owner(), name -> new ArrayList<>()).add(member);
    }

    /** Returns every member, type by type. */
    public List<Member> members() {
        return byOwner.values().stream().flatMap(List::stream).toList();
    }

    /** Returns every type. */
    public List<Type> types() {
        return List.copyOf(types.values());
    }

    /**
     * Returns a type.
     *
     * @param name its simple name
     */
    public Optional<Type> type(String name) {
        return Optional.ofNullable(types.get(name));
    }

    /**
     * Returns every member of a name, whatever its class.
     *
     * @param name the name
     */
    public List<Member> named(String name) {
        return List.copyOf(byName.getOrDefault(name, List.of()));
    }

    /** Returns what a cell says without a class. */
    public List<Member> words() {
        return members().stream().filter(Member::word).toList();
    }

    /**
     * Returns the members that a signature may mean: those of its class and name, with as many parameters; the one whose
     * types are the same first. What a class only inherits is looked up where it is declared.
     *
     * @param signature the signature
     */
    List<Member> of(Signature signature) {
        Set<String> owners = new LinkedHashSet<>();
        owners.add(signature.owner());
        addSupertypes(signature.owner(), owners);
        List<Member> found = new ArrayList<>();
        for (String owner : owners) {
            for (Member member : byOwner.getOrDefault(owner, List.of())) {
                if (member.name().equals(signature.name())
                        && member.parameters().size() == signature.parameters().size()) {
                    boolean same = member.parameters().stream()
                            .map(Parameter::type)
                            .toList()
                            .equals(signature.types());
                    boolean told = !member.sentence().isEmpty();
                    found.add(same && told ? 0 : found.size(), member);
                }
            }
        }
        return found;
    }

    private void addSupertypes(String type, Set<String> all) {
        Type known = types.get(type);
        if (known != null) {
            for (String each : known.supertypes()) {
                if (all.add(each)) {
                    addSupertypes(each, all);
                }
            }
        }
    }

    /**
     * Returns the unit in which values of a type are shown, for example {@code "N·m"} for {@code "Answer<Moment>"}; empty
     * for a type that is no quantity.
     *
     * @param type a type as a reader writes it
     */
    public static String unit(String type) {
        String inner = type.replaceAll("^(?:Answer|Reading|Knob|List)<(.*)>$", "$1");
        for (Dimension each : Dimension.values()) {
            if (each.words().replace(" ", "").equals(inner.toLowerCase(Locale.ROOT))) {
                return each.shown().symbol();
            }
        }
        return "";
    }
}

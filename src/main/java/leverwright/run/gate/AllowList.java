package leverwright.run.gate;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The classes and members a cell may use, read from {@code allowed.txt} beside this class. */
public final class AllowList {

    private static final String FILE = "allowed.txt";

    private final Set<String> packages = new LinkedHashSet<>();
    private final Set<String> not = new LinkedHashSet<>();
    private final Map<String, Members> classes = new LinkedHashMap<>();

    private record Members(boolean only, Set<String> names) {
        boolean allow(String member) {
            return names.contains(member) == only;
        }
    }

    private AllowList() {}

    /** Reads the list that comes with the house. */
    public static AllowList standard() {
        AllowList list = new AllowList();
        try (InputStream in = Objects.requireNonNull(AllowList.class.getResourceAsStream(FILE), FILE);
                BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))) {
            String line = reader.readLine();
            while (line != null) {
                list.add(line.strip());
                line = reader.readLine();
            }
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + FILE, e);
        }
        return list;
    }

    private void add(String line) {
        if (line.isEmpty() || line.startsWith("#")) {
            return;
        }
        if (line.startsWith("package ")) {
            packages.add(internal(line.substring(8)));
        } else if (line.startsWith("not ")) {
            not.add(internal(line.substring(4)));
        } else {
            int colon = line.indexOf(':');
            String name = colon < 0 ? line : line.substring(0, colon);
            classes.put(
                    internal(name),
                    members(colon < 0 ? "" : line.substring(colon + 1).strip()));
        }
    }

    private static Members members(String words) {
        if (words.isEmpty()) {
            return new Members(false, Set.of());
        }
        boolean only = !words.startsWith("!");
        Set<String> names = new LinkedHashSet<>();
        Arrays.stream(words.split(" +"))
                .map(word -> only ? word : word.substring(1))
                .forEach(names::add);
        return new Members(only, names);
    }

    private static String internal(String name) {
        return name.strip().replace('.', '/');
    }

    /** Returns whether a class, named with slashes, may be named at all: as a type, in a cast or a catch. */
    public boolean allowsClass(String name) {
        return find(name) != null;
    }

    /** Returns whether a class, named with slashes, may be extended or implemented. */
    boolean allowsSubclass(String name) {
        Members members = find(name);
        return members != null && members.allow("<init>");
    }

    /** Returns whether a member may be used, given the class that declares it, named with slashes. */
    boolean allowsMember(String declaringClass, String member) {
        Members members = find(declaringClass);
        return members != null && members.allow(member);
    }

    private @Nullable Members find(String name) {
        Members listed = classes.get(name);
        if (listed != null) {
            return listed;
        }
        int slash = name.lastIndexOf('/');
        String outer = name.indexOf('$') < 0 ? name : name.substring(0, name.indexOf('$'));
        boolean inPackage = slash > 0 && packages.contains(name.substring(0, slash));
        return inPackage && !not.contains(outer) ? new Members(false, Set.of()) : null;
    }
}

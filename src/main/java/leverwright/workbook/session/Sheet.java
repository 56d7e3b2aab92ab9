package leverwright.workbook.session;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import leverwright.run.result.CellState;
import org.jspecify.annotations.Nullable;

/**
 * The script cells of a workbook in their order: what each compiled to, and which reads from which.
 *
 * <p>A name is bound to the nearest cell above that declares it. A cell reads from the cells that declare its names, and
 * from those in between that assign them.
 */
final class Sheet {

    /** One cell. */
    static final class Cell {
        final ParsedCell parsed;
        final Set<String> readsFrom = new LinkedHashSet<>();
        /** The cell that declares each name that is read from above. */
        final Map<String, Cell> bindings = new LinkedHashMap<>();
        /** The imports that cells above wrote and that hold for it. */
        final List<String> held = new ArrayList<>();

        @Nullable
        CompiledCell compiled;

        @Nullable
        CellOutcome failed;

        String key = "";

        /** What its classes came from when they were not compiled here; null when they were, or were checked since. */
        @Nullable
        KeptCell kept;

        Cell(ParsedCell parsed) {
            this.parsed = parsed;
        }

        String id() {
            return parsed.script().id();
        }

        CompiledCell code() {
            CompiledCell code = compiled;
            if (code == null) {
                throw new IllegalStateException("cell " + id() + " did not compile");
            }
            return code;
        }
    }

    private final Compilers compilers;
    private final CellCompiler compiler;
    private final CompiledCells keeping;
    private Map<String, KeptCell> kept = Map.of();
    private Map<String, Cell> cells = new LinkedHashMap<>();
    private volatile List<Cell> settled = List.of();

    Sheet(Compilers compilers, CellCompiler compiler, CompiledCells keeping) {
        this.compilers = compilers;
        this.compiler = compiler;
        this.keeping = keeping;
    }

    /** Looks for cells that were compiled earlier; returns whether every cell was. */
    boolean remember(List<CellScript> scripts) {
        kept = keeping.find(scripts);
        return !scripts.isEmpty() && scripts.stream().allMatch(script -> kept.containsKey(script.id()));
    }

    /** Keeps what compiled, unless it came from there. */
    void keep() {
        List<KeptCell> compiled = new ArrayList<>();
        boolean news = false;
        for (Cell cell : cells.values()) {
            if (cell.compiled != null) {
                compiled.add(KeptCell.of(cell.key, cell.code()));
                news |= cell.kept == null && !isKept(cell);
            }
        }
        if (news) {
            keeping.keep(scripts(), compiled);
            Map<String, KeptCell> now = new LinkedHashMap<>();
            compiled.forEach(each -> now.put(each.parsed().script().id(), each));
            kept = now;
        }
    }

    private boolean isKept(Cell cell) {
        KeptCell known = kept.get(cell.id());
        return known != null && known.key().equals(cell.key);
    }

    /**
     * Compiles a cell again that was not compiled here.
     *
     * @return false when that came to something else: then nothing that was kept is believed any more
     */
    boolean check(Cell cell) {
        KeptCell before = cell.kept;
        if (before == null || cells.get(cell.id()) != cell) {
            return true;
        }
        ParsedCell parsed = CellParser.parse(cell.parsed.script(), cell.parsed.className(), compilers);
        CompiledCell again = parsed.equals(cell.parsed) ? compileAnew(cell).compiled() : null;
        if (again != null && before.isSame(again)) {
            cell.kept = null;
            return true;
        }
        keeping.forget(scripts());
        kept = Map.of();
        return false;
    }

    List<Cell> cells() {
        return List.copyOf(cells.values());
    }

    @Nullable
    Cell find(String id) {
        return cells.get(id);
    }

    List<CellScript> scripts() {
        return cells.values().stream().map(cell -> cell.parsed.script()).toList();
    }

    /** Is told of each cell as soon as it is compiled. */
    interface Progress {
        /** Returns false to end early. */
        boolean compiled(Cell cell, boolean changed);
    }

    /**
     * Takes new scripts and compiles what changed, from the top.
     *
     * @throws IllegalArgumentException when two cells have the same id
     */
    void take(List<CellScript> scripts, Progress progress) {
        Map<String, Cell> old = cells;
        Map<String, Cell> taken = new LinkedHashMap<>();
        List<Cell> above = new ArrayList<>();
        List<String> carried = new ArrayList<>();
        cells = taken;
        boolean going = true;
        for (CellScript script : scripts) {
            Cell before = old.get(script.id());
            Cell cell = new Cell(parse(script, before));
            if (taken.put(script.id(), cell) != null) {
                throw new IllegalArgumentException("two cells have the id \"" + script.id() + "\"; ids must differ");
            }
            bind(cell, above);
            if (going) {
                boolean changed = compile(cell, before, carried);
                going = progress.compiled(cell, changed);
            } else {
                cell.failed =
                        CellOutcome.without(script.id(), CellState.NOT_RUN, "stopped before it was compiled", null);
            }
            CompiledCell code = cell.compiled;
            if (code != null) {
                carried.addAll(code.imports());
            }
            above.add(cell);
        }
        old.keySet().stream().filter(id -> !taken.containsKey(id)).forEach(id -> compilers.forget(className(id)));
        settled = List.copyOf(taken.values());
    }

    /** Returns the names that a cell can read from above; from all cells when there is none of this id. From any thread. */
    NamesAbove namesAbove(String id) {
        return new NamesAbove(settled.stream()
                .takeWhile(cell -> !cell.id().equals(id))
                .filter(cell -> cell.compiled != null)
                .map(cell -> cell.parsed)
                .toList());
    }

    private ParsedCell parse(CellScript script, @Nullable Cell before) {
        if (before != null && before.parsed.script().equals(script)) {
            return before.parsed;
        }
        KeptCell known = kept.get(script.id());
        return known != null && known.parsed().script().equals(script)
                ? known.parsed()
                : CellParser.parse(script, className(script.id()), compilers);
    }

    /** Returns the class a cell becomes: its id, with every character that a name may not have as its number. */
    static String className(String id) {
        StringBuilder name = new StringBuilder("REPL.Cell_");
        for (int i = 0; i < id.length(); i++) {
            char character = id.charAt(i);
            boolean plain = (character >= 'a' && character <= 'z')
                    || (character >= 'A' && character <= 'Z')
                    || (character >= '0' && character <= '9');
            name.append(plain ? String.valueOf(character) : "_" + Integer.toHexString(character) + "_");
        }
        return name.toString();
    }

    private static void bind(Cell cell, List<Cell> above) {
        Set<String> names = new LinkedHashSet<>(cell.parsed.names().reads());
        names.addAll(cell.parsed.names().assigns());
        for (String name : names) {
            for (int i = above.size() - 1; i >= 0; i--) {
                Cell other = above.get(i);
                if (other.parsed.names().declares(name)) {
                    cell.bindings.put(name, other);
                    cell.readsFrom.add(other.id());
                    break;
                }
                if (other.parsed.names().assigns().contains(name)) {
                    cell.readsFrom.add(other.id());
                }
            }
        }
        // a name that is only assigned above and declared nowhere binds nothing; the compiler says that it is unknown
        cell.readsFrom.remove(cell.id());
    }

    /** Compiles a cell unless what it was compiled from is the same; returns whether its classes are new. */
    private boolean compile(Cell cell, @Nullable Cell before, List<String> carried) {
        if (!cell.parsed.faults().isEmpty()) {
            fail(cell, CellOutcome.failed(cell.id(), cell.parsed.faults()));
            return true;
        }
        for (Cell other : cell.bindings.values()) {
            if (other.compiled == null) {
                String words = "not run: " + other.id() + " failed";
                fail(cell, CellOutcome.without(cell.id(), CellState.NOT_RUN, words, null));
                return true;
            }
        }
        Fault clash = WrittenImports.clash(cell.parsed);
        if (clash != null) {
            fail(cell, CellOutcome.failed(cell.id(), List.of(clash)));
            return true;
        }
        cell.held.addAll(WrittenImports.holding(carried, cell.parsed));
        cell.key = key(cell, imports(cell));
        if (before != null && before.compiled != null && before.key.equals(cell.key)) {
            cell.compiled = before.compiled;
            cell.kept = before.kept;
            return false;
        }
        KeptCell known = kept.get(cell.id());
        if (known != null
                && known.parsed().script().equals(cell.parsed.script())
                && known.key().equals(cell.key)) {
            cell.compiled = compiler.admit(known);
            cell.kept = cell.compiled == null ? null : known;
        }
        if (cell.compiled == null) {
            CellCompiler.Outcome outcome = compileAnew(cell);
            cell.compiled = outcome.compiled();
            cell.failed = outcome.failed();
        }
        compilers.forget(cell.parsed.className());
        if (cell.compiled != null) {
            compilers.know(cell.code().raw());
        }
        return true;
    }

    private CellCompiler.Outcome compileAnew(Cell cell) {
        Set<String> own = new LinkedHashSet<>(cell.held);
        own.addAll(WrittenImports.of(cell.parsed));
        List<String> above = cells.values().stream()
                .filter(cell.bindings::containsValue)
                .map(other -> other.parsed.className())
                .toList();
        return compiler.compile(cell.parsed, imports(cell), own, above);
    }

    private void fail(Cell cell, CellOutcome outcome) {
        cell.failed = outcome;
        compilers.forget(cell.parsed.className());
    }

    private static List<String> imports(Cell cell) {
        List<String> imports = new ArrayList<>(CellImports.STANDARD);
        imports.addAll(cell.held);
        Set<String> bound = new LinkedHashSet<>();
        cell.bindings.forEach((read, other) ->
                bound.add("import static " + other.parsed.className() + "." + CellNames.bare(read) + ";"));
        imports.addAll(bound);
        return imports;
    }

    private static String key(Cell cell, List<String> imports) {
        StringBuilder key =
                new StringBuilder(cell.parsed.script().text()).append('\n').append(imports);
        new LinkedHashSet<>(cell.bindings.values())
                .forEach(other -> key.append('\n').append(other.code().shape()));
        return key.toString();
    }

    /** Returns the given cells and all that read from them, directly or through others, in order of the sheet. */
    Set<String> withReaders(Set<String> roots) {
        Set<String> reached = new LinkedHashSet<>();
        for (Cell cell : cells.values()) {
            if (roots.contains(cell.id()) || cell.readsFrom.stream().anyMatch(reached::contains)) {
                reached.add(cell.id());
            }
        }
        return reached;
    }

    /** Returns all that the given cells read from, directly or through others. */
    private Set<String> above(Set<String> ids) {
        Set<String> reached = new LinkedHashSet<>();
        List<Cell> all = cells();
        for (int i = all.size() - 1; i >= 0; i--) {
            Cell cell = all.get(i);
            if (ids.contains(cell.id()) || reached.contains(cell.id())) {
                reached.addAll(cell.readsFrom);
            }
        }
        return reached;
    }

    /**
     * Returns whether running only the given cells, which must include all that read from them, gives the bits of a
     * replay: no cell involved keeps state, and every value read from a cell that is not run again is of an immutable
     * type. Where a method or type of such a cell is used, all that cell's values must be.
     */
    boolean isSafeAlone(Set<String> ids) {
        Set<String> sources = above(ids);
        sources.removeAll(ids);
        for (Cell cell : cells.values()) {
            boolean involved = ids.contains(cell.id()) || sources.contains(cell.id());
            if (involved && (cell.compiled == null || cell.parsed.names().keepsState())) {
                return false;
            }
            if (involved && !readsAreImmutable(cell, ids)) {
                return false;
            }
        }
        return true;
    }

    private static boolean readsAreImmutable(Cell cell, Set<String> ids) {
        for (Map.Entry<String, Cell> binding : cell.bindings.entrySet()) {
            Cell source = binding.getValue();
            CompiledCell code = source.compiled;
            if (ids.contains(source.id())) {
                continue;
            }
            if (code == null || !isImmutable(source, code, binding.getKey())) {
                return false;
            }
        }
        return true;
    }

    private static boolean isImmutable(Cell source, CompiledCell code, String read) {
        CellNames names = source.parsed.names();
        if (CellNames.isCall(read) || names.types().contains(read)) {
            return names.variables().stream()
                    .allMatch(variable -> code.immutable().contains(variable.name()));
        }
        return code.immutable().contains(read);
    }
}

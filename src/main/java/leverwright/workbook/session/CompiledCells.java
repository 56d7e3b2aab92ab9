package leverwright.workbook.session;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import leverwright.run.gate.AllowList;
import leverwright.run.gate.Gate;

/**
 * Compiled cells kept in a folder, so that a workbook that was compiled before opens without waiting for the compiler.
 *
 * <p>One file holds the cells of one workbook. Its name is the digest of the cells' texts, of the program and of the Java
 * that compiled them; it begins with its name and ends with its own digest, and one that says otherwise is passed over. What
 * is kept are classes as the compiler made them: on their way to the worker they pass the gate as those that were just
 * compiled do. A workbook that the reader trusts is always compiled.
 *
 * <p>Files that cannot be read or written cost nothing but time. From any thread.
 */
public final class CompiledCells {

    private static final String FORM = "leverwright cells 1\n";
    private static final String ENDING = ".cells";
    private static final int DIGEST = 32;
    private static final long MOST_BYTES = 8 << 20;
    private static final int MOST_FILES = 64;

    private final List<Path> folders;
    private final Supplier<Optional<String>> program;

    private CompiledCells(List<Path> folders, Supplier<Optional<String>> program) {
        this.folders = folders;
        this.program = program;
    }

    /** Returns a place that keeps nothing. */
    public static CompiledCells none() {
        return new CompiledCells(List.of(), Optional::empty);
    }

    /**
     * Returns the cells kept in some folders; nothing is kept unless the program runs from its jar.
     *
     * @param folders where to look; new files go into the first, which is made when something is kept
     */
    public static CompiledCells in(List<Path> folders) {
        return new CompiledCells(List.copyOf(folders), () -> Program.DIGEST);
    }

    /** Returns the cells kept in a folder by a program of the given digest. */
    static CompiledCells in(Path folder, String program) {
        return new CompiledCells(List.of(folder), () -> Optional.of(program));
    }

    /** Read when it is first needed. */
    private static final class Program {
        static final Optional<String> DIGEST = ProgramDigest.ofJar();
    }

    boolean isOff() {
        return folders.isEmpty() || program.get().isEmpty();
    }

    /** Returns the kept cells of a workbook by id; empty when it is to be compiled. */
    Map<String, KeptCell> find(List<CellScript> scripts) {
        if (isOff()) {
            return Map.of();
        }
        String name = name(scripts);
        for (Path folder : folders) {
            Path file = folder.resolve(name + ENDING);
            try {
                if (Files.isRegularFile(file) && Files.size(file) <= MOST_BYTES) {
                    Map<String, KeptCell> found = read(name, Files.readAllBytes(file), scripts);
                    if (folder.equals(folders.get(0))) {
                        Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis()));
                    }
                    return found;
                }
            } catch (IOException unreadable) {
                // The next run from the top writes it anew.
                continue;
            }
        }
        return Map.of();
    }

    private static Map<String, KeptCell> read(String name, byte[] bytes, List<CellScript> scripts) throws IOException {
        byte[] head = (FORM + name + "\n").getBytes(StandardCharsets.UTF_8);
        int end = bytes.length - DIGEST;
        if (end < head.length
                || !Arrays.equals(head, Arrays.copyOf(bytes, head.length))
                || !MessageDigest.isEqual(
                        sha256(Arrays.copyOf(bytes, end)), Arrays.copyOfRange(bytes, end, bytes.length))) {
            throw new IOException("not the cells of this workbook");
        }
        Map<String, KeptCell> cells = new LinkedHashMap<>();
        for (KeptCell cell : KeptCellCodec.cells(Arrays.copyOfRange(bytes, head.length, end))) {
            CellScript script = cell.parsed().script();
            if (!scripts.contains(script) || !cell.parsed().className().equals(Sheet.className(script.id()))) {
                throw new IOException("cells of another workbook");
            }
            cells.put(script.id(), cell);
        }
        return cells;
    }

    /** Keeps the cells of a workbook that compiled. */
    void keep(List<CellScript> scripts, List<KeptCell> cells) {
        if (isOff() || cells.isEmpty()) {
            return;
        }
        Path folder = folders.get(0);
        String name = name(scripts);
        try {
            byte[] head = (FORM + name + "\n").getBytes(StandardCharsets.UTF_8);
            byte[] body = KeptCellCodec.bytes(cells);
            byte[] bytes = Arrays.copyOf(head, head.length + body.length);
            System.arraycopy(body, 0, bytes, head.length, body.length);
            byte[] whole = Arrays.copyOf(bytes, bytes.length + DIGEST);
            System.arraycopy(sha256(bytes), 0, whole, bytes.length, DIGEST);
            if (whole.length > MOST_BYTES) {
                return;
            }
            Files.createDirectories(folder);
            Path part = Files.createTempFile(folder, "cells", ".part");
            try {
                Files.write(part, whole);
                Files.move(part, folder.resolve(name + ENDING), StandardCopyOption.REPLACE_EXISTING);
            } finally {
                Files.deleteIfExists(part);
            }
            prune(folder);
        } catch (IOException unwritable) {
            // Then the workbook is compiled again next time.
            return;
        }
    }

    /** Removes what is kept of a workbook. */
    void forget(List<CellScript> scripts) {
        if (!isOff()) {
            String file = name(scripts) + ENDING;
            folders.forEach(folder -> folder.resolve(file).toFile().delete());
        }
    }

    /**
     * Compiles the cells of a workbook that is not trusted, and keeps them; runs nothing.
     *
     * @param scripts the script cells in order of the sheet
     * @throws IllegalStateException when this Java has no compiler
     */
    public void compile(List<CellScript> scripts) {
        if (isOff()) {
            return;
        }
        Compilers compilers = new Compilers();
        try (ShellLater shell = new ShellLater(compilers)) {
            Gate gate = new Gate(AllowList.standard(), false);
            Sheet sheet = new Sheet(compilers, new CellCompiler(compilers, shell::get, gate), this);
            sheet.remember(scripts);
            sheet.take(scripts, (cell, changed) -> true);
            sheet.keep();
        }
        // They come with the program: whoever may run it may read them.
        folders.get(0).resolve(name(scripts) + ENDING).toFile().setReadable(true, false);
    }

    private static void prune(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        try (Stream<Path> found = Files.list(folder)) {
            found.filter(file -> file.toString().endsWith(ENDING)).forEach(files::add);
        }
        if (files.size() > MOST_FILES) {
            files.sort(Comparator.comparing(file -> file.toFile().lastModified()));
            for (Path old : files.subList(0, files.size() - MOST_FILES)) {
                Files.deleteIfExists(old);
            }
        }
    }

    private String name(List<CellScript> scripts) {
        StringBuilder all = new StringBuilder(FORM);
        all.append(program.get().orElse(""))
                .append('\n')
                .append(Runtime.version())
                .append('\n');
        for (CellScript script : scripts) {
            all.append(script.id().length()).append(' ').append(script.id());
            all.append(script.text().length()).append(' ').append(script.text());
        }
        return HexFormat.of().formatHex(sha256(all.toString().getBytes(StandardCharsets.UTF_8)));
    }

    static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("this Java has no SHA-256, which every Java must have", missing);
        }
    }
}

package leverwright.workbook.session;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The bytes of kept cells: plain fields one after the other, and no objects that read themselves. */
final class KeptCellCodec {

    private static final int MOST = 1 << 20;

    private KeptCellCodec() {}

    private interface Put<T> {
        void put(DataOutputStream out, T value) throws IOException;
    }

    private interface Take<T> {
        T take(DataInputStream in) throws IOException;
    }

    /** Returns the bytes of some cells. */
    static byte[] bytes(List<KeptCell> cells) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        all(new DataOutputStream(bytes), cells, KeptCellCodec::cell);
        return bytes.toByteArray();
    }

    /**
     * Returns the cells that some bytes hold.
     *
     * @throws IOException when they are no such bytes
     */
    static List<KeptCell> cells(byte[] bytes) throws IOException {
        DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes));
        List<KeptCell> cells = list(in, KeptCellCodec::cell);
        if (in.read() >= 0) {
            throw new IOException("more than cells");
        }
        return cells;
    }

    private static void cell(DataOutputStream out, KeptCell cell) throws IOException {
        parsed(out, cell.parsed());
        text(out, cell.key());
        all(out, new ArrayList<>(cell.raw().entrySet()), (to, each) -> {
            text(to, each.getKey());
            bytes(to, each.getValue());
        });
        all(out, cell.immutable(), KeptCellCodec::text);
        text(out, cell.shape());
        all(out, cell.imports(), KeptCellCodec::text);
    }

    private static KeptCell cell(DataInputStream in) throws IOException {
        ParsedCell parsed = parsed(in);
        String key = text(in);
        Map<String, byte[]> raw = new LinkedHashMap<>();
        for (int left = count(in); left > 0; left--) {
            raw.put(text(in), bytes(in));
        }
        return new KeptCell(parsed, key, raw, set(in), text(in), list(in, KeptCellCodec::text));
    }

    private static void parsed(DataOutputStream out, ParsedCell cell) throws IOException {
        text(out, cell.script().id());
        text(out, cell.script().text());
        text(out, cell.className());
        all(out, cell.elements(), (to, part) -> {
            text(to, part.kind().name());
            numbers(to, part.start(), part.end(), part.bodyStart());
            to.writeBoolean(part.expression());
        });
        names(out, cell.names());
        ParsedCell.Value value = cell.value();
        out.writeBoolean(value != null);
        if (value != null) {
            numbers(out, value.element(), value.start(), value.end());
            out.writeBoolean(value.mayBeVoid());
        }
    }

    private static ParsedCell parsed(DataInputStream in) throws IOException {
        CellScript script = new CellScript(text(in), text(in));
        String className = text(in);
        List<Part> elements = list(
                in,
                from -> new Part(kind(text(from)), from.readInt(), from.readInt(), from.readInt(), from.readBoolean()));
        CellNames names = names(in);
        ParsedCell.Value value = in.readBoolean()
                ? new ParsedCell.Value(in.readInt(), in.readInt(), in.readInt(), in.readBoolean())
                : null;
        return new ParsedCell(script, className, elements, names, value, List.of());
    }

    private static Part.Kind kind(String name) throws IOException {
        try {
            return Part.Kind.valueOf(name);
        } catch (IllegalArgumentException unknown) {
            throw new IOException("no kind of part: " + name, unknown);
        }
    }

    private static void names(DataOutputStream out, CellNames names) throws IOException {
        all(out, names.variables(), (to, variable) -> {
            text(to, variable.name());
            to.writeBoolean(variable.type() != null);
            text(to, String.valueOf(variable.type()));
            numbers(to, variable.element(), variable.start(), variable.valueStart(), variable.valueEnd());
            to.writeBoolean(variable.arrayValue());
        });
        for (Set<String> each :
                List.of(names.methods(), names.types(), names.reads(), names.readsInBodies(), names.assigns())) {
            all(out, each, KeptCellCodec::text);
        }
        out.writeBoolean(names.keepsState());
        all(out, new ArrayList<>(names.tooEarly().entrySet()), (to, each) -> {
            text(to, each.getKey());
            to.writeInt(each.getValue());
        });
    }

    private static CellNames names(DataInputStream in) throws IOException {
        List<CellNames.Variable> variables = list(in, from -> {
            String name = text(from);
            boolean typed = from.readBoolean();
            String words = text(from);
            @Nullable String type = typed ? words : null;
            return new CellNames.Variable(
                    name, type, from.readInt(), from.readInt(), from.readInt(), from.readInt(), from.readBoolean());
        });
        Set<String> methods = set(in);
        Set<String> types = set(in);
        Set<String> reads = set(in);
        Set<String> readsInBodies = set(in);
        Set<String> assigns = set(in);
        boolean keepsState = in.readBoolean();
        Map<String, Integer> tooEarly = new LinkedHashMap<>();
        for (int left = count(in); left > 0; left--) {
            tooEarly.put(text(in), in.readInt());
        }
        return new CellNames(variables, methods, types, reads, readsInBodies, assigns, keepsState, tooEarly);
    }

    private static void numbers(DataOutputStream out, int... numbers) throws IOException {
        for (int each : numbers) {
            out.writeInt(each);
        }
    }

    private static void text(DataOutputStream out, String text) throws IOException {
        bytes(out, text.getBytes(StandardCharsets.UTF_8));
    }

    private static String text(DataInputStream in) throws IOException {
        return new String(bytes(in), StandardCharsets.UTF_8);
    }

    private static void bytes(DataOutputStream out, byte[] bytes) throws IOException {
        out.writeInt(bytes.length);
        out.write(bytes);
    }

    private static byte[] bytes(DataInputStream in) throws IOException {
        byte[] bytes = new byte[count(in)];
        in.readFully(bytes);
        return bytes;
    }

    private static int count(DataInputStream in) throws IOException {
        int count = in.readInt();
        if (count < 0 || count > MOST) {
            throw new IOException("no count: " + count);
        }
        return count;
    }

    private static <T> void all(DataOutputStream out, java.util.Collection<T> values, Put<T> put) throws IOException {
        out.writeInt(values.size());
        for (T value : values) {
            put.put(out, value);
        }
    }

    private static <T> List<T> list(DataInputStream in, Take<T> take) throws IOException {
        List<T> values = new ArrayList<>();
        for (int left = count(in); left > 0; left--) {
            values.add(take.take(in));
        }
        return values;
    }

    private static Set<String> set(DataInputStream in) throws IOException {
        return new LinkedHashSet<>(list(in, KeptCellCodec::text));
    }
}

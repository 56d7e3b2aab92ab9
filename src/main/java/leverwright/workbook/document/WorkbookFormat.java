package leverwright.workbook.document;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import leverwright.workbook.json.JsonCursor;
import leverwright.workbook.json.JsonLimits;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonProblem;
import leverwright.workbook.json.JsonReader;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;

/**
 * The workbook file: UTF-8 JSON that names its format and version first. This version of Leverwright writes version
 * {@value #VERSION} and reads every version up to it; a later one is refused in words, so that nothing of it is lost.
 */
public final class WorkbookFormat {

    /** What the key {@code format} says. */
    public static final String FORMAT = "leverwright-workbook";

    /** The version that is written. */
    public static final int VERSION = 1;

    /** How names of workbook files end. */
    public static final String EXTENSION = ".leverwright.json";

    private static final byte[] RECORD_BEGINS = "\n  \"record\": {\n".getBytes(StandardCharsets.UTF_8);
    private static final byte[] RECORD_ENDS = "\n  },".getBytes(StandardCharsets.UTF_8);

    private WorkbookFormat() {}

    /**
     * Returns the bytes of a workbook's file. The same workbook always gives the same bytes.
     *
     * @param workbook the workbook
     */
    public static byte[] write(Workbook workbook) {
        return JsonWriter.laidOut(WorkbookTree.of(workbook)).getBytes(StandardCharsets.UTF_8);
    }

    /**
     * Returns the workbook that a file holds.
     *
     * @param utf8 the bytes of the file
     * @throws JsonProblem when the bytes are not a workbook that this version can read; the message says where and why
     */
    public static Workbook read(byte[] utf8) {
        return read(JsonCursor.at(JsonReader.read(utf8, JsonLimits.STANDARD)));
    }

    /**
     * Returns the workbook that a file holds, without its record, where that can be told at once; reading the record takes
     * most of the time. What the rest of the file holds is not looked at: whoever shows this reads the whole soon after.
     *
     * @param utf8 the bytes of the file
     * @return empty when the file is not laid out as this program writes it, or holds nothing that can be read
     */
    static Optional<Workbook> readWithoutRecord(byte[] utf8) {
        int start = indexOf(utf8, RECORD_BEGINS, 0);
        int end = start < 0 ? -1 : indexOf(utf8, RECORD_ENDS, start);
        if (end < 0) {
            return Optional.empty();
        }
        // Line ends do not occur inside a text of JSON, so that what is left out is a member as it stands.
        int after = end + RECORD_ENDS.length;
        byte[] rest = Arrays.copyOf(utf8, start + utf8.length - after);
        System.arraycopy(utf8, after, rest, start, utf8.length - after);
        try {
            return Optional.of(read(rest));
        } catch (JsonProblem otherwise) {
            return Optional.empty();
        }
    }

    private static int indexOf(byte[] in, byte[] wanted, int from) {
        int last = in.length - wanted.length;
        for (int at = from; at <= last; at++) {
            if (in[at] == wanted[0] && Arrays.equals(in, at, at + wanted.length, wanted, 0, wanted.length)) {
                return at;
            }
        }
        return -1;
    }

    /** Returns the workbook that a tree holds. */
    static Workbook read(JsonCursor root) {
        requireFormat(root);
        JsonCursor version = root.member("version");
        return switch ((int) version.whole(1, Integer.MAX_VALUE)) {
            case 1 -> VersionOne.read(root);
            default ->
                throw version.problem("this workbook was written by a newer Leverwright (file version "
                        + (int) version.number() + "); this one reads versions 1 to " + VERSION
                        + "; open it with the newer Leverwright; the file was left as it is");
        };
    }

    private static void requireFormat(JsonCursor root) {
        boolean named = root.value() instanceof JsonObject object
                && object.get("format").map(WorkbookFormat::isOurs).orElse(false);
        if (!named) {
            JsonCursor place =
                    root.value() instanceof JsonObject ? root.optional("format").orElse(root) : root;
            throw place.problem(
                    "this is not a Leverwright workbook; a workbook is an object whose key \"format\" says \"" + FORMAT
                            + "\"; the file was left as it is");
        }
    }

    private static boolean isOurs(JsonValue value) {
        return value instanceof JsonText text && text.text().equals(FORMAT);
    }
}

package leverwright.workbook.document;

import java.nio.charset.StandardCharsets;
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

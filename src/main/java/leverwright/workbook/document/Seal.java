package leverwright.workbook.document;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonValue;
import leverwright.workbook.json.JsonWriter;

/**
 * The seal of a workbook: SHA-256 (FIPS 180-4) over the canonical form (RFC 8785) of an object with the keys dials,
 * record (when there is one) and sheet. It tells whether one of them was changed after sealing; whoever can change a file can
 * also seal it again, so it proves no author.
 */
public final class Seal {

    private static final String PREFIX = "sha256:";
    private static final int SHORT_DIGEST = 16;

    private Seal() {}

    /** What a seal says of its workbook. */
    public enum State {
        /** Sheet, dials and record are as they were sealed. */
        INTACT("sealed and intact"),
        /** Sheet, dials or record were changed after sealing. */
        CHANGED("sealed, but changed since"),
        /** The workbook has no seal. */
        NONE("not sealed");

        private final String words;

        State(String words) {
            this.words = words;
        }

        /** Returns the state as a reader sees it, for example {@code "sealed and intact"}. */
        public String words() {
            return words;
        }
    }

    /**
     * Returns the workbook sealed as it stands.
     *
     * @param workbook the workbook
     */
    public static Workbook seal(Workbook workbook) {
        return workbook.withSeal(Optional.of(of(workbook)));
    }

    /**
     * Returns the seal that fits a workbook as it stands, for example {@code "sha256:5e88…"}.
     *
     * @param workbook the workbook
     */
    public static String of(Workbook workbook) {
        Map<String, JsonValue> sealed = new LinkedHashMap<>();
        sealed.put("dials", WorkbookTree.settings(workbook.dials()));
        workbook.record().ifPresent(record -> sealed.put("record", WorkbookTree.record(record)));
        sealed.put("sheet", WorkbookTree.sheet(workbook.sheet()));
        return PREFIX + sha256(JsonWriter.canonical(new JsonObject(sealed)).getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Returns what a workbook's seal says.
     *
     * @param workbook the workbook
     */
    public static State state(Workbook workbook) {
        return workbook.seal()
                .map(seal -> seal.equals(of(workbook)) ? State.INTACT : State.CHANGED)
                .orElse(State.NONE);
    }

    /**
     * Returns a short digest of a workbook's scripts: the first 16 hexadecimal digits of SHA-256 over the canonical form of
     * its script cells. Notes, titles of the workbook and dials do not change it.
     *
     * @param workbook the workbook
     */
    public static String scripts(Workbook workbook) {
        String canonical = JsonWriter.canonical(WorkbookTree.sheet(workbook.scripts()));
        return sha256(canonical.getBytes(StandardCharsets.UTF_8)).substring(0, SHORT_DIGEST);
    }

    /** Returns the SHA-256 digest of some bytes as 64 hexadecimal digits. */
    static String sha256(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("this Java has no SHA-256, which every Java must have", missing);
        }
    }
}

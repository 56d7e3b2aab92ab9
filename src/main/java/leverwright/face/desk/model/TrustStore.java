package leverwright.face.desk.model;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.workbook.document.FileStamp;

/** Which files may compute on opening: those whose bytes this user saved or trusted, by their SHA-256 digests. */
public final class TrustStore {

    private static final int MOST = 2000;

    private final KeptLines lines;

    TrustStore(Path config, DeskLog log) {
        lines = new KeptLines(config.resolve("computes-on-opening.txt"), log);
    }

    /**
     * Returns what a file may do on opening.
     *
     * @param stamp the file's content
     */
    public synchronized Permission of(FileStamp stamp) {
        return read().getOrDefault(stamp.digest(), Permission.ASLEEP);
    }

    /**
     * Remembers what a file may do on opening.
     *
     * @param stamp the file's content
     * @param permission what the reader let it do; {@link Permission#ASLEEP} forgets it
     */
    public synchronized void remember(FileStamp stamp, Permission permission) {
        Map<String, Permission> known = read();
        known.remove(stamp.digest());
        if (permission != Permission.ASLEEP) {
            known.put(stamp.digest(), permission);
        }
        List<String> kept = known.entrySet().stream()
                .skip(Math.max(0, known.size() - MOST))
                .map(entry -> entry.getKey() + " " + entry.getValue().name())
                .toList();
        lines.write(kept);
    }

    private Map<String, Permission> read() {
        Map<String, Permission> known = new LinkedHashMap<>();
        for (String line : lines.read()) {
            String[] parts = line.split(" ");
            if (parts.length == 2 && parts[0].length() == 64) {
                if (parts[1].equals(Permission.TRUSTED.name())) {
                    known.put(parts[0], Permission.TRUSTED);
                } else if (parts[1].equals(Permission.GATED.name())) {
                    known.put(parts[0], Permission.GATED);
                }
            }
        }
        return known;
    }
}

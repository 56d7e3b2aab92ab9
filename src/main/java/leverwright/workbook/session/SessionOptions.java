package leverwright.workbook.session;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How a session runs.
 *
 * @param trusted whether the reader trusts the workbook: then cells may use any class
 * @param seed where the workbook's random numbers start
 * @param settings the dials that are set from the start, by name, as text such as {@code "45 deg"}
 * @param listener is told of every change of a cell while it happens, on threads of the session
 */
public record SessionOptions(boolean trusted, long seed, Map<String, String> settings, SessionListener listener) {

    /** The seed of a workbook that names none. */
    public static final long STANDARD_SEED = 1;

    /** Copies the settings in their order. */
    public SessionOptions {
        settings = Collections.unmodifiableMap(new LinkedHashMap<>(settings));
    }

    /** Returns the options for a workbook that is not trusted, with no dial set. */
    public static SessionOptions standard() {
        return new SessionOptions(false, STANDARD_SEED, Map.of(), outcome -> {});
    }

    /** Returns these options with the given trust. */
    public SessionOptions withTrust(boolean isTrusted) {
        return new SessionOptions(isTrusted, seed, settings, listener);
    }

    /** Returns these options with the given seed. */
    public SessionOptions withSeed(long newSeed) {
        return new SessionOptions(trusted, newSeed, settings, listener);
    }

    /** Returns these options with the given settings of dials. */
    public SessionOptions withSettings(Map<String, String> newSettings) {
        return new SessionOptions(trusted, seed, newSettings, listener);
    }

    /** Returns these options with the given listener. */
    public SessionOptions withListener(SessionListener newListener) {
        return new SessionOptions(trusted, seed, settings, newListener);
    }
}

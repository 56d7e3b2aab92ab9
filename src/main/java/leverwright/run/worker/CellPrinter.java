package leverwright.run.worker;

import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import leverwright.run.gate.woven.SameText;
import leverwright.run.gate.woven.StopCheck;
import org.jspecify.annotations.Nullable;

/** What a cell prints: kept up to a limit, counted beyond it. Closing it does nothing. */
final class CellPrinter extends PrintStream {

    /** The most characters kept of what one cell prints. */
    static final int MOST_CHARACTERS = 100_000;

    private final StringBuilder kept = new StringBuilder();
    private long dropped;

    CellPrinter() {
        super(OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8);
    }

    /** Forgets what was printed, before a cell runs. */
    void begin() {
        kept.setLength(0);
        dropped = 0;
    }

    /** Returns what was kept. */
    String text() {
        return kept.toString();
    }

    /** Returns how many characters were dropped. */
    long dropped() {
        return dropped;
    }

    private void put(CharSequence text) {
        StopCheck.check();
        int room = MOST_CHARACTERS - kept.length();
        if (text.length() <= room) {
            kept.append(text);
        } else {
            int cut = room > 0 && Character.isHighSurrogate(text.charAt(room - 1)) ? room - 1 : room;
            kept.append(text, 0, cut);
            dropped += text.length() - cut;
        }
    }

    private void line(CharSequence text) {
        put(text);
        put("\n");
    }

    @Override
    public void write(int octet) {
        put(String.valueOf((char) (octet & 0xFF)));
    }

    @Override
    public void write(byte[] octets, int from, int count) {
        put(new String(octets, from, count, StandardCharsets.UTF_8));
    }

    @Override
    public void write(byte[] octets) {
        write(octets, 0, octets.length);
    }

    @Override
    public void writeBytes(byte[] octets) {
        write(octets, 0, octets.length);
    }

    @Override
    public void flush() {
        // nothing waits here
    }

    @Override
    public void close() {
        // a cell cannot close what it prints to
    }

    @Override
    public void print(boolean value) {
        put(String.valueOf(value));
    }

    @Override
    public void print(char value) {
        put(String.valueOf(value));
    }

    @Override
    public void print(int value) {
        put(String.valueOf(value));
    }

    @Override
    public void print(long value) {
        put(String.valueOf(value));
    }

    @Override
    public void print(float value) {
        put(SameText.of(value));
    }

    @Override
    public void print(double value) {
        put(SameText.of(value));
    }

    @Override
    public void print(char[] value) {
        put(String.valueOf(value));
    }

    @Override
    public void print(@Nullable String value) {
        put(value == null ? "null" : value);
    }

    @Override
    public void print(@Nullable Object value) {
        put(SameText.of(value));
    }

    @Override
    public void println() {
        put("\n");
    }

    @Override
    public void println(boolean value) {
        line(String.valueOf(value));
    }

    @Override
    public void println(char value) {
        line(String.valueOf(value));
    }

    @Override
    public void println(int value) {
        line(String.valueOf(value));
    }

    @Override
    public void println(long value) {
        line(String.valueOf(value));
    }

    @Override
    public void println(float value) {
        line(SameText.of(value));
    }

    @Override
    public void println(double value) {
        line(SameText.of(value));
    }

    @Override
    public void println(char[] value) {
        line(String.valueOf(value));
    }

    @Override
    public void println(@Nullable String value) {
        line(value == null ? "null" : value);
    }

    @Override
    public void println(@Nullable Object value) {
        line(SameText.of(value));
    }

    @Override
    public PrintStream format(String format, Object... arguments) {
        put(String.format(Locale.ROOT, format, arguments));
        return this;
    }

    @Override
    public PrintStream format(@Nullable Locale locale, String format, Object... arguments) {
        put(String.format(locale, format, arguments));
        return this;
    }

    @Override
    public PrintStream printf(String format, Object... arguments) {
        return format(format, arguments);
    }

    @Override
    public PrintStream printf(@Nullable Locale locale, String format, Object... arguments) {
        return format(locale, format, arguments);
    }
}

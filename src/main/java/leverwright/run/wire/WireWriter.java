package leverwright.run.wire;

import java.util.Arrays;

/** Bytes of a frame as they are written. Big-endian; doubles as raw bits. */
final class WireWriter {

    private byte[] bytes = new byte[1024];
    private int size;

    void clear() {
        size = 0;
        if (bytes.length > 1024 * 1024) {
            bytes = new byte[1024];
        }
    }

    int size() {
        return size;
    }

    byte[] array() {
        return bytes;
    }

    private void room(long more) throws WireException {
        long needed = size + more;
        if (needed > WireLimits.FRAME_BYTES) {
            throw new WireException("the result takes more than " + WireLimits.FRAME_BYTES
                    + " bytes, the most that a frame holds; show fewer points or rows");
        }
        if (needed > bytes.length) {
            bytes = Arrays.copyOf(bytes, (int) Math.min(WireLimits.FRAME_BYTES, Math.max(needed, 2L * bytes.length)));
        }
    }

    void putByte(int value) throws WireException {
        room(1);
        bytes[size++] = (byte) value;
    }

    void putInt(int value) throws WireException {
        room(4);
        for (int shift = 24; shift >= 0; shift -= 8) {
            bytes[size++] = (byte) (value >>> shift);
        }
    }

    void putLong(long value) throws WireException {
        room(8);
        for (int shift = 56; shift >= 0; shift -= 8) {
            bytes[size++] = (byte) (value >>> shift);
        }
    }

    void putBytes(byte[] value) throws WireException {
        putInt(value.length);
        room(value.length);
        System.arraycopy(value, 0, bytes, size, value.length);
        size += value.length;
    }

    /** Writes the length, whether the characters take one byte or two, and the characters. */
    void putText(String text) throws WireException {
        int length = text.length();
        if (length > WireLimits.TEXT_LENGTH) {
            throw new WireException("a text of " + length + " characters is longer than " + WireLimits.TEXT_LENGTH
                    + ", the most that a result holds");
        }
        boolean narrow = isNarrow(text);
        putInt(length);
        putByte(narrow ? 1 : 2);
        room(narrow ? length : 2L * length);
        for (int i = 0; i < length; i++) {
            char character = text.charAt(i);
            if (!narrow) {
                bytes[size++] = (byte) (character >>> 8);
            }
            bytes[size++] = (byte) character;
        }
    }

    private static boolean isNarrow(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 0xFF) {
                return false;
            }
        }
        return true;
    }
}

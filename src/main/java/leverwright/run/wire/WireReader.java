package leverwright.run.wire;

/** Bytes of a frame as they are read; every step checks that enough is left. */
final class WireReader {

    private final byte[] bytes;
    private final int end;
    private int at;

    WireReader(byte[] bytes, int size) {
        this.bytes = bytes;
        this.end = size;
    }

    int left() {
        return end - at;
    }

    private void need(long count) throws WireException {
        if (count > left()) {
            throw new WireException("the frame ends " + (count - left()) + " bytes too early");
        }
    }

    int getByte() throws WireException {
        need(1);
        return bytes[at++] & 0xFF;
    }

    int getInt() throws WireException {
        need(4);
        int value = 0;
        for (int i = 0; i < 4; i++) {
            value = value << 8 | (bytes[at++] & 0xFF);
        }
        return value;
    }

    long getLong() throws WireException {
        need(8);
        long value = 0;
        for (int i = 0; i < 8; i++) {
            value = value << 8 | (bytes[at++] & 0xFF);
        }
        return value;
    }

    /** Reads a count of elements that each take at least the given bytes, so that no count can ask for much memory. */
    int getCount(int leastBytesEach) throws WireException {
        int count = getInt();
        if (count < 0 || count > WireLimits.COUNT) {
            throw new WireException("a count of " + count + " is outside 0 to " + WireLimits.COUNT);
        }
        need((long) count * leastBytesEach);
        return count;
    }

    byte[] getBytes() throws WireException {
        int length = getInt();
        if (length < 0) {
            throw new WireException("a length of " + length + " is below 0");
        }
        need(length);
        byte[] value = new byte[length];
        System.arraycopy(bytes, at, value, 0, length);
        at += length;
        return value;
    }

    String getText() throws WireException {
        int length = getInt();
        int width = getByte();
        if (length < 0 || length > WireLimits.TEXT_LENGTH || width < 1 || width > 2) {
            throw new WireException("a text of " + length + " characters of " + width + " bytes is not allowed");
        }
        need((long) length * width);
        char[] characters = new char[length];
        for (int i = 0; i < length; i++) {
            int high = width == 2 ? bytes[at++] & 0xFF : 0;
            characters[i] = (char) (high << 8 | (bytes[at++] & 0xFF));
        }
        return new String(characters);
    }
}

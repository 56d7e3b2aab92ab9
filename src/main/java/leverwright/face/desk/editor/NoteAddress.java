package leverwright.face.desk.editor;

import java.util.Base64;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which links a note may follow, and images that stand in the note itself; the same ones as on a published page. */
final class NoteAddress {

    /** The most bytes that an image in a note may have. */
    static final int MOST_BYTES = 500_000;

    private static final Pattern LINK = Pattern.compile("(?:https?://|mailto:)[^\\s\\p{Cntrl}]+");
    private static final Pattern IMAGE = Pattern.compile("data:image/(?:png|jpeg|gif|webp);base64,([A-Za-z0-9+/=]*)");

    private NoteAddress() {}

    /** Returns whether a link leads to http, https or mailto. */
    static boolean leadsSomewhereAllowed(String address) {
        return LINK.matcher(address.toLowerCase(Locale.ROOT)).matches();
    }

    /** Returns the bytes of an image that stands in its address; empty for any other address. */
    static Optional<byte[]> image(String address) {
        Matcher image = IMAGE.matcher(address);
        if (!image.matches()) {
            return Optional.empty();
        }
        try {
            return Optional.of(Base64.getDecoder().decode(image.group(1)));
        } catch (IllegalArgumentException broken) {
            return Optional.empty();
        }
    }

    /**
     * Returns the address of an image that holds its bytes; empty for what is neither PNG, JPEG nor GIF.
     *
     * @param bytes the image file
     */
    static Optional<String> of(byte[] bytes) {
        String kind = startsWith(bytes, 0x89, 'P', 'N', 'G')
                ? "png"
                : startsWith(bytes, 0xFF, 0xD8, 0xFF) ? "jpeg" : startsWith(bytes, 'G', 'I', 'F', '8') ? "gif" : "";
        return kind.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        "data:image/" + kind + ";base64," + Base64.getEncoder().encodeToString(bytes));
    }

    private static boolean startsWith(byte[] bytes, int... start) {
        for (int i = 0; i < start.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != start[i]) {
                return false;
            }
        }
        return true;
    }
}

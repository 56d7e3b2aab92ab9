package leverwright.workbook.json;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;

/** Turns bytes into characters and refuses what is not plain UTF-8. */
final class Utf8Text {

    private static final byte[] MARK = {(byte) 0xEF, (byte) 0xBB, (byte) 0xBF};

    private Utf8Text() {}

    /**
     * Returns the characters of a text in a buffer with an array.
     *
     * @param bytes the text in UTF-8, without a byte order mark
     * @throws JsonProblem when the text begins with a byte order mark or is not UTF-8
     */
    static CharBuffer decode(byte[] bytes) {
        refuseMark(bytes);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer characters = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), characters, true);
        characters.flip();
        if (result.isError()) {
            throw new JsonProblem(
                    end(characters), "", "the bytes here are not UTF-8 text; save the file in the encoding UTF-8");
        }
        return characters;
    }

    private static void refuseMark(byte[] bytes) {
        boolean utf8 = bytes.length >= 3 && bytes[0] == MARK[0] && bytes[1] == MARK[1] && bytes[2] == MARK[2];
        if (utf8) {
            throw new JsonProblem(
                    new Position(1, 1),
                    "",
                    "the file begins with a byte order mark; save it as UTF-8 without byte order mark");
        }
    }

    private static Position end(CharBuffer characters) {
        int line = 1;
        int column = 1;
        for (int index = 0; index < characters.length(); index++) {
            boolean newLine = characters.charAt(index) == '\n';
            line += newLine ? 1 : 0;
            column = newLine ? 1 : column + 1;
        }
        return new Position(line, column);
    }
}

package leverwright.workbook.json;

import java.math.BigDecimal;
import java.nio.CharBuffer;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import tools.jackson.core.JacksonException;
import tools.jackson.core.JsonParser;
import tools.jackson.core.JsonToken;
import tools.jackson.core.ObjectReadContext;
import tools.jackson.core.StreamReadConstraints;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.TokenStreamLocation;
import tools.jackson.core.exc.StreamConstraintsException;
import tools.jackson.core.exc.UnexpectedEndOfInputException;
import tools.jackson.core.json.JsonFactory;
import tools.jackson.core.json.JsonFactoryBuilder;
import tools.jackson.core.json.JsonReadFeature;

/**
 * Reads JSON strictly: RFC 8259 and nothing beside it, no key twice in an object, no number that a double cannot hold, and
 * nothing above the limits. Whatever is wrong becomes a {@link JsonProblem}.
 */
public final class JsonReader {

    private static final double LARGEST_EXACT_WHOLE = 9007199254740992.0; // 2^53
    private static final int LONGEST_NUMBER = 1000;

    private final JsonParser parser;
    private final JsonLimits limits;
    private int values;

    private JsonReader(JsonParser parser, JsonLimits limits) {
        this.parser = parser;
        this.limits = limits;
    }

    /**
     * Returns the tree of a text.
     *
     * @param utf8 the text in UTF-8, without a byte order mark
     * @param limits how much it may hold
     * @throws JsonProblem when the text is not JSON or above the limits
     */
    public static JsonValue read(byte[] utf8, JsonLimits limits) {
        if (utf8.length > limits.bytes()) {
            throw new JsonProblem(
                    Position.NOWHERE,
                    "",
                    "the text has " + utf8.length + " bytes; allowed are " + limits.bytes() + "; split it");
        }
        CharBuffer text = Utf8Text.decode(utf8);
        JsonFactory factory = factory(limits);
        try (JsonParser parser = factory.createParser(ObjectReadContext.empty(), text.array(), 0, text.length())) {
            return new JsonReader(parser, limits).wholeText();
        }
    }

    private static JsonFactory factory(JsonLimits limits) {
        JsonFactoryBuilder builder = JsonFactory.builder()
                .streamReadConstraints(StreamReadConstraints.builder()
                        .maxDocumentLength(limits.bytes())
                        .maxNestingDepth(limits.depth() + 1)
                        .maxStringLength(limits.textLength())
                        .maxNameLength(Math.min(limits.textLength(), 50_000))
                        .maxNumberLength(LONGEST_NUMBER)
                        .build())
                .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                .enable(StreamReadFeature.AUTO_CLOSE_SOURCE)
                .disable(StreamReadFeature.INCLUDE_SOURCE_IN_LOCATION)
                .disable(StreamReadFeature.IGNORE_UNDEFINED)
                .disable(StreamReadFeature.USE_FAST_DOUBLE_PARSER)
                .disable(StreamReadFeature.USE_FAST_BIG_NUMBER_PARSER);
        for (JsonReadFeature leniency : JsonReadFeature.values()) {
            builder.disable(leniency);
        }
        return builder.build();
    }

    private JsonValue wholeText() {
        try {
            JsonToken first = parser.nextToken();
            if (first == null) {
                throw new JsonProblem(
                        new Position(1, 1), "", "the text is empty; a JSON text with one value is expected");
            }
            JsonValue value = value(first, 1);
            if (parser.nextToken() != null) {
                throw problem("the text goes on after its end; remove what follows");
            }
            return value;
        } catch (JacksonException failure) {
            throw explained(failure);
        }
    }

    private JsonValue value(JsonToken token, int depth) {
        if (++values > limits.values()) {
            throw problem("there are more than " + limits.values() + " values; record fewer or coarser results");
        }
        Position position = tokenPosition();
        return switch (token) {
            case START_OBJECT -> object(position, deeper(depth));
            case START_ARRAY -> array(position, deeper(depth));
            case VALUE_STRING -> text(position);
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> number(position);
            case VALUE_TRUE -> new JsonTruth(true, position);
            case VALUE_FALSE -> new JsonTruth(false, position);
            case VALUE_NULL -> new JsonNothing(position);
            default -> throw problem("a value is expected here");
        };
    }

    private int deeper(int depth) {
        if (depth > limits.depth()) {
            throw problem("objects and arrays stand more than " + limits.depth() + " deep inside each other");
        }
        return depth + 1;
    }

    private JsonObject object(Position position, int depth) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        JsonToken token = parser.nextToken();
        while (token != JsonToken.END_OBJECT) {
            String key = wellFormed(parser.currentName(), tokenPosition());
            members.put(key, value(parser.nextToken(), depth));
            token = parser.nextToken();
        }
        return new JsonObject(members, position);
    }

    private JsonArray array(Position position, int depth) {
        List<JsonValue> elements = new ArrayList<>();
        JsonToken token = parser.nextToken();
        while (token != JsonToken.END_ARRAY) {
            elements.add(value(token, depth));
            token = parser.nextToken();
        }
        return new JsonArray(elements, position);
    }

    private JsonText text(Position position) {
        return new JsonText(wellFormed(parser.getString(), position), position);
    }

    private String wellFormed(String text, Position position) {
        for (int index = 0; index < text.length(); index++) {
            if (Character.isSurrogate(text.charAt(index))) {
                if (!Character.isSupplementaryCodePoint(text.codePointAt(index))) {
                    throw problem(position, "the text holds half a character (a lone surrogate); remove it");
                }
                index++;
            }
        }
        return text;
    }

    private JsonNumber number(Position position) {
        String written = parser.getString();
        double value = Double.parseDouble(written);
        if (!Double.isFinite(value)) {
            throw problem(position, "the number " + written + " is too large; allowed are magnitudes up to 1.797e308");
        }
        if (Math.abs(value) >= LARGEST_EXACT_WHOLE && losesDigits(written, value)) {
            throw problem(position, "the whole number " + written + " has more digits than are kept; write it as text");
        }
        return new JsonNumber(value, position);
    }

    private static boolean losesDigits(String written, double value) {
        boolean whole = written.chars().allMatch(character -> character == '-' || Character.isDigit(character));
        return whole
                && !CanonicalNumber.write(value).equals(written)
                && !new BigDecimal(value).equals(new BigDecimal(written));
    }

    private Position tokenPosition() {
        return position(parser.currentTokenLocation());
    }

    private static Position position(TokenStreamLocation location) {
        return new Position(location.getLineNr(), location.getColumnNr());
    }

    private JsonProblem problem(String complaint) {
        return problem(tokenPosition(), complaint);
    }

    private JsonProblem problem(Position position, String complaint) {
        return new JsonProblem(position, KeyPath.of(parser.streamReadContext()), complaint);
    }

    private JsonProblem explained(JacksonException failure) {
        String reason = String.valueOf(failure.getOriginalMessage());
        String complaint;
        if (failure instanceof StreamConstraintsException) {
            complaint = "a number, key or text here is longer than allowed (" + limits.textLength()
                    + " characters a text, " + LONGEST_NUMBER + " a number); shorten it";
        } else if (reason.startsWith("Duplicate Object property")) {
            complaint = "this key stands twice in one object; keep one of the two";
        } else if (failure instanceof UnexpectedEndOfInputException) {
            complaint = "the text breaks off here before its end; fetch the whole file again or mend its end";
        } else {
            complaint = "this is not JSON: " + reason.lines().findFirst().orElse("unexpected text");
        }
        TokenStreamLocation location = failure.getLocation();
        Position position = location == null ? position(parser.currentLocation()) : position(location);
        return problem(position, complaint);
    }
}

package leverwright.workbook.json;

/** A JSON value that remembers where it was read. Equality looks at the content and never at the place. */
public sealed interface JsonValue permits JsonObject, JsonArray, JsonText, JsonNumber, JsonTruth, JsonNothing {

    /** Returns where the value starts in its text, or {@link Position#NOWHERE}. */
    Position position();

    /** Returns the kind of this value with an article, for messages, for example {@code "an object"}. */
    String kind();
}

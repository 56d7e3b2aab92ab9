/**
 * JSON as Leverwright's files use it: read strictly with places kept, written with one form for every number.
 *
 * <p>A text becomes a tree of {@link leverwright.workbook.json.JsonValue values}, each of which knows the line and column
 * it was read from. A {@link leverwright.workbook.json.JsonCursor cursor} walks the tree and turns whatever is missing or
 * of the wrong type into one {@link leverwright.workbook.json.JsonProblem message} with line, column and key path. The
 * {@link leverwright.workbook.json.JsonWriter writer} lays a tree out for people, or in the canonical form of RFC 8785
 * for digests. Numbers are IEEE doubles (RFC 7493, section 2.2); equal trees are those with equal content, wherever it
 * stood.
 */
@NullMarked
package leverwright.workbook.json;

import org.jspecify.annotations.NullMarked;

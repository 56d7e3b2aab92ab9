/**
 * The workbook as a value, its file, its record, its seal, its storage and the journal of unsaved text.
 *
 * <p>A {@link leverwright.workbook.document.Workbook} is an immutable sheet of cells with dials, an optional
 * {@link leverwright.workbook.document.WorkbookRecord record} of the results as last computed, and an optional
 * {@link leverwright.workbook.document.Seal seal} over sheet, dials and record. Its file is UTF-8 JSON, described by
 * {@code docs/workbook.schema.json}; what a reader does not know it keeps. Numbers in a record are SI doubles (radians
 * for angles) and come back with the same bits. Nothing here computes or runs a cell.
 */
@NullMarked
package leverwright.workbook.document;

import org.jspecify.annotations.NullMarked;

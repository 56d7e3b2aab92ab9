/**
 * The editors: scripts with colours, completion and words about the API, notes with their formatted view, and find and
 * replace. What is typed goes to the model at once, and what the model says stands in the editors; undo is the model's.
 *
 * <p>Places in texts are offsets in UTF-16 units from 0; lines and columns count from 0 here and from 1 in
 * {@link leverwright.workbook.session.Span}. Nothing is computed here.
 */
@NullMarked
package leverwright.face.desk.editor;

import org.jspecify.annotations.NullMarked;

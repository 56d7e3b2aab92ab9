package leverwright.workbook.document;

import java.nio.file.Path;

/**
 * A workbook as it was read from a file.
 *
 * @param file the file as the user named it
 * @param workbook what it holds
 * @param stamp the file's content when it was read; needed to save over it
 */
public record OpenedWorkbook(Path file, Workbook workbook, FileStamp stamp) {}

package leverwright.workbook.json;

/**
 * A text that is not what it should be, said in one line: file, line and column, key path, what is wrong, what is
 * allowed and what to do. The message is meant for people and stands on its own.
 */
public final class JsonProblem extends IllegalArgumentException {

    private static final long serialVersionUID = 1L;
    private static final int LONGEST = 600;

    private final transient Position position;
    private final String file;
    private final String path;
    private final String complaint;

    /**
     * Makes a problem of a text whose file is not known here.
     *
     * @param position where it lies, or {@link Position#NOWHERE}
     * @param path the key path, for example {@code "sheet[2].note"}; empty for the text as a whole
     * @param complaint what is wrong, what is allowed and what to do, in one line
     */
    public JsonProblem(Position position, String path, String complaint) {
        this("", position, path, complaint);
    }

    private JsonProblem(String file, Position position, String path, String complaint) {
        super(message(file, position, path, complaint));
        this.file = file;
        this.position = position;
        this.path = path;
        this.complaint = complaint;
    }

    private static String message(String file, Position position, String path, String complaint) {
        StringBuilder message = new StringBuilder(file);
        if (position.isKnown()) {
            message.append(message.isEmpty() ? "" : ", ");
            message.append("line ").append(position.line()).append(", column ").append(position.column());
        }
        if (!path.isEmpty()) {
            message.append(message.isEmpty() ? "" : ", ").append(path);
        }
        return message.append(message.isEmpty() ? "" : ": ")
                .append(oneLine(complaint))
                .toString();
    }

    /** What a file says may stand in a complaint, but never with control characters or without end. */
    private static String oneLine(String complaint) {
        StringBuilder line = new StringBuilder();
        complaint
                .codePoints()
                .limit(LONGEST)
                .map(point -> Character.isISOControl(point) ? ' ' : point)
                .forEach(line::appendCodePoint);
        return line.toString();
    }

    /**
     * Returns the same problem with its file named.
     *
     * @param name the file as the user knows it
     */
    public JsonProblem in(String name) {
        return new JsonProblem(name, position, path, complaint);
    }

    /** Returns the file's name; empty when it was not told. */
    public String file() {
        return file;
    }

    /** Returns where the problem lies; {@link Position#NOWHERE} when it has no place. */
    public Position position() {
        return position;
    }

    /** Returns the key path; empty for the text as a whole. */
    public String path() {
        return path;
    }

    /** Returns what is wrong without file and place. */
    public String complaint() {
        return complaint;
    }
}

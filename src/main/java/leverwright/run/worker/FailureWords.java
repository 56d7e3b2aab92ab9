package leverwright.run.worker;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leverwright.run.wire.Message;
import leverwright.run.wire.WireException;
import org.jspecify.annotations.Nullable;

/** Says in words what a cell threw, and in which of its lines. */
final class FailureWords {

    private static final int MOST_LINES = 8;
    private static final int LONGEST = 2000;

    private FailureWords() {}

    static String of(Throwable thrown) {
        String words = words(thrown);
        return words.length() <= LONGEST ? words : words.substring(0, LONGEST) + " …";
    }

    private static String words(Throwable thrown) {
        String message = message(thrown);
        if (thrown instanceof StackOverflowError) {
            return "a method calls itself too deeply; let it end sooner or write a loop";
        }
        if (thrown instanceof OutOfMemoryError) {
            return "the cell ran out of memory; keep fewer or smaller values";
        }
        if (thrown instanceof AssertionError) {
            return message.isEmpty()
                    ? "what this line asserts is not so"
                    : "what this line asserts is not so: " + message;
        }
        if (thrown instanceof ArithmeticException && message.equals("/ by zero")) {
            return "a whole number is divided by zero";
        }
        if (thrown instanceof IndexOutOfBoundsException || thrown instanceof NegativeArraySizeException) {
            return "a place outside the list, text or array was asked for: " + message;
        }
        if (thrown instanceof NullPointerException) {
            return message.isEmpty() ? "a value that is null was used" : "a value that is null was used: " + message;
        }
        if (thrown instanceof ClassCastException) {
            return "a value is not of the kind it is taken for: " + message;
        }
        if (thrown instanceof NumberFormatException) {
            return "this text is not a number: " + message;
        }
        if (thrown instanceof ExceptionInInitializerError && thrown.getCause() != null) {
            return words(thrown.getCause());
        }
        if (thrown instanceof LinkageError) {
            return "a class could not be used: " + message;
        }
        if (thrown instanceof UnsupportedOperationException && message.isEmpty()) {
            return "this list, set or map cannot be changed; make a copy with new ArrayList<>(…) first";
        }
        if (speaksForItself(thrown) && !message.isEmpty()) {
            return message;
        }
        String kind = thrown.getClass().getSimpleName();
        return message.isEmpty() ? kind + " was thrown" : kind + ": " + message;
    }

    private static boolean speaksForItself(Throwable thrown) {
        return thrown instanceof IllegalArgumentException
                || thrown instanceof IllegalStateException
                || thrown instanceof UnsupportedOperationException
                || thrown instanceof WireException;
    }

    /** Reads the message of an exception, which a cell may have written itself. */
    private static String message(Throwable thrown) {
        try {
            String message = thrown.getMessage();
            return message == null ? "" : message.replaceAll("REPL\\.Cell_\\w+[.$]", "");
        } catch (Throwable inner) {
            return "";
        }
    }

    /** Returns the lines of cells it was in, innermost first, no line twice running. */
    static List<Message.Trace> traces(Throwable thrown, Map<String, String> cellsByClass) {
        List<Message.Trace> traces = new ArrayList<>();
        for (StackTraceElement element : innermost(thrown).getStackTrace()) {
            String name = element.getClassName();
            int dollar = name.indexOf('$');
            String cell = cellsByClass.get(dollar < 0 ? name : name.substring(0, dollar));
            if (cell != null && element.getLineNumber() > 0 && traces.size() < MOST_LINES) {
                Message.Trace trace = new Message.Trace(cell, element.getLineNumber());
                if (traces.isEmpty() || !traces.get(traces.size() - 1).equals(trace)) {
                    traces.add(trace);
                }
            }
        }
        return traces;
    }

    private static Throwable innermost(Throwable thrown) {
        @Nullable Throwable cause = thrown instanceof ExceptionInInitializerError ? thrown.getCause() : null;
        return cause == null ? thrown : cause;
    }
}

package leverwright.run.gate;

import java.util.LinkedHashMap;
import java.util.Map;

/** What to use instead of something that is refused. */
final class Advice {

    static final String CLOCK = "a cell gives the same digits at any time; make a dial or type the value in";
    private static final String FILES = "a cell reads and writes no files; type the values into the cell";
    private static final String THREADS = "a cell runs on one thread; write an ordinary loop or stream";
    private static final String REFLECTION = "call the method or constructor directly";
    private static final String PROCESS =
            "a cell sees nothing of the computer around it; type the value in or make a dial";
    private static final String ORDERED = "use LinkedHashMap or TreeMap, which keep an order";
    private static final String OTHERWISE =
            "cells use the workbench's own words and plain Java for numbers, text and lists";

    /** Beginnings of names with dots; the first that fits is taken. */
    private static final Map<String, String> BY_NAME = new LinkedHashMap<>();

    static {
        BY_NAME.put("java.lang.System.exit", "let the cell come to its end");
        BY_NAME.put("java.lang.System.identityHashCode", "compare with == or give the object a number of its own");
        BY_NAME.put("java.lang.System.gc", "leave it out");
        BY_NAME.put("java.lang.System.set", "leave it out");
        BY_NAME.put("java.lang.System", PROCESS);
        BY_NAME.put("java.lang.Runtime", PROCESS);
        BY_NAME.put("java.lang.Process", PROCESS);
        BY_NAME.put("java.lang.Throwable", "print getMessage() of the exception");
        BY_NAME.put("java.lang.Thread", THREADS);
        BY_NAME.put("java.lang.Inheritable", THREADS);
        BY_NAME.put("java.lang.Object.wait", THREADS);
        BY_NAME.put("java.lang.Object.notify", THREADS);
        BY_NAME.put("java.lang.ref", "keep the object in a variable");
        BY_NAME.put("java.lang.Class", REFLECTION);
        BY_NAME.put("java.lang.Module", REFLECTION);
        BY_NAME.put("java.lang.reflect", REFLECTION);
        BY_NAME.put("java.lang.invoke", REFLECTION);
        BY_NAME.put("java.lang.StringBuffer", "use StringBuilder");
        BY_NAME.put("java.lang.AutoCloseable", "leave out the try with resources");
        BY_NAME.put("java.util.concurrent", THREADS);
        BY_NAME.put("java.util.Timer", THREADS);
        BY_NAME.put("java.util.stream.BaseStream", THREADS);
        BY_NAME.put("java.util.Collection.parallel", THREADS);
        BY_NAME.put("java.util.Arrays.parallel", THREADS);
        BY_NAME.put("java.util.stream.Collectors", "use groupingBy or toMap");
        BY_NAME.put("java.util.IdentityHashMap", ORDERED);
        BY_NAME.put("java.util.WeakHashMap", ORDERED);
        BY_NAME.put("java.util.Hashtable", ORDERED);
        BY_NAME.put("java.util.HashMap", ORDERED);
        BY_NAME.put("java.util.Properties", ORDERED);
        BY_NAME.put("java.util.Vector", "use ArrayList");
        BY_NAME.put("java.util.Stack", "use ArrayDeque");
        BY_NAME.put("java.util.UUID", "use new Random(), whose numbers are the same at every run");
        BY_NAME.put("java.security", "use new Random(), whose numbers are the same at every run");
        BY_NAME.put("java.util.Date", CLOCK);
        BY_NAME.put("java.util.Calendar", CLOCK);
        BY_NAME.put("java.time", CLOCK);
        BY_NAME.put("java.util.Scanner", "type the values into the cell or make a dial");
        BY_NAME.put("java.util.Formatter", "use String.format");
        BY_NAME.put("java.util.Locale", "numbers are written the same way everywhere; leave it out");
        BY_NAME.put("java.text", "use String.format");
        BY_NAME.put("java.io", FILES);
        BY_NAME.put("java.nio", FILES);
        BY_NAME.put("java.util.zip", FILES);
        BY_NAME.put("java.util.jar", FILES);
        BY_NAME.put("java.net", "a cell reaches no network; type the values into the cell");
        BY_NAME.put("javax", OTHERWISE);
        BY_NAME.put("leverwright.run", "say dial, table, chart, figure, working or claim");
    }

    private Advice() {}

    static String on(String nameWithDots) {
        for (Map.Entry<String, String> entry : BY_NAME.entrySet()) {
            if (nameWithDots.startsWith(entry.getKey())) {
                return entry.getValue();
            }
        }
        return OTHERWISE;
    }
}

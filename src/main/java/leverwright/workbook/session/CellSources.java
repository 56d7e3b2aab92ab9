package leverwright.workbook.session;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Writes the sources that a script becomes: one to parse, one to find types, one to compile. */
final class CellSources {

    /** The class in the source that is only parsed. */
    static final String PARSED = "REPL.Parsed";

    /** The variable that stands for the value at the end of a cell while it is only parsed. */
    static final String VALUE = "$value";

    /** The method that marks the first line of what is handed to JShell. */
    static final String FIRST_LINE = "$first";

    private CellSources() {}

    /**
     * Writes the snippet for JShell: the cell's class inside one class for each cell that it reads from, which extends that
     * cell's class; so a name means the member of the nearest cell above.
     *
     * @param wraps the names of the classes around the cell's, from the outermost in, each with the class it extends
     */
    static GeneratedSource toShell(
            ParsedCell cell, Map<String, String> wraps, Map<CellNames.Variable, String> types, boolean hasValue) {
        GeneratedSource source = new GeneratedSource(cell.script().text());
        String modifier = "";
        for (Map.Entry<String, String> wrap : wraps.entrySet()) {
            source.add(modifier + "class " + wrap.getKey() + " extends " + wrap.getValue() + " { ");
            modifier = "static ";
        }
        source.add("public static class " + cell.simpleName() + " { static void " + FIRST_LINE + "() {}\n");
        Map<CellNames.Variable, String> own = new LinkedHashMap<>();
        types.forEach((variable, type) -> own.put(variable, type.replace(cell.className() + ".", "")));
        body(source, cell, own, hasValue);
        source.add("}".repeat(wraps.size()));
        return source;
    }

    /** Writes members as members and statements as the body of a method; nothing is resolved. */
    static GeneratedSource toParse(String script, List<Part> elements) {
        GeneratedSource source = new GeneratedSource(script);
        source.add("package REPL;\npublic final class Parsed {\n");
        members(source, elements);
        source.add("static void " + CellParser.RUN + "() throws Throwable {\n");
        for (int i = 0; i < elements.size(); i++) {
            Part element = elements.get(i);
            if (element.expression() && i == elements.size() - 1) {
                source.add("Object " + VALUE + " =\n").copy(element.start(), element.endOfExpression());
                source.add(";\n");
            } else if (element.isStatement()) {
                statement(source, element);
            }
        }
        return source.add("}\n}\n");
    }

    private static void statement(GeneratedSource source, Part element) {
        source.copy(element.start(), element.end());
        source.add(element.kind() == Part.Kind.OPEN ? ";\n" : "\n");
    }

    /** Writes top-level variables as locals, so that the compiler finds the types of those declared with var. */
    static GeneratedSource toInfer(ParsedCell cell, List<String> imports) {
        GeneratedSource source = head(cell, imports);
        members(source, cell.elements());
        source.add("static void " + CellParser.RUN + "() throws Throwable {\n");
        ParsedCell.Value value = cell.value();
        for (int i = 0; i < cell.elements().size(); i++) {
            Part element = cell.elements().get(i);
            if (value != null && value.element() == i) {
                if (value.mayBeVoid()) {
                    source.copy(value.start(), value.end()).add(";\n");
                }
            } else if (element.isStatement()) {
                statement(source, element);
            }
        }
        return source.add("}\n}\n");
    }

    /** Writes top-level variables as fields of the given types, set where the script declares them. */
    static GeneratedSource toCompile(
            ParsedCell cell, List<String> imports, Map<CellNames.Variable, String> types, boolean hasValue) {
        GeneratedSource source = head(cell, imports);
        body(source, cell, types, hasValue);
        return source;
    }

    private static void body(
            GeneratedSource source, ParsedCell cell, Map<CellNames.Variable, String> types, boolean hasValue) {
        for (CellNames.Variable variable : cell.names().variables()) {
            Part element = cell.elements().get(variable.element());
            source.add("public static ")
                    .standFor(types.get(variable) + " " + variable.name(), element.start(), element.end())
                    .add(";\n");
        }
        members(source, cell.elements());
        source.add("public static " + (hasValue ? "Object " : "void ") + CellParser.RUN + "() throws Throwable {\n");
        ParsedCell.Value value = cell.value();
        for (int i = 0; i < cell.elements().size(); i++) {
            if (hasValue && value != null && value.element() == i) {
                source.add("return ").copy(value.start(), value.end()).add(";\n");
            } else if (cell.elements().get(i).isStatement()) {
                statement(source, cell, i, types);
            }
        }
        source.add("}\n}\n");
    }

    private static GeneratedSource head(ParsedCell cell, List<String> imports) {
        GeneratedSource source = new GeneratedSource(cell.script().text());
        source.add("package REPL;\n");
        imports.forEach(each -> source.add(each + "\n"));
        for (Part element : cell.elements()) {
            if (element.kind() == Part.Kind.IMPORT) {
                source.copy(element.start(), element.end()).add("\n");
            }
        }
        return source.add("public final class " + cell.simpleName() + " {\n");
    }

    private static void members(GeneratedSource source, List<Part> elements) {
        for (Part element : elements) {
            if (element.isMember()) {
                source.add("public static\n")
                        .copy(element.bodyStart(), element.end())
                        .add("\n");
            }
        }
    }

    private static void statement(
            GeneratedSource source, ParsedCell cell, int place, Map<CellNames.Variable, String> types) {
        boolean declares = false;
        for (CellNames.Variable variable : cell.names().variables()) {
            if (variable.element() == place) {
                declares = true;
                assignment(source, variable, String.valueOf(types.get(variable)));
            }
        }
        if (!declares) {
            statement(source, cell.elements().get(place));
        }
    }

    private static void assignment(GeneratedSource source, CellNames.Variable variable, String type) {
        source.add(variable.name() + " = ");
        if (variable.valueStart() < 0) {
            source.add(emptyValue(type));
        } else {
            if (variable.arrayValue()) {
                source.add("new " + type + " ");
            }
            source.copy(variable.valueStart(), variable.valueEnd());
        }
        source.add(";\n");
    }

    private static String emptyValue(String type) {
        return switch (type) {
            case "boolean" -> "false";
            case "byte", "short", "char", "int", "long", "float", "double" -> "0";
            default -> "null";
        };
    }
}

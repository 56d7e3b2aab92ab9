package leverwright.workbook.session;

import java.util.List;
import java.util.Map;

/** Writes the sources that a script becomes: one to parse, one to find types, one to compile. */
final class CellSources {

    /** The class in the source that is only parsed. */
    static final String PARSED = "cells.Parsed";

    /** The variable that stands for the value at the end of a cell while it is only parsed. */
    static final String VALUE = "$value";

    private CellSources() {}

    /** Writes members as members and statements as the body of a method; nothing is resolved. */
    static GeneratedSource toParse(String script, List<Part> elements) {
        GeneratedSource source = new GeneratedSource(script);
        source.add("package cells;\npublic final class Parsed {\n");
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
        return source.add("}\n}\n");
    }

    private static GeneratedSource head(ParsedCell cell, List<String> imports) {
        GeneratedSource source = new GeneratedSource(cell.script().text());
        source.add("package cells;\n");
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

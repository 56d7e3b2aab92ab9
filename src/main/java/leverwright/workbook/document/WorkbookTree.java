package leverwright.workbook.document;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonNumber;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonText;
import leverwright.workbook.json.JsonValue;

/** Turns a workbook into the tree of its file. Known keys come first in a fixed order, then unknown ones in their own. */
final class WorkbookTree {

    private WorkbookTree() {}

    static JsonObject of(Workbook workbook) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("format", new JsonText(WorkbookFormat.FORMAT));
        members.put("version", new JsonNumber(WorkbookFormat.VERSION));
        members.put("title", new JsonText(workbook.title()));
        members.put("author", new JsonText(workbook.author()));
        members.put("about", new JsonText(workbook.about()));
        members.put("sheet", sheet(workbook.sheet()));
        members.put("dials", settings(workbook.dials()));
        workbook.record().ifPresent(record -> members.put("record", record(record)));
        workbook.seal().ifPresent(seal -> members.put("seal", new JsonText(seal)));
        return withUnknown(members, workbook.unknown());
    }

    static JsonArray sheet(List<? extends Cell> cells) {
        return new JsonArray(cells.stream().map(WorkbookTree::cell).toList());
    }

    private static JsonObject cell(Cell cell) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("id", new JsonText(cell.id()));
        if (cell instanceof ScriptCell script) {
            if (!script.title().isEmpty()) {
                members.put("title", new JsonText(script.title()));
            }
            members.put("script", JsonArray.ofTexts(script.lines()));
        } else {
            members.put("note", JsonArray.ofTexts(cell.lines()));
        }
        return withUnknown(members, cell.unknown());
    }

    static JsonObject settings(Map<String, String> dials) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        dials.forEach((name, setting) -> members.put(name, new JsonText(setting)));
        return new JsonObject(members);
    }

    static JsonObject record(WorkbookRecord record) {
        Map<String, JsonValue> cells = new LinkedHashMap<>();
        record.cells().forEach((id, cell) -> cells.put(id, cellRecord(cell)));
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("engine", new JsonText(record.engine()));
        members.put("java", new JsonText(record.java()));
        members.put("seed", new JsonNumber(record.seed()));
        members.put("sheet", new JsonText(record.sheet()));
        members.put("dials", settings(record.dials()));
        members.put("cells", new JsonObject(cells));
        return withUnknown(members, record.unknown());
    }

    private static JsonObject cellRecord(CellRecord cell) {
        Map<String, JsonValue> members = new LinkedHashMap<>();
        members.put("state", new JsonText(cell.state().words()));
        if (!cell.problem().isEmpty()) {
            members.put("problem", new JsonText(cell.problem()));
        }
        if (!cell.recordedDials().elements().isEmpty()) {
            members.put("dials", cell.recordedDials());
        }
        members.put("results", cell.recordedResults());
        return withUnknown(members, cell.unknown());
    }

    private static JsonObject withUnknown(Map<String, JsonValue> known, JsonObject unknown) {
        Map<String, JsonValue> members = new LinkedHashMap<>(known);
        unknown.members().forEach(members::putIfAbsent);
        return new JsonObject(members);
    }
}

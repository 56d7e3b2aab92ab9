package leverwright.workbook.document;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import leverwright.run.result.CellState;
import leverwright.workbook.json.JsonArray;
import leverwright.workbook.json.JsonCursor;

/** Reads version 1 of the workbook file. Every complaint names line, column and key path. */
final class VersionOne {

    private static final List<String> WORKBOOK_KEYS =
            List.of("format", "version", "title", "author", "about", "sheet", "dials", "record", "seal");
    private static final List<String> NOTE_KEYS = List.of("id", "note");
    private static final List<String> SCRIPT_KEYS = List.of("id", "title", "script");
    private static final List<String> RECORD_KEYS = List.of("engine", "java", "seed", "sheet", "dials", "cells");
    private static final List<String> CELL_RECORD_KEYS = List.of("state", "problem", "dials", "results");

    private VersionOne() {}

    static Workbook read(JsonCursor root) {
        return new Workbook(
                root.member("title").text(),
                textOrEmpty(root, "author"),
                textOrEmpty(root, "about"),
                sheet(root.member("sheet")),
                root.optional("dials").map(VersionOne::settings).orElse(Map.of()),
                root.optional("record").map(VersionOne::record),
                root.optional("seal").map(JsonCursor::text),
                root.object().without(WORKBOOK_KEYS));
    }

    private static String textOrEmpty(JsonCursor cursor, String key) {
        return cursor.optional(key).map(JsonCursor::text).orElse("");
    }

    private static List<Cell> sheet(JsonCursor cursor) {
        List<Cell> cells = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (JsonCursor element : cursor.elements()) {
            if (cells.size() == Workbook.MOST_CELLS) {
                throw element.problem(
                        "there are more than " + Workbook.MOST_CELLS + " cells; split the workbook into several");
            }
            Cell cell = cell(element);
            if (!seen.add(cell.id())) {
                throw element.member("id")
                        .problem("a cell above is called \"" + cell.id() + "\" too; give each cell an id of its own");
            }
            cells.add(cell);
        }
        return cells;
    }

    private static Cell cell(JsonCursor cursor) {
        String id = id(cursor.member("id"));
        Optional<JsonCursor> note = cursor.optional("note");
        Optional<JsonCursor> script = cursor.optional("script");
        if (note.isPresent() == script.isPresent()) {
            throw cursor.problem("a cell has either the key \"note\" or the key \"script\"; "
                    + (note.isPresent() ? "this one has both; remove one" : "this one has neither; add one"));
        }
        if (note.isPresent()) {
            return new NoteCell(id, note.get().texts(), cursor.object().without(NOTE_KEYS));
        }
        return new ScriptCell(
                id,
                cursor.optional("title").map(VersionOne::oneLine).orElse(""),
                script.orElseThrow().texts(),
                cursor.object().without(SCRIPT_KEYS));
    }

    private static String id(JsonCursor cursor) {
        String id = cursor.text();
        if (!CellId.isAllowed(id)) {
            throw cursor.problem("a cell's id is " + CellId.ALLOWED
                    + (id.isEmpty() ? ", but this one is empty" : ", but this one is not") + "; correct it");
        }
        return id;
    }

    private static String oneLine(JsonCursor cursor) {
        String text = cursor.text();
        if (text.indexOf('\n') >= 0 || text.indexOf('\r') >= 0) {
            throw cursor.problem("this text has more than one line; write it in one line");
        }
        return text;
    }

    private static Map<String, String> settings(JsonCursor cursor) {
        Map<String, String> settings = new LinkedHashMap<>();
        cursor.members().forEach((name, setting) -> {
            if (name.isBlank()) {
                throw setting.problem("a dial needs a name; name the dial that is set");
            }
            settings.put(name, oneLine(setting));
        });
        return settings;
    }

    private static WorkbookRecord record(JsonCursor cursor) {
        Map<String, CellRecord> cells = new LinkedHashMap<>();
        cursor.member("cells").members().forEach((id, cell) -> cells.put(id, cellRecord(cell)));
        return new WorkbookRecord(
                cursor.member("engine").text(),
                cursor.member("java").text(),
                cursor.member("seed").whole(0, WorkbookRecord.GREATEST_SEED),
                cursor.member("sheet").text(),
                settings(cursor.member("dials")),
                cells,
                cursor.object().without(RECORD_KEYS));
    }

    private static CellRecord cellRecord(JsonCursor cursor) {
        CellState state = state(cursor.member("state"));
        JsonCursor results = cursor.member("results");
        results.elements().forEach(ResultCodec::readResult);
        Optional<JsonCursor> dials = cursor.optional("dials");
        dials.ifPresent(declared -> declared.elements().forEach(ResultCodec::readDial));
        return new CellRecord(
                state,
                textOrEmpty(cursor, "problem"),
                dials.map(JsonCursor::array).orElse(new JsonArray(List.of())),
                results.array(),
                cursor.object().without(CELL_RECORD_KEYS));
    }

    private static CellState state(JsonCursor cursor) {
        String words = cursor.text();
        return CellRecord.STATES.stream()
                .filter(state -> state.words().equals(words))
                .findFirst()
                .orElseThrow(() -> cursor.problem("the state of a recorded cell is one of "
                        + CellRecord.STATES.stream().map(CellState::words).toList() + ", but here it is \"" + words
                        + "\""));
    }
}

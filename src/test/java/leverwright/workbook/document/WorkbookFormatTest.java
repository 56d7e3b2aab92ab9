package leverwright.workbook.document;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import leverwright.workbook.json.JsonObject;
import leverwright.workbook.json.JsonProblem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WorkbookFormatTest {

    private static final long SEED = 20251125;

    private static final String EXTENDED = """
                {
                  "format": "leverwright-workbook",
                  "version": 1,
                  "title": "t",
                  "author": "",
                  "about": "",
                  "sheet": [
                    {
                      "id": "c1",
                      "script": [],
                      "zoom": 2,
                      "folded": true
                    }
                  ],
                  "dials": {},
                  "record": {
                    "engine": "0.1.0",
                    "java": "17",
                    "seed": 1,
                    "sheet": "0",
                    "dials": {},
                    "cells": {
                      "c1": {
                        "state": "fresh",
                        "results": [
                          {
                            "type": "text",
                            "title": "",
                            "text": "a",
                            "leftOut": 0,
                            "notes": [],
                            "colour": {
                              "b": 1,
                              "a": [
                                {
                                  "deep": null
                                }
                              ]
                            }
                          }
                        ],
                        "took": 0.5
                      }
                    },
                    "machine": "m"
                  },
                  "shelf": "yes",
                  "age": [1, 2]
                }
                """;

    private static String written(Workbook workbook) {
        return new String(WorkbookFormat.write(workbook), StandardCharsets.UTF_8);
    }

    private static Workbook read(String text) {
        return WorkbookFormat.read(text.getBytes(StandardCharsets.UTF_8));
    }

    private static String complaint(String text) {
        return assertThrows(JsonProblem.class, () -> read(text)).getMessage();
    }

    private static String withSheet(String sheet) {
        return "{\"format\":\"leverwright-workbook\",\"version\":1,\"title\":\"t\",\"sheet\":" + sheet + "}";
    }

    private static String withRecord(String results) {
        return "{\"format\":\"leverwright-workbook\",\"version\":1,\"title\":\"t\",\"sheet\":[],\n\"record\":{\"engine\":"
                + "\"0\",\"java\":\"17\",\"seed\":1,\"sheet\":\"\",\"dials\":{},\"cells\":{\"c1\":{\"state\":\"fresh\","
                + "\n\"results\":" + results + "}}}}";
    }

    @Test
    void randomWorkbooksReadBackAsTheSameWorkbookAndTheSameBytes() {
        RandomWorkbooks random = new RandomWorkbooks(SEED);
        for (int round = 0; round < 300; round++) {
            Workbook workbook = random.workbook();
            byte[] bytes = WorkbookFormat.write(workbook);
            Workbook back = WorkbookFormat.read(bytes);
            assertEquals(workbook, back, "seed " + SEED + ", round " + round);
            assertArrayEquals(bytes, WorkbookFormat.write(back), "seed " + SEED + ", round " + round);
            assertEquals(Seal.state(workbook), Seal.state(back));
        }
    }

    @Test
    void theFileNamesItsFormatFirstAndHasOneTextLineAnElement() {
        Workbook workbook = Workbook.empty("The torso leans")
                .withAdded(0, new NoteCell("n1", "Guess first:\nhow far?"))
                .withAdded(1, new ScriptCell("c1", "var ines = 1;").withTitle("Ines"))
                .withDial("Torso lean", "45 deg");
        assertEquals("""
                {
                  "format": "leverwright-workbook",
                  "version": 1,
                  "title": "The torso leans",
                  "author": "",
                  "about": "",
                  "sheet": [
                    {
                      "id": "n1",
                      "note": [
                        "Guess first:",
                        "how far?"
                      ]
                    },
                    {
                      "id": "c1",
                      "title": "Ines",
                      "script": [
                        "var ines = 1;"
                      ]
                    }
                  ],
                  "dials": {
                    "Torso lean": "45 deg"
                  }
                }
                """, written(workbook));
    }

    @Test
    void keysThatThisVersionDoesNotKnowAreKeptAtEveryLevelInTheirOrder() {
        assertEquals(EXTENDED, written(read(EXTENDED)));
        Workbook edited = read(EXTENDED).withText("c1", "var a = 1;").withDial("Torso lean", "45 deg");
        assertEquals(
                EXTENDED.replace("\"script\": []", "\"script\": [\n        \"var a = 1;\"\n      ]")
                        .replace(
                                "\"dials\": {},\n  \"rec",
                                "\"dials\": {\n    \"Torso lean\": \"45 deg\"\n  },\n  \"rec"),
                written(edited));
    }

    @Test
    void aFileOfALaterVersionIsRefusedInWordsWhateverElseIsInIt() {
        assertEquals(
                "line 2, column 13, version: this workbook was written by a newer Leverwright (file version 2); this one"
                        + " reads versions 1 to 1; open it with the newer Leverwright; the file was left as it is",
                complaint("{\"format\": \"leverwright-workbook\",\n \"version\": 2, \"sheet\": 5}"));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "[]|line 1, column 1: this is not a Leverwright workbook",
                "5|line 1, column 1: this is not a Leverwright workbook",
                "{}|line 1, column 1: this is not a Leverwright workbook",
                "{\"format\":\"leverwright-scenario\"}|line 1, column 11, format: this is not a Leverwright workbook",
                "{\"format\":1}|line 1, column 11, format: this is not a Leverwright workbook",
                "{\"format\":\"leverwright-workbook\"}|line 1, column 1: the key \"version\" is missing",
                "{\"format\":\"leverwright-workbook\",\"version\":\"1\"}|version: expected a number, but found text",
                "{\"format\":\"leverwright-workbook\",\"version\":0}|version: expected a whole number from 1 to",
                "{\"format\":\"leverwright-workbook\",\"version\":1.5}|version: expected a whole number from 1 to",
                "{\"format\":\"leverwright-workbook\",\"version\":1e300}|version: expected a whole number from 1 to",
                "{\"format\":\"leverwright-workbook\",\"version\":1}|the key \"title\" is missing; add it"
            })
    void aForeignFileIsRefusedWithItsPlace(String text, String message) {
        assertTrue(complaint(text).contains(message), complaint(text));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5|sheet: expected an array, but found a number",
                "[5]|sheet[0]: expected an object, but found a number",
                "[{}]|sheet[0]: the key \"id\" is missing; add it",
                "[{\"id\":5}]|sheet[0].id: expected text, but found a number",
                "[{\"id\":\"\",\"note\":[]}]|sheet[0].id: a cell's id is 1 to 64 letters",
                "[{\"id\":\"a b\",\"note\":[]}]|sheet[0].id: a cell's id is 1 to 64 letters",
                "[{\"id\":\"a\"}]|sheet[0]: a cell has either the key \"note\" or the key \"script\"; this one has neither",
                "[{\"id\":\"a\",\"note\":[],\"script\":[]}]|sheet[0]: a cell has either the key \"note\" or",
                "[{\"id\":\"a\",\"note\":\"x\"}]|sheet[0].note: expected an array, but found text",
                "[{\"id\":\"a\",\"script\":[1]}]|sheet[0].script[0]: expected text, but found a number",
                "[{\"id\":\"a\",\"script\":[],\"title\":\"a\\nb\"}]|sheet[0].title: this text has more than one line",
                "[{\"id\":\"a\",\"note\":[]},{\"id\":\"a\",\"note\":[]}]|sheet[1].id: a cell above is called \"a\" too",
            })
    void aWrongSheetIsRefusedWithItsPath(String sheet, String message) {
        assertTrue(complaint(withSheet(sheet)).startsWith("line 1, column "), complaint(withSheet(sheet)));
        assertTrue(complaint(withSheet(sheet)).contains(message), complaint(withSheet(sheet)));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "5|record.cells.c1.results: expected an array, but found a number",
                "[5]|results[0]: expected an object, but found a number",
                "[{}]|results[0]: the key \"type\" is missing; add it",
                "[{\"type\":\"java.lang.Runtime\"}]|results[0].type: \"java.lang.Runtime\" is not known here; allowed are number,",
                "[{\"type\":\"quantity\"}]|results[0].type: \"quantity\" is not known here",
                "[{\"type\":\"text\",\"title\":5}]|results[0].title: expected text, but found a number",
                "[{\"type\":\"text\",\"title\":\"\",\"text\":\"\",\"leftOut\":0.5,\"notes\":[]}]|results[0].leftOut: expected a whole",
                "[{\"type\":\"text\",\"title\":\"\",\"text\":\"\",\"leftOut\":-1,\"notes\":[]}]|results[0]: characters left out must",
                "[{\"type\":\"text\",\"title\":\"\",\"text\":\"\",\"leftOut\":0,\"notes\":[null]}]|results[0].notes[0]: expected text",
                "[{\"type\":\"number\",\"title\":\"\",\"quantity\":{\"value\":true}}]|quantity.value: expected a number, but found true",
                "[{\"type\":\"number\",\"title\":\"\",\"quantity\":{\"value\":1,\"low\":2,\"high\":1,\"unit\":\"metre\"}}]|does not hold",
                "[{\"type\":\"number\",\"title\":\"\",\"quantity\":{\"value\":1,\"low\":1,\"high\":1,\"unit\":\"mile\"}}]|\"mile\" is not",
            })
    void aWrongResultIsRefusedWithItsPath(String results, String message) {
        String complaint = complaint(withRecord(results));
        assertTrue(complaint.startsWith("line 3, column "), complaint);
        assertTrue(complaint.contains("record.cells.c1.results"), complaint);
        assertTrue(complaint.contains(message), complaint);
    }

    @Test
    void aDecimalOfAWorkingIsReadAsWrittenAndABoundlessOneRefused() {
        String working = "[{\"type\":\"number\",\"title\":\"\",\"quantity\":{\"value\":1,\"low\":1,\"high\":1,\"unit\":"
                + "\"one\"},\"sides\":\"total\",\"working\":{\"title\":\"t\",\"steps\":[{\"symbol\":\"a\",\"expression\":"
                + "{\"type\":\"constant\",\"name\":\"\",\"number\":\"%s\",\"unit\":\"one\",\"source\":\"\"},\"value\":1,"
                + "\"dimension\":\"ratio\",\"source\":\"\",\"note\":\"\"}],\"checks\":[],\"ending\":\"\"},\"workingOpen\":"
                + "false,\"notes\":[]}]";
        read(withRecord(working.formatted("0.50")));
        String complaint = complaint(withRecord(working.formatted("1e999999999")));
        assertTrue(complaint.contains("steps[0].expression.number: expected a decimal number as text"), complaint);
    }

    @Test
    void moreCellsThanAllowedAreRefused() {
        StringBuilder sheet = new StringBuilder("[");
        for (int number = 0; number <= Workbook.MOST_CELLS; number++) {
            sheet.append(number == 0 ? "" : ",")
                    .append("{\"id\":\"c")
                    .append(number)
                    .append("\",\"note\":[]}");
        }
        assertTrue(complaint(withSheet(sheet + "]")).contains("sheet[2000]: there are more than 2000 cells"));
    }

    @Test
    void aTextWithLineEndsOrHalvesOfCharactersIsMendedAndNotLost() {
        NoteCell note = new NoteCell("n", List.of("a\nb\r\nc\rd", "e\uD800f"), JsonObject.EMPTY);
        assertEquals(List.of("a", "b", "c", "d", "e\uFFFDf"), note.lines());
    }
}

package leverwright.face.desk.editor;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import leverwright.run.result.CellState;
import leverwright.workbook.session.CellOutcome;
import leverwright.workbook.session.CellScript;
import leverwright.workbook.session.RunReport;
import leverwright.workbook.session.Session;
import leverwright.workbook.session.SessionOptions;
import org.junit.jupiter.api.Test;

class ApiHelpTest {

    @Test
    void everyTaskComputesInAWorkbookThatDeclaresNothing() {
        assertTrue(ApiHelp.tasks().size() >= 40, "only " + ApiHelp.tasks().size() + " tasks");
        List<String> failed = new ArrayList<>();
        try (Session session = Session.open(new SessionOptions(false, 1, Map.of(), outcome -> {}))) {
            for (ApiHelp.Task task : ApiHelp.tasks()) {
                RunReport report = session.run(List.of(new CellScript("task", ApiHelp.toInsert(task, ""))));
                CellOutcome outcome = report.outcomes().get(0);
                boolean shows = !outcome.results().isEmpty() || task.line().startsWith("var ");
                if (outcome.state() != CellState.FRESH || !shows) {
                    failed.add(task.title() + ": " + outcome.message());
                }
            }
        }
        assertEquals(List.of(), failed);
    }

    @Test
    void whatTheWorkbookDeclaresIsNotDeclaredAgain() {
        ApiHelp.Task hip = ApiHelp.find("load on the hip").get(0);
        assertEquals("Load on the hip", hip.title());
        assertEquals("held.moment(HIP)", ApiHelp.toInsert(hip, "var held = squat.by(oda).posture();"));
        assertTrue(ApiHelp.toInsert(hip, "").startsWith("var ines = "), ApiHelp.toInsert(hip, ""));
    }

    @Test
    void tasksAreFoundByUsersWordsAndMisspeltOnes() {
        assertEquals("Compare lifters", ApiHelp.find("compare lifters").get(0).title());
        assertEquals(
                "Sweep the torso lean",
                ApiHelp.find("sweep the torso lean").get(0).title());
        assertEquals(
                "What if the bar is ahead of the foot",
                ApiHelp.find("what if the bar is ahead").get(0).title());
        assertEquals("Resistance band", ApiHelp.find("resistence bnad").get(0).title());
        assertEquals(List.of(), ApiHelp.find("zzzzz"));
        assertEquals(ApiHelp.tasks(), ApiHelp.find("  the "));
    }

    @Test
    void theGlossaryIsThatOfTheDocs() {
        List<String> words = ApiHelp.glossary().stream().map(ApiHelp.Term::word).toList();
        assertTrue(words.containsAll(List.of("load arm", "tilt rule", "verdict")), words.toString());
        assertFalse(ApiHelp.glossary().stream().anyMatch(term -> term.meaning().isBlank()));
    }
}

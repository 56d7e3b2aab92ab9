package leverwright.face.command;

import java.util.LinkedHashMap;
import java.util.Map;
import leverwright.workbook.document.Workbook;
import picocli.CommandLine.Option;

/** What the commands that compute a workbook have in common. */
final class WorkbookOptions {

    @Option(
            names = "--set",
            paramLabel = "DIAL=SETTING",
            description = "set a dial, for example --set \"Torso lean=45 deg\"; may be given more than once")
    private Map<String, String> settings = new LinkedHashMap<>();

    @Option(
            names = "--trust",
            description = "let the cells use any Java class: only for workbooks whose author you trust")
    private boolean trusted;

    boolean isTrusted() {
        return trusted;
    }

    /** Returns the workbook with the dials that were set on the command line. */
    Workbook applyTo(Workbook workbook) {
        Workbook set = workbook;
        for (Map.Entry<String, String> setting : settings.entrySet()) {
            set = set.withDial(setting.getKey().strip(), setting.getValue().strip());
        }
        return set;
    }

    /** Returns the names of the dials that were set on the command line. */
    Iterable<String> setDials() {
        return settings.keySet().stream().map(String::strip).toList();
    }
}

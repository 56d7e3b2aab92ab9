package leverwright.face.command;

import java.util.ArrayList;
import java.util.List;
import leverwright.workbook.document.Workbook;
import picocli.CommandLine.Option;

/** What the commands that compute a workbook have in common. */
final class WorkbookOptions {

    @Option(
            names = "--set",
            paramLabel = "DIAL=SETTING",
            description = "set a dial, for example --set \"Torso lean=45 deg\"; may be given more than once")
    private List<String> settings = new ArrayList<>();

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
        for (String setting : settings) {
            set = set.withDial(
                    nameIn(setting), setting.substring(setting.indexOf('=') + 1).strip());
        }
        return set;
    }

    /** Returns the names of the dials that were set on the command line. */
    Iterable<String> setDials() {
        return settings.stream().map(WorkbookOptions::nameIn).toList();
    }

    private static String nameIn(String setting) {
        int equals = setting.indexOf('=');
        if (equals < 0) {
            throw new IllegalArgumentException("--set \"" + setting
                    + "\" has no equals sign; write the dial's name and its value, like --set \"Torso lean=45 deg\"");
        }
        return setting.substring(0, equals).strip();
    }
}

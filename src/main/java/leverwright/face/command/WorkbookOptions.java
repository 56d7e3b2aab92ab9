package leverwright.face.command;

import java.util.ArrayList;
import java.util.List;
import leverwright.workbook.document.Workbook;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** What the commands that compute a workbook have in common. */
final class WorkbookOptions {

    @Option(
            names = "--set",
            paramLabel = "DIAL=SETTING",
            description = "set a dial, for example --set \"Torso lean=45 deg\"; may be given more than once")
    private List<String> settings = new ArrayList<>();

    @Mixin
    private RunOptions running = new RunOptions();

    RunOptions running() {
        return running;
    }

    /**
     * Returns the workbook with the dials that were set on the command line.
     *
     * @throws IllegalArgumentException when an option says what cannot be
     */
    Workbook applyTo(Workbook workbook) {
        running.mostPerCell();
        DialNames.of(workbook).requireBeforeRun(setDials());
        Workbook set = workbook;
        for (String setting : settings) {
            set = set.withDial(
                    nameIn(setting), setting.substring(setting.indexOf('=') + 1).strip());
        }
        return set;
    }

    /** Returns the names of the dials that were set on the command line. */
    List<String> setDials() {
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

package leverwright.run.cell;

import leverwright.mechanics.exercise.LeverView;
import leverwright.run.result.TableResult;

/** Lists a joint's lever: the load on its arm against one equivalent muscle on its own. */
final class LeverRows {

    private LeverRows() {}

    static TableResult result(LeverView view) {
        TableWord table =
                new TableWord("The " + view.joint().words() + " as a lever: " + view.action()).columns("what", "value");
        table.row(view.load().label(), view.load());
        table.row(view.loadArm().label(), view.loadArm());
        table.row(view.moment().label(), view.moment());
        view.muscle().ifPresent(muscle -> {
            table.row("muscle arm, " + muscle.name(), muscle.arm());
            table.row("lever ratio, load arm over muscle arm", muscle.leverRatio());
            table.row("force of the " + muscle.name(), muscle.force());
        });
        table.row("share of a load that pulls square to the segment", view.squareShare());
        table.row("the same by the tilt rule (common practice, no source)", view.squareShareByTilt());
        table.notes(view.notes());
        return table.result();
    }
}

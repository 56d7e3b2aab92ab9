package leverwright;

import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Arrays;
import java.util.Optional;

/**
 * The rooms of the house, in the order of its plan. A room may use itself and rooms that stand before it; {@link #mayUse}
 * says where the plan allows less than all of them.
 */
enum Room {
    ROOT("leverwright"),
    NUMERIC("leverwright.mechanics.numeric"),
    MEASURE("leverwright.mechanics.measure"),
    WORKING("leverwright.mechanics.working"),
    BODY("leverwright.mechanics.body"),
    POSTURE("leverwright.mechanics.posture"),
    LOAD("leverwright.mechanics.load"),
    EQUILIBRIUM("leverwright.mechanics.equilibrium"),
    BULK("leverwright.mechanics.bulk"),
    MOTION("leverwright.mechanics.motion"),
    MUSCLE("leverwright.mechanics.muscle"),
    EXERCISE("leverwright.mechanics.exercise"),
    STUDY("leverwright.mechanics.study"),
    RESULT("leverwright.run.result"),
    WIRE("leverwright.run.wire"),
    GATE("leverwright.run.gate"),
    CELL("leverwright.run.cell"),
    WORKER("leverwright.run.worker"),
    JSON("leverwright.workbook.json"),
    DOCUMENT("leverwright.workbook.document"),
    SESSION("leverwright.workbook.session"),
    SCENARIO("leverwright.workbook.scenario"),
    DRAW("leverwright.face.draw"),
    PUBLISH("leverwright.face.publish"),
    DESK("leverwright.face.desk"),
    COMMAND("leverwright.face.command");

    private final String packageName;

    Room(String packageName) {
        this.packageName = packageName;
    }

    /** The room a class lives in: the package of the room itself or one below it (only itself for the root). */
    static Optional<Room> of(JavaClass type) {
        String home = type.getPackageName();
        return Arrays.stream(values())
                .filter(room ->
                        home.equals(room.packageName) || (room != ROOT && home.startsWith(room.packageName + ".")))
                .findFirst();
    }

    boolean mayUse(Room other) {
        if (other == this) {
            return true;
        }
        if (other.ordinal() > ordinal()) {
            return false;
        }
        return switch (this) {
            case ROOT -> false;
            case NUMERIC, MEASURE, WORKING, BODY, POSTURE, LOAD, EQUILIBRIUM, BULK, MOTION, MUSCLE, EXERCISE, STUDY ->
                other.isMechanics();
            case RESULT, WIRE -> other == ROOT || other == RESULT || other.isPlainData();
            case GATE -> other == ROOT || other.isMechanics();
            case CELL -> true;
            case JSON -> other == ROOT;
            case WORKER, DOCUMENT -> !other.isMechanics() || other.isPlainData();
            case SESSION -> !other.isMechanics() && other != CELL && other != WORKER;
            case SCENARIO -> other == ROOT || other.isMechanics() || other == JSON || other == DOCUMENT;
            case DRAW, PUBLISH, DESK, COMMAND ->
                other == ROOT || other == RESULT || other.isPlainData() || other.ordinal() >= JSON.ordinal();
        };
    }

    private boolean isMechanics() {
        return packageName.startsWith("leverwright.mechanics.");
    }

    /** Measures and workings are the two rooms of the mechanics whose values everybody may hold. */
    private boolean isPlainData() {
        return this == MEASURE || this == WORKING;
    }
}
